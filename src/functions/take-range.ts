import { takeRange as rangeOf } from "../core";
import type { HelpOf } from "./entry";
import { functionOf } from "./function-of";
import { forEachPair } from "./pairs";
import { raw, share } from "./parameter";
import { TAKES_LEVEL } from "./usual";

export const takeRange = functionOf(
  { taken: raw, grafted: raw, level: share(TAKES_LEVEL) },
  ({ taken, grafted, level }, door) =>
    forEachPair(door, taken, grafted, (took, made) => [
      ...(rangeOf(took, made, level) ?? ["", ""]),
    ]),
);

export const takeRangeHelp: HelpOf<typeof takeRange> = {
  sentence: "Between what shares the take rate lies, given how many were grafted: low and high.",
  parameters: {
    taken: "Takes counted: a cell, or a column of cells.",
    grafted: "Grafts made: a cell, or a column as long.",
    level: "How many of 100 such ranges should hold, as a share.",
  },
  answers:
    "Two columns, low and high, from 0 to 1 (Wilson's interval); blank where not counted yet.",
  example: "=TAKE_RANGE(Records!J2:J7, Records!H2:H7)",
  exampleHeadings: ["Low", "High"],
};
