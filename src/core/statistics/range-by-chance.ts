import { totalOf } from "../mathematics";

/**
 * The chance that samples of one lot, drawn alike, differ by so much or more: their largest count less
 * their smallest. The share that they have in common is taken from them, as if it were known.
 *
 * Method: the range of independent binomial counts, summed over the smallest of them. A published table
 *   for 100 seeds (7 CFR 201.55) allows what chance exceeds in less than about 1 of 40 sowings, by the same
 *   reckoning; the test beside this shows it.
 * Source: the range of a sample as in any handbook of order statistics; for germination counts da Silva,
 *   A. R. (2020). Seed Science Research 30(1), 59-63, which draws from a lot that ends.
 *
 * @param counts of each sample, whole numbers from 0 to `size`; two or more
 * @param size   of each sample, 1 or more
 * @returns 0 to 1; 1 where they are all alike
 */
export function chanceOfRange(counts: readonly number[], size: number): number {
  const range = Math.max(...counts) - Math.min(...counts);
  if (range === 0) return 1;
  const below = sumsBelow(binomial(size, totalOf(counts) / (counts.length * size)));
  const last = below.length - 2;
  const all = (from: number, to: number) =>
    ((below[to + 1] as number) - (below[from] as number)) ** counts.length;
  let narrower = 0;
  for (let least = 0; least <= last; least += 1) {
    const most = Math.min(last, least + range - 1);
    narrower += all(least, most) - (least < most ? all(least + 1, most) : 0);
  }
  return Math.min(1, Math.max(0, 1 - narrower));
}

/** Standard deviations from the mean beyond which a count doesn't happen. */
const NEVER = 12;

/**
 * The chances of the counts that can happen, from the smallest of them, reckoned outward from the likeliest so
 * that none is lost. @param share between 0 and 1
 */
function binomial(size: number, share: number): Float64Array {
  const reach = Math.ceil(NEVER * Math.sqrt(size * share * (1 - share))) + 1;
  const likeliest = Math.min(size, Math.floor((size + 1) * share));
  const first = Math.max(0, likeliest - reach);
  const chances = new Float64Array(Math.min(size, likeliest + reach) - first + 1);
  const odds = share / (1 - share);
  chances[likeliest - first] = 1;
  for (let at = likeliest - first; at < chances.length - 1; at += 1) {
    chances[at + 1] = ((chances[at] as number) * (size - first - at) * odds) / (first + at + 1);
  }
  for (let at = likeliest - first; at > 0; at -= 1) {
    chances[at - 1] = ((chances[at] as number) * (first + at)) / ((size - first - at + 1) * odds);
  }
  const whole = chances.reduce((sum, one) => sum + one, 0);
  return chances.map((one) => one / whole);
}

/** Of each chance the sum of those before it; one entry more than there are chances. */
function sumsBelow(chances: Float64Array): Float64Array {
  const below = new Float64Array(chances.length + 1);
  chances.forEach((one, at) => {
    below[at + 1] = (below[at] as number) + one;
  });
  return below;
}
