/** Indexes in a list of chances. */
export interface NearestEnds {
  readonly low: number;
  readonly middle: number;
  readonly high: number;
}

/**
 * The range of indexes such that the chance below it, and above it, comes nearest to `side`; and the
 * first index by which half of the chance is reached, kept inside the range.
 *
 * @param chances they add up to 1
 * @param side    above 0, below 0.5
 *
 * Method: one way through the chances; each end moves on as long as the chance outside comes nearer.
 * Source: ours: whole days and plants can't leave out just so much, and quantiles rounded outward
 *   would hold more often than they say (npm run check:calibration).
 */
export function nearestEnds(chances: ArrayLike<number>, side: number): NearestEnds {
  const last = chances.length - 1;
  let low = 0;
  let below = 0;
  let middle = last;
  let high = last;
  let total = 0;
  let lowFound = false;
  let middleFound = false;
  for (let index = 0; index <= last; index += 1) {
    const chance = chances[index] as number;
    if (!lowFound) {
      // Starting the range at the next index would leave this one below it.
      if (Math.abs(below + chance - side) <= Math.abs(below - side)) {
        below += chance;
        low = Math.min(index + 1, last);
      } else lowFound = true;
    }
    const before = total;
    total += chance;
    // A hair of rounding must not move the middle.
    if (!middleFound && total >= 0.5 - 1e-9) {
      middle = index;
      middleFound = true;
    }
    const aboveHere = 1 - total;
    const aboveBefore = 1 - before;
    if (Math.abs(aboveHere - side) < Math.abs(aboveBefore - side)) high = index;
    else if (aboveHere < side) break;
  }
  return { low: Math.min(low, middle), middle, high: Math.max(high, middle) };
}
