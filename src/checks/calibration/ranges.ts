import { stagesOf } from "../../core";
import { type Forecaster, timetableForecaster } from "../../core/projection/forecaster";
import type { BatchRanges, Range, RangesOf } from "./batch-ranges";
import { nurseryAsRead } from "./nursery-as-read";
import { plainRanges } from "./plain-rivals";
import type { NurseryState } from "./records-on-day";

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
