import { InputError } from "../faults";
import { wilsonInterval } from "../statistics";

/**
 * The share of grafts that took.
 *
 * @param taken   whole number, or null when not counted yet
 * @param grafted whole number, or null when not known
 * @returns 0 to 1; null when not counted yet, or nothing was grafted
 * @throws InputError "more-taken-than-grafted"
 */
export function takeRate(taken: number | null, grafted: number | null): number | null {
  if (taken === null || grafted === null || grafted === 0) return null;
  if (taken > grafted) {
    throw new InputError({ code: "more-taken-than-grafted", taken, grafted });
  }
  return taken / grafted;
}

/**
 * The range of the take rate that so many plants allow (Wilson).
 *
 * @param level a share strictly between 0 and 1
 * @returns low and high, 0 to 1; null when not counted yet, or nothing was grafted
 * @throws InputError "more-taken-than-grafted" | "level-out-of-range"
 */
export function takeRange(
  taken: number | null,
  grafted: number | null,
  level: number,
): readonly [number, number] | null {
  if (taken === null || takeRate(taken, grafted) === null) return null;
  const { low, high } = wilsonInterval({ successes: taken, trials: grafted as number, level });
  return [low, high];
}
