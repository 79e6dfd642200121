/** A range with the truth that it was said of. */
export interface JudgedRange {
  readonly low: number;
  readonly high: number;
  readonly truth: number;
}

/**
 * How bad a range was, in its own unit: its width, and for a miss 2 ÷ (1 - level) times how far it missed. Over
 * many ranges the least is had by those that hold as often as they say and are no wider than they must be.
 *
 * @param level how many of 100 ranges should hold, as a share
 *
 * Method: the interval score.
 * Source: Gneiting, T., Raftery, A. E. (2007). Strictly proper scoring rules, prediction, and
 *   estimation. J. Amer. Statist. Assoc. 102, 359-378, section 6.2 (from memory).
 */
export function intervalScore({ low, high, truth }: JudgedRange, level: number): number {
  return high - low + (2 / (1 - level)) * Math.max(0, low - truth, truth - high);
}
