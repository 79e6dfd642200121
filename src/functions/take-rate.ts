import { takeRate as rateOf } from "../core";
import type { HelpOf } from "./entry";
import { functionOf } from "./function-of";
import { forEachPair } from "./pairs";
import { raw } from "./parameter";

export const takeRate = functionOf({ taken: raw, grafted: raw }, ({ taken, grafted }, door) =>
  forEachPair(door, taken, grafted, (took, made) => [rateOf(took, made) ?? ""]),
);

export const takeRateHelp: HelpOf<typeof takeRate> = {
  sentence: "The share of grafts that took; blank where they are not counted yet.",
  parameters: {
    taken: "Takes counted: a cell, or a column of cells.",
    grafted: "Grafts made: a cell, or a column as long.",
  },
  answers: "A share from 0 to 1, or one for each row of the two columns.",
  example: "=TAKE_RATE(Records!J2:J7, Records!H2:H7)",
  exampleHeadings: ["Take rate"],
};
