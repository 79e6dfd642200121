import { openDoor } from "../../door/index";
import { writtenDaily } from "../../sentences/made/due-tab";
import { minuteOf } from "../host/minute-now";
import { workbookHost } from "../host/workbook-host";
import { OWN_TABS, ownCells } from "../tabs/own-tabs";
import { findSettings } from "./found-settings";

type Workbook = GoogleAppsScript.Spreadsheet.Spreadsheet;

/** First in the cell beside an as-of day that is ours to write. */
const OUR_SIGN = "↻";

/**
 * Keeps the as-of day going where functions are refused what TODAY() gives: it is written as a value
 * by the first run of a day that a menu item starts. That such cells are refused is known of NOW() and
 * RAND(); whether TODAY() behind a reference is refused too, nobody has seen yet. A day that a person
 * has typed is left alone.
 *
 * Source: developers.google.com/apps-script/guides/sheets/functions, Volatile functions.
 */
export function keepDayGoing(workbook: Workbook): void {
  const own = ownCells(workbook, OWN_TABS.settings);
  if (own === null) return;
  const { row, values: column } = findSettings(own.values);
  if (row.asOf === null) return;
  const cell = own.sheet.getRange(row.asOf + 1, column + 1);
  const isFormula = cell.getFormula() !== "";
  const beside = String(own.values[row.asOf]?.[column + 1] ?? "");
  const isOurs = !isFormula && beside.startsWith(OUR_SIGN);
  if (!isOurs && !(isFormula && isDayRefused(workbook))) return;
  const host = workbookHost(workbook);
  const door = openDoor(host);
  cell.setValue(
    door.date(door.day("today", minuteOf(host, new Date()).slice(0, "2026-11-25".length))),
  );
  if (isOurs) return;
  own.sheet.getRange(row.asOf + 1, column + 2).setValue(`${OUR_SIGN} ${writtenDaily()}`);
}

/** Whether the tabs that look from a day show an error, and one that needs none does not. */
function isDayRefused(workbook: Workbook): boolean {
  const fails = (name: string) =>
    ownCells(workbook, name)?.values.some(([first]) => /^#[A-Z]/.test(String(first)));
  return (
    fails(OWN_TABS.stages) === true &&
    fails(OWN_TABS.ready) === true &&
    fails(OWN_TABS.takesTrend) === false
  );
}
