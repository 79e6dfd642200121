/** Intervals, fits and distributions, by name of the concept. */

export { betaBinomialChanceOfAtLeast, betaBinomialRange } from "./beta-binomial";
export { betaOfMoments, product, type ShareMoments, WHOLE } from "./beta-moments";
export { learnedLength, type RecordedLengths } from "./censored-lengths";
export {
  type DayDistribution,
  dayQuantile,
  meanDay,
  onlyDays,
  pointAt,
  sum,
} from "./day-distribution";
export { type Draws, drawCount, seededDraws } from "./draws";
export { type FairReading, fairComparison } from "./fair-comparison";
export { intervalScore, type JudgedRange } from "./interval-score";
export { type WeighedPrior, withLateTail } from "./late-tail";
export { nearestEnds } from "./nearest-ends";
export { numberBands } from "./number-bands";
export { plainQuantile } from "./plain-quantile";
export { type CountedBatch, pooledShares } from "./pooled-shares";
export { type ChartReading, proportionChart } from "./proportion-chart";
export { chanceOfRange } from "./range-by-chance";
export { type ReasonColumn, type ReasonResult, reasonsFit } from "./reasons-fit";
export { scaledLength } from "./scaled-length";
export type { SeenOnDay } from "./seen-by-month";
export { type KeptCount, shareCounts } from "./share-counts";
export { type SharePosterior, sharePosterior } from "./share-posterior";
export { newBatchShare, SPREAD_OF_A_NEW_BATCH } from "./share-prior";
export { longerThan, type StepLength, type StepWindow, windowLength } from "./step-length";
export { type TimeEffect, timeEffect } from "./time-effect";
export { type ShareInterval, wilsonInterval } from "./wilson-interval";
