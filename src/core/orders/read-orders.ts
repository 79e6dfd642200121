import {
  cellText,
  dayColumnReader,
  errorShown,
  type Grid,
  isBlank,
  isLoading,
  shortened,
} from "../cells";
import { InputError } from "../faults";
import { commonestSpellings, nearAlike } from "../names";
import {
  type ColumnMatch,
  cellReaders,
  type ReadingHabits,
  type ToldWords,
  type Trouble,
} from "../records";
import {
  type BesideRead,
  besideTable,
  columnRemarks,
  type HeadedTable,
  tableAt,
  withoutDittos,
} from "../tables";
import type { Order, Orders } from "./order";
import { type OrderField, orderWords } from "./order-columns";
import type { OrderRowTroubles, OrdersRemark, OrderTrouble } from "./order-remark";
import { varietyAsTold } from "./wishes";

/**
 * Where the columns of an orders table stand; null where the grid has no header of one.
 *
 * @param byWordsAlone whether what columns hold counts for nothing, as where it is asked if it is one at all
 */
export function orderTable(grid: Grid, byWordsAlone?: boolean): BesideRead<OrderField> | null {
  const words = orderWords();
  return besideTable(grid, { kind: "orders", words, required: ["wanted", "by"], byWordsAlone });
}

/**
 * Reads the orders of a nursery. A row without a readable number wanted or day is left out; what
 * can't be read of Delivered or Closed counts as none delivered, and open. Both are said.
 *
 * @throws InputError "no-orders-header"; "row-not-ready" when a cell that it reads is still loading
 */
export function readOrders(
  written: Grid,
  habits: ReadingHabits & { readonly words?: ToldWords | undefined },
): Orders {
  const found = orderTable(written);
  if (found === null) {
    throw new InputError({ code: "no-orders-header", start: startOf(written) });
  }
  const { grid, remarks: ofDittos } = withoutDittos(written, "orders", {
    table: found,
    fields: ["customer", "variety", "crop"],
  });
  const table = { ...found, ...tableAt(grid, found.headerRow, found.columnOf) };
  const read = orderReader(grid, table, habits);
  const nameOf = habits.words?.nameOf ?? ((word) => word);
  const open: Order[] = [];
  const noted: OrderRowTroubles[] = [];
  const leftOut: OrderRowTroubles[] = [];
  const rows: number[] = [];
  for (const row of table.rows) {
    if (onlyUnticked(grid, row)) continue;
    const { order, troubles } = read(row);
    const ofCells = troubles.flatMap((one): OrderTrouble[] => {
      const field = one.column as OrderField;
      if (one.code === "cell-unread") return [{ code: "cell-unread", field, why: one.why }];
      if (one.code === "cell-read-as") return [{ code: "cell-read-as", field, readAs: one.readAs }];
      return [];
    });
    if (order === "closed") rows.push(row + 1);
    else if (order === null) leftOut.push({ row: row + 1, troubles: ofCells });
    else if ("code" in order) leftOut.push({ row: row + 1, troubles: [...ofCells, order] });
    else {
      const customer = nameOf(order.customer);
      const name = order.name === order.customer ? customer : order.name;
      open.push({ ...order, name, customer, variety: varietyAsTold(order.variety, nameOf) });
      rows.push(row + 1);
      if (ofCells.length > 0) noted.push({ row: row + 1, troubles: ofCells });
    }
  }
  const customerOf = commonestSpellings(open.map(({ customer }) => customer));
  const orders = open.map((order): Order => {
    const customer = customerOf.get(order.customer) ?? "";
    return { ...order, customer, name: order.name === order.customer ? customer : order.name };
  });
  orders.sort(asServed);
  const near = nearAlike([...new Set(customerOf.values())].filter(Boolean)).filter(
    (pair) => habits.words?.isApart(...pair) !== true,
  );
  const remarks: OrdersRemark[] = [];
  if (leftOut.length > 0) remarks.push({ code: "orders-left-out", rows: leftOut });
  if (noted.length > 0) remarks.push({ code: "orders-noted", rows: noted });
  remarks.push(...ofDittos, ...columnRemarks("orders", table));
  if (near.length > 0)
    remarks.push({
      code: "customers-near",
      pairs: near.map(([one, other]) => [shortened(one), shortened(other)] as const),
    });
  return { open: orders, rows, remarks };
}

/** A column of tick boxes reaches below the last order. */
function onlyUnticked(grid: Grid, row: number): boolean {
  for (let column = 0; column < grid.columnCount; column += 1) {
    const cell = grid.at(row, column);
    if (cell !== false && !isBlank(cell)) return false;
  }
  return true;
}

/** Null where the troubles of its cells say why it is no order. */
type RowRead = Order | "closed" | OrderTrouble | null;

/** Reads one row: an order, "closed", or why it is no order. */
function orderReader(
  grid: Grid,
  table: HeadedTable<OrderField>,
  habits: ReadingHabits,
): (row: number) => { readonly order: RowRead; readonly troubles: readonly Trouble[] } {
  const cells = cellReaders(grid, habits);
  const match = (field: OrderField): ColumnMatch | undefined => {
    const column = table.columnOf[field];
    if (column === undefined) return undefined;
    return { table: 0, column, header: field, target: null, sureness: 4, others: [] };
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
    const day = cells.day(row, column, by);
    if (day === null || typeof day === "number" || habits.asOf === null) return day;
    return cells.settledDay(row, column, {
      day,
      neighbours: [habits.asOf],
      sectionYear: null,
      asOf: null,
    });
  };
  const blank = (row: number, field: OrderField): OrderTrouble | null =>
    isBlank(table.cell(row, field)) ? { code: "cell-blank", field } : null;
  const orderIn = (row: number): RowRead => {
    refuseLoading(table, row);
    if (cells.yes(row, match("closed"), closed.read)) return "closed";
    const wanted = cells.count(row, match("wanted"), null);
    const day = dayIn(row);
    const delivered = cells.count(row, match("delivered"), null) ?? 0;
    const variety = table.cell(row, "variety");
    // An order whose variety shows an error must not pass for one that takes any.
    for (const field of ["variety", "crop"] as const) {
      const shown = errorShown(table.cell(row, field));
      if (shown !== null) return { code: "cell-shows", field, shown };
    }
    if (wanted === null) return blank(row, "wanted");
    if (wanted === 0) return { code: "none-wanted" };
    if (typeof day !== "number") return blank(row, "by");
    const customer = cells.name(row, match("customer"));
    return {
      name: cells.text(row, match("order")) || customer,
      customer,
      variety: cellText(variety),
      crop: cells.text(row, match("crop")),
      wanted,
      by: day,
      delivered,
    };
  };
  return (row) => {
    const before = cells.troubles.length;
    const order = orderIn(row);
    return { order, troubles: cells.troubles.slice(before) };
  };
}

function refuseLoading(table: HeadedTable<OrderField>, row: number): void {
  for (const field of Object.keys(table.columnOf) as OrderField[]) {
    if (isLoading(table.cell(row, field))) {
      throw new InputError({
        code: "row-not-ready",
        argument: "orders",
        row: row + 1,
        shown: null,
      });
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

function startOf(grid: Grid): string | null {
  const cell = grid.at(0, 0);
  return isBlank(cell) ? null : (errorShown(cell) ?? shortened(cellText(cell)));
}
