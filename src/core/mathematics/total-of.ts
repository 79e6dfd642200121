/** The sum of numbers; 0 of none. */
export function totalOf(values: Iterable<number>): number {
  let total = 0;
  for (const value of values) total += value;
  return total;
}
