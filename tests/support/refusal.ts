import { InputError, type InputFault } from "../../src/core/faults/input-error";
import { errorSentence } from "../../src/wording/errors";

/** The error by which a function refuses a fault, as its cell's note shows it. */
export function refusal(name: string, fault: InputFault): Error {
  return new Error(`${name}: ${errorSentence(new InputError(fault))}`);
}

/** A cell in the second row of a small table that shows an error, or null while it loads. */
export function notReady(argument: string, shown: string | null): InputFault {
  return { code: "not-ready-yet", argument, row: 2, column: null, shown };
}

/** What a person reads of a fault in the sidebar. */
export function refusalText(fault: InputFault): string {
  return errorSentence(new InputError(fault), "page");
}
