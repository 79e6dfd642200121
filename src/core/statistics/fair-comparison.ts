import { totalOf } from "../mathematics";
import { additiveFit, tellingBatches } from "./additive-fit";
import { batchCorrelation, spreadOf } from "./batch-correlation";
import { raisedForMany } from "./benjamini-hochberg";
import { type ComparedBatch, type EvenedGroup, evenedGroups } from "./evened-groups";
import { beyondT, reachOfT } from "./t-and-f-tails";
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
  const spread = batchCorrelation(additiveFit(tellingBatches(batches), groupCount));
  const evened = evenedGroups(batches, groupCount, (grafted) =>
    spreadOf(grafted, spread.correlation),
  );
  const grafted = totalOf(batches.map(({ grafted }) => grafted));
  const overall = totalOf(batches.map(({ taken }) => taken)) / grafted;
  const reach = reachOfT(level, spread.degreesOfFreedom);
  const sides = sidesTaken(batches, evened, (1 - level) * PART_USED);
  return evened.map((group, index) => {
    const { taken, expected, variance } = group;
    if (!(variance > 0)) {
      return { ...group, evenedRate: null, range: null, reading: "too few" as const };
    }
    // A group far above rests on strata with low rates: more than all can't take.
    const evenedRate = Math.min(1, (taken / expected) * overall);
    // As many plants as would leave the overall rate as uncertain as the comparison is.
    const plants = (overall * (1 - overall)) / (variance * (overall / expected) ** 2);
    const range = scoreInterval({ share: evenedRate, trials: plants, reach });
    const side = sides[index] ?? null;
    const wide = side === null || (range.high - range.low) / 2 > WIDEST_TO_TELL;
    const reading =
      side === "above" || side === "below" ? side : wide ? ("too few" as const) : "alike";
    return { ...group, evenedRate, range, reading };
  });
}

type Side = "above" | "below" | "neither";

/** For each group the side on which it clearly lies; null where there are too few batches to ask. */
function sidesTaken(
  batches: readonly ComparedBatch[],
  asTheyStand: readonly EvenedGroup[],
  falsely: number,
): readonly (Side | null)[] {
  const tamed = tamedBatches(batches, asTheyStand.length);
  const { spread } = tamed;
  const groups = evenedGroups(tamed.batches, asTheyStand.length, (grafted) =>
    spreadOf(grafted, spread.correlation),
  );
  const tested = groups.flatMap((group, at) => (canBeTested(group) ? [at] : []));
  const chances = raisedForMany(
    tested.map((at) => {
      const { taken, expected, variance } = groups[at] as EvenedGroup;
      const errors = (taken - expected) / Math.sqrt(variance * tamed.widening);
      return beyondT(errors, spread.degreesOfFreedom);
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
