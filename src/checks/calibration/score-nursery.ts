import type { BatchRanges, Range, RangesOf } from "./batch-ranges";
import type { NurseryHistory, SimulatedBatch } from "./nursery-history";
import { WHO, type Who } from "./ranges";
import {
  lastCount,
  type NurseryState,
  recordsOnDay,
  type SeenBatch,
  type Stage,
  stageOf,
} from "./records-on-day";
import { STEP } from "./simulated-steps";

export type Quantity = "days" | "plants";
export const QUANTITIES: readonly Quantity[] = ["days", "plants"];

/** Sums over the ranges of one nursery that are alike in level, who, quantity and stage. */
export interface Sums {
  /** Batches of which a range could be asked. */
  asked: number;
  /** Ranges given, and of these held, too early a truth, too late (or many) a truth. */
  given: number;
  held: number;
  below: number;
  above: number;
  /** Days; or plants for each 100 standing. */
  width: number;
  /** Interval score: width, and for a miss 2 ÷ (1 - level) times how far it missed. */
  score: number;
  /** The same of our ranges, over the batches of which this rival gave one too. */
  oursGiven: number;
  oursHeld: number;
  oursWidth: number;
}

/** One nursery's sums by sumsKey, and what could not be scored. */
export interface NurseryScore {
  readonly sums: ReadonlyMap<string, Sums>;
  /** Open rows that truly ended before the as-of day, of which no word ever comes. */
  readonly forgotten: number;
  /** Of those, rows to which ours gives a ready day at the first level. */
  readonly forgottenGiven: number;
}

export function sumsKey({
  level,
  who,
  quantity,
  stage,
}: {
  readonly level: number;
  readonly who: Who;
  readonly quantity: Quantity;
  readonly stage: Stage | "all";
}): string {
  return `${level} ${who} ${quantity} ${stage}`;
}

/**
 * Holds the ranges given for a nursery's open batches on some days against what came true.
 *
 * A batch is asked about when its row is neither closed nor on record as ready or empty, and it is
 * truly not settled yet, or is settled and the word of it only comes later. A lost batch has no
 * ready day, and 0 ready plants.
 *
 * Method: the interval score of Gneiting, T., Raftery, A. E. (2007). Strictly proper scoring rules,
 *   prediction, and estimation. J. Amer. Statist. Assoc. 102, 359-378, section 6.2 (from memory).
 */
export function scoreNursery(
  history: NurseryHistory,
  {
    asOfDays,
    levels,
    rangesOf,
  }: {
    readonly asOfDays: readonly number[];
    readonly levels: readonly number[];
    readonly rangesOf: Readonly<Record<Who, RangesOf>>;
  },
): NurseryScore {
  const sums = new Map<string, Sums>();
  const batchNamed = new Map(history.batches.map((batch) => [batch.name, batch]));
  let forgotten = 0;
  let forgottenGiven = 0;
  for (const asOf of asOfDays) {
    const state = recordsOnDay(history, asOf);
    for (const level of levels) {
      const rangesByWho = WHO.map((who) => [who, rangesOf[who](state, level)] as const);
      for (const seen of openRows(state)) {
        const batch = batchNamed.get(seen.name) as SimulatedBatch;
        if (isForgotten(batch, asOf)) {
          if (level !== levels[0]) continue;
          forgotten += 1;
          if (rangesByWho[0]?.[1].get(seen.name)?.days) forgottenGiven += 1;
          continue;
        }
        const ranges = new Map(
          rangesByWho.map(([who, of]) => [who, of.get(seen.name) ?? NOTHING_SAID]),
        );
        addBatch(sums, { level, ranges, seen, truth: batch });
      }
    }
  }
  return { sums, forgotten, forgottenGiven };
}

const NOTHING_SAID: BatchRanges = { days: null, plants: null };

export function openRows({ seen }: NurseryState): readonly SeenBatch[] {
  return seen.filter(
    ({ days, counts, closed }) =>
      !closed && (days[STEP.ready] ?? null) === null && !counts.includes(0),
  );
}

function isForgotten({ course, outcomeTypedOn }: SimulatedBatch, asOf: number): boolean {
  return course.settledOn <= asOf && outcomeTypedOn === null;
}

function addBatch(
  sums: Map<string, Sums>,
  {
    level,
    ranges,
    seen,
    truth: { course },
  }: {
    readonly level: number;
    readonly ranges: ReadonlyMap<Who, BatchRanges>;
    readonly seen: SeenBatch;
    readonly truth: SimulatedBatch;
  },
): void {
  const counted = lastCount(seen);
  const standing = counted === null ? null : (seen.counts[counted] as number);
  const truths = { days: course.readyDay, plants: standing === null ? null : course.readyPlants };
  const stage = stageOf(seen);
  for (const quantity of QUANTITIES) {
    const truth = truths[quantity];
    if (truth === null) continue;
    const unit = quantity === "days" ? 1 : 100 / (standing as number);
    const ours = ranges.get("ours")?.[quantity] ?? null;
    for (const [who, { [quantity]: range }] of ranges) {
      for (const group of ["all", stage] as const) {
        const key = sumsKey({ level, who, quantity, stage: group });
        const into = sums.get(key) ?? noSums();
        sums.set(key, into);
        addRange(into, { range, truth, unit, level });
        if (range !== null && ours !== null) {
          into.oursGiven += 1;
          into.oursHeld += holds(ours, truth) ? 1 : 0;
          into.oursWidth += (ours.high - ours.low) * unit;
        }
      }
    }
  }
}

function addRange(
  into: Sums,
  {
    range,
    truth,
    unit,
    level,
  }: {
    readonly range: Range | null;
    readonly truth: number;
    readonly unit: number;
    readonly level: number;
  },
): void {
  into.asked += 1;
  if (range === null) return;
  const { low, high } = range;
  const missedBy = Math.max(0, low - truth, truth - high);
  into.given += 1;
  into.held += holds(range, truth) ? 1 : 0;
  into.below += truth < low ? 1 : 0;
  into.above += truth > high ? 1 : 0;
  into.width += (high - low) * unit;
  into.score += (high - low + (2 / (1 - level)) * missedBy) * unit;
}

function holds({ low, high }: Range, truth: number): boolean {
  return truth >= low && truth <= high;
}

function noSums(): Sums {
  return {
    asked: 0,
    given: 0,
    held: 0,
    below: 0,
    above: 0,
    width: 0,
    score: 0,
    oursGiven: 0,
    oursHeld: 0,
    oursWidth: 0,
  };
}
