/**
 * The columns of the due tab, in their order: all that a person needs to tick a task first, where a
 * phone shows it, then what they may add, then what is seen on a wide screen.
 *
 * Widths are pixels. Up to Count they are 306 together, so that a screen of 360 shows them beside
 * the numbers of the rows; the frozen ones, up to What, are 158.
 */
const COLUMNS = [
  { key: "done", header: "Done", width: 36 },
  /** The first sign of Written, which stands out of a phone's sight. */
  { key: "sign", header: "?", width: 16 },
  /** Task and batch as read; late ones say so. */
  { key: "what", header: "What", width: 106 },
  { key: "place", header: "Place", width: 54 },
  { key: "plants", header: "Plants", width: 48 },
  { key: "count", header: "Count", width: 46 },
  { key: "who", header: "Who", width: 70 },
  { key: "note", header: "Note", width: 120 },
  /** A box that answers a question in Written. */
  { key: "yes", header: "Yes, write it", width: 84 },
  { key: "state", header: "Written", width: 230 },
  /** The writes of the log that the row made, and the question that it was asked. */
  { key: "memory", header: "Write", width: 24 },
  /** By how much the row has changed the records, as the formula of the age counts them. */
  { key: "change", header: "±", width: 24 },
  { key: "task", header: "Task", width: 120 },
  { key: "batch", header: "Batch", width: 90 },
  { key: "from", header: "From", width: 90 },
  { key: "by", header: "By", width: 90 },
  { key: "status", header: "Status", width: 110 },
  { key: "hours", header: "Hours", width: 60 },
  { key: "caution", header: "Caution", width: 320 },
] as const;

export type DueKey = (typeof COLUMNS)[number]["key"];

/** Number of each column, from 1. */
export const DUE_COLUMN = Object.fromEntries(
  COLUMNS.map(({ key }, at) => [key, at + 1]),
) as Readonly<Record<DueKey, number>>;

export const DUE_HEADER: readonly string[] = COLUMNS.map(({ header }) => header);
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
