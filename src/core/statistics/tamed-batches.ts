import { additiveFit, tellingBatches } from "./additive-fit";
import {
  type BatchCorrelation,
  batchCorrelation,
  type FittedBatch,
  spreadOf,
} from "./batch-correlation";
import type { ComparedBatch } from "./evened-groups";

export interface TamedBatches {
  readonly batches: readonly ComparedBatch[];
  readonly spread: BatchCorrelation;
  /** How many times surer the tamed counts look than they are; 1 where none was tamed. */
  readonly widening: number;
}

/** A batch counts at most so many standard deviations from what is expected of it (Huber's usual 2). */
const REACH = 2;
/** Mean square of a normal deviate that is held within REACH: 1 − 2(2φ(2) + Q(2)) + 8 Q(2), Q(2) = 0.02275. */
const HELD_SQUARE = 0.9205;
const ROUNDS = 6;

/**
 * Batches of which none counts by more than it plausibly says of its group: a batch that died for
 * a reason of its own would else speak louder of a grafter than ten that went as usual.
 *
 * @param correlation by which batches weigh in the fit
 *
 * Counts far from what group and stratum make expected are moved to the bound; the others stay.
 *
 * Method: Huber's winsorised residuals with a common scale, and his widening of the variance by
 *   the share of batches left as they are.
 * Source: Huber, P. J. (1981). Robust Statistics, Wiley, ch. 7 (citation from memory).
 */
export function tamedBatches(
  batches: readonly ComparedBatch[],
  groupCount: number,
  correlation: number,
): TamedBatches {
  const telling = tellingBatches(batches);
  const fitOf = (some: readonly ComparedBatch[]) => additiveFit(some, groupCount, correlation);
  let tamed = telling;
  for (let round = 0; round < ROUNDS; round += 1) tamed = tamedOnce(telling, fitOf(tamed));
  const moved = tamed.filter((batch, index) => batch !== telling[index]).length;
  const byOriginal = new Map(telling.map((batch, index) => [batch, tamed[index] as ComparedBatch]));
  return {
    batches: batches.map((batch) => byOriginal.get(batch) ?? batch),
    spread: batchCorrelation(fitOf(tamed)),
    widening: telling.length === 0 ? 1 : (telling.length / (telling.length - moved)) ** 2,
  };
}

function tamedOnce(
  original: readonly ComparedBatch[],
  fit: readonly FittedBatch[],
): readonly ComparedBatch[] {
  const { own } = batchCorrelation(fit);
  const tamed = original.map((batch, index) => {
    const { share, leverage } = fit[index] as (typeof fit)[number];
    const variance =
      (batch.grafted * share * (1 - share) * spreadOf(batch.grafted, own) * (1 - leverage)) /
      HELD_SQUARE;
    const middle = batch.grafted * share;
    const reach = REACH * Math.sqrt(variance);
    const least = Math.max(0, middle - reach);
    const most = Math.min(batch.grafted, middle + reach);
    if (batch.taken >= least && batch.taken <= most) return batch;
    return { ...batch, taken: Math.min(most, Math.max(least, batch.taken)) };
  });
  // Where hardly any batch is left as it is, the fit says nothing of what is far.
  const kept = tamed.filter((batch, index) => batch === original[index]).length;
  return kept * 2 < original.length ? original : tamed;
}
