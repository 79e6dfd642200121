import {
  COST,
  checkedRecords,
  costOf,
  shortened,
  type TimetableFault,
  type Trouble,
  type TroubleEntry,
} from "../../core";
import * as check from "../../sentences/made/check";
import { noTab } from "../../sentences/made/set-up";
import type {
  CheckAnswer,
  CheckCalls,
  CheckRow,
  SelectAnswer,
  SelectRequest,
} from "../../wire/check";
import { capital } from "../../wording/capital";
import { entryWords, tallySentence } from "../../wording/check";
import { faultSentence, timetableLoss } from "../../wording/timetable";
import { cellName, columnLetters } from "../host/cell-name";
import { gridTab } from "../host/grid-tabs";
import { type RecordsNow, recordsNow } from "../reading/records-tab";
import { untoldFormulas } from "../reading/untold-formulas";
import { settingCells } from "../settings/settings";
import { OWN_TABS } from "../tabs/own-tabs";
import type { AnswerersOf } from "./answerer";
import { besideTroubles, NO_CELL } from "./beside-troubles";
import { anyText, numberOrNull, textOrNull } from "./fields";

/** What could not be used, in the timetable and in the records. */
export function checkAnswer(): CheckAnswer {
  const now = recordsNow(undefined, true);
  const { records, timetable, asOf, faults } = now;
  const { entries, rows } = checkedRecords(records, { timetable, faults }, asOf);
  const all = entries.map((entry): CheckRow => {
    const [first] = entry.troubles;
    return first?.code === "timetable"
      ? { ...timetableTrouble(first.fault, now), plants: entry.plants }
      : rowOf(entry);
  });
  const open = all.filter(({ isReading }) => !isReading);
  const read = all.filter(({ isReading }) => isReading);
  return {
    rows: [...open, ...untoldTrouble(now), ...besideTroubles(now), ...read],
    tally: tallySentence(rows),
  };
}

function rowOf({ troubles: found, plants }: TroubleEntry): CheckRow {
  const troubles = found.map(asInSheet);
  const rows = [...new Set(troubles.flatMap(({ row }) => row ?? []))];
  const first = troubles[0] as Trouble;
  return {
    code: first.code,
    rows,
    tab: null,
    plants,
    isReading: costOf(first) === COST.reading,
    ...entryWords({ troubles, plants }),
  };
}

/** A column without a header is called by its letter: the records begin in the sheet's first column. */
function asInSheet(one: Trouble): Trouble {
  if (one.code !== "column-left" || one.column !== "") return one;
  return { ...one, found: columnLetters(Number(one.found)) };
}

/** It stands in no cell of the records, so that no cell is offered. */
function timetableTrouble(
  fault: TimetableFault,
  { timetable, settings: { timetableTab: tab } }: RecordsNow,
): CheckRow {
  const name = tab ?? OWN_TABS.timetable;
  return {
    ...NO_CELL,
    tab: name,
    found: fault.found,
    trouble: capital(faultSentence(fault, 0, "page")),
    whatHappens: timetable.methods.length === 0 ? check.onlyThisCheck() : timetableLoss(fault),
    whatToDo: check.correctTab({ tab: name }),
  };
}

/** Formulas of cells that are named before the rest are counted. */
const MOST_NAMED = 5;

/** The person's own formulas that read the records otherwise than our tabs do. */
function untoldTrouble({ workbook, settings }: RecordsNow): readonly CheckRow[] {
  const cells = untoldFormulas(workbook, settings);
  if (cells.length === 0) return [];
  const more = cells.length - MOST_NAMED;
  const named = cells.slice(0, MOST_NAMED).map((cell) => shortened(cell));
  return [
    {
      ...NO_CELL,
      found: check.cells({
        cells: more > 0 ? [...named, check.moreCells({ more })] : named,
      }),
      trouble: check.untold({ formulas: cells.length }),
      whatHappens: check.untoldHappens(),
      whatToDo: check.untoldToDo({ columns: settingCells(workbook).columns.text }),
    },
  ];
}

/** Shows the cell of a trouble in the sheet, or the other tab that it is about. */
export function selectAnswer({ row, column: header, tab = null }: SelectRequest): SelectAnswer {
  if (tab !== null) {
    const other = gridTab(SpreadsheetApp.getActiveSpreadsheet(), tab);
    if (other === null) throw new Error(noTab({ tab: shortened(tab) }));
    other.activate();
    return { selected: tab };
  }
  const now = recordsNow();
  const match = now.records.columns.find((one) => one.header === header && header !== "");
  const at = {
    row: row === null ? now.records.rows.heading : Math.max(1, Math.trunc(row)),
    column: (match?.column ?? 0) + 1,
  };
  now.sheet.activate();
  now.sheet.getRange(Math.max(1, at.row), at.column).activate();
  return { selected: `${now.sheet.getName()}!${cellName(at)}` };
}

export const checkCalls: AnswerersOf<CheckCalls> = {
  sidebarCheck: { asked: null, answer: checkAnswer },
  sidebarSelect: {
    asked: { tab: textOrNull, row: numberOrNull, column: anyText },
    answer: selectAnswer,
  },
};
