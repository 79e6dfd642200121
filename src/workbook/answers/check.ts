import {
  COST,
  checkedRecords,
  costOf,
  crewRemarks,
  shortened,
  type TimetableFault,
  type TroubleEntry,
} from "../../core";
import * as check from "../../sentences/made/check";
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
import { workRemarks } from "../../wording/work-remarks";
import { cellName } from "../host/cell-name";
import { type RecordsNow, recordsNow } from "../reading/records-tab";
import { untoldFormulas } from "../reading/untold-formulas";
import { settingCells } from "../settings/settings";
import { OWN_TABS } from "../tabs/own-tabs";
import { crewAsCalled } from "../work/called-crew";
import { crewTabs } from "../work/crew-tabs";
import type { AnswerersOf } from "./answerer";
import { anyText, numberOrNull } from "./fields";

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
    rows: [...open, ...untoldTrouble(now), ...crewTroubles(now), ...read],
    tally: tallySentence(rows),
  };
}

/** So many rows lead to their cells; more would bury what stands below. */
const MOST_LINKED = 5;

function rowOf(entry: TroubleEntry): CheckRow {
  const { troubles, plants } = entry;
  const rows = [...new Set(troubles.flatMap(({ row }) => row ?? []))];
  const [first] = troubles;
  return {
    rows: rows.slice(0, MOST_LINKED),
    rowCount: rows.length,
    plants,
    isReading: first !== undefined && costOf(first) === COST.reading,
    ...entryWords(entry),
  };
}

/** About no cell of the records. */
const NOWHERE = { rows: [], rowCount: 0, plants: null, column: "", isReading: false } as const;

/** It stands in no cell of the records, so that no cell is offered. */
function timetableTrouble(
  fault: TimetableFault,
  { timetable, settings: { timetableTab: tab } }: RecordsNow,
): CheckRow {
  return {
    ...NOWHERE,
    found: fault.found,
    trouble: capital(faultSentence(fault, 0, "page")),
    whatHappens: timetable.methods.length === 0 ? check.onlyThisCheck() : timetableLoss(fault),
    whatToDo: check.correctTab({ tab: tab ?? OWN_TABS.timetable }),
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
      ...NOWHERE,
      found: check.cells({
        cells: more > 0 ? [...named, check.moreCells({ more })] : named,
      }),
      trouble: check.untold({ formulas: cells.length }),
      whatHappens: check.untoldHappens(),
      whatToDo: check.untoldToDo({ columns: settingCells(workbook).columns.text }),
    },
  ];
}

/** What can't be read of the persons, which no column of the records tells. */
function crewTroubles(now: RecordsNow): readonly CheckRow[] {
  const { crew } = crewTabs(now.workbook, now.door, now.settings.recordsTab);
  if (crew === null) return [];
  const tab = crew.getName();
  return crewRemarks(crewAsCalled(now, crew, true)).map((one) => ({
    ...NOWHERE,
    found: "",
    trouble: workRemarks([one], "page") ?? "",
    whatHappens: check.crewHappens(),
    whatToDo: check.correctTab({ tab }),
  }));
}

/** Shows the cell of a trouble in the sheet. */
export function selectAnswer({ row, column: header }: SelectRequest): SelectAnswer {
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
  sidebarSelect: { asked: { row: numberOrNull, column: anyText }, answer: selectAnswer },
};
