import * as text from "../sentences/made/page";
import type { AnswerOf, CallResult, RequestOf, SidebarCallName } from "../wire/calls";
import { faultSentence } from "../wording/writing";

/** `google.script.run`: every function of the script under its name, and two builders. */
export interface ScriptRunner {
  withSuccessHandler(handler: (result: unknown) => void): ScriptRunner;
  withFailureHandler(handler: (error: unknown) => void): ScriptRunner;
  readonly [name: string]: unknown;
}

/** Asks the script. Rejects with a sentence for the person, never resolves without an answer. */
export type Call = <Name extends SidebarCallName>(
  name: Name,
  request: RequestOf<Name>,
) => Promise<AnswerOf<Name>>;

/**
 * The runner as a function that returns promises and knows what each call is asked and answers.
 *
 * @param heard called with the version that each answer names; null where it names none
 */
export function scriptCall(
  runner: ScriptRunner,
  heard: (version: string | null) => void = () => {},
): Call {
  return (name, request) =>
    new Promise((resolve, reject) => {
      const run = runner
        .withSuccessHandler((result) => {
          try {
            if (typeof result === "object" && result !== null) heard(versionOf(result));
            resolve(unwrapped<AnswerOf<typeof name>>(result));
          } catch (error) {
            reject(error);
          }
        })
        .withFailureHandler((error) => reject(new Error(failureSentence(error))));
      const ask = run[name];
      if (typeof ask !== "function") {
        reject(new Error(text.scriptLacks({ name })));
      } else if (request === null) ask.call(run);
      else ask.call(run, request);
    });
}

/** The version that an answer names; scripts before 0.2.0 named none. */
function versionOf(result: object): string | null {
  const { version } = result as { version?: unknown };
  return typeof version === "string" ? version : null;
}

/** The data of a result. Null comes where a value can't pass to the page: that is a failure too. */
export function unwrapped<Answer>(result: unknown): Answer {
  if (typeof result !== "object" || result === null) throw new Error(text.noAnswer());
  const envelope = result as CallResult<Answer>;
  if (!envelope.ok) throw new Error(refusal(envelope) || text.noAnswer());
  if (envelope.data === null || envelope.data === undefined) throw new Error(text.noAnswer());
  return envelope.data;
}

function refusal(refused: Extract<CallResult<unknown>, { ok: false }>): string {
  return "fault" in refused ? faultSentence(refused.fault) : refused.error;
}

/** What a failure of the way to the script says, with what to do where the cause is known. */
export function failureSentence(error: unknown): string {
  const message =
    typeof error === "object" && error !== null && "message" in error ? error.message : error;
  if (typeof message !== "string" || message === "") return text.noAnswer();
  // Seen where a browser is signed in with several accounts at once.
  if (message.includes("PERMISSION_DENIED")) {
    return text.severalAccounts({ message });
  }
  return message;
}
