import { cellText } from "../cells";
import type { CivilDay } from "../dates";
import { lazily } from "../lazily";
import { foldName } from "../names";
import type { Records } from "../records";
import { wordPattern } from "../words";
import type { OrdersRemark } from "./order-remark";

/** An open order as its row says it. */
export interface Order {
  /** The order's name, else the customer's; empty where the row names neither. */
  readonly name: string;
  /** Empty where none is named. */
  readonly customer: string;
  /** As it is written, such as "Amberlow or Corvane"; empty where any will do. */
  readonly variety: string;
  /** Plants, whole number, 1 or more. */
  readonly wanted: number;
  readonly by: CivilDay;
  /** Plants, whole number, 0 or more. */
  readonly delivered: number;
}

/** An orders table, read. */
export interface Orders {
  /** Open orders in the order in which they are served: by day, then by name. */
  readonly open: readonly Order[];
  /** Rows that hold an order, open or closed, from 1 at the top of the table. */
  readonly rows: readonly number[];
  /** What could not be used or is read in a way of its own. */
  readonly remarks: readonly OrdersRemark[];
}

/** Words between varieties of which any will do, which a split keeps. */
const either = lazily(
  () => new RegExp(`(\\s+(?:${wordPattern((words) => words.either)})\\s+|\\s*[/;,|]\\s*)`, "i"),
);

/** A variety's own name holds no more such words than this. */
const MOST_IN_A_NAME = 3;

/** A variety, or several of which any will do, in our names for each. */
export function varietyAsTold(written: string, nameOf: (word: string) => string): string {
  const whole = nameOf(written);
  if (whole !== written) return whole;
  const pieces = cellText(written).split(either());
  return pieces.map((piece, at) => (at % 2 === 0 ? nameOf(piece) : piece)).join("");
}

/** Varieties of batches by their folded names (names/fold-name.ts), each as the records spell it. */
export type KnownVarieties = ReadonlyMap<string, string>;

/**
 * The varieties that an order takes, folded, the first one first; none where any will do.
 *
 * @param known varieties of batches: a name that is one of them is not taken apart
 */
export function varietiesOf(
  order: Pick<Order, "variety">,
  known: KnownVarieties,
): readonly string[] {
  return [...new Set(writtenVarieties(order, known).map(foldName))].filter((one) => one !== "");
}

/** The same as they are written. */
export function writtenVarieties(
  { variety }: Pick<Order, "variety">,
  known: KnownVarieties,
): readonly string[] {
  if (known.has(foldName(variety))) return [variety];
  // Without runs of white space, over which the pattern would go again and again.
  const pieces = cellText(variety).split(either());
  const names: string[] = [];
  for (let at = 0; at < pieces.length; ) {
    const name = (end: number) => pieces.slice(at, end).join("").trim();
    let end = Math.min(pieces.length, at + 1 + 2 * MOST_IN_A_NAME);
    while (end > at + 1 && !known.has(foldName(name(end)))) end -= 2;
    names.push(name(end));
    at = end + 1;
  }
  return names;
}

/** The varieties that the records name, whatever became of their batches. */
export function varietiesIn({ batches }: Pick<Records, "batches">): KnownVarieties {
  const names = batches.map(({ variety }) => [foldName(variety), variety] as const);
  return new Map(names.filter(([name]) => name !== ""));
}

/**
 * The varieties of an order that no batch has, as they are written, and whether they are all that it
 * names. None where the records name no variety.
 */
export function unknownVarieties(
  order: Pick<Order, "variety">,
  known: KnownVarieties,
): { readonly names: readonly string[]; readonly isAll: boolean } {
  const written = writtenVarieties(order, known).filter((one) => one !== "");
  const names = known.size === 0 ? [] : written.filter((one) => !known.has(foldName(one)));
  return { names, isAll: names.length > 0 && names.length === written.length };
}

/** The first variety of an order, as the records spell it; as it is written where they lack it. */
export function firstVariety(order: Pick<Order, "variety">, known: KnownVarieties): string {
  const written = writtenVarieties(order, known)[0] ?? "";
  return known.get(foldName(written)) ?? written;
}
