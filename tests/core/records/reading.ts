import { type Cell, gridOf } from "../../../src/core/cells/cell";
import { foldName } from "../../../src/core/names/fold-name";
import { readRecords } from "../../../src/core/records/read-records";
import type { ReadingOptions } from "../../../src/core/records/read-tables";
import type { Records } from "../../../src/core/records/records";
import type { Told } from "../../../src/core/records/told-words";
import type { Trouble } from "../../../src/core/records/trouble";
import { builtInTimetable } from "../../../src/core/timetable/read-timetable";
import { day } from "../../support/days";

const stepNames = builtInTimetable().methods.flatMap((method) =>
  method.steps.map((step) => step.name),
);

/** Reads rows of cells as records of the built-in method, asked for on 2026-11-25. */
export function reading(
  rows: readonly (readonly Cell[])[],
  options: Partial<ReadingOptions> = {},
): Records {
  return readRecords(gridOf(rows), {
    stepNames,
    asOf: day("2026-11-25"),
    localeOrder: "day-first",
    decimalMark: ".",
    told: new Map(),
    ...options,
  });
}

/** What the settings tab holds where a word in cells was told to mean one of our names. */
export function toldAs(word: string, name: string): Told {
  return {
    headers: new Map(),
    values: new Map([[foldName(word), name]]),
    notSame: new Set(),
    tableHeaders: new Map(),
    tabs: new Map(),
  };
}

/** What one batch says of a step. */
export function atStep(records: Records, batch: number, key: string) {
  const index = records.stepKeys.indexOf(key);
  return {
    day: records.batches[batch]?.days[index] ?? null,
    count: records.batches[batch]?.counts[index] ?? null,
  };
}

/** The troubles in short: row, column, and which, of a cell that can't be read why. */
export function troublesOf({ troubles }: Pick<Records, "troubles">): string[] {
  return troubles.map((one) => `${one.row ?? "-"} ${one.column}: ${shortOf(one)}`);
}

function shortOf(one: Trouble): string {
  if (one.code === "cell-unread") return one.why.code;
  return one.code === "no-batch" ? one.as : one.code;
}
