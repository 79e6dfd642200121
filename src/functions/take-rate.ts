import { takeRate as rateOf } from "../core";
import * as help from "../sentences/made/take-rate-help";
import type { HelpOf } from "./entry";
import { functionOf } from "./function-of";
import { forEachPair } from "./pairs";
import { raw } from "./parameter";

export const takeRate = functionOf({ taken: raw, grafted: raw }, ({ taken, grafted }, door) =>
  forEachPair(door, { taken, grafted, answer: (took, made) => [rateOf(took, made) ?? ""] }),
);

export const takeRateHelp: HelpOf<typeof takeRate> = {
  says: help,
  example: "=TAKE_RATE(Records!J2:J7, Records!H2:H7)",
  onSample: "=TAKE_RATE(Records!R2:R90, Records!N2:N90)",
  exampleHeadings: [help.heading],
};
