import { measureOf } from "./units";

/** So much of an item. */
export interface Amount {
  readonly item: string;
  readonly amount: number;
  /** "cm", "l" …; empty where the item is counted in pieces. */
  readonly unit: string;
}

/** What so many plants need: whole pieces, rounded up; other amounts as they are. */
export function needsFor(needs: readonly Amount[], plants: number): readonly Amount[] {
  return addUp(needs.map((need) => ({ ...need, amount: need.amount * plants }))).map(wholePieces);
}

/**
 * The amounts of each item added up, in the order in which the items first come. Amounts whose units
 * can be turned into each other are one, in the unit that came first.
 *
 * @example addUp([{ item: "strip", amount: 1, unit: "m" }, { item: "strip", amount: 50, unit: "cm" }])[0].amount // 1.5
 */
export function addUp(amounts: readonly Amount[]): readonly Amount[] {
  const sums = new Map<string, Amount>();
  for (const one of amounts) {
    const key = sumKey(one);
    const before = sums.get(key);
    sums.set(key, before === undefined ? one : { ...before, amount: added(before, one) });
  }
  return [...sums.values()];
}

/** What amounts that can be added up have in common. */
export function sumKey({ item, unit }: Pick<Amount, "item" | "unit">): string {
  return `${item.toLowerCase()}\n${measureOf(unit).kind}`;
}

/** The sum of two amounts of one kind, in the unit of the first. */
export function added(sum: Omit<Amount, "item">, more: Omit<Amount, "item">): number {
  if (sum.unit === more.unit) return sum.amount + more.amount;
  return sum.amount + (more.amount * measureOf(more.unit).size) / measureOf(sum.unit).size;
}

/** Amounts as a person buys them, to tenths: metres from 10 m on, litres from 1 l on. */
export function bought(amounts: readonly Amount[]): readonly Amount[] {
  return amounts.map((one) => {
    const { item, amount, unit } = inLargerUnit(one);
    // Rounded up, so that nothing runs short for a decimal.
    return { item, amount: Math.ceil(amount * 10 - 1e-6) / 10, unit };
  });
}

/** Units that are said in a larger one, and from how many on. */
const LARGER: Readonly<Record<string, readonly [unit: string, from: number]>> = {
  cm: ["m", 1000],
  mm: ["m", 10_000],
  in: ["ft", 120],
  ml: ["l", 1000],
  g: ["kg", 1000],
};

/** The same amount in the unit in which a person buys so much. */
export function inLargerUnit(one: Amount): Amount {
  const [unit, from] = LARGER[one.unit] ?? [one.unit, 0];
  if (unit === one.unit || one.amount < from) return one;
  return { ...one, amount: added({ amount: 0, unit }, one), unit };
}

function wholePieces(one: Amount): Amount {
  // 35 pods must not become 36 because 0.0283 is no exact decimal.
  return one.unit === "" ? { ...one, amount: Math.ceil(one.amount - 1e-6) } : one;
}
