import { lookback, stagesOf } from "../../core";
import { nurseryAsRead } from "./nursery-as-read";
import { type NurseryHistory, nurseryHistory } from "./nursery-history";
import { recordsOnDay } from "./records-on-day";
import { openRows, type Quantity } from "./score-nursery";

export interface HeldOf {
  readonly held: number;
  readonly of: number;
}

/** Ranges of one nursery: what BATCH_LOOKBACK shows of them, and what truly came of those given then. */
export interface LookbackScore {
  readonly shown: Readonly<Record<Quantity, HeldOf>>;
  readonly truly: Readonly<Record<Quantity, HeldOf>>;
}

export interface LookbackJob {
  readonly pastBatches: number;
  readonly seed: number;
  /** Share of batches that are lost whole, and closed when that is seen. */
  readonly lost: number;
  readonly daysBefore: number;
}

/** How far back is looked in nurseries that lose how many of their batches. */
export const LOOKBACKS = [0, 0.07].flatMap((lost) =>
  [60, 120, 240].map((daysBefore) => ({ lost, daysBefore })),
);
/** What is shown and what is so may lie so far apart, over all nurseries of a line. */
export const SHOWN_APART = 0.02;
const PAST_BATCHES = 30;
/** Seeds that no nursery of the other checks has. */
const FIRST_SEED = 3_000_000;

export function lookbackJobs(nurseries: number): readonly LookbackJob[] {
  return LOOKBACKS.flatMap((line) =>
    Array.from({ length: nurseries }, (_, number) => ({
      ...line,
      pastBatches: PAST_BATCHES,
      seed: FIRST_SEED + number,
    })),
  );
}

const LEVEL = 0.8;
/** Finished by the day that is looked from, beside those known on the day looked back to. */
const FINISHED_SINCE = 30;

/**
 * Looks back in an invented nursery, and asks the nursery's truth about the same ranges: those that
 * BATCH_STAGES gave on that day, from the table as it stood, of which the last day is past.
 *
 * The nursery closes what it lost, and forgets no row: of what nobody ever writes down the look back can say no more
 * than the table does.
 */
export function lookbackScore({ pastBatches, seed, lost, daysBefore }: LookbackJob): LookbackScore {
  const history = nurseryHistory({ pastBatches, varieties: "unlike" }, seed, {
    finishedWanted: pastBatches + FINISHED_SINCE,
    otherwise: { truth: { lostBatches: lost }, habits: { silent: 0, forgotten: 0, closes: 1 } },
  });
  const asOf = history.finishedOn[pastBatches + FINISHED_SINCE - 1] as number;
  const { rows } = lookback({
    ...nurseryAsRead(recordsOnDay(history, asOf)),
    level: LEVEL,
    daysBefore,
  });
  return {
    shown: {
      days: counted(rows.map(({ dayHeld }) => dayHeld)),
      plants: counted(rows.map(({ countHeld }) => countHeld)),
    },
    truly: trulyHeld(history, { from: asOf - daysBefore, asOf }),
  };
}

function trulyHeld(
  history: NurseryHistory,
  { from, asOf }: { readonly from: number; readonly asOf: number },
): LookbackScore["truly"] {
  const state = recordsOnDay(history, from);
  const open = new Set(openRows(state).map(({ name }) => name));
  const courses = new Map(history.batches.map(({ name, course }) => [name, course]));
  const held: Record<Quantity, (boolean | null)[]> = { days: [], plants: [] };
  const { rows } = stagesOf({ ...nurseryAsRead(state), level: LEVEL });
  for (const { batch, readyFrom, readyBy, fewestReady, mostReady } of rows) {
    const course = courses.get(batch);
    if (!open.has(batch) || course === undefined) continue;
    if (readyFrom === null || readyBy === null || readyBy >= asOf) continue;
    const { readyDay, readyPlants } = course;
    held.days.push(readyDay !== null && readyDay >= readyFrom && readyDay <= readyBy);
    if (fewestReady === null || mostReady === null) continue;
    held.plants.push(readyPlants >= fewestReady && readyPlants <= mostReady);
  }
  return { days: counted(held.days), plants: counted(held.plants) };
}

function counted(held: readonly (boolean | null)[]): HeldOf {
  const known = held.filter((one) => one !== null);
  return { held: known.filter(Boolean).length, of: known.length };
}

/** All nurseries together, 0 to 1, of what is shown and of what is so. */
export function heldTogether(
  scores: readonly LookbackScore[],
  quantity: Quantity,
): { readonly shown: number; readonly truly: number; readonly of: number } {
  const shareOf = (who: "shown" | "truly") => {
    const all = scores.map(({ [who]: { [quantity]: one } }) => one);
    const sum = (part: keyof HeldOf) => all.reduce((total, one) => total + one[part], 0);
    return sum("held") / sum("of");
  };
  return {
    shown: shareOf("shown"),
    truly: shareOf("truly"),
    of: scores.reduce((total, { shown }) => total + shown[quantity].of, 0),
  };
}
