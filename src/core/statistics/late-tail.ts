import { totalOf } from "../mathematics";
import type { RecordedLengths } from "./censored-lengths";
import { lateDays, type StepLength } from "./step-length";

/** Batches beyond this many from the last are too few to tell single days apart. */
const FEW = 5;

/** The timetable's length, and how many batches it is worth. */
export interface WeighedPrior {
  readonly length: StepLength;
  /** 0 or more. */
  readonly weight: number;
}

/**
 * A learned length with its late end drawn smooth: beyond the day after which fewer than a handful
 * of batches were seen, lateness ends at one daily chance. Without it a batch that waits longer
 * than nearly all before it would be promised for the very day of the one that was later still.
 *
 * A batch still waiting counts as late no longer than the latest that was seen done: what waits on
 * beyond that is more often a row that nobody filled in (our choice; npm run check:calibration).
 *
 * @param length what was learned of the prior and the records
 *
 * Method: exponential completion of a survival curve from its last observations. The prior counts
 *   there with the share of its batches that lies beyond that day, and with how late those are on
 *   the mean: so nothing waiting, the end keeps the mean of the curve that it takes the place of.
 *   Where no batch was seen to end there, it counts as one, since a rate needs an end.
 * Source: Brown, B. W., Hollander, M., Korwar, R. M. (1974). Nonparametric tests of independence
 *   for censored data, with applications to heart transplant studies. In Reliability and Biometry,
 *   SIAM, 327-354 (citation looked up; that it completes the curve so, from memory).
 */
export function withLateTail(
  length: StepLength,
  prior: WeighedPrior,
  { done, waiting }: RecordedLengths,
): StepLength {
  if (done.length === 0) return length;
  const sorted = [...done].sort((a, b) => a - b);
  const from = sorted[Math.max(0, sorted.length - FEW)] as number;
  const late = [...done, ...waiting].filter((days) => days > from).map((days) => days - from);
  const ended = done.filter((days) => days > from).length;
  const { share, meanDays } = latenessBeyond(from, prior.length);
  const priorEnded = ended === 0 ? 1 : prior.weight * share;
  const longest = Math.max(meanDays, (sorted[sorted.length - 1] as number) - from);
  const meanLateness =
    (late.reduce((sum, days) => sum + Math.min(days, longest), 0) + priorEnded * meanDays) /
    (ended + priorEnded);
  const lateness = 1 - 1 / Math.max(1.0001, meanLateness);
  const kept = from - length.first + 1;
  if (kept <= 0 || kept >= length.mass.length) return { ...length, lateness };
  const before = length.mass.slice(0, kept);
  const left = 1 - totalOf(before);
  if (left <= 1e-9) return { ...length, lateness };
  const tail = lateDays(lateness);
  const mass = new Float64Array(kept + tail.length);
  mass.set(before);
  tail.forEach((chance, day) => {
    mass[kept + day] = left * chance;
  });
  return { first: length.first, mass, lateness };
}

/** Which share of a length lies beyond a day, 0 to 1, and by how many days on the mean. */
function latenessBeyond(from: number, { first, mass, lateness }: StepLength) {
  let share = 0;
  let days = 0;
  for (let at = Math.max(0, from - first + 1); at < mass.length; at += 1) {
    share += mass[at] as number;
    days += (mass[at] as number) * (first + at - from);
  }
  // Beyond its last day lateness goes on at its own rate.
  return share > 1e-9
    ? { share, meanDays: days / share }
    : { share: 0, meanDays: 1 / (1 - lateness) };
}
