import type { ArgumentFault } from "./cells/argument-fault";
import type { TableFault } from "./cells/table-fault";
import type { GerminationFault } from "./germination/germination-fault";
import type { OrdersFault } from "./orders/orders-fault";
import type { RecordsFault } from "./records/records-fault";
import type { TakesFault } from "./takes/takes-fault";
import type { TimetableRefusal } from "./timetable/timetable-fault";
import type { WorkFault } from "./work/work-fault";

/** What a caller got wrong, with its facts; src/wording says it to people. A capability adds its own. */
export type InputFault =
  | ArgumentFault
  | GerminationFault
  | OrdersFault
  | RecordsFault
  | TableFault
  | TakesFault
  | TimetableRefusal
  | WorkFault;

/** Codes of mistakes whose sentence still stands in core. */
export type SaidCode =
  | "argument-missing"
  | "argument-unreadable"
  | "no-header"
  | "not-ready-yet"
  | "unknown-column"
  | "unknown-method";

export type InputErrorCode = SaidCode | InputFault["code"];

/**
 * A caller's mistake: which it is, and what was found. Anything else that is thrown from core is a
 * defect of ours. People are told by errorSentence of src/wording, never by the message, which is for
 * those who read logs.
 */
export class InputError extends Error {
  readonly code: InputErrorCode;
  /** Null where the message still is the sentence. */
  readonly fault: InputFault | null;

  constructor(fault: InputFault);
  constructor(code: SaidCode, sentence: string);
  constructor(given: InputFault | SaidCode, sentence = JSON.stringify(given)) {
    super(sentence);
    this.name = "InputError";
    this.fault = typeof given === "string" ? null : given;
    this.code = typeof given === "string" ? given : given.code;
  }
}
