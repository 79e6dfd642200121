import type { CivilDay } from "../dates";
import { foldName } from "../names";
import type { Records } from "../records";
import type { OrdersRemark } from "./order-remark";

/** An open order as its row says it. */
export interface Order {
  /** The order's name, else the customer's; empty where the row names neither. */
  readonly name: string;
  /** Empty where none is named. */
  readonly customer: string;
  /** As it is written, such as "Amberlow or Corvane"; empty where any will do. */
  readonly variety: string;
  /** As a column of its own says it; empty or left out where none does. */
  readonly crop?: string;
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

/** Varieties of batches by their folded names (names/fold-name.ts), each as the records spell it. */
export type KnownVarieties = ReadonlyMap<string, string>;

/** The varieties that the records name, whatever became of their batches. */
export function varietiesIn({ batches }: Pick<Records, "batches">): KnownVarieties {
  const names = batches.map(({ variety }) => [foldName(variety), variety] as const);
  return new Map(names.filter(([name]) => name !== ""));
}
