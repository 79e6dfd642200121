import { describe, expect, it } from "vitest";
import { callAnswerer, seededRandom } from "../../../src/local/page/call-answerer";
import { scriptRun } from "../../../src/local/page/script-run";
import type { CallMessage, ReplyMessage } from "../../../src/local/page/sidebar-messages";

// biome-ignore lint/suspicious/noExplicitAny: a page has no types either
type Runner = any;

function connected(functions: readonly string[]) {
  const sent: CallMessage[] = [];
  const form = { isForm: true };
  const { run, receive } = scriptRun(
    functions,
    (call) => sent.push(call),
    (value) => (value === form ? { name: "Bench 1" } : null),
  );
  const reply = (at: number, value: unknown) =>
    receive({ id: sent[at]?.id ?? 0, ok: true, text: JSON.stringify(value) });
  return { run: run as Runner, receive, sent, reply, form };
}

describe("google.script.run", () => {
  it("gives nothing back, and hands results to the success handler with the user object", () => {
    const { run, sent, reply } = connected(["add"]);
    const got: unknown[] = [];
    const value = run
      .withSuccessHandler((...all: unknown[]) => got.push(all))
      .withUserObject("mine")
      .add(1, 2);
    expect(value).toBeUndefined();
    expect(sent).toEqual([{ id: 1, name: "add", argumentsText: "[1,2]" }]);
    reply(0, { sum: 3 });
    reply(0, { sum: 4 });
    expect(got).toEqual([[{ sum: 3 }, "mine"]]);
  });

  it("leaves a runner as it is when another is made from it", () => {
    const { run, reply } = connected(["add"]);
    const heard: string[] = [];
    const first = run.withSuccessHandler(() => heard.push("first"));
    const second = first.withSuccessHandler(() => heard.push("second"));
    first.add();
    second.add();
    run.add();
    reply(0, 1);
    reply(1, 1);
    reply(2, 1);
    expect(heard).toEqual(["first", "second"]);
  });

  it("hands errors to the failure handler", () => {
    const { run, sent, receive } = connected(["add"]);
    const got: unknown[] = [];
    run.withFailureHandler((error: Error, user: unknown) => got.push(error.message, user)).add();
    receive({ id: sent[0]?.id ?? 0, ok: false, name: "Exception", text: "not now" });
    expect(got).toEqual(["not now", undefined]);
  });

  it("throws in the page for what may not pass, before anything is sent", () => {
    const { run, sent, form } = connected(["add"]);
    expect(() => run.add({ made: new Date(0) })).toThrow(
      "Failed due to illegal value in property: made",
    );
    expect(() => run.other()).toThrow(TypeError);
    expect(sent).toEqual([]);
    run.add(form);
    expect(sent[0]?.argumentsText).toBe('[{"name":"Bench 1"}]');
  });

  // Source: the guide on client-to-server communication: 10 at once, no order promised.
  it("has ten calls under way and lets others wait", () => {
    const { run, sent, reply } = connected(["add"]);
    for (let call = 0; call < 13; call++) run.add(call);
    expect(sent).toHaveLength(10);
    reply(4, 0);
    reply(9, 0);
    expect(sent.slice(10).map(({ argumentsText }) => argumentsText)).toEqual(["[10]", "[11]"]);
  });
});

describe("callAnswerer", () => {
  const answered = async (seed: number) => {
    const order: number[] = [];
    const replies: ReplyMessage[] = [];
    await new Promise<void>((done) => {
      const hear = callAnswerer(
        (reply) => {
          replies.push(reply);
          order.push(reply.id);
          if (order.length === 8) done();
        },
        async (name, text) => {
          if (name === "fails") throw new Error("broken");
          return text;
        },
        seededRandom(seed),
      );
      for (let id = 1; id <= 8; id++) {
        hear({ id, name: id === 3 ? "fails" : "echo", argumentsText: `[${id}]` });
      }
    });
    return { order, replies };
  };

  it("answers every call once, in an order that is not that of the calls", async () => {
    const { order, replies } = await answered(7);
    expect([...order].sort()).toEqual([1, 2, 3, 4, 5, 6, 7, 8]);
    expect(order).not.toEqual([1, 2, 3, 4, 5, 6, 7, 8]);
    for (const reply of replies) {
      expect(reply).toEqual(
        reply.id === 3
          ? { id: 3, ok: false, name: "Error", text: "broken" }
          : { id: reply.id, ok: true, text: `[${reply.id}]` },
      );
    }
  });

  it("draws the same numbers for the same seed", () => {
    const draw = (seed: number) => {
      const random = seededRandom(seed);
      return [random(), random(), random()];
    };
    expect(draw(7)).toEqual(draw(7));
    expect(draw(7)).not.toEqual(draw(8));
    expect(draw(7).every((one) => one >= 0 && one < 1)).toBe(true);
  });
});
