/** The public list of functions, by hand. */
export { callFunction } from "./call";
export type { FunctionEntry, FunctionResult, RawArguments } from "./entry";
export { registry } from "./registry";
