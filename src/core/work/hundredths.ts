/**
 * Work is planned in hundredths of an hour, 36 seconds: whole numbers, so that a plan is exact and
 * the hours in its cells add up to the last digit.
 */
const HUNDREDTHS_AN_HOUR = 100;

/** A task of ten million hours is a slip; sums of such must stay whole numbers. */
const MOST_HOURS = 1e7;

// 1.3 hours arrive as 1.3000000000000003 from a division, and that is no hundredth more.
const NO_HUNDREDTH = 1e-6;

/** What a task asks for: not less than its hours, and something. */
export function hundredthsAsked(hours: number): number {
  const asked = Math.min(hours, MOST_HOURS) * HUNDREDTHS_AN_HOUR;
  return Math.max(1, Math.ceil(asked - NO_HUNDREDTH));
}

/** What a person has: not more than the hours. */
export function hundredthsThere(hours: number): number {
  return Math.floor(hours * HUNDREDTHS_AN_HOUR + NO_HUNDREDTH);
}

/** As a cell shows it. */
export function hoursOf(hundredths: number): number {
  return hundredths / HUNDREDTHS_AN_HOUR;
}
