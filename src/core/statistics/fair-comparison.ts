import { additiveFit, tellingBatches } from "./additive-fit";
import {
  type BatchCorrelation,
  batchCorrelation,
  chanceBeyond,
  type FittedBatch,
  ROUNDS,
  reachUnder,
  spreadOf,
  USUAL_CORRELATION,
} from "./batch-correlation";
import { raisedForMany } from "./benjamini-hochberg";
import { type ComparedBatch, type EvenedGroup, evenedGroups } from "./evened-groups";
import { evenedRates } from "./evened-rates";
import { tamedBatches } from "./tamed-batches";
import { type ShareInterval, scoreInterval } from "./wilson-interval";

/** How a group stands beside the rest: clearly above or below it, not clearly apart, or untold. */
export type FairReading = "above" | "below" | "alike" | "too few";

export interface ComparedGroup extends EvenedGroup {
  /** Share that the group would have at everyone's strata, 0 to 1; null when it has no others beside it. */
  readonly evenedRate: number | null;
  readonly range: ShareInterval | null;
  readonly reading: FairReading;
}

/** Batches of a group, and of others beside it, that a reading needs at least (our choice). */
const FEWEST_BATCHES = 3;
/** A range that reaches farther than this could hide a large difference (our choice). */
const WIDEST_TO_TELL = 0.15;
/**
 * Of the chance of setting anyone apart falsely, this part is used and the rest kept in reserve,
 * since fates of batches are lopsided and few (our choice; check:takes shows what comes of it).
 */
const PART_USED = 0.4;

/**
 * Compares groups fairly: each against the rest of its own strata, for all groups at once.
 *
 * Takes of batches vary more than chance; how much more is read from the batches about a fit in
 * which groups and strata add up, so that neither makes batches look restless, and what groups do
 * differently from stratum to stratum counts as restlessness. Rates and ranges are of the counts as
 * they stand; for the reading a single batch that went far wrong or right counts up to a bound only.
 *
 * Method: score statistics over strata (evened-groups.ts), their variance widened by the correlation
 *   of plants within batches (batch-correlation.ts), counts held in (tamed-batches.ts), chances by
 *   Student's t and raised for many (benjamini-hochberg.ts); ranges by the score interval with t's
 *   reach (wilson-interval.ts).
 * Source: ours, of the parts named, each with its own source; npm run check:takes shows how often it
 *   holds.
 *
 * @param level how many of 100 ranges should hold, strictly between 0 and 1; 1 − level is also
 *   the most often that anyone should be set apart where nobody differs
 */
export function fairComparison(
  batches: readonly ComparedBatch[],
  groupCount: number,
  level: number,
): readonly ComparedGroup[] {
  const telling = tellingBatches(batches);
  const { spread, fit } = settledFit(telling, groupCount);
  const evened = evenedGroups(batches, groupCount, (grafted) =>
    spreadOf(grafted, spread.correlation),
  );
  const fittedTo = new Map(telling.map((batch, index) => [batch, fit[index] as FittedBatch]));
  const rates = evenedRates(
    batches.map((batch) => ({
      group: batch.group,
      stratum: batch.stratum,
      grafted: batch.grafted,
      taken: batch.taken,
      share: fittedTo.get(batch)?.share ?? null,
    })),
    evened,
    spread.correlation,
  );
  const sides = sidesTaken(batches, evened, { spread, falsely: (1 - level) * PART_USED });
  return evened.map((group, index) => {
    const rate = rates[index] ?? null;
    if (rate === null || !(group.variance > 0)) {
      return { ...group, evenedRate: null, range: null, reading: "too few" as const };
    }
    const { evenedRate } = rate;
    const range = scoreInterval({
      share: evenedRate,
      trials: rate.trials,
      reach: reachUnder(level, rate, spread),
    });
    const side = sides[index] ?? null;
    const wide = side === null || (range.high - range.low) / 2 > WIDEST_TO_TELL;
    const reading =
      side === "above" || side === "below" ? side : wide ? ("too few" as const) : "alike";
    return { ...group, evenedRate, range, reading };
  });
}

/** The fit and the correlation of which each follows from the other. */
function settledFit(telling: readonly ComparedBatch[], groupCount: number) {
  let correlation = USUAL_CORRELATION;
  for (let round = 1; ; round += 1) {
    const fit = additiveFit(telling, groupCount, correlation);
    const spread = batchCorrelation(fit);
    if (round === ROUNDS) return { fit, spread };
    correlation = spread.correlation;
  }
}

type Side = "above" | "below" | "neither";

/** For each group the side on which it clearly lies; null where there are too few batches to ask. */
function sidesTaken(
  batches: readonly ComparedBatch[],
  asTheyStand: readonly EvenedGroup[],
  { spread: untamed, falsely }: { readonly spread: BatchCorrelation; readonly falsely: number },
): readonly (Side | null)[] {
  const tamed = tamedBatches(batches, asTheyStand.length, untamed.correlation);
  const { spread } = tamed;
  const groups = evenedGroups(tamed.batches, asTheyStand.length, (grafted) =>
    spreadOf(grafted, spread.correlation),
  );
  const tested = groups.flatMap((group, at) => (canBeTested(group) ? [at] : []));
  const chances = raisedForMany(
    tested.map((at) => {
      const { taken, expected, ...variances } = groups[at] as EvenedGroup;
      const errors = (taken - expected) / Math.sqrt(tamed.widening);
      return chanceBeyond(errors, variances, spread);
    }),
  );
  const sides: (Side | null)[] = groups.map(() => null);
  tested.forEach((at, index) => {
    const side = sideOf(groups[at] as EvenedGroup);
    const clear = (chances[index] as number) <= falsely;
    // Counts as they stand must lie on the same side.
    const agreed = sideOf(asTheyStand[at] as EvenedGroup) === side;
    sides[at] = clear && agreed ? side : "neither";
  });
  return sides;
}

function sideOf({ taken, expected }: EvenedGroup): "above" | "below" {
  return taken > expected ? "above" : "below";
}

function canBeTested({ comparable, others, variance }: EvenedGroup): boolean {
  return comparable >= FEWEST_BATCHES && others >= FEWEST_BATCHES && variance > 0;
}
