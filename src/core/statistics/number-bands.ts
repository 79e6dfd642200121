/**
 * Bands of numbers with about as many values in each, as text; equal numbers stay together.
 *
 * @param values   finite numbers
 * @param mostBands how many bands at most
 * @returns for each value its band, such as "12 to 13"; the number itself where there are no more
 *   different numbers than bands
 *
 * Method: bands begin at the quantiles that part the values into equal counts.
 * Source: ours.
 */
export function numberBands(values: readonly number[], mostBands: number): readonly string[] {
  const sorted = [...values].sort((a, b) => a - b);
  const distinct = [...new Set(sorted)];
  if (distinct.length <= mostBands) return values.map(String);
  const starts = new Set<number>();
  for (let band = 0; band < mostBands; band += 1) {
    starts.add(sorted[Math.floor((band * sorted.length) / mostBands)] as number);
  }
  const edges = [...starts].sort((a, b) => a - b);
  const textOf = new Map<number, string>();
  edges.forEach((from, index) => {
    const next = edges[index + 1];
    const within = distinct.filter((one) => one >= from && (next === undefined || one < next));
    const to = within[within.length - 1] as number;
    for (const one of within) textOf.set(one, from === to ? String(from) : `${from} to ${to}`);
  });
  return values.map((value) => textOf.get(value) as string);
}
