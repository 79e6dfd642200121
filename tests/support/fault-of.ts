import { InputError, type InputFault } from "../../src/core/faults/input-error";

/** What a caller got wrong, with its facts: tests look at these, never at a sentence. */
export function faultOf(work: () => unknown): InputFault | null {
  try {
    work();
  } catch (error) {
    if (error instanceof InputError) return error.fault;
    throw error;
  }
  return null;
}
