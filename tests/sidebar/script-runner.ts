import type { Page } from "playwright-core";
import { SIDEBAR_CALLS } from "../../src/build/stubs";
import { projectVersion } from "../../src/build/version";
import type { CallResult, SidebarCallName, SidebarCalls } from "../../src/wire/calls";

/** What the fake script answers: data, or a sentence thrown as an Error, at once or later. */
export type Answers = {
  [Name in SidebarCallName]?: (
    request: SidebarCalls[Name]["request"],
  ) => SidebarCalls[Name]["answer"] | Promise<SidebarCalls[Name]["answer"]> | NoAnswer;
};

/** A call whose answer gets lost: the page receives null, as for a value that can't pass. */
export type NoAnswer = "no answer";

export interface AskedCall {
  readonly name: string;
  readonly request: unknown;
}

export interface FakeRunner {
  /**
   * Answers from now on for a page that is loaded next.
   * @returns every call made, in order
   */
  play(answers: Answers, version?: string): readonly AskedCall[];
}

/**
 * Gives a page a `google.script.run` that is answered from here. It refuses what may not pass from
 * a page to the script, answers later than asked, and reports failures as the real one does.
 */
export async function fakeRunner(page: Page): Promise<FakeRunner> {
  let playing: { answers: Answers; version: string; asked: AskedCall[] } | null = null;
  await page.exposeFunction("answerCall", async (name: string, requestText: string) => {
    if (!playing) throw new Error(`Nothing is played yet, and the page asks for ${name}`);
    const { answers, version, asked } = playing;
    const request = requestText === "" ? null : JSON.parse(requestText);
    asked.push({ name, request });
    return JSON.stringify(await resultOf(answers, name as SidebarCallName, request, version));
  });
  await page.addInitScript(installRunner, SIDEBAR_CALLS);
  return {
    play(answers, version = projectVersion()) {
      playing = { answers, version, asked: [] };
      return playing.asked;
    },
  };
}

async function resultOf(
  answers: Answers,
  name: SidebarCallName,
  request: unknown,
  version: string,
): Promise<CallResult<unknown> | null> {
  const answer = answers[name] as ((request: unknown) => unknown) | undefined;
  if (answer === undefined) {
    return { ok: false, error: `no answer is prepared for ${name}`, version };
  }
  try {
    const data = await answer(request);
    return data === "no answer" ? null : { ok: true, data, version };
  } catch (error) {
    return { ok: false, error: (error as Error).message, version };
  }
}

/** Runs in the page. */
function installRunner(names: readonly string[]): void {
  // There is no printer: the browser's own dialog would stay over the page, which is kept for other
  // tests. A test that counts what is printed sets its own afterwards.
  window.print = () => {};
  const legal = (value: unknown): boolean => {
    if (value === null || ["string", "number", "boolean"].includes(typeof value)) return true;
    if (Array.isArray(value)) return value.every(legal);
    return (
      typeof value === "object" &&
      Object.getPrototypeOf(value) === Object.prototype &&
      Object.values(value as object).every(legal)
    );
  };
  const runner = (
    onSuccess: (result: unknown) => void,
    onFailure: (error: unknown) => void,
  ): Record<string, unknown> => ({
    withSuccessHandler: (handler: (result: unknown) => void) => runner(handler, onFailure),
    withFailureHandler: (handler: (error: unknown) => void) => runner(onSuccess, handler),
    ...Object.fromEntries(
      names.map((name) => [
        name,
        (...given: unknown[]) => {
          if (given.length > 1 || !given.every(legal)) {
            throw new Error("Failed due to illegal value in property: 0");
          }
          const text = given.length === 0 ? "" : JSON.stringify(given[0]);
          const { answerCall } = window as unknown as {
            answerCall: (name: string, request: string) => Promise<string>;
          };
          answerCall(name, text).then(
            (result) => onSuccess(JSON.parse(result)),
            (error) => onFailure(error),
          );
        },
      ]),
    ),
  });
  Object.assign(window, {
    google: {
      script: {
        run: runner(
          () => {},
          () => {},
        ),
      },
    },
  });
}
