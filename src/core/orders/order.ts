import type { CivilDay } from "../dates/civil-day";
import { normalText } from "../words/normal-text";

/** An open order as its row says it. */
export interface Order {
  /** The order's name, else the customer's, else "(no name)". */
  readonly name: string;
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
  /** Rows whose order is closed. */
  readonly closed: number;
  /** What could not be used or is read in a way of its own; null when nothing. */
  readonly remark: string | null;
}

/** Words between varieties of which any will do. */
const EITHER = /\s+(?:or|ou|o|atau)\s+|\s*[/;,|]\s*/i;

/**
 * The varieties that an order takes, in normal form, the first one first; none where any will do.
 *
 * @param known varieties of batches in normal form: a name that is one of them whole is not taken apart
 */
export function varietiesOf({ variety }: Order, known: ReadonlySet<string>): readonly string[] {
  const whole = normalText(variety);
  if (whole === "") return [];
  if (known.has(whole)) return [whole];
  return [...new Set(variety.split(EITHER).map(normalText))].filter((one) => one !== "");
}

/** The first variety of an order, as it is written. */
export function firstVariety({ variety }: Order, known: ReadonlySet<string>): string {
  return known.has(normalText(variety)) ? variety : (variety.split(EITHER)[0]?.trim() ?? "");
}
