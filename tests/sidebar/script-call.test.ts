import { describe, expect, it } from "vitest";
import * as text from "../../src/sentences/made/page";
import {
  failureSentence,
  type ScriptRunner,
  scriptCall,
  unwrapped,
} from "../../src/sidebar/script-call";
import { faultSentence } from "../../src/wording/writing";

/** A runner that hands each call's handlers and arguments to a function. */
function runner(
  answer: (
    given: unknown[],
    succeed: (result: unknown) => void,
    fail: (error: unknown) => void,
  ) => void,
): ScriptRunner {
  const make = (
    succeed: (result: unknown) => void,
    fail: (error: unknown) => void,
  ): ScriptRunner => ({
    withSuccessHandler: (handler) => make(handler, fail),
    withFailureHandler: (handler) => make(succeed, handler),
    sidebarCheck: (...given: unknown[]) => answer(given, succeed, fail),
    sidebarTakes: (...given: unknown[]) => answer(given, succeed, fail),
  });
  return make(
    () => {},
    () => {},
  );
}

describe("scriptCall", () => {
  it("gives the data of an answer", async () => {
    const data = { rows: [], tally: "" };
    const call = scriptCall(runner((_, succeed) => succeed({ ok: true, data })));
    expect(await call("sidebarCheck", null)).toBe(data);
  });

  it("asks with one argument, or with none where there is no request", async () => {
    const asked: unknown[][] = [];
    const call = scriptCall(
      runner((given, succeed) => {
        asked.push(given);
        succeed({ ok: true, data: {} });
      }),
    );
    await call("sidebarCheck", null);
    await call("sidebarTakes", { by: "Variety" });
    expect(asked).toEqual([[], [{ by: "Variety" }]]);
  });

  it("fails with the script's own sentence", async () => {
    const call = scriptCall(runner((_, succeed) => succeed({ ok: false, error: "Say why." })));
    await expect(call("sidebarCheck", null)).rejects.toThrow(/^Say why\.$/);
  });

  it("says the reason that the script gives as a code", async () => {
    const fault = { code: "tabMissing", tab: "Write log" } as const;
    const call = scriptCall(runner((_, succeed) => succeed({ ok: false, fault })));
    await expect(call("sidebarCheck", null)).rejects.toThrow(faultSentence(fault));
  });

  it("fails where the way to the script fails", async () => {
    const call = scriptCall(runner((_, __, fail) => fail(new Error("Lost"))));
    await expect(call("sidebarCheck", null)).rejects.toThrow(/^Lost$/);
  });

  it("fails where the script lacks the function, and where the request can't pass", async () => {
    const call = scriptCall(
      runner(() => {
        throw new Error("Failed due to illegal value in property: by");
      }),
    );
    await expect(call("sidebarOpen", null)).rejects.toThrow(
      text.scriptLacks({ name: "sidebarOpen" }),
    );
    await expect(call("sidebarTakes", { by: "" })).rejects.toThrow("illegal value");
  });
});

describe("unwrapped", () => {
  it.each([null, undefined, "", 0, "text", { ok: true }, { ok: true, data: null }, {}])(
    "takes %j for no answer",
    (result) => expect(() => unwrapped(result)).toThrow(text.noAnswer()),
  );
});

describe("failureSentence", () => {
  it("is the message as it is", () => {
    expect(failureSentence(new Error("Lost"))).toBe("Lost");
    expect(failureSentence("Lost")).toBe("Lost");
  });

  it("says what to do where the cause is known", () => {
    const message = "We're sorry, a server error occurred. Error code PERMISSION_DENIED.";
    expect(failureSentence({ message })).toBe(text.severalAccounts({ message }));
  });

  it.each([null, undefined, "", {}])("says something for %j", (error) =>
    expect(failureSentence(error)).toBe(text.noAnswer()),
  );
});
