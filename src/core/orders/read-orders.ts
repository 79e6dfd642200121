import { cellText, type Grid, isBlank } from "../cells/cell";
import { type HeadedTable, headedTable } from "../cells/headed-table";
import { quoted } from "../cells/quoted";
import { errorShown, isLoading } from "../cells/upstream";
import { sentenceDay } from "../dates/day-text";
import { dayColumnReader } from "../dates/read-day-column";
import { settleYear } from "../dates/settle-year";
import { InputError } from "../input-error";
import { type CellReaders, cellReaders, type ReadingHabits } from "../records/cell-readers";
import type { ColumnMatch } from "../records/match-columns";
import type { Trouble } from "../records/trouble";
import type { Order, Orders } from "./order";
import { ORDER_COLUMN, type OrderField, orderWords } from "./order-columns";

const NO_NAME = "(no name)";
/** So many rows are said with their reason; of more the row alone. */
const ROWS_SAID = 10;

/** Where the columns of an orders table stand; null where the grid has no header of one. */
export function orderTable(grid: Grid): HeadedTable<OrderField> | null {
  return headedTable(grid, orderWords(), ["wanted", "by"]);
}

/**
 * Reads the orders of a nursery. A row without a readable number wanted or day is left out; what
 * can't be read of Delivered or Closed counts as none delivered, and open. Both are said.
 *
 * @throws InputError "no-header"; "not-ready-yet" when a cell that it reads is still loading
 */
export function readOrders(grid: Grid, habits: ReadingHabits): Orders {
  const table = orderTable(grid);
  if (table === null) {
    throw new InputError(
      "no-header",
      `orders has no header row with Wanted and By in its first ten rows; it starts with ${startOf(grid)}`,
    );
  }
  const troubles: Trouble[] = [];
  const read = orderReader({ grid, table, habits, troubles });
  const open: Order[] = [];
  const notes: string[] = [];
  const leftOut: string[] = [];
  const rows: number[] = [];
  for (const row of table.rows) {
    if (onlyUnticked(grid, row)) continue;
    troubles.length = 0;
    const order = read(row);
    const reasons = troubles.map(
      ({ column, trouble, whatHappens }) =>
        `${column}: ${/^Read as/.test(whatHappens) ? lower(whatHappens) : lower(trouble)}`,
    );
    if (order === "closed") rows.push(row + 1);
    else if (typeof order === "string") {
      leftOut.push(`row ${row + 1} (${[...reasons, ...(order === "" ? [] : [order])].join(", ")})`);
    } else {
      open.push(order);
      rows.push(row + 1);
      if (reasons.length > 0) notes.push(`row ${row + 1} (${reasons.join(", ")})`);
    }
  }
  open.sort(asServed);
  return { open, rows, remark: remarkOf(leftOut, notes) };
}

/** A column of tick boxes reaches below the last order. */
function onlyUnticked(grid: Grid, row: number): boolean {
  for (let column = 0; column < grid.columnCount; column += 1) {
    const cell = grid.at(row, column);
    if (cell !== false && !isBlank(cell)) return false;
  }
  return true;
}

type RowRead = Order | "closed" | string;

/** Reads one row: an order, "closed", or why it is no order ("" where the troubles say it). */
function orderReader({
  grid,
  table,
  habits,
  troubles,
}: {
  readonly grid: Grid;
  readonly table: HeadedTable<OrderField>;
  readonly habits: ReadingHabits;
  readonly troubles: Trouble[];
}): (row: number) => RowRead {
  const cells: CellReaders = cellReaders(grid, habits, troubles);
  const match = (field: OrderField): ColumnMatch | undefined => {
    const column = table.columnOf[field];
    if (column === undefined) return undefined;
    return { table: 0, column, header: ORDER_COLUMN[field], target: null, sureness: 4, others: [] };
  };
  const days = (field: OrderField) =>
    dayColumnReader(() => table.rows.map((row) => table.cell(row, field)), {
      usualOrder: () => habits.localeOrder,
      asOf: habits.asOf,
    });
  const by = days("by");
  const closed = days("closed");
  const dayIn = (row: number) => {
    const column = match("by") as ColumnMatch;
    const day = cells.day(row, column, by.read);
    if (day === null || typeof day === "number" || habits.asOf === null) return day;
    const settled = settleYear(day, { neighbours: [habits.asOf], sectionYear: null, asOf: null });
    if (settled === null) cells.listUnread(row, column, "a date without a year");
    else cells.listReading(row, column, sentenceDay(settled));
    return settled;
  };
  return (row) => {
    refuseLoading(table, row);
    if (cells.yes(row, match("closed"), closed.read)) return "closed";
    const wanted = cells.count(row, match("wanted"), null);
    const day = dayIn(row);
    const delivered = cells.count(row, match("delivered"), null) ?? 0;
    const variety = table.cell(row, "variety");
    // An order whose variety shows an error must not pass for one that takes any.
    const shown = errorShown(variety);
    if (shown !== null) return `Variety shows ${shown}`;
    if (wanted === null) return isBlank(table.cell(row, "wanted")) ? "Wanted is blank" : "";
    if (wanted === 0) return "Wanted is 0";
    if (typeof day !== "number") return isBlank(table.cell(row, "by")) ? "By is blank" : "";
    const customer = cells.text(row, match("customer"));
    return {
      name: cells.text(row, match("order")) || customer || NO_NAME,
      customer,
      variety: cellText(variety),
      wanted,
      by: day,
      delivered,
    };
  };
}

function refuseLoading(table: HeadedTable<OrderField>, row: number): void {
  for (const field of Object.keys(table.columnOf) as OrderField[]) {
    if (isLoading(table.cell(row, field))) {
      throw new InputError(
        "not-ready-yet",
        `orders row ${row + 1}, ${ORDER_COLUMN[field]}, is still loading`,
      );
    }
  }
}

/** By day; of one day by name, and then by what else they say, so that the rows' order tells nothing. */
function asServed(a: Order, b: Order): number {
  if (a.by !== b.by) return a.by - b.by;
  const [one, other] = [a, b].map(({ name, variety, wanted, delivered, customer }) =>
    [name, variety, wanted, delivered, customer].join("\n"),
  ) as [string, string];
  return one < other ? -1 : one > other ? 1 : 0;
}

function remarkOf(leftOut: readonly string[], notes: readonly string[]): string | null {
  const sentences: string[] = [];
  if (leftOut.length > 0) {
    sentences.push(
      `${leftOut.length} ${leftOut.length === 1 ? "row" : "rows"} of orders left out: ${list(leftOut)}`,
    );
  }
  if (notes.length > 0) sentences.push(`Orders used, but not all of their cells: ${list(notes)}`);
  return sentences.length === 0 ? null : sentences.join(". ");
}

function list(rows: readonly string[]): string {
  const short = rows.slice(ROWS_SAID).map((row) => row.replace(/ \(.*$/s, ""));
  return [...rows.slice(0, ROWS_SAID), ...short].join("; ");
}

function lower(text: string): string {
  return text.charAt(0).toLowerCase() + text.slice(1);
}

function startOf(grid: Grid): string {
  const cell = grid.at(0, 0);
  return isBlank(cell) ? "a blank cell" : (errorShown(cell) ?? quoted(cellText(cell)));
}
