import { uniformInt } from "pure-rand/distribution/uniformInt";
import { xoroshiro128plus } from "pure-rand/generator/xoroshiro128plus";

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
export function dice(seed: number): Dice {
  const generator = xoroshiro128plus(seed | 0);
  const between = (from: number, to: number) => uniformInt(generator, from, to);
  const below = (limit: number) => between(0, limit - 1);
  const chance = (share: number) => below(1_000_000) < share * 1_000_000;
  const pick = <T>(from: readonly T[]): T => from[below(from.length)] as T;
  return {
    below,
    between,
    chance,
    pick,
    shuffled: (from) => {
      const order = [...from];
      for (let last = order.length - 1; last > 0; last -= 1) {
        const other = below(last + 1);
        [order[last], order[other]] = [order[other] as never, order[last] as never];
      }
      return order;
    },
    some: (from, share) => {
      const sure = below(from.length);
      return from.filter((_, index) => chance(share) || index === sure);
    },
    part: (name) => dice(mixed(seed, name)),
  };
}

/** A seed made of a seed and a name. Method: FNV-1a over the text (Fowler, Noll and Vo). */
function mixed(seed: number, name: string): number {
  let hash = 0x811c9dc5;
  for (const letter of `${seed} ${name}`) {
    hash = Math.imul(hash ^ (letter.codePointAt(0) as number), 0x01000193);
  }
  return hash;
}
