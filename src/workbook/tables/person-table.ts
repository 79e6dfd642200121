import type { WritingFault } from "../../wording/writing-codes";
import { cellName, rowAndColumn } from "../host/cell-name";
import { WritingError } from "../host/writing-error";
import type { RecordsNow } from "../reading/records-tab";
import { type CellWrite, type Landmark, sameValue, type TableMarks } from "../writing/table-write";
import type { LogEntry } from "../writing/write-log";

/**
 * A table of the person's that we write into, as it stands now. Whatever a table holds, a row of it is
 * found again, marked, asked about, written and taken back in one way; what differs is told here.
 */
export interface PersonTable extends Pick<RecordsNow, "sheet" | "door" | "values"> {
  readonly areas: readonly TableArea[];
  /** Rows that may be the one that was written, by what its line in the log is about. */
  rowsOf(first: LogEntry): readonly TableRow[];
  /** What is said where there is none. @param cells where the write was */
  gone(first: LogEntry, cells: readonly string[]): WritingFault;
  /** What somebody has put since into a row that is all ours, beside the cells that we wrote. */
  beside(row: number, written: readonly number[]): FoundAgain["ownBeside"];
}

/** A part of a tab under one header. Rows and columns from 1. */
export interface TableArea {
  readonly headerRows: readonly number[];
  /** Those that are read. */
  readonly columns: readonly number[];
  /** The one with the names of batches or orders; null where there is none. */
  readonly nameColumn: number | null;
  /** The columns that bear a header. */
  under(header: string): readonly number[];
  /** Of several with one header, the one that is read as what was written; null where that tells none. */
  readAs(entry: LogEntry): number | null;
}

export interface TableRow {
  readonly area: TableArea;
  readonly row: number;
}

/** The cells of a write, where they stand by now. */
export interface FoundAgain extends TableMarks {
  /** One a log line, the name last; what stands there is what the write put there. */
  readonly cells: readonly FoundCell[];
  /** What stands in the row beside them, where it was blank; where the whole row is ours. */
  readonly ownBeside: readonly {
    readonly header: string;
    readonly cell: string;
    readonly holds: unknown;
  }[];
}

type FoundCell = CellWrite & { readonly entry: LogEntry; readonly holds: unknown };

/**
 * Finds the cells of one write again: the row by its name, the column by its header, since rows and
 * columns may have been put in, taken out or sorted since.
 *
 * Of several lines that a log has for one job, the one that holds what was written is taken.
 *
 * @param entries the cells of one write, all of one tab
 * @throws WritingError when the row or a column is not there any more, or two could be meant
 */
export function findAgain(table: PersonTable, entries: readonly LogEntry[]): FoundAgain {
  const first = entries[0];
  if (first === undefined) return NOTHING_FOUND;
  const rows = table.rowsOf(first);
  const placed = rows.flatMap((one) => {
    const cells = cellsIn(table, one, entries);
    return cells === null ? [] : [{ ...one, cells }];
  });
  if (placed.length === 0) {
    const was = entries.map(({ cell }) => cell);
    const lost = entries.filter((entry) =>
      table.areas.every((area) => columnOf(area, entry) === null),
    );
    if (rows.length === 0 && lost.length === 0) throw new WritingError(table.gone(first, was));
    const headers = (lost.length === 0 ? entries : lost).map(({ header }) => header);
    throw new WritingError({ code: "columnsGone", headers, cells: was });
  }
  const chosen = chosenRow(placed, first);
  const { area, row, cells } = chosen;
  const written = cells.map(({ column }) => column);
  const isName = ({ column }: FoundCell) => column === area.nameColumn;
  const isWhole = cells.some(isName);
  return {
    // Without its name a row that is blanked in part could not be found.
    cells: [...cells.filter((cell) => !isName(cell)), ...cells.filter(isName)],
    ...marksOf(table, chosen, { written, rows: isWhole ? "whole" : "there" }),
    ownBeside: isWhole ? table.beside(row, written) : [],
  };
}

const NOTHING_FOUND: FoundAgain = {
  cells: [],
  landmarks: [],
  headerRows: [],
  nameColumn: null,
  ownBeside: [],
};

/**
 * What must be where it was when the cells of a row are written: the header above them, and the row's
 * name. A row that is new, or goes whole, has none of its own: then the rows beside it stand for it.
 */
export function marksOf(
  { values }: Pick<PersonTable, "values">,
  { area: { headerRows, columns, nameColumn }, row }: TableRow,
  { written, rows }: { readonly written: readonly number[]; rows: "there" | "new" | "whole" },
): TableMarks {
  const marked = (rows: readonly number[], columns: readonly number[]) =>
    rows.flatMap((row) =>
      columns.map(
        (column): Landmark => ({ row, column, value: values[row - 1]?.[column - 1] ?? "" }),
      ),
    );
  const blank = columns.filter((column) => !written.includes(column));
  const around = {
    there: () => marked([row], nameColumn === null ? [] : [nameColumn]),
    new: () => [...marked([row - 1], columns), ...marked([row], blank)],
    whole: () => marked([row - 1, row, row + 1], columns),
  }[rows]();
  const headed = rows === "there" ? written : [...written, ...blank];
  return { landmarks: [...around, ...marked(headerRows, headed)], headerRows, nameColumn };
}

/** Of several rows the one that holds what was written, else the one in which it was. */
function chosenRow<Row extends { readonly row: number; readonly cells: readonly FoundCell[] }>(
  placed: readonly Row[],
  first: LogEntry,
): Row {
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

/** The entries' cells in a row; null when it lacks one of the columns. */
function cellsIn(
  { values }: PersonTable,
  { area, row }: TableRow,
  entries: readonly LogEntry[],
): readonly FoundCell[] | null {
  const cells: FoundCell[] = [];
  for (const entry of entries) {
    const column = columnOf(area, entry);
    if (column === null) return null;
    cells.push({
      entry,
      row,
      column,
      cell: cellName({ row, column }),
      before: entry.after,
      after: entry.before,
      holds: values[row - 1]?.[column - 1] ?? "",
    });
  }
  return cells;
}

/** The column of an entry's header. Where two bear it, the one that is read as what was written, or stands there. */
export function columnOf(area: TableArea, entry: LogEntry): number | null {
  const columns = area.under(entry.header);
  if (columns.length < 2) return columns[0] ?? null;
  const likely = [area.readAs(entry), rowAndColumn(entry.cell)?.column];
  return columns.find((column) => likely.includes(column)) ?? null;
}
