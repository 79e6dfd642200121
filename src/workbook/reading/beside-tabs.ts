import {
  NO_PRICES,
  type PricesReading,
  placeTable,
  priceTable,
  samplesTable,
  tabNames,
} from "../../core";
import type { Door } from "../../door/index";
import { type OtherTab, otherTabs, tableTab, toldSheet } from "../tabs/find-tab";
import type { RecordsNow } from "./records-tab";

type Sheet = GoogleAppsScript.Spreadsheet.Sheet;
/** Tabs that hold other tables; one that was told is taken all the same. */
type Taken = readonly (Sheet | null)[];

/** The tab that says how much places hold, as told or found; null where there is none. */
export function placesTab(door: Door, tabs: readonly OtherTab[], taken: Taken = []): Sheet | null {
  const told = toldSheet(tabs, door, "places");
  if (told !== undefined) return told;
  return tableTab(free(tabs, taken), tabNames("places"), (head, isCalledSo) =>
    columnsIn(placeTable(door.beside("places", head), !isCalledSo)),
  );
}

/** The tab with prices of items and hours, as told or found; null where there is none. */
export function pricesTab(door: Door, tabs: readonly OtherTab[], taken: Taken = []): Sheet | null {
  const told = toldSheet(tabs, door, "prices");
  if (told !== undefined) return told;
  // Items with a price stand in many lists; nobody else calls a tab so.
  return tableTab(free(tabs, taken), tabNames("prices"), (head, isCalledSo) =>
    isCalledSo ? columnsIn(priceTable(door.beside("prices", head))) : 0,
  );
}

/** The tab with samples of seed, a row an inspection, as told or found; null where there is none. */
export function germinationTab(
  door: Door,
  tabs: readonly OtherTab[],
  taken: Taken = [],
): Sheet | null {
  const told = toldSheet(tabs, door, "germination");
  if (told !== undefined) return told;
  return tableTab(free(tabs, taken), tabNames("germination"), (head, isCalledSo) => {
    const columnOf = samplesTable(door.beside("germination", head))?.columnOf ?? {};
    const isCounted = "up" in columnOf || "soFar" in columnOf;
    // A batch, a day and a count stand in many a log.
    const isSamples = isCalledSo || ("sample" in columnOf && "sown" in columnOf);
    return isCounted && isSamples ? Object.keys(columnOf).length : 0;
  });
}

/** What the tab with prices says; none where there is none. @throws InputError where it can't be read */
export function pricesNow(now: RecordsNow): PricesReading {
  const sheet = pricesTab(now.door, tabsBeside(now));
  return sheet === null
    ? NO_PRICES
    : now.door.prices(sheet.getDataRange().getValues(), now.records.words);
}

/** The tabs in which a table beside the records may stand. */
export function tabsBeside({ workbook, settings }: RecordsNow): readonly OtherTab[] {
  return otherTabs(workbook, settings.recordsTab);
}

function free(tabs: readonly OtherTab[], taken: Taken): readonly OtherTab[] {
  return tabs.filter(({ sheet }) => !taken.includes(sheet));
}

function columnsIn(table: { readonly columnOf: object } | null): number {
  return Object.keys(table?.columnOf ?? {}).length;
}
