import type { OrderFillings } from "./draw-fillings";

/** The smallest drawn value that at least a share of the draws stay at or below. */
export function atLeast(rising: readonly number[], share: number): number {
  return rising[Math.max(0, Math.ceil(share * rising.length - 1e-9) - 1)] ?? 0;
}

/** With this chance no more plants are lacking. */
export function shortAt({ left, inTime }: OrderFillings, chance: number): number {
  const falling = Math.min(inTime.length - 1, Math.floor((1 - chance) * inTime.length + 1e-9));
  return left - (inTime[Math.max(0, falling)] ?? 0);
}
