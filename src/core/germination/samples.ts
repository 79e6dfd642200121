import { ALLOWED_RANGE } from "./tolerance.table";

/** The number of seeds for which the published ranges hold. */
const SEEDS_A_SAMPLE = 100;

/**
 * Whether samples sown alike differ by no more than chance allows.
 *
 * @param germinated seeds that came up in each sample
 * @param sownEach   seeds sown in each
 * @returns a sentence; null when there are not two or four samples
 *
 * Source: 7 CFR 201.55(a); see tolerance.table.ts.
 */
export function samplesSentence(germinated: readonly number[], sownEach: number): string | null {
  if (germinated.length !== 2 && germinated.length !== 4) return null;
  const samples = germinated.length === 2 ? "two samples" : "four samples";
  if (sownEach !== SEEDS_A_SAMPLE) {
    return `The published ranges for ${samples} hold for 100 seeds each; these have ${sownEach}`;
  }
  const mean = Math.round(germinated.reduce((sum, count) => sum + count, 0) / germinated.length);
  const range = Math.max(...germinated) - Math.min(...germinated);
  const mirrored = mean > 50 ? mean : SEEDS_A_SAMPLE + 1 - mean;
  const row = ALLOWED_RANGE.find(([at]) => at === mirrored);
  const allowed = row?.[germinated.length === 4 ? 1 : 2] ?? null;
  if (allowed === null) {
    return `The ${samples} differ by ${range}; no published range is at hand for a mean of ${mean} %`;
  }
  return range > allowed
    ? `The ${samples} differ by ${range}, more than the ${allowed} allowed at a mean of ${mean} % (7 CFR 201.55): test again`
    : `The ${samples} differ by ${range}; ${allowed} are allowed at a mean of ${mean} % (7 CFR 201.55)`;
}
