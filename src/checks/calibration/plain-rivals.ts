import type { RangesOf } from "./batch-ranges";
import { lastCount, lastStep, type SeenBatch } from "./records-on-day";
import { STEP } from "./simulated-steps";

/** What a person with a sheet would do with the past batches. */
export type PlainWay = "mean and sd" | "quantiles";

/** Standard normal deviates for the two levels, to the two digits that textbooks print. */
const DEVIATES: ReadonlyMap<number, number> = new Map([
  [0.8, 1.28],
  [0.95, 1.96],
]);
/** One past batch has no spread. */
const FEWEST_PAST = 2;

/**
 * Ranges by plain rules on the nursery's past batches: for days, how long past batches took from
 * the step last recorded to ready; for plants, what share of the plants last counted they brought
 * to ready. Batches of all varieties together, no timetable.
 *
 * The rivals are given their best: a range that reaches into the past starts tomorrow, and plants
 * lie between none and those standing.
 */
export function plainRanges(way: PlainWay): RangesOf {
  return ({ seen, asOf }, level) => {
    const past = seen.filter(({ days }) => (days[STEP.ready] ?? null) !== null);
    const spread = (values: readonly number[]) => plainSpread(values, way, level);
    const lengths = perStep((step) =>
      spread(past.flatMap(({ days }) => difference(days[STEP.ready], days[step]))),
    );
    const shares = perStep((step) =>
      spread(past.flatMap(({ counts }) => ratio(counts[STEP.ready], counts[step]))),
    );
    return new Map(
      seen.map((batch) => [
        batch.name,
        { days: dayRange(batch, lengths, asOf), plants: plantRange(batch, shares) },
      ]),
    );
  };
}

/** The low and the high value that a plain rule expects; null when too few are past. */
export function plainSpread(
  values: readonly number[],
  way: PlainWay,
  level: number,
): readonly [number, number] | null {
  if (values.length < FEWEST_PAST) return null;
  if (way === "quantiles") {
    const rising = [...values].sort((one, other) => one - other);
    const side = (1 - level) / 2;
    return [quantile(rising, side), quantile(rising, 1 - side)];
  }
  const deviate = DEVIATES.get(level);
  if (deviate === undefined) throw new Error(`no plain deviate for level ${level}`);
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  const squares = values.reduce((sum, value) => sum + (value - mean) ** 2, 0);
  const sd = Math.sqrt(squares / (values.length - 1));
  return [mean - deviate * sd, mean + deviate * sd];
}

/**
 * Method: linear between order statistics, as spreadsheets' QUANTILE and PERCENTILE do.
 * Source: Hyndman, R. J., Fan, Y. (1996). Sample quantiles in statistical packages. Amer. Statist.
 *   50, 361-365, definition 7.
 */
function quantile(rising: readonly number[], share: number): number {
  const at = (rising.length - 1) * share;
  const below = rising[Math.floor(at)] as number;
  const above = rising[Math.ceil(at)] as number;
  return below + (above - below) * (at - Math.floor(at));
}

type SpreadOf = (step: number) => readonly [number, number] | null;

function perStep(spread: SpreadOf): SpreadOf {
  const known = new Map<number, readonly [number, number] | null>();
  return (step) => {
    let found = known.get(step);
    if (found === undefined) {
      found = spread(step);
      known.set(step, found);
    }
    return found;
  };
}

function dayRange(batch: SeenBatch, lengths: SpreadOf, asOf: number) {
  const step = lastStep(batch);
  const spread = step === null ? null : lengths(step);
  if (step === null || spread === null) return null;
  const from = batch.days[step] as number;
  const high = Math.round(from + spread[1]);
  const low = Math.round(from + spread[0]);
  return { low: high > asOf ? Math.max(low, asOf + 1) : low, high };
}

function plantRange(batch: SeenBatch, shares: SpreadOf) {
  const step = lastCount(batch);
  const spread = step === null ? null : shares(step);
  if (step === null || spread === null) return null;
  const standing = batch.counts[step] as number;
  const within = (plants: number) => Math.max(0, Math.min(standing, Math.round(plants)));
  return { low: within(standing * spread[0]), high: within(standing * spread[1]) };
}

function difference(
  later: number | null | undefined,
  earlier: number | null | undefined,
): number[] {
  return typeof later === "number" && typeof earlier === "number" ? [later - earlier] : [];
}

function ratio(part: number | null | undefined, whole: number | null | undefined): number[] {
  return typeof part === "number" && typeof whole === "number" && whole > 0 ? [part / whole] : [];
}
