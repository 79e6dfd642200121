import { cellText } from "../../core";
import type { Door } from "../../door/index";
import { cellName } from "../host/cell-name";
import { columnsSpanned } from "./orders-end";
import type { OrdersTable } from "./orders-tab";
import { columnOf, type FoundAgain, type PersonTable, type TableArea } from "./person-table";

/** Stands as the task in the log's lines of an order; in brackets, since no step is called so. */
export const NEW_ORDER = "(new order)";

/** The orders as a table that is written: the row of an order that we added is all ours. */
export function ordersTable(table: OrdersTable, door: Door): PersonTable {
  const { sheet, values, headerRow } = table;
  const area = ordersArea(table, door);
  return {
    sheet,
    door,
    values,
    areas: [area],
    rowsOf(first) {
      // An order's name is the first that is put down of it.
      const nameColumn = columnOf(area, first);
      if (nameColumn === null) return [];
      return values.flatMap((cells, at) => {
        const name = cellText(door.cell(cells[nameColumn - 1]));
        if (at <= headerRow || name !== cellText(first.batch)) return [];
        return [{ area: { ...area, nameColumn }, row: at + 1 }];
      });
    },
    gone: ({ batch: order }, cells) => ({ code: "orderGone", order, cells }),
    beside: (row, written) => besideIn(table, row, written),
  };
}

export function ordersArea({ values, headerRow, columnOf }: OrdersTable, door: Door): TableArea {
  const { order } = columnOf;
  return {
    headerRows: [headerRow + 1],
    columns: Object.values(columnOf).map((column) => column + 1),
    nameColumn: order === undefined ? null : order + 1,
    under: (header) =>
      (values[headerRow] ?? []).flatMap((value, at) =>
        cellText(door.cell(value)) === header ? [at + 1] : [],
      ),
    readAs: () => null,
  };
}

/** What somebody has put into the row since, and not by a formula. */
function besideIn(
  table: OrdersTable,
  row: number,
  written: readonly number[],
): FoundAgain["ownBeside"] {
  const { sheet, values, headerRow } = table;
  const { first, end } = columnsSpanned(table);
  const filled = (values[row - 1] ?? []).slice(first, end).flatMap((holds, at) => {
    const column = first + at + 1;
    return written.includes(column) || holds === "" || holds === false ? [] : [{ column, holds }];
  });
  if (filled.length === 0) return [];
  const [formulas = []] = sheet.getRange(row, first + 1, 1, end - first).getFormulas();
  return filled
    .filter(({ column }) => formulas[column - 1 - first] === "")
    .map(({ column, holds }) => ({
      header: String(values[headerRow]?.[column - 1]),
      cell: cellName({ row, column }),
      holds,
    }));
}
