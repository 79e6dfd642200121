import { type BatchCourse, batchCourse } from "./batch-course";
import { chanceOf } from "./chance";
import { type NurseryKind, type NurseryTruth, nurseryTruth } from "./nursery-truth";
import { type RecordHabits, recordHabits } from "./record-habits";
import { batchName, type Entry, recording } from "./recording";
import { STEP, STEPS } from "./simulated-steps";

export interface SimulatedBatch {
  readonly name: string;
  readonly course: BatchCourse;
  readonly entries: readonly Entry[];
  /** Day on which its being ready is on record; null when it never is. */
  readonly readyTypedOn: number | null;
  /** Day from which the table tells what became of it: ready, none left, or a lost row closed. */
  readonly outcomeTypedOn: number | null;
}

/** An invented nursery, from its first sowing to the last that is needed. */
export interface NurseryHistory {
  readonly truth: NurseryTruth;
  readonly habits: RecordHabits;
  readonly batches: readonly SimulatedBatch[];
  /** Days on which a batch was first on record as ready, rising. */
  readonly finishedOn: readonly number[];
  /** The last sowing: what is asked of a later day would lack sowings. */
  readonly lastSowing: number;
}

/** Sowings go on for so long after the last finish asked for, in days. */
const MARGIN_DAYS = 40;
const ENOUGH_BATCHES = 5000;

export interface HistoryWanted {
  /** Batches on record as ready. */
  readonly finishedWanted: number;
  /** What is so in this nursery, whatever chance would have. */
  readonly otherwise?: {
    readonly truth?: Partial<NurseryTruth>;
    readonly habits?: Partial<RecordHabits>;
  };
}

/**
 * Invents a nursery and runs it until so many batches are on record as ready. Running it longer
 * only adds to it: every batch has draws of its own.
 */
export function nurseryHistory(
  kind: NurseryKind,
  seed: number,
  { finishedWanted, otherwise = {} }: HistoryWanted,
): NurseryHistory {
  const truth = { ...nurseryTruth(kind, seed), ...otherwise.truth };
  const habits = { ...recordHabits(seed, truth.change), ...otherwise.habits };
  const chance = chanceOf(seed, 5);
  const batches: SimulatedBatch[] = [];
  let moment = truth.firstDay;
  for (let number = 1; number <= ENOUGH_BATCHES; number += 1) {
    const sownOn = Math.floor(moment);
    batches.push(simulatedBatch(truth, habits, { number, sownOn }));
    const finishedOn = batches.flatMap(({ readyTypedOn }) => readyTypedOn ?? []);
    const settled = finishedOn.filter((day) => day <= sownOn - MARGIN_DAYS).length;
    if (settled >= finishedWanted) {
      finishedOn.sort((one, other) => one - other);
      return { truth, habits, batches, finishedOn, lastSowing: sownOn };
    }
    const years = (moment - truth.firstDay) / 365.25;
    moment +=
      -Math.log(1 - chance.share()) * truth.gapDays * Math.exp(-truth.growthPerYear * years);
  }
  throw new Error(`nursery ${seed} never finishes ${finishedWanted} batches`);
}

function simulatedBatch(
  truth: NurseryTruth,
  habits: RecordHabits,
  { number, sownOn }: { readonly number: number; readonly sownOn: number },
): SimulatedBatch {
  const course = batchCourse(truth, { number, sownOn });
  const entries = recording(course, habits, truth.seed);
  const readyTypedOn = typedOn(entries, STEPS[STEP.ready]?.dayColumn as string);
  return {
    name: batchName(number),
    course,
    entries,
    readyTypedOn,
    outcomeTypedOn: course.lostAt === null ? readyTypedOn : lossTypedOn(entries),
  };
}

function typedOn(entries: readonly Entry[], column: string): number | null {
  return entries.find((entry) => entry.column === column)?.typedOn ?? null;
}

function lossTypedOn(entries: readonly Entry[]): number | null {
  const tells = entries.filter(
    ({ column, value }) => column === "Closed" || (value === 0 && column !== "Culled"),
  );
  return tells.length === 0 ? null : Math.min(...tells.map((entry) => entry.typedOn));
}
