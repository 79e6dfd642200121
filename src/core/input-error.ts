/** What a caller got wrong, for programs; the message says it to people. */
export type InputErrorCode =
  | "argument-missing"
  | "argument-unreadable"
  | "level-out-of-range"
  | "no-header"
  | "not-a-count"
  | "more-taken-than-grafted"
  | "not-ready-yet"
  | "shapes-differ"
  | "timetable-unusable"
  | "unknown-column"
  | "unknown-method";

/**
 * A caller's mistake, in one sentence that names the argument and what was found.
 * Anything else that is thrown from core is a defect of ours.
 */
export class InputError extends Error {
  readonly code: InputErrorCode;

  constructor(code: InputErrorCode, message: string) {
    super(message);
    this.name = "InputError";
    this.code = code;
  }
}
