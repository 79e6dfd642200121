import { type CivilDay, type Period, periodText, proportionChart } from "../../core";
import { FIRST_DAY, type InventedBatch, type InventedTakes, inventedTakes } from "./invented-takes";

export interface SignalTally {
  /** Signals a year in the year after two quiet ones, where nothing changed: any reading but usual. */
  readonly falseAYear: number;
  /** Share of nurseries in which a fall is seen within a year. */
  readonly seen: number;
  /** Of those that see it: batches, and days, from the fall to the first signal, on average. */
  readonly batches: number;
  readonly days: number;
}

const YEAR = 365;
const QUIET_YEARS = 2;
const FALL = 0.15;

/**
 * How soon the chart of TAKE_TREND shows a fall of 15 points, looked at after every batch, and how
 * often it shows something where nothing is.
 */
export function signalsOn(
  { batchesAYear, season }: { readonly batchesAYear: number; readonly season: number },
  period: Period,
  nurseries: number,
): SignalTally {
  let falseSignals = 0;
  const delays: { batches: number; days: number }[] = [];
  const kind: InventedTakes = {
    grafters: 1,
    batchesEach: batchesAYear * (QUIET_YEARS + 1),
    firstDiffers: 0,
    varietiesShared: "even",
    season,
    days: YEAR * (QUIET_YEARS + 1),
    fall: null,
  };
  const fall = { afterDays: YEAR * QUIET_YEARS, share: FALL };
  for (let seed = 0; seed < nurseries; seed += 1) {
    falseSignals += falseOnes(inventedTakes(kind, seed), period);
    const delay = delayOf(inventedTakes({ ...kind, fall }, seed), period);
    if (delay !== null) delays.push(delay);
  }
  const mean = (of: (delay: { batches: number; days: number }) => number) =>
    delays.reduce((sum, delay) => sum + of(delay), 0) / Math.max(1, delays.length);
  return {
    falseAYear: falseSignals / nurseries,
    seen: delays.length / nurseries,
    batches: mean(({ batches }) => batches),
    days: mean(({ days }) => days),
  };
}

/** Stretches of the last year with a reading other than usual, each period read at its own end. */
function falseOnes(batches: readonly InventedBatch[], period: Period): number {
  const quiet = firstNew(batches);
  let signals = 0;
  let before = "usual";
  for (let end = quiet + 1; end <= batches.length; end += 1) {
    const [last, next] = [batches[end - 1], batches[end]];
    if (next !== undefined && nameOf(next, period) === nameOf(last as InventedBatch, period))
      continue;
    const now = lastReading(batches.slice(0, end), period);
    if (now !== "usual" && now !== before) signals += 1;
    before = now;
  }
  return signals;
}

function delayOf(batches: readonly InventedBatch[], period: Period) {
  const fallen = firstNew(batches);
  for (let end = fallen + 1; end <= batches.length; end += 1) {
    const reading = lastReading(batches.slice(0, end), period);
    if (reading === "low" || reading === "drifting down") {
      const day = (batches[end - 1] as InventedBatch).graftedOn;
      return { batches: end - fallen, days: day - FIRST_DAY - YEAR * QUIET_YEARS };
    }
  }
  return null;
}

function firstNew(batches: readonly InventedBatch[]): number {
  return batches.findIndex(({ graftedOn }) => graftedOn >= FIRST_DAY + YEAR * QUIET_YEARS);
}

function lastReading(batches: readonly InventedBatch[], period: Period): string {
  const sums = new Map<string, { taken: number; grafted: number }>();
  for (const batch of batches) {
    const name = nameOf(batch, period);
    const sum = sums.get(name) ?? { taken: 0, grafted: 0 };
    sum.taken += batch.taken;
    sum.grafted += batch.grafted;
    sums.set(name, sum);
  }
  return proportionChart([...sums.values()])?.readings.at(-1) ?? "usual";
}

function nameOf({ graftedOn }: InventedBatch, period: Period): string {
  return periodText(period, graftedOn as CivilDay);
}
