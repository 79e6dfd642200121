import { cellText, quoted } from "../../core";
import * as text from "../../sentences/made/order-writes";
import type { RecordsNow } from "../reading/records-tab";
import type { OrdersTable } from "./orders-tab";

const isBlank = (value: unknown) => value === undefined || value === "" || value === false;

/**
 * The row below the last order, from 1.
 *
 * @throws Error when something else of the table stands there or farther below, such as a sum, which
 * would not hold the new order
 */
export function roomBelow({ door, asOf }: RecordsNow, table: OrdersTable): number {
  const { values, headerRow, sheet } = table;
  const last = Math.max(headerRow + 1, ...door.orders(values, asOf).rows);
  const { first, end } = columnsSpanned(table);
  for (let row = last + 1; row <= values.length; row += 1) {
    const cells = (values[row - 1] ?? []).slice(first, end);
    const filled = cells.find((value) => !isBlank(value) && String(value).trim() !== "");
    if (filled === undefined) continue;
    const shown = quoted(cellText(door.cell(filled)));
    throw new Error(text.below({ row: String(row), tab: sheet.getName(), shown }));
  }
  return last + 1;
}

/** Columns of the table, from 0: those that are known, and what stands beside them without a gap. */
export function columnsSpanned({ values, headerRow, columnOf }: OrdersTable): {
  readonly first: number;
  readonly end: number;
} {
  const header = values[headerRow] ?? [];
  const known = Object.values(columnOf);
  let first = Math.min(...known);
  let end = Math.max(...known) + 1;
  while (first > 0 && !isBlank(header[first - 1])) first -= 1;
  while (!isBlank(header[end])) end += 1;
  return { first, end };
}
