import { linesOf } from "../../core";
import { cellName, rowAndColumn } from "../host/cell-name";
import { WritingError } from "../host/writing-error";
import type { RecordsNow } from "../reading/records-tab";
import { stepKeyOf } from "../reading/step-of-task";
import { columnReadAs } from "../reading/table-columns";
import { type CellWrite, type Landmark, sameValue, type TableMarks } from "../writing/table-write";
import type { LogEntry } from "../writing/write-log";

/** The cells of a write, where they stand by now. */
export interface FoundAgain extends TableMarks {
  /** One a log line, in their order; what stands there is what the write put there. */
  readonly cells: readonly (CellWrite & { readonly entry: LogEntry; readonly holds: unknown })[];
  /** What stands in the row beside them, where it was blank; where the whole row is ours. */
  readonly ownBeside: readonly {
    readonly header: string;
    readonly cell: string;
    readonly holds: unknown;
  }[];
}

/** A row that may be the one that was written. */
interface Candidate {
  readonly table: number;
  readonly row: number;
}

/**
 * Finds the cells of one write again: the row by the batch's name, the column by its header, since
 * rows and columns may have been put in, taken out or sorted since.
 *
 * Of several lines that a log has for one job, the one that holds what was written is taken.
 *
 * @param entries the cells of one write, all of one tab
 * @throws WritingError when the batch or a column is not there any more, or two could be meant
 */
export function findAgain(now: RecordsNow, entries: readonly LogEntry[]): FoundAgain {
  const first = entries[0];
  if (first === undefined) return NOTHING_FOUND;
  const candidates = candidatesFor(now, first);
  if (candidates.length === 0) {
    const { task, batch } = first;
    throw new WritingError({ code: "taskGone", task, batch, cells: cellsOf(entries) });
  }
  const placed = candidates.flatMap((candidate) => {
    const cells = cellsIn(now, candidate, entries);
    return cells === null ? [] : [{ ...candidate, cells }];
  });
  if (placed.length === 0) {
    const headers = entries.map(({ header }) => header);
    throw new WritingError({ code: "columnsGone", headers, cells: cellsOf(entries) });
  }
  const chosen = chosenRow(placed, first);
  const header = now.records.tables[chosen.table];
  return {
    cells: chosen.cells,
    landmarks: landmarksOf(now, chosen, chosen.cells),
    headerRows: Array.from(
      { length: header?.headerHeight ?? 0 },
      (_, at) => (header?.headerRow ?? 1) + at,
    ),
    nameColumn: columnReadAs(now.records, chosen.table, "fact batch")?.column ?? null,
    ownBeside: [],
  };
}

export const NOTHING_FOUND: FoundAgain = {
  cells: [],
  landmarks: [],
  headerRows: [],
  nameColumn: null,
  ownBeside: [],
};

/**
 * Of several rows the one that holds what was written, else the one in which it was.
 *
 * @param placed at least one, each with its cells in the order of the log's lines
 * @throws WritingError when two could be meant
 */
export function chosenRow<
  Row extends { readonly row: number; readonly cells: FoundAgain["cells"] },
>(placed: readonly Row[], first: LogEntry): Row {
  const whole = placed.filter(({ cells }) =>
    cells.every(({ entry, holds }) => sameValue(holds, entry.after)),
  );
  const likely = whole.length > 0 ? whole : placed;
  const inPlace = likely.filter(({ cells }) => cells[0]?.cell === first.cell);
  const chosen = likely.length === 1 ? likely[0] : inPlace[0];
  if (chosen !== undefined) return chosen;
  const rows = likely.map(({ row }) => String(row));
  const { task, batch: about } = first;
  throw new WritingError({ code: "rowsAlike", rows, task, about });
}

/** Where the cells of a write were. */
export function cellsOf(entries: readonly LogEntry[]): readonly string[] {
  return entries.map(({ cell }) => cell);
}

function candidatesFor({ records, timetable }: RecordsNow, entry: LogEntry): Candidate[] {
  const kindOf = (table: number) => records.tables[table]?.kind;
  const own = records.batches
    .filter(({ name, table }) => name === entry.batch && kindOf(table) === "batches")
    .map(({ table, row }) => ({ table, row }));
  const key = stepKeyOf(timetable, entry.task);
  const lines = key === null ? [] : linesOf(records, entry.batch, key);
  return [...own, ...lines.map(({ table, row }) => ({ table, row }))];
}

/** The entries' cells in a row; null when its table lacks one of the columns. */
function cellsIn(
  now: RecordsNow,
  { table, row }: Candidate,
  entries: readonly LogEntry[],
): FoundAgain["cells"] | null {
  const cells: (CellWrite & { entry: LogEntry; holds: unknown })[] = [];
  for (const entry of entries) {
    const column = columnIn(now, table, entry);
    if (column === null) return null;
    cells.push({
      entry,
      row,
      column,
      cell: cellName({ row, column }),
      before: entry.after,
      after: entry.before,
      holds: now.values[row - 1]?.[column - 1] ?? "",
    });
  }
  return cells;
}

/** The column of a header. Where two bear it, the one that is read as what was written, or stands there. */
function columnIn(
  { records, timetable }: RecordsNow,
  table: number,
  { header, task, after, cell }: LogEntry,
): number | null {
  const columns = records.columns
    .filter((one) => one.table === table && one.header === header)
    .map(({ column }) => column + 1);
  if (columns.length < 2) return columns[0] ?? null;
  const what = after instanceof Date ? "day" : "count";
  const read = columnReadAs(records, table, `step ${stepKeyOf(timetable, task)} ${what}`);
  if (read !== null && read.header === header) return read.column;
  return columns.find((column) => column === rowAndColumn(cell)?.column) ?? null;
}

/**
 * The headers above the cells, and the batch's name in the row; of a line that is all ours, and blank
 * when it is taken back, itself and the lines above and below.
 */
function landmarksOf(
  { records, values }: RecordsNow,
  { table, row }: Candidate,
  cells: FoundAgain["cells"],
): readonly Landmark[] {
  const columns = cells.map(({ column }) => column);
  const name = columnReadAs(records, table, "fact batch");
  // In a new line of a log the name itself is one of the cells.
  const isWhole = name !== null && columns.includes(name.column);
  const around = records.columns
    .filter((one) => one.table === table)
    .flatMap(({ column }) =>
      [row - 1, row, row + 1].map((at) => ({ row: at, column: column + 1 })),
    );
  const named = isWhole ? around : name === null ? [] : [{ row, column: name.column }];
  return [...named, ...headerCells(records, table, columns)].map((cell) => ({
    ...cell,
    value: values[cell.row - 1]?.[cell.column - 1] ?? "",
  }));
}

/** The cells of a table's header above some columns. */
export function headerCells(
  { tables }: RecordsNow["records"],
  table: number,
  columns: readonly number[],
): readonly { readonly row: number; readonly column: number }[] {
  const header = tables[table];
  if (header === undefined) return [];
  return columns.flatMap((column) =>
    Array.from({ length: header.headerHeight }, (_, at) => ({
      row: header.headerRow + at,
      column,
    })),
  );
}
