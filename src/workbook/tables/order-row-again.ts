import { cellText } from "../../core";
import type { Door } from "../../door/index";
import { cellName, rowAndColumn } from "../host/cell-name";
import { WritingError } from "../host/writing-error";
import type { Landmark } from "../writing/table-write";
import type { LogEntry } from "../writing/write-log";
import { cellsOf, chosenRow, type FoundAgain, NOTHING_FOUND } from "./find-again";
import { columnsSpanned } from "./orders-end";
import type { OrdersTable } from "./orders-tab";

/** Stands as the task in the log's lines of an order; in brackets, since no step is called so. */
export const NEW_ORDER = "(new order)";

/**
 * Finds the row of an order that we wrote again: by its name, and the columns by their headers.
 *
 * @param entries the cells of one write, the name first
 * @throws WritingError when it is not there any more, or two could be meant
 */
export function orderRowAgain(
  table: OrdersTable,
  door: Door,
  entries: readonly LogEntry[],
): FoundAgain {
  const [first] = entries;
  if (first === undefined) return NOTHING_FOUND;
  const { values, headerRow } = table;
  const columns = entries.map((entry) => columnIn(table, door, entry));
  const missing = entries.filter((_, at) => columns[at] === null);
  if (missing.length > 0) {
    const headers = missing.map(({ header }) => header);
    throw new WritingError({ code: "columnsGone", headers, cells: cellsOf(entries) });
  }
  const placed = values.flatMap((cells, at) => {
    const name = cellText(door.cell(cells[columns[0] as number]));
    if (at <= headerRow || name !== cellText(first.batch)) return [];
    return [{ row: at + 1, cells: cellsIn(at + 1) }];
  });
  if (placed.length === 0) {
    throw new WritingError({ code: "orderGone", order: first.batch, cells: cellsOf(entries) });
  }
  const { row, cells } = chosenRow(placed, first);
  return {
    // The name last: without it a row that is blanked in part could not be found.
    cells: [...cells].reverse(),
    landmarks: landmarksOf(table, row),
    headerRows: [headerRow + 1],
    nameColumn: (columns[0] as number) + 1,
    ownBeside: besideIn(table, row, columns),
  };

  function cellsIn(row: number): FoundAgain["cells"] {
    return entries.map((entry, at) => {
      const column = (columns[at] as number) + 1;
      return {
        entry,
        row,
        column,
        cell: cellName({ row, column }),
        before: entry.after,
        after: entry.before,
        holds: values[row - 1]?.[column - 1] ?? "",
      };
    });
  }
}

/** The header, the order itself, and the orders above and below it, since its own row is blanked. */
function landmarksOf({ values, headerRow, columnOf }: OrdersTable, row: number): Landmark[] {
  const rows = new Set([headerRow + 1, row - 1, row, row + 1]);
  return [...rows].flatMap((at) =>
    Object.values(columnOf).map((column) => ({
      row: at,
      column: column + 1,
      value: values[at - 1]?.[column] ?? "",
    })),
  );
}

/** Column, from 0, of an entry's header; where two bear it, the one that was written; null if none. */
function columnIn(
  { values, headerRow }: OrdersTable,
  door: Door,
  { header, cell }: LogEntry,
): number | null {
  const alike = (values[headerRow] ?? []).flatMap((value, column) =>
    cellText(door.cell(value)) === header ? [column] : [],
  );
  if (alike.length < 2) return alike[0] ?? null;
  return alike.find((column) => column + 1 === rowAndColumn(cell)?.column) ?? null;
}

/** What somebody has put into the row since, and not by a formula. */
function besideIn(
  table: OrdersTable,
  row: number,
  written: readonly (number | null)[],
): FoundAgain["ownBeside"] {
  const { sheet, values, headerRow } = table;
  const { first, end } = columnsSpanned(table);
  return (values[row - 1] ?? []).slice(first, end).flatMap((holds, at) => {
    const column = first + at;
    if (written.includes(column) || holds === "" || holds === false) return [];
    if (sheet.getRange(row, column + 1).getFormula() !== "") return [];
    const header = String(values[headerRow]?.[column]);
    return [{ header, cell: cellName({ row, column: column + 1 }), holds }];
  });
}
