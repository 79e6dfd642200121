import { germinationAnswer, InputError, readCount } from "../core";
import { type Door, rowsOf } from "../door/index";
import type { HelpOf } from "./entry";
import { functionOf } from "./function-of";
import { neededNumber, raw } from "./parameter";

export const germinationSummary = functionOf(
  { days: raw, counts: raw, sown: neededNumber },
  ({ days, counts, sown }, door) =>
    germinationAnswer({
      days: columnOf(door, "days", days),
      counts: rowsOf(counts).map((row) => row.map((value) => countIn(door, "counts", value))),
      sown,
    }),
);

export const germinationSummaryHelp: HelpOf<typeof germinationSummary> = {
  sentence: "How well and how fast seed came up: share, days to half, mean time, speed.",
  parameters: {
    days: "Days since sowing of each inspection, one column.",
    counts: "Seeds newly come up at each inspection; two or four columns for samples sown alike.",
    sown: "Seeds sown in all.",
  },
  answers:
    "One row a measure, with its unit. With two or four samples of 100 seeds a last line says whether they agree.",
  example: "=GERMINATION_SUMMARY(Germination!A2:A8, Germination!B2:B8, 50)",
};

function columnOf(door: Door, name: string, value: unknown): number[] {
  return rowsOf(value).map((row) => countIn(door, name, row[0]));
}

/** A blank inspection saw nothing come up. */
function countIn(door: Door, name: string, value: unknown): number {
  const reading = readCount(door.cell(value));
  if (reading.kind === "unread") throw new InputError("not-a-count", `${name}: ${reading.why}`);
  return reading.kind === "count" ? reading.count : 0;
}
