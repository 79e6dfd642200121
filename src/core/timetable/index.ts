/** The steps of a method: the built-in ones, and those of a nursery's own table. */

export { recordedSteps } from "./beside-steps";
export type { BuiltTimetable } from "./build-methods";
export { choiceOf, columnChoices, type EssentialName, essentialColumns } from "./column-choices";
export { hangsOn } from "./hangs-on";
export { batchMethods, methodFinder, methodOrRefuse, usualMethod } from "./method-of-batch";
export { cropsIn, methodWords } from "./method-words";
export { cocoaCleftGraftMeasures } from "./methods/cocoa-cleft-graft";
export { leftOutByMethod, leftOutOfOpen } from "./methods-unread";
export type { Need } from "./needs";
export type { MethodUnread } from "./read-method";
export { builtInTimetable, hasGeneralShare, readTimetable } from "./read-timetable";
export type { StepKind } from "./step-kind";
export type { Method, Round, Step, Timetable } from "./timetable";
export { TIMETABLE_COLUMNS, TIMETABLE_HEADER } from "./timetable-header";
export { type TimetableRow, timetableRows } from "./timetable-rows";
export { methodWord, toldWords } from "./told-words";
