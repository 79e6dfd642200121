import { NO_PRICES, type PricesReading, placeTable, priceTable, tabNames } from "../../core";
import { type OtherTab, otherTabs, tableTab } from "../tabs/find-tab";
import type { RecordsNow } from "./records-tab";

type Sheet = GoogleAppsScript.Spreadsheet.Sheet;

/** The tab that says how much places hold; null where there is none. */
export function placesTab(now: RecordsNow, tabs: readonly OtherTab[] = tabsOf(now)): Sheet | null {
  return tableTab(tabs, tabNames("places"), (head, isCalledSo) =>
    columnsIn(placeTable(now.door.beside("places", head), !isCalledSo)),
  );
}

/** The tab with prices of items and hours; null where there is none. */
export function pricesTab(now: RecordsNow, tabs: readonly OtherTab[] = tabsOf(now)): Sheet | null {
  // Items with a price stand in many lists; nobody else calls a tab so.
  return tableTab(tabs, tabNames("prices"), (head, isCalledSo) =>
    isCalledSo ? columnsIn(priceTable(now.door.beside("prices", head))) : 0,
  );
}

/** What that tab says; none where there is none. @throws InputError where it can't be read */
export function pricesNow(now: RecordsNow): PricesReading {
  const sheet = pricesTab(now);
  return sheet === null ? NO_PRICES : now.door.prices(sheet.getDataRange().getValues());
}

function tabsOf({ workbook, settings }: RecordsNow): readonly OtherTab[] {
  return otherTabs(workbook, settings.recordsTab);
}

function columnsIn(table: { readonly columnOf: object } | null): number {
  return Object.keys(table?.columnOf ?? {}).length;
}
