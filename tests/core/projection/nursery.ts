import type { Cell } from "../../../src/core/cells/cell";
import { stateFinder } from "../../../src/core/projection/batch-state";
import { timetableForecaster } from "../../../src/core/projection/forecaster";
import { learn } from "../../../src/core/projection/learn";
import type { ProjectionQuestion } from "../../../src/core/projection/project";
import { builtInTimetable } from "../../../src/core/timetable/read-timetable";
import type { Timetable } from "../../../src/core/timetable/timetable";
import { day, iso } from "../../support/days";
import { reading } from "../records/reading";
import { STEP_COLUMNS } from "./states";

export const AS_OF = "2026-11-25";

const HEADER = [
  ...["Batch", "From lot", "Variety", "Method", "Place", ...STEP_COLUMNS],
  ...["Culled", "Dispatched", "Closed"],
];

/** Facts of one batch by the header of their column. */
export type Facts = Readonly<Record<string, Cell>>;

/** A day so many days after another, as ISO text. */
export function later(isoDay: string, days: number): string {
  return iso(day(isoDay) + days) as string;
}

/** Records of a nursery that has columns for everything, or for the named ones only. */
function recordsOf(
  batches: readonly Facts[],
  { columns = HEADER, asOf = AS_OF, timetable = builtInTimetable() } = {},
) {
  const rows = batches.map((facts) => columns.map((name) => facts[name] ?? ""));
  return reading([columns, ...rows], {
    asOf: day(asOf),
    stepNames: timetable.methods.flatMap(({ steps }) => steps.map(({ name }) => name)),
  });
}

/** A question about that nursery. */
export function questionOf(
  batches: readonly Facts[],
  options: { columns?: string[]; asOf?: string; timetable?: Timetable; level?: number } = {},
): ProjectionQuestion {
  const timetable = options.timetable ?? builtInTimetable();
  const asOf = options.asOf ?? AS_OF;
  return {
    records: recordsOf(batches, { ...options, asOf, timetable }),
    timetable,
    asOf: day(asOf),
    level: options.level ?? 0.8,
  };
}

/** What is learned of such batches, beside what the timetable alone says. */
export function learnedFrom(
  batches: readonly Facts[],
  options: Parameters<typeof questionOf>[1] = {},
) {
  const { records, timetable, asOf } = questionOf(batches, options);
  const method = timetable.methods[0];
  if (method === undefined) throw new Error("no method");
  const find = stateFinder(records, asOf);
  const states = records.batches.map((batch) => find(batch, method));
  return { method, states, learned: learn(states), plain: timetableForecaster() };
}
