import type { ArgumentFault } from "./argument-fault";
import type { GerminationFault } from "./germination-fault";
import type { OrdersFault } from "./orders-fault";
import type { RecordsFault } from "./records-fault";
import type { TableFault } from "./table-fault";
import type { TakesFault } from "./takes-fault";
import type { TimetableRefusal } from "./timetable-fault";
import type { WorkFault } from "./work-fault";

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

export type InputErrorCode = InputFault["code"];

/**
 * A caller's mistake: which it is, and what was found. Anything else that is thrown from core is a
 * defect of ours. People are told by errorSentence of src/wording, never by the message, which is for
 * those who read logs.
 */
export class InputError extends Error {
  readonly code: InputErrorCode;
  readonly fault: InputFault;

  constructor(fault: InputFault) {
    super(JSON.stringify(fault));
    this.name = "InputError";
    this.fault = fault;
    this.code = fault.code;
  }
}
