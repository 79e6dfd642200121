/** Centimetres in an inch, exactly, by the international yard and pound agreement of 1959. */
const CM_PER_INCH = 2.54;

/**
 * A length given in inches, in centimetres. The product is rounded to whole hundredths of a
 * millimetre, which is exact for the halves and quarters of an inch that the trade speaks of.
 *
 * @example inches(1.5) // 3.81
 */
export function inches(length: number): number {
  return Math.round(length * CM_PER_INCH * 1000) / 1000;
}
