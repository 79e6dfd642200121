import { crewRemarks, InputError, readSamples, tabNames } from "../../core";
import * as check from "../../sentences/made/check";
import type { CheckRow } from "../../wire/check";
import { errorSentence } from "../../wording/errors";
import { ordersRemarks } from "../../wording/order-tables";
import { workRemarks } from "../../wording/work-remarks";
import { germinationTab, placesTab, pricesTab, tabsBeside } from "../reading/beside-tabs";
import type { RecordsNow } from "../reading/records-tab";
import { ordersTab } from "../tables/orders-tab";
import type { OtherTab } from "../tabs/find-tab";
import { beginsAsOurs } from "../tabs/own-tabs";
import { crewAsCalled } from "../work/called-crew";
import { crewTabs } from "../work/crew-tabs";

type Sheet = GoogleAppsScript.Spreadsheet.Sheet;

/** About no cell of the records. */
export const NO_CELL = {
  code: null,
  rows: [],
  tab: null,
  plants: null,
  column: "",
  isReading: false,
} as const;

/** A table beside the records, where the workbook has it. */
interface Beside {
  readonly sheet: Sheet | null;
  /** What it may be called; a tab of such a name that is no such table is one of which nothing is read. */
  readonly names: readonly string[];
  /** A sentence for each thing that can't be read. @throws InputError where nothing can */
  readonly said: (sheet: Sheet) => readonly (string | null)[];
  readonly without: () => string;
}

/** What can't be read of the tables beside the records, which no column of the records tells. */
export function besideTroubles(now: RecordsNow): readonly CheckRow[] {
  const tabs = tabsBeside(now);
  return besideTables(now, tabs).flatMap(({ sheet, names, said, without }): CheckRow[] => {
    const found = sheet ?? calledSo(tabs, names);
    if (found === null) return [];
    const tab = found.getName();
    return sentencesOf(() => said(found)).map((trouble) => ({
      ...NO_CELL,
      tab,
      found: "",
      trouble,
      whatHappens: without(),
      whatToDo: check.correctTab({ tab }),
    }));
  });
}

function besideTables(now: RecordsNow, tabs: readonly OtherTab[]): readonly Beside[] {
  const { workbook, door, settings, records, asOf } = now;
  const { crew, closed } = crewTabs(workbook, door, settings.recordsTab);
  const orders = ordersTab(workbook, door, settings.recordsTab);
  const taken = [crew, closed, orders];
  const valuesOf = (sheet: Sheet) => sheet.getDataRange().getValues();
  const saidOf = (remarks: Parameters<typeof workRemarks>[0]) =>
    remarks.map((one) => workRemarks([one], "page"));
  return [
    {
      sheet: orders,
      names: tabNames("orders"),
      said: (sheet) =>
        door
          .orders(valuesOf(sheet), asOf, records.words)
          .remarks.map((one) => ordersRemarks([one], "page")),
      without: check.withoutOrders,
    },
    {
      sheet: crew,
      names: tabNames("crew"),
      said: (sheet) => saidOf(crewRemarks(crewAsCalled(now, sheet, true))),
      without: check.withoutWork,
    },
    {
      sheet: closed,
      names: tabNames("closedDays"),
      said: (sheet) => saidOf(door.closedDays(valuesOf(sheet), asOf).troubles),
      without: check.withoutWork,
    },
    {
      sheet: placesTab(door, tabs, taken),
      names: tabNames("places"),
      said: (sheet) => saidOf(door.places(valuesOf(sheet), records.words).troubles),
      without: check.withoutPlaces,
    },
    {
      sheet: pricesTab(door, tabs, taken),
      names: tabNames("prices"),
      said: (sheet) => saidOf(door.prices(valuesOf(sheet), records.words).troubles),
      without: check.withoutPrices,
    },
    {
      sheet: germinationTab(door, tabs, taken),
      // Days and counts alone, for the function's other way, stand in tabs of such a name too.
      names: [],
      said: (sheet) =>
        saidOf(readSamples(door.beside("germination", valuesOf(sheet)), door.habits()).troubles),
      without: check.withoutGermination,
    },
  ];
}

function calledSo(tabs: readonly OtherTab[], names: readonly string[]): Sheet | null {
  const isTable = ({ sheet, name }: OtherTab) =>
    names.includes(name) &&
    sheet.getLastRow() > 1 &&
    !beginsAsOurs(sheet.getRange(1, 1).getValue());
  return tabs.find(isTable)?.sheet ?? null;
}

function sentencesOf(said: () => readonly (string | null)[]): readonly string[] {
  try {
    return said().flatMap((one) => one ?? []);
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    return [errorSentence(error, "page")];
  }
}
