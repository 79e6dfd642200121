/** What a caller can get wrong, and the error that says it. */

export { InputError, type InputFault } from "./input-error";
export type { TakesFault } from "./takes-fault";
export type { TimetableFault } from "./timetable-fault";
