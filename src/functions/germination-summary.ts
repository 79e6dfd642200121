import {
  InputError,
  readCount,
  readSamples,
  seedBatches,
  germinationSummary as summary,
} from "../core";
import { type Door, isMissing, rowsOf, wholeNumberArgument } from "../door/index";
import * as help from "../sentences/made/germination-summary-help";
import { germinationTable, seedTable } from "../wording/germination-table";
import type { HelpOf } from "./entry";
import { functionOf } from "./function-of";
import { columns, raw, rawOrNone } from "./parameter";

export const germinationSummary = functionOf(
  { days: raw, counts: rawOrNone, sown: rawOrNone, columns },
  ({ days, counts, sown, columns: told }, door) => {
    const [first] = rowsOf(days);
    if (isMissing(counts) && isMissing(sown) && first !== undefined && first.length > 1) {
      return seedTable(
        seedBatches(readSamples(door.hearing(told).beside("germination", days), door.habits())),
      );
    }
    return germinationTable(
      summary({
        days: columnOf(door, "days", days),
        counts: rowsOf(counts).map((row) => row.map((value) => countIn(door, "counts", value))),
        sown: wholeNumberArgument("sown", door.cell(sown), 0),
      }),
    );
  },
);

export const germinationSummaryHelp: HelpOf<typeof germinationSummary> = {
  says: help,
  example: "=GERMINATION_SUMMARY(Germination!A2:A8, Germination!B2:B8, 50)",
  onSample: "=GERMINATION_SUMMARY(A2:A15, B2:B15, 50)",
};

function columnOf(door: Door, name: string, value: unknown): number[] {
  return rowsOf(value).map((row) => countIn(door, name, row[0]));
}

/** A blank inspection saw nothing come up. */
function countIn(door: Door, name: string, value: unknown): number {
  const reading = readCount(door.cell(value));
  if (reading.kind === "unread") {
    throw new InputError({ code: "not-a-count", argument: name, why: reading.why });
  }
  return reading.kind === "count" ? reading.count : 0;
}
