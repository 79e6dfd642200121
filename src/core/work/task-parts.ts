import type { Task } from "../due";
import { totalOf } from "../mathematics";

/** Tasks by everything that is shown of them, so that the order of the records does not matter. */
export function inTaskOrder(a: Task, b: Task): number {
  return (
    a.doOn - b.doOn ||
    a.by - b.by ||
    a.from - b.from ||
    compareText(a.place, b.place) ||
    compareText(a.batch, b.batch) ||
    compareText(a.step.name, b.step.name) ||
    compareText(a.method, b.method) ||
    (a.plants ?? -1) - (b.plants ?? -1) ||
    (a.hours ?? -1) - (b.hours ?? -1)
  );
}

/**
 * Shares a whole number out by amounts, each share a whole number and all together the whole: what
 * is rounded off one is carried to the next.
 *
 * @example runningRounds([1, 1, 1], 10) // [3, 4, 3]
 */
export function runningRounds(amounts: readonly number[], whole: number): number[] {
  const all = totalOf(amounts);
  let before = 0;
  let upTo = 0;
  return amounts.map((amount) => {
    upTo += amount;
    const rounded = all === 0 ? 0 : Math.round((whole * upTo) / all);
    const share = rounded - before;
    before = rounded;
    return share;
  });
}

function compareText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
