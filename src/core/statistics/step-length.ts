import { incompleteBeta } from "../mathematics";
import { type DayDistribution, onlyDays } from "./day-distribution";

/** How long a step takes after the one it is counted from, with a tail that never quite ends. */
export interface StepLength extends DayDistribution {
  /** Chance that a batch late beyond the last day listed is still late a day later; below 1. */
  readonly lateness: number;
}

export interface StepWindow {
  /** Whole days, rising. */
  readonly from: number;
  readonly usual: number;
  readonly by: number;
}

/** Share of batches inside a timetable's window; the rest are late. */
const INSIDE_WINDOW = 0.95;
/** Chance at which a tail is cut; what is cut goes onto its last day. */
const TAIL_CUT = 1e-5;

/**
 * The length of a step as a timetable tells it.
 *
 * Method: 95 of 100 batches inside the window, spread over whole days by a PERT shape (a beta
 *   with its mode at the usual day); 5 late, by a geometric number of days whose mean is half the
 *   window. The shares 95 and 5 and the tail are ours (common practice, no source).
 * Source: Malcolm, D. G., Roseboom, J. H., Clark, C. E., Fazar, W. (1959). Application of a
 *   technique for research and development program evaluation. Operations Research 7, 646-669
 *   (the PERT shape).
 */
export function windowLength({ from, usual, by }: StepWindow): StepLength {
  const low = from - 0.5;
  const span = by - from + 1;
  const a = 1 + (4 * (usual - low)) / span;
  const b = 1 + (4 * (by + 0.5 - usual)) / span;
  const lateness = latenessOfMean((by - from) / 2);
  const late = lateDays(lateness);
  const mass = new Float64Array(span + late.length);
  let below = 0;
  for (let i = 0; i < span; i += 1) {
    const upTo = incompleteBeta((i + 1) / span, a, b);
    mass[i] = INSIDE_WINDOW * (upTo - below);
    below = upTo;
  }
  for (let i = 0; i < late.length; i += 1) {
    mass[span + i] = (1 - INSIDE_WINDOW) * (late[i] as number);
  }
  return { first: from, mass, lateness };
}

/**
 * The length of a step, known to have lasted longer than some days already. Beyond the last day
 * listed lateness goes on at its own rate, so an answer always exists.
 */
export function longerThan(length: StepLength, days: number): DayDistribution {
  const left = onlyDays(length, days + 1, Number.POSITIVE_INFINITY);
  if (left !== null) return left;
  return { first: days + 1, mass: lateDays(length.lateness) };
}

/** Chances of 1, 2, 3 … more days when each ends the lateness with the same chance. */
export function lateDays(lateness: number): Float64Array {
  const days: number[] = [];
  let left = 1;
  while (left > TAIL_CUT) {
    days.push(left * (1 - lateness));
    left *= lateness;
  }
  days[days.length - 1] = (days[days.length - 1] as number) + left;
  return Float64Array.from(days);
}

function latenessOfMean(meanDays: number): number {
  return 1 - 1 / Math.max(1.0001, meanDays);
}
