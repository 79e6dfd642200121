/** Chance that can be had again: the same seed, the same rolls. */
export interface Dice {
  /** A whole number from 0 up to, not including, the limit. */
  below(limit: number): number;
  /** Both ends included. */
  between(from: number, to: number): number;
  /** @param share 0 to 1 */
  chance(share: number): boolean;
  pick<T>(from: readonly T[]): T;
  shuffled<T>(from: readonly T[]): T[];
  /** Each with a chance, but one at least, in their order. */
  some<T>(from: readonly T[], share: number): T[];
  /**
   * Dice of their own for a part of the work, which roll the same however often others were
   * rolled: leaving one habit out leaves the other habits as they were.
   */
  part(name: string): Dice;
}
/** @param seed a whole number */
export declare function dice(seed: number): Dice;
