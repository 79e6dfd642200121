import { builtInTimetable, InputError, madeOnce, shortened, type Timetable } from "../../core";
import { type Door, openDoor } from "../../door/index";
import * as text from "../../sentences/made/set-up";
import type { TimetableCandidate } from "../../wire/set-up";
import { errorSentence } from "../../wording/errors";
import { faultSentence, timetableRemark } from "../../wording/timetable";
import { columnsPart, type FormulaPart, LEFT_OUT } from "../host/formula-text";
import { gridTab } from "../host/grid-tabs";
import { workbookHost } from "../host/workbook-host";
import { isOurs, OWN_TABS, ownCells, ownTab } from "../tabs/own-tabs";
import { HEAD_ROWS, type PersonTab } from "../tabs/person-tabs";
import { timetableCells } from "../tabs/timetable-tab";

type Workbook = GoogleAppsScript.Spreadsheet.Spreadsheet;

/** A timetable of one step or none is hardly one. */
const FEWEST_STEPS = 2;

/** Tabs of the person's own that hold a timetable, in the order of the workbook. */
export function timetableCandidates(tabs: readonly PersonTab[]): readonly TimetableCandidate[] {
  const door = openDoor(workbookHost());
  return tabs.flatMap(({ name, top, all }): TimetableCandidate[] => {
    try {
      // Without a header at the top, no more of a tab is read.
      door.timetableWithFaults(top(HEAD_ROWS));
      const { timetable, faults } = door.timetableWithFaults(all());
      const steps = timetable.methods.reduce((all, method) => all + method.steps.length, 0);
      if (steps < FEWEST_STEPS && faults.length === 0) return [];
      const [fault, ...more] = faults;
      const methods = timetable.methods.map((method) => method.name);
      if (fault === undefined) return [{ tab: name, methods, trouble: null }];
      const trouble =
        methods.length === 0
          ? faultSentence(fault, more.length, "page")
          : timetableRemark(faults, "page");
      return [{ tab: name, methods, trouble }];
    } catch {
      // No header of a timetable in it: another kind of tab.
      return [];
    }
  });
}

/**
 * The cells of the timetable in use; '' stands for the built-in one.
 *
 * @param tab a tab of the person's own; null for ours, if it is there
 * @throws Error in a sentence when the person's tab is gone
 */
export function timetableValues(workbook: Workbook, tab: string | null): unknown {
  if (tab === null) {
    const own = ownCells(workbook, OWN_TABS.timetable);
    return own === null ? "" : timetableCells(own);
  }
  return timetableSheet(workbook, tab)?.getDataRange().getValues() ?? "";
}

/** By their cells: a run asks for the same one for each tab that it fills. */
const timetables = new Map<string, Timetable>();

/**
 * The timetable in use.
 *
 * @throws Error in a sentence that names the tab when it can't be used
 */
export function timetableOf(door: Door, values: unknown, tab: string | null): Timetable {
  try {
    return madeOnce(timetables, JSON.stringify(values), () => door.timetable(values));
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    const why = errorSentence(error, "page");
    throw new Error(text.correctTimetable({ why, tab: tab ?? OWN_TABS.timetable }));
  }
}

/** The same as an argument of a formula; left out for the built-in one. */
export function timetablePart(workbook: Workbook, tab: string | null): FormulaPart {
  const width = timetableSheet(workbook, tab)?.getDataRange().getNumColumns() ?? 0;
  return width === 0 ? LEFT_OUT : columnsPart(tab ?? OWN_TABS.timetable, width);
}

/** The timetable in use; the built-in one where there is none, or where nothing of it can be used. */
export function timetableToGuessBy(workbook: Workbook, tab: string | null): Timetable {
  try {
    const values = timetableValues(workbook, tab);
    const { timetable } = openDoor(workbookHost()).timetableWithFaults(values);
    if (timetable.methods.length > 0) return timetable;
  } catch {
    // A timetable that is gone or no timetable any more is told where the tabs are made.
  }
  return builtInTimetable();
}

function timetableSheet(
  workbook: Workbook,
  tab: string | null,
): GoogleAppsScript.Spreadsheet.Sheet | null {
  if (tab === null) return ownTab(workbook, OWN_TABS.timetable);
  const sheet = gridTab(workbook, tab);
  if (sheet === null || isOurs(sheet)) {
    throw new Error(text.noSuchTimetable({ tab: shortened(tab) }));
  }
  return sheet;
}
