import { lateDays, type StepLength } from "./step-length";

/** Lengths of a step as recorded, in whole days, 0 or more. */
export interface RecordedLengths {
  readonly done: readonly number[];
  /** Batches still waiting after so many days: their length is longer. */
  readonly waiting: readonly number[];
}

/**
 * The length of a step, learned: the timetable's, with the weight of some batches, and the
 * nursery's own records, batches still waiting counted as waiting.
 *
 * @param prior  the timetable's length
 * @param weight batches that the prior is worth, 0 or more; tending to 0 gives Kaplan and Meier's
 *   estimate. With none and nothing recorded there is no answer.
 *
 * Method: posterior mean of the survival curve under a Dirichlet process; on whole days, a batch
 *   waiting after t days has a length above t.
 * Source: Susarla, V., Van Ryzin, J. (1976). Nonparametric Bayesian estimation of survival curves
 *   from incomplete observations. J. Amer. Statist. Assoc. 71, 897-902.
 */
export function learnedLength(
  prior: StepLength,
  weight: number,
  { done, waiting }: RecordedLengths,
): StepLength {
  const recorded = done.length + waiting.length;
  if (recorded === 0) return prior;
  const last = Math.max(
    prior.first + prior.mass.length - 1,
    done.reduce((most, days) => Math.max(most, days), 0),
    waiting.reduce((most, days) => Math.max(most, days), 0),
  );
  const doneOn = tally(done, last);
  const waitingOn = tally(waiting, last);
  const survival = new Float64Array(last + 1);
  let priorLeft = weight;
  let recordsLeft = recorded;
  let factor = 1;
  // What waits longer than anything known has no day yet; it stays waiting to the end.
  let stuck = 0;
  for (let day = 0; day <= last; day += 1) {
    priorLeft -= weight * (prior.mass[day - prior.first] ?? 0);
    const stillWaiting = waitingOn[day] as number;
    recordsLeft -= (doneOn[day] as number) + stillWaiting;
    // Rounding leaves a hair of the prior; it must not be taken for a chance.
    const left = Math.max(0, priorLeft) + recordsLeft;
    if (stillWaiting > 0) {
      if (left > 1e-9) factor *= (left + stillWaiting) / left;
      else stuck += (stillWaiting * factor) / (weight + recorded);
    }
    survival[day] = stuck + (left > 1e-9 ? (left * factor) / (weight + recorded) : 0);
  }
  return ofSurvival(survival, prior.lateness);
}

function tally(days: readonly number[], last: number): Float64Array {
  const counts = new Float64Array(last + 1);
  for (const day of days) counts[day] = (counts[day] as number) + 1;
  return counts;
}

/** Chances of single days; what survives the last day goes on late, a day at a time. */
function ofSurvival(survival: Float64Array, lateness: number): StepLength {
  const left = survival[survival.length - 1] as number;
  const late = left > 1e-9 ? lateDays(lateness) : new Float64Array(0);
  const found = survival.findIndex((share) => share < 1 - 1e-12);
  const first = found === -1 ? survival.length : found;
  const mass = new Float64Array(survival.length - first + late.length);
  for (let day = first; day < survival.length; day += 1) {
    const before = day === 0 ? 1 : (survival[day - 1] as number);
    mass[day - first] = Math.max(0, before - (survival[day] as number));
  }
  late.forEach((chance, days) => {
    mass[survival.length - first + days] = left * chance;
  });
  return { first, mass, lateness };
}
