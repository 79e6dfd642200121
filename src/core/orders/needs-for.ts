import type { Need } from "../timetable";

/** So much of an item. */
export type Amount = Need;

/** What so many plants need: whole pieces, rounded up; other amounts as they are. */
export function needsFor(needs: readonly Need[], plants: number): readonly Amount[] {
  return addUp(needs.map((need) => ({ ...need, amount: need.amount * plants }))).map(wholePieces);
}

/** The amounts of each item and unit added up, in the order in which the items first come. */
export function addUp(amounts: readonly Amount[]): readonly Amount[] {
  const sums = new Map<string, Amount>();
  for (const one of amounts) {
    const key = `${one.item.toLowerCase()}\n${one.unit}`;
    const before = sums.get(key);
    sums.set(key, before === undefined ? one : { ...before, amount: before.amount + one.amount });
  }
  return [...sums.values()];
}

/** Amounts as a person buys them, to tenths: metres from 10 m on, litres from 1 l on. */
export function bought(amounts: readonly Amount[]): readonly Amount[] {
  return amounts.map(inLargerUnit);
}

/** Units that are said in a larger one: how many make one, and from how many on. */
const LARGER: Readonly<Record<string, readonly [unit: string, times: number, from: number]>> = {
  cm: ["m", 100, 1000],
  mm: ["m", 1000, 10_000],
  ml: ["l", 1000, 1000],
  g: ["kg", 1000, 1000],
};

function inLargerUnit({ item, amount, unit }: Amount): Amount {
  const [larger, times, from] = LARGER[unit] ?? [unit, 1, 0];
  const inUnit = amount >= from ? amount / times : amount;
  // Rounded up, so that nothing runs short for a decimal.
  const rounded = Math.ceil(inUnit * 10 - 1e-6) / 10;
  return { item, amount: rounded, unit: amount >= from ? larger : unit };
}

function wholePieces(one: Amount): Amount {
  // 35 pods must not become 36 because 0.0283 is no exact decimal.
  return one.unit === "" ? { ...one, amount: Math.ceil(one.amount - 1e-6) } : one;
}
