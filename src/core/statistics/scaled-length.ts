import type { StepLength } from "./step-length";

/** Effects on a length smaller than this, as a logarithm, move no day. */
const NOTHING = 0.004;

/**
 * A length that takes so many times as long.
 *
 * @param shift    logarithm of how many times
 * @param variance of that logarithm
 *
 * Method: each day's chance goes to the two days between which it falls then; how unsure the factor
 *   is, by three factors of the same mean and variance (logarithms −√1.5, 0, √1.5 deviations away, each
 *   with a third).
 * Source: ours; three such points have the mean and the variance of a normal.
 */
export function scaledLength(
  length: StepLength,
  { shift, variance }: { readonly shift: number; readonly variance: number },
): StepLength {
  const off = Math.sqrt(1.5 * variance);
  if (Math.abs(shift) + off < NOTHING) return length;
  const factors = off < NOTHING ? [shift] : [shift - off, shift, shift + off];
  const times = factors.map((factor) => Math.exp(factor));
  const { first, mass } = length;
  const start = Math.floor(first * Math.min(...times));
  const end = Math.ceil((first + mass.length - 1) * Math.max(...times)) + 1;
  const scaled = new Float64Array(end - start + 1);
  for (const factor of times) {
    for (let i = 0; i < mass.length; i += 1) {
      const day = (first + i) * factor - start;
      const whole = Math.floor(day);
      const chance = (mass[i] as number) / times.length;
      scaled[whole] = (scaled[whole] as number) + chance * (whole + 1 - day);
      scaled[whole + 1] = (scaled[whole + 1] as number) + chance * (day - whole);
    }
  }
  const lateness = 1 - (1 - length.lateness) / Math.exp(shift);
  return { first: start, mass: scaled, lateness: Math.min(0.9999, Math.max(1e-4, lateness)) };
}
