/** The public list of functions, by hand. */
export { callFunction } from "./call";
export type { FunctionEntry, FunctionName, FunctionResult, RawArguments } from "./entry";
export { registry } from "./registry";
export { runs } from "./runs";
