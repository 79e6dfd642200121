/** The public list of functions, by hand. */
export { callFunction } from "./call";
export type { FunctionResult, RawArguments } from "./function-of";
export type { FunctionEntry } from "./registry";
export { registry } from "./registry";
export type { FunctionName } from "./runs.table";
export { runs } from "./runs.table";
