import { type CivilDay, cellText, ORDER_HEADER } from "../../core";
import { wantedArgument } from "../../door/index";
import * as text from "../../sentences/made/order-writes";
import type { AddOrderAnswer, AddOrderRequest } from "../../wire/orders";
import { dayWords } from "../../wording/days";
import type { Asked } from "../../wording/writing-codes";
import { withLock } from "../host/lock";
import { fittingText } from "../host/safe-text";
import type { RecordsNow } from "../reading/records-tab";
import { roomBelow } from "../tables/orders-end";
import { type OrdersTable, ordersNow } from "../tables/orders-tab";
import { NEW_ORDER, ordersArea } from "../tables/orders-table";
import { marksOf } from "../tables/person-table";
import { type PlannedCell, plannedCell } from "../tables/planned-cell";
import { question, tooLong } from "../tables/questions";
import { settledNow } from "../tables/settle-log";
import { valuesWith } from "../tables/values-with";
import { writeUnlessAsked } from "../tables/write-asked";
import { dayLike, type Sample } from "../writing/column-form";
import type { CellWrite } from "../writing/table-write";
import type { CellContent } from "../writing/write-log";
import { nextOrderName } from "./next-order-name";
import { cellOf, NAMED_ON_PAGE } from "./planned-order";

/** Farther off than any plant is ordered for, or was. */
const MOST_DAYS_AWAY = 36_525;

type Entered = readonly (readonly [field: keyof typeof ORDER_HEADER, value: CellContent])[];

/**
 * Adds an order to the person's own table, in the row below the last one. Nothing is written while
 * something about it has to be asked.
 *
 * @throws Error in a sentence when it can't be written, or would not be read
 */
export function addOrder(request: AddOrderRequest): AddOrderAnswer {
  return withLock(() => {
    const { now, log } = settledNow();
    const table = ordersNow(now);
    if (table === null) throw new Error(text.noTab());
    const { door, asOf } = now;
    const wanted = wantedArgument(NAMED_ON_PAGE.wanted, door.cell(cellOf(request.wanted)));
    const by = door.day(NAMED_ON_PAGE.readyBy, request.by);
    if (Math.abs(by - asOf) > MOST_DAYS_AWAY) {
      throw new Error(text.farAway({ column: ORDER_HEADER.by, day: dayWords(by) }));
    }
    const texts = {
      order: request.order,
      customer: request.customer,
      variety: request.variety,
    };
    const [order = "", customer = "", variety = ""] = Object.values(texts).map(fittingText);
    const names = namesIn(table);
    const row = roomBelow(now, table);
    // The name is written first and blanked last: by it a row is known that was written in part.
    const entered: Entered = [
      ["order", order || nextOrderName(names.map(({ name }) => name))],
      ["customer", customer],
      ["variety", variety],
      ["wanted", wanted],
      ["by", dayLike(daysBy(now, table), row, by) ?? door.date(by)],
    ];
    const writes = plannedCells(table, row, entered);
    mustBeRead(now, { table, row, writes });
    const asked: readonly Asked[] = [
      ...sameName(table, names, order),
      ...(by < asOf
        ? [{ code: "beforeToday", day: dayWords(by), today: dayWords(asOf) } as const]
        : []),
      ...tooLong(texts),
    ];
    const marks = marksOf(
      table,
      { area: ordersArea(table, door), row },
      { written: writes.map(({ column }) => column), rows: "new" },
    );
    return writeUnlessAsked(
      { now, log, table },
      { writes, kept: [], asked: asked.map((ask) => question(ask)), marks },
      { sure: request.sure, who: "", first: () => showDayAsAbove(table, row) },
    );
  });
}

/** The days of the other orders, as their cells hold them and as they are read. */
function daysBy(
  { door }: RecordsNow,
  { values, headerRow, columnOf: { by } }: OrdersTable,
): readonly Sample<CivilDay>[] {
  return values.flatMap((cells, at): Sample<CivilDay>[] => {
    const value = by === undefined || at <= headerRow ? "" : (cells[by] ?? "");
    if (value === "") return [];
    try {
      return [{ row: at + 1, value, read: door.day(ORDER_HEADER.by, value) }];
    } catch {
      // What is no day tells nothing of how days are written.
      return [];
    }
  });
}

/**
 * A sheet shows a day in its own way; where the row above has another, that is what is read there. Done
 * while the row is blank: afterwards it might be another that has come to stand there.
 */
function showDayAsAbove({ sheet, values, headerRow, columnOf: { by } }: OrdersTable, row: number) {
  if (by === undefined || row - 2 <= headerRow) return;
  // A format of text, above a day that was typed as text, would show a number.
  if (!(values[row - 2]?.[by] instanceof Date)) return;
  try {
    const format = sheet.getRange(row - 1, by + 1).getNumberFormat();
    sheet.getRange(row, by + 1).setNumberFormat(format);
  } catch {
    // How its day looks is not worth a failure.
  }
}

/** Every name below the header, with its row from 1. */
function namesIn({ values, headerRow, columnOf: { order } }: OrdersTable) {
  return values.flatMap((cells, at) =>
    at > headerRow && order !== undefined ? [{ row: at + 1, name: cells[order] ?? "" }] : [],
  );
}

function sameName(
  { sheet }: OrdersTable,
  names: ReturnType<typeof namesIn>,
  order: string,
): Asked[] {
  const alike = (name: unknown) => cellText(String(name)).toLowerCase();
  const there = names.find(({ name }) => order !== "" && alike(name) === alike(order));
  if (there === undefined) return [];
  return [{ code: "nameAlready", order, row: String(there.row), tab: sheet.getName() }];
}

/** @throws Error that names the header to add when the table has no column for something entered */
function plannedCells(
  { sheet, values, headerRow, columnOf }: OrdersTable,
  row: number,
  entered: Entered,
): readonly PlannedCell[] {
  const tab = sheet.getName();
  const batch = String(entered[0]?.[1]);
  return entered.flatMap(([field, after]) => {
    const at = columnOf[field];
    if (after === "") return [];
    if (at === undefined) {
      throw new Error(
        text.noColumn({ tab, column: ORDER_HEADER[field], row: String(headerRow + 1) }),
      );
    }
    const header = cellText(String(values[headerRow]?.[at]));
    const cell = { row, column: at + 1, header };
    return [plannedCell({ tab, values }, cell, { batch, task: NEW_ORDER, after })];
  });
}

/** What is written must be read as the order that it is. */
function mustBeRead(
  { door, asOf }: RecordsNow,
  {
    table,
    row,
    writes,
  }: { readonly table: OrdersTable; readonly row: number; readonly writes: readonly CellWrite[] },
): void {
  const values = valuesWith(table.values, writes);
  if (door.orders(values, asOf as CivilDay).rows.includes(row)) return;
  throw new Error(text.notRead({ row: String(row), tab: table.sheet.getName() }));
}
