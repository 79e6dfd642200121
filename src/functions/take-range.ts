import { takeRange as rangeOf } from "../core";
import * as help from "../sentences/made/take-range-help";
import type { HelpOf } from "./entry";
import { functionOf } from "./function-of";
import { forEachPair } from "./pairs";
import { raw, share } from "./parameter";
import { TAKES_LEVEL } from "./usual";

export const takeRange = functionOf(
  { taken: raw, grafted: raw, level: share(TAKES_LEVEL) },
  ({ taken, grafted, level }, door) =>
    forEachPair(door, {
      taken,
      grafted,
      answer: (took, made) => [...(rangeOf(took, made, level) ?? ["", ""])],
    }),
);

export const takeRangeHelp: HelpOf<typeof takeRange> = {
  says: help,
  example: "=TAKE_RANGE(Records!J2:J7, Records!H2:H7)",
  onSample: "=TAKE_RANGE(Records!R2:R90, Records!N2:N90)",
  exampleHeadings: [help.low, help.high],
};
