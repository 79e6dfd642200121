/** How much a trouble costs: what is lost because of it. Lower is worse. */
export const COST = {
  /** The whole row is not used. */
  row: 1,
  /** A column is not used, for every row. */
  column: 2,
  /** One cell is not used. */
  cell: 3,
  /** The cell is used, but hardly says what was meant. */
  doubt: 4,
  /** The cell is used in a reading that is said. */
  reading: 5,
} as const;

type Cost = (typeof COST)[keyof typeof COST];

/** Something in a table that a person should look at, in words for that person. */
export interface Trouble {
  /** Row in the range, from 1; null where it is about the whole table or a column. */
  readonly row: number | null;
  /** The column's header as it stands in the sheet; empty where it is about a row. */
  readonly column: string;
  /** The cell's text. */
  readonly found: string;
  readonly trouble: string;
  readonly whatHappens: string;
  readonly whatToDo: string;
  readonly cost: Cost;
}

/** Worst first, then from the top of the table down. */
export function byCost(a: Trouble, b: Trouble): number {
  return a.cost - b.cost || (a.row ?? 0) - (b.row ?? 0);
}
