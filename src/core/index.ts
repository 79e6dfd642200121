/**
 * Everything that the rest of the project may use of core: what each folder shows. Made by npm run sentences
 * from the folders; a test holds it equal.
 */

export * from "./amounts";
export * from "./answer";
export * from "./balance";
export * from "./cells";
export * from "./check";
export * from "./costs";
export * from "./dates";
export * from "./due";
export * from "./faults";
export * from "./germination";
export * from "./lazily";
export * from "./losses";
export * from "./made-once";
export * from "./mathematics";
export * from "./names";
export * from "./orders";
export * from "./people";
export * from "./places";
export * from "./projection";
export * from "./records";
export * from "./statistics";
export * from "./tables";
export * from "./takes";
export * from "./timetable";
export * from "./words";
export * from "./work";
