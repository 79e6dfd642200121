/**
 * Chances of as extreme a finding, raised for how many findings were looked for at once.
 *
 * A finding whose raised chance is at most q belongs to a list of which, on average, at most the
 * share q is false; where nothing is true, a list with anything in it comes up with chance q.
 *
 * @param chances each 0 to 1, in any order
 * @returns in the same order, each 0 to 1
 *
 * Method: step-up; equals R's p.adjust(method = "BH").
 * Source: Benjamini, Y., Hochberg, Y. (1995). Controlling the false discovery rate. J. R. Statist.
 *   Soc. B 57, 289-300.
 */
export function raisedForMany(chances: readonly number[]): readonly number[] {
  const order = chances.map((_, index) => index).sort((a, b) => at(chances, b) - at(chances, a));
  const raised = new Array<number>(chances.length);
  let least = 1;
  order.forEach((index, fromLargest) => {
    const rank = chances.length - fromLargest;
    least = Math.min(least, (at(chances, index) * chances.length) / rank);
    raised[index] = least;
  });
  return raised;
}

function at(values: readonly number[], index: number): number {
  return values[index] as number;
}
