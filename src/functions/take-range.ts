import { takeRange as rangeOf } from "../core";
import { levelArgument } from "../door/index";
import type { FunctionHelp, FunctionRun } from "./entry";
import { forEachPair } from "./pairs";

const USUAL_LEVEL = 0.95;

export const takeRangeHelp: FunctionHelp = {
  name: "TAKE_RANGE",
  sentence: "Between what shares the take rate lies, given how many were grafted: low and high.",
  parameters: [
    ["taken", "Takes counted: a cell, or a column of cells."],
    ["grafted", "Grafts made: a cell, or a column as long."],
    ["level?", "How many of 100 such ranges should hold, as a share; 0.95 if left out."],
  ],
  answers:
    "Two columns, low and high, from 0 to 1 (Wilson's interval); blank where not counted yet.",
  example: "=TAKE_RANGE(Records!J2:J7, Records!H2:H7)",
  exampleHeadings: ["Low", "High"],
};

export const takeRange: FunctionRun = (door, [taken, grafted, level]) => {
  const share = levelArgument("level", door.cell(level), USUAL_LEVEL);
  return forEachPair(door, taken, grafted, (took, made) => [
    ...(rangeOf(took, made, share) ?? ["", ""]),
  ]);
};
