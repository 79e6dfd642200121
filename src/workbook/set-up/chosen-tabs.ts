import { noGermination, noPlaces } from "../../sentences/made/overview";
import {
  columnsPart,
  type FormulaPart,
  formulaCall,
  LEFT_OUT,
  textPart,
  wholePart,
} from "../host/formula-text";
import { germinationTab, placesTab, pricesTab, tabsBeside } from "../reading/beside-tabs";
import type { RecordsNow } from "../reading/records-tab";
import { timetablePart } from "../reading/timetable-source";
import { usualGrouping } from "../reading/usual-grouping";
import { settingCells } from "../settings/settings";
import { live, sentenceTab } from "../tabs/made-tabs";
import { CHOSEN_TABS, type ChosenTab, OWN_TABS, ownTab } from "../tabs/own-tabs";
import { DAY_FORMAT, type TabContent } from "../tabs/tab-content";

type Sheet = GoogleAppsScript.Spreadsheet.Sheet;

/** How long ago the forecast is looked back at: half a year, in which most batches come to an end. */
export const DAYS_LOOKED_BACK = 180;
/** A month, within which most that is needed can be bought. */
export const DAYS_NEEDED = 30;
/** Weeks that plants stand in a place, about, and rows that a group of losses takes, at most. */
const WEEKS_A_PLACE = 30;
const ROWS_A_GROUP = 12;

const MONEY = "#,##0.00";
const PERCENT = "0.0%";

/** The tabs that are made on choice and are there, or are wanted now. */
export function wantedTabs(
  workbook: RecordsNow["workbook"],
  wanted: readonly string[],
): readonly ChosenTab[] {
  return CHOSEN_TABS.filter(
    (key) => wanted.includes(key) || ownTab(workbook, OWN_TABS[key]) !== null,
  );
}

/**
 * What these tabs hold: one live formula each.
 *
 * Longer than most: all of them, side by side.
 */
export function chosenTabs(now: RecordsNow, wanted: readonly ChosenTab[]): readonly TabContent[] {
  if (wanted.length === 0) return [];
  const { asOf, level, looks, columns } = settingCells(now.workbook);
  const records = columnsPart(now.sheet.getName(), now.values[0]?.length ?? 1);
  const timetable = timetablePart(now.workbook, now.settings.timetableTab);
  const batches = now.records.batches.length;
  const groups = new Set(now.records.batches.map(({ variety }) => variety)).size;
  const prices = () => wholeTab(pricesTab(now.door, tabsBeside(now)));
  const made: Readonly<Record<ChosenTab, () => Parameters<typeof live>[0] | TabContent>> = {
    lookback: () => ({
      name: OWN_TABS.lookback,
      formula: formulaCall("BATCH_LOOKBACK", [
        records,
        timetable,
        asOf,
        wholePart(DAYS_LOOKED_BACK),
        level,
        columns,
      ]),
      widths: [110, 90, 90, 90, 70, 70, 70, 80, 80],
      formats: { 1: DAY_FORMAT, 2: DAY_FORMAT, 3: DAY_FORMAT },
      answered: batches,
    }),
    balance: () => ({
      name: OWN_TABS.balance,
      formula: formulaCall("BATCH_BALANCE", [records, columns, timetable]),
      widths: [110, 80, 70, 80, 90, 90, 90, 90, 90, 320, 90, 90, 80, 80, 90],
      formats: { 7: DAY_FORMAT },
      answered: batches,
    }),
    losses: () => ({
      name: OWN_TABS.losses,
      formula: formulaCall("BATCH_LOSSES", [
        records,
        textPart(usualGrouping(now.records)),
        timetable,
        prices(),
        columns,
      ]),
      widths: [130, 130, 160, 70, 90, 80],
      formats: { 4: PERCENT, 5: MONEY },
      answered: ROWS_A_GROUP * groups,
    }),
    places: () => {
      const places = placesTab(now.door, tabsBeside(now));
      if (places === null) return sentenceTab(OWN_TABS.places, noPlaces());
      return {
        name: OWN_TABS.places,
        formula: formulaCall("PLACE_LOAD", [records, timetable, wholeTab(places), asOf, columns]),
        widths: [130, 90, 70, 70, 70, 100],
        formats: { 5: DAY_FORMAT },
        answered: WEEKS_A_PLACE * (places.getLastRow() + 1),
      };
    },
    needs: () => ({
      name: OWN_TABS.needs,
      formula: formulaCall("WORK_NEEDS", [
        records,
        timetable,
        asOf,
        wholePart(DAYS_NEEDED),
        columns,
        looks,
      ]),
      widths: [150, 80, 70, 100, 320, 130],
      formats: { 3: DAY_FORMAT },
      answered: ROWS_A_GROUP * groups,
    }),
    costs: () => ({
      name: OWN_TABS.costs,
      formula: formulaCall("BATCH_COST", [records, timetable, prices(), asOf, columns]),
      widths: [190, 90, 80, 90, 130],
      formats: { 1: MONEY, 2: "0.0", 3: MONEY, 4: "0.000" },
      answered: batches + 2 * now.timetable.methods.length,
    }),
    germination: () => {
      const samples = germinationTab(now.door, tabsBeside(now));
      if (samples === null) return sentenceTab(OWN_TABS.germination, noGermination());
      return {
        name: OWN_TABS.germination,
        formula: formulaCall("GERMINATION_SUMMARY", [
          wholeTab(samples),
          LEFT_OUT,
          LEFT_OUT,
          columns,
        ]),
        widths: [130, 70, 80, 80, 90, 70, 70, 120, 120, 110],
        formats: { 4: PERCENT, 5: PERCENT, 6: PERCENT, 8: "0.0", 9: PERCENT },
        answered: samples.getLastRow(),
      };
    },
  };
  return wanted.map((key) => {
    const content = made[key]();
    return "rows" in content ? content : live(content);
  });
}

function wholeTab(sheet: Sheet | null): FormulaPart {
  return sheet === null ? LEFT_OUT : columnsPart(sheet.getName(), sheet.getLastColumn());
}
