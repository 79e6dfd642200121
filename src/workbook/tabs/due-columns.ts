import * as text from "../../sentences/made/due-tab";

/**
 * The columns of the due tab, in their order: all that a person needs to tick a task first, where a
 * phone shows it, then what they may add, then what is seen on a wide screen.
 *
 * Widths are pixels. Up to Count they are 306 together, so that a screen of 360 shows them beside
 * the numbers of the rows; the frozen ones, up to What, are 158.
 */
const COLUMNS = [
  { key: "done", header: text.done, width: 36 },
  /** The first sign of Written, which stands out of a phone's sight. */
  { key: "sign", header: text.sign, width: 16 },
  /** Task and batch as read; late ones say so. */
  { key: "what", header: text.what, width: 106 },
  { key: "place", header: text.place, width: 54 },
  { key: "plants", header: text.plants, width: 48 },
  { key: "count", header: text.counted, width: 46 },
  { key: "who", header: text.who, width: 70 },
  { key: "note", header: text.note, width: 120 },
  /** A box that answers a question in Written. */
  { key: "yes", header: text.yes, width: 84 },
  { key: "state", header: text.state, width: 230 },
  /** The writes of the log that the row made, and the question that it was asked. */
  { key: "memory", header: text.memory, width: 24 },
  /** By how much the row has changed the records, as the formula of the age counts them. */
  { key: "change", header: text.change, width: 24 },
  { key: "task", header: text.task, width: 120 },
  { key: "batch", header: text.batch, width: 90 },
  { key: "from", header: text.from, width: 90 },
  { key: "by", header: text.by, width: 90 },
  { key: "status", header: text.status, width: 110 },
  { key: "hours", header: text.hours, width: 60 },
  { key: "caution", header: text.caution, width: 320 },
] as const;

export type DueKey = (typeof COLUMNS)[number]["key"];

/** Number of each column, from 1. */
export const DUE_COLUMN = Object.fromEntries(
  COLUMNS.map(({ key }, at) => [key, at + 1]),
) as Readonly<Record<DueKey, number>>;

export const DUE_HEADER_WIDTH = COLUMNS.length;

export function dueHeader(): readonly string[] {
  return COLUMNS.map(({ header }) => header());
}

/** The header of a column. */
export function dueHeaderOf(key: DueKey): string {
  return dueHeader()[DUE_COLUMN[key] - 1] ?? "";
}

export const DUE_WIDTHS: readonly number[] = COLUMNS.map(({ width }) => width);

/** Columns that stay in view. */
export const DUE_FROZEN = DUE_COLUMN.what;

/** What a person enters: a change there is looked at. */
export const ENTERED: ReadonlySet<number> = new Set(
  (["done", "count", "who", "note", "yes"] as const).map((key) => DUE_COLUMN[key]),
);

/** Row of the due tab's first task, from 1. */
export const DUE_FIRST_ROW = 3;

/** Cells of the first row beside the title, by their columns. */
export const DUE_TOP = {
  /** Of what day the list is, and whether it is still up to date. */
  age: DUE_COLUMN.what,
  /** A box that makes the list anew. */
  anew: DUE_COLUMN.place,
  /** The day of the list, and what the records were then, for the formula of the age. */
  asOf: DUE_COLUMN.from,
  readThen: DUE_COLUMN.by,
  /** The name that the records tab had when the list was made; the formula of the age has the one by now. */
  recordsTab: DUE_COLUMN.status,
} as const;
