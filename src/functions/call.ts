import { InputError } from "../core";
import { type Host, openDoor } from "../door/index";
import { ownFault } from "../sentences/made/function-faults";
import { errorSentence } from "../wording/errors";
import type { FunctionResult, RawArguments } from "./function-of";
import type { FunctionEntry } from "./registry";

/**
 * Answers a custom function. Whatever goes wrong is one sentence that starts with the function's
 * name, since the cell's note is all that a person sees of it.
 */
export function callFunction(
  { name, run }: Pick<FunctionEntry, "name" | "run">,
  host: Host,
  args: RawArguments,
): FunctionResult {
  try {
    return run(openDoor(host), args);
  } catch (error) {
    const message = errorSentence(error);
    if (error instanceof InputError) throw new Error(`${name}: ${message}`);
    throw new Error(ownFault({ name, why: message }));
  }
}
