import {
  InputError,
  ORDER_HEADER,
  type OrderField,
  type Orders,
  orderTable,
  tabNames,
} from "../../core";
import { type Door, openDoor } from "../../door/index";
import * as text from "../../sentences/made/order-tabs";
import { workbookHost } from "../host/workbook-host";
import { columnsArgument, type RecordsNow } from "../reading/records-tab";
import { readSettings } from "../settings/settings";
import { otherTabs, tableTab, toldSheet } from "../tabs/find-tab";
import { ORDERS_TAB } from "../tabs/own-tabs";
import { DAY_FORMAT } from "../tabs/tab-content";
import { makeTabToFill } from "../tabs/tab-to-fill";

type Sheet = GoogleAppsScript.Spreadsheet.Sheet;

/** An orders table in its tab, rows and columns from 0 as in the values. */
export interface OrdersTable {
  readonly sheet: Sheet;
  readonly values: readonly (readonly unknown[])[];
  readonly headerRow: number;
  readonly columnOf: Readonly<Partial<Record<OrderField, number>>>;
}

/**
 * The tab with the orders; null where there is none. A tab that is called otherwise must name orders,
 * or customers and what they were given, since a number and a day stand in many tables.
 *
 * @param recordsTab is never taken for it
 */
export function ordersTab(
  workbook: GoogleAppsScript.Spreadsheet.Spreadsheet,
  door: Door,
  recordsTab: string,
): Sheet | null {
  const tabs = otherTabs(workbook, recordsTab);
  const told = toldSheet(tabs, door, "orders");
  if (told !== undefined) return told;
  return tableTab(tabs, tabNames("orders"), (head, isCalledSo) => {
    const columnOf: OrdersTable["columnOf"] =
      orderTable(door.beside("orders", head), !isCalledSo)?.columnOf ?? {};
    const has = (field: OrderField) => columnOf[field] !== undefined;
    const isOrders = has("order") || (has("customer") && (has("delivered") || has("closed")));
    return isCalledSo || isOrders ? Object.keys(columnOf).length : 0;
  });
}

/** The orders of the workbook as they stand now; null where it has none. */
export function ordersNow({ workbook, door, settings }: RecordsNow): OrdersTable | null {
  const sheet = ordersTab(workbook, door, settings.recordsTab);
  return sheet === null ? null : ordersIn(sheet, door);
}

/** The orders table of a tab; null where it has none. */
export function ordersIn(sheet: Sheet, door: Door): OrdersTable | null {
  const values = sheet.getDataRange().getValues();
  const table = orderTable(door.beside("orders", values));
  return table === null ? null : { sheet, values, ...table };
}

/** The orders as they are read; null where there are none, or none that can be read as yet. */
export function ordersRead(
  table: OrdersTable | null,
  { door, asOf, records }: Pick<RecordsNow, "door" | "asOf" | "records">,
): Orders | null {
  try {
    return table === null ? null : door.orders(table.values, asOf, records.words);
  } catch (error) {
    if (error instanceof InputError) return null;
    throw error;
  }
}

/** Makes an empty tab of orders; where there is one already, it is shown. */
export function makeOrdersTab(): { tab: string } {
  return makeTabToFill(
    {
      name: ORDERS_TAB,
      header: Object.values(ORDER_HEADER),
      what: text.orders(),
      how: text.howOrders({ variety: ORDER_HEADER.variety, closed: ORDER_HEADER.closed }),
      widths: [100, 150, 170, 80, 100, 80, 90],
      formats: { [Object.keys(ORDER_HEADER).indexOf("by")]: DAY_FORMAT },
    },
    (workbook) => {
      const settings = readSettings(workbook);
      const door = openDoor(workbookHost(), columnsArgument(settings?.columns ?? []));
      return ordersTab(workbook, door, settings?.recordsTab ?? "");
    },
  );
}
