import { type BesideTable, NO_TAB, normalText } from "../../core";
import type { Door } from "../../door/index";
import { hasCells } from "../host/grid-tabs";
import { beginsAsOurs, OWN_TABS } from "./own-tabs";

type Workbook = GoogleAppsScript.Spreadsheet.Spreadsheet;
type Sheet = GoogleAppsScript.Spreadsheet.Sheet;

/** A header stands in one of these rows. */
const ROWS_LOOKED_AT = 10;

/** A tab in which a small table of the person's may stand, with its name in normal form. */
export interface OtherTab {
  readonly sheet: Sheet;
  readonly name: string;
}

/** Every tab but the records tab and those that bear the name of one of ours. */
export function otherTabs(workbook: Workbook, recordsTab: string): readonly OtherTab[] {
  const own: ReadonlySet<string> = new Set(Object.values(OWN_TABS));
  const named = workbook.getSheets().map((sheet) => ({ sheet, name: sheet.getName() }));
  return (
    named
      .filter(({ name }) => name !== recordsTab && !own.has(name))
      // Asked last, since every question costs time.
      .filter(({ sheet }) => hasCells(sheet))
      .map(({ sheet, name }) => ({ sheet, name: normalText(name) }))
  );
}

/** The tab in which a person told that a table stands; null for none, undefined where it is to be found. */
export function toldSheet(
  tabs: readonly OtherTab[],
  door: Pick<Door, "toldTab">,
  table: BesideTable,
): Sheet | null | undefined {
  const told = door.toldTab(table);
  if (told === NO_TAB) return null;
  return tabs.find(({ sheet }) => sheet.getName() === told)?.sheet;
}

/**
 * Finds the tab with a table: the one that is called so, else the one with most of its columns. The
 * heads of the tabs alone are read, and of those called otherwise only where it has to be.
 *
 * @param names     in normal form, the likeliest first
 * @param columnsOf how many of the table's columns a head has; 0 where it is none of its kind
 */
export function tableTab(
  tabs: readonly OtherTab[],
  names: readonly string[],
  columnsOf: (head: readonly (readonly unknown[])[], isCalledSo: boolean) => number,
): Sheet | null {
  const called = names.flatMap((wished) => tabs.filter(({ name }) => name === wished));
  for (const { sheet } of called) if (columnsIn(sheet, true) > 0) return sheet;
  let best: { readonly sheet: Sheet; readonly found: number } | null = null;
  for (const tab of tabs) {
    const found = called.includes(tab) ? 0 : columnsIn(tab.sheet, false);
    if (found > (best?.found ?? 0)) best = { sheet: tab.sheet, found };
  }
  return best?.sheet ?? null;

  function columnsIn(sheet: Sheet, isCalledSo: boolean): number {
    const head = headOf(sheet);
    return beginsAsOurs(head[0]?.[0]) ? 0 : columnsOf(head, isCalledSo);
  }
}

function headOf(sheet: Sheet): unknown[][] {
  const rows = Math.min(ROWS_LOOKED_AT, sheet.getLastRow());
  return rows === 0 ? [[""]] : sheet.getRange(1, 1, rows, sheet.getLastColumn()).getValues();
}
