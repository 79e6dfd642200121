import { stagesOf } from "../../core";
import { type Forecaster, timetableForecaster } from "../../core/projection/forecaster";
import { nurseryAsRead } from "./nursery-as-read";
import { plainRanges } from "./plain-rivals";
import type { NurseryState } from "./records-on-day";

/** Both ends belong to it. */
export interface Range {
  readonly low: number;
  readonly high: number;
}

/** What is said of one open batch; null where nothing is said. */
export interface BatchRanges {
  /** Civil days between which it becomes ready. */
  readonly days: Range | null;
  /** Plants that become ready. */
  readonly plants: Range | null;
}

/** Says of every open batch of a table, by its name, when how many plants are ready. */
export type RangesOf = (state: NurseryState, level: number) => ReadonlyMap<string, BatchRanges>;

export const WHO = ["ours", "timetable alone", "mean and sd", "quantiles"] as const;
export type Who = (typeof WHO)[number];

/** Ours and its rivals, all on the same table. */
export const RANGES_OF: Readonly<Record<Who, RangesOf>> = {
  ours: (state, level) => stagesRanges(state, level),
  "timetable alone": (state, level) => stagesRanges(state, level, timetableForecaster()),
  "mean and sd": plainRanges("mean and sd"),
  quantiles: plainRanges("quantiles"),
};

/** BATCH_STAGES on the table, as a nursery asks it. */
function stagesRanges(
  state: NurseryState,
  level: number,
  forecaster?: Forecaster,
): ReadonlyMap<string, BatchRanges> {
  const question = { ...nurseryAsRead(state), level };
  const { rows } = forecaster === undefined ? stagesOf(question) : stagesOf(question, forecaster);
  const between = (low: number | null, high: number | null): Range | null =>
    low === null || high === null ? null : { low, high };
  return new Map(
    rows.map(({ batch, readyFrom, readyBy, fewestReady, mostReady }) => [
      batch,
      { days: between(readyFrom, readyBy), plants: between(fewestReady, mostReady) },
    ]),
  );
}
