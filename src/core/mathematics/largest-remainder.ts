/**
 * Shares a whole number out in whole numbers that add up to it, by weights: each gets what it is due, rounded
 * down, and what is then left goes one by one to those that lost most by it; of two alike the first.
 *
 * @param whole   whole number, 0 or more
 * @param weights 0 or more; where all are 0 they count alike
 *
 * Method: largest remainder.
 * Source: Balinski, M. L., Young, H. P. (1982). Fair Representation, ch. 3 (Hamilton's method; from memory).
 */
export function largestRemainder(whole: number, weights: readonly number[]): readonly number[] {
  const sum = weights.reduce((total, weight) => total + weight, 0);
  const due = weights.map((weight) =>
    sum > 0 ? (whole * weight) / sum : whole / Math.max(1, weights.length),
  );
  const shares = due.map(Math.floor);
  let left = whole - shares.reduce((total, share) => total + share, 0);
  const inTurn = due
    .map((exact, at) => ({ at, lost: exact - Math.floor(exact) }))
    .filter(({ at }) => sum === 0 || (weights[at] as number) > 0)
    .sort((one, other) => other.lost - one.lost || one.at - other.at);
  for (const { at } of inTurn) {
    if (left <= 0) break;
    shares[at] = (shares[at] as number) + 1;
    left -= 1;
  }
  return shares;
}
