import type { TimetableFault } from "../../src/core";

/** The days of a step that fall where they have to rise. */
export const daysThatFall = {
  row: 3,
  column: "usual",
  found: "9 / 5 / 7",
  code: "days-must-rise",
  step: "Ready",
  leftOut: "method",
} as const satisfies TimetableFault;
