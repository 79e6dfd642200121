import type { CivilDay } from "../../core";
import * as text from "../../sentences/made/due-tab";
import { dayWords } from "../../wording/days";
import { columnLetters, rowAndColumn } from "../host/cell-name";
import {
  betweenPart,
  callPart,
  cellsPart,
  columnsPart,
  type FormulaPart,
  formulaCall,
  textPart,
  wholePart,
} from "../host/formula-text";
import type { RecordsNow } from "../reading/records-tab";
import { type SettingCells, settingCells } from "../settings/settings";
import { DUE_COLUMN, DUE_TOP } from "../tabs/due-columns";
import { OWN_TABS, ownCells, tabCells } from "../tabs/own-tabs";
import type { TabCell } from "../tabs/tab-content";

/**
 * The age of the due list, kept by the spreadsheet itself: a formula of its own functions compares
 * the day of the list with today, and one number that stands for all cells of records, timetable
 * and settings with what it was. It costs no script and shows on a phone too.
 *
 * The number is the sum of all numbers and days and of the lengths of all texts. Sorting leaves it as
 * it is, as it does the list; a text in place of another of the same length is not noticed.
 */
function ageFormula(
  now: RecordsNow,
  set: SettingCells["asOf"],
  parts: readonly FormulaPart[],
): string {
  const [asOf, then] = [topCell(DUE_TOP.asOf), topCell(DUE_TOP.readThen)];
  // A cell that showed nothing but a day would be taken for one.
  const made = { day: dayWords(now.asOf) };
  const otherDay = callPart("OR", [
    betweenPart(asOf, "<", callPart("TODAY", [])),
    callPart("AND", [callPart("ISNUMBER", [set]), betweenPart(asOf, "<>", set)]),
  ]);
  // What the list itself has changed in the records is no reason to make it anew.
  const ownChange = callPart("SUM", [cellsPart(wholeColumn(DUE_COLUMN.change))]);
  const sum = parts.map(sumPart).reduce((all, one) => betweenPart(all, "+", one));
  const said = callPart("IF", [
    otherDay,
    textPart(text.ageOtherDay(made)),
    callPart("IF", [
      betweenPart(sum, "<>", betweenPart(then, "+", ownChange)),
      textPart(text.ageChanged(made)),
      textPart(text.age(made)),
    ]),
  ]);
  return formulaCall("IFERROR", [said, textPart(text.ageUnknown(made))]);
}

/** The cells of the first row that tell the age, by their columns from 1. */
export function ageCells(now: RecordsNow): ReadonlyMap<number, TabCell> {
  const settings = settingCells(now.workbook);
  const sources = sourcesOf(now, settings);
  const parts = sources.map(({ part }) => part);
  return new Map<number, TabCell>([
    [DUE_TOP.age, { formula: ageFormula(now, settings.asOf, parts) }],
    [DUE_TOP.anew, { tick: false }],
    [DUE_TOP.recordsTab, { text: now.tab }],
    [DUE_TOP.asOf, { date: now.door.date(now.asOf) }],
    [
      DUE_TOP.readThen,
      {
        number: sumOf(
          now,
          sources.flatMap(({ values }) => values.flat()),
        ),
      },
    ],
  ]);
}

/** A cell of the first row, such as "$N$1". */
function topCell(column: number): FormulaPart {
  return cellsPart(`$${columnLetters(column)}$1`);
}

function wholeColumn(column: number): string {
  return `$${columnLetters(column)}:$${columnLetters(column)}`;
}

interface Source {
  readonly part: FormulaPart;
  readonly values: readonly (readonly unknown[])[];
}

/** The cells that the list is made of: the records first, then timetable and settings. */
function sourcesOf(now: RecordsNow, set: SettingCells): readonly Source[] {
  const { workbook, settings, tab, values } = now;
  const name = settings.timetableTab ?? OWN_TABS.timetable;
  const timetable = tabCells(workbook, name)?.values;
  const settingsTab = ownCells(workbook, OWN_TABS.settings)?.values ?? [];
  return [
    { part: columnsPart(tab, values[0]?.length ?? 1), values },
    ...(timetable === undefined
      ? []
      : [{ part: columnsPart(name, timetable[0]?.length ?? 1), values: timetable }]),
    ...[set.daysAhead, set.looks, set.columns]
      .filter(({ text: said }) => said !== "")
      .map((part) => ({ part, values: cellsIn(settingsTab, part) })),
  ];
}

/** The cells of a tab that an argument such as "'Nursery settings'!$A$9:$B$49" names. */
function cellsIn(values: Source["values"], { text }: FormulaPart): Source["values"] {
  const cells = [...text.matchAll(/\$([A-Z]+)\$(\d+)/g)].flatMap(([, letters = "", row = ""]) => {
    const cell = rowAndColumn(`${letters}${row}`);
    return cell === null ? [] : [cell];
  });
  const [first] = cells;
  const last = cells[cells.length - 1];
  if (first === undefined || last === undefined) return [];
  return values
    .slice(first.row - 1, last.row)
    .map((row) => row.slice(first.column - 1, last.column));
}

/**
 * All cells of a range as one number: whole numbers and days as such, texts by their length, ticked
 * boxes as 1, errors as nothing.
 */
function sumPart(cells: FormulaPart): FormulaPart {
  const test = (name: string, is: FormulaPart, not: FormulaPart) =>
    callPart("IF", [callPart(name, [cells]), is, not]);
  const yes = betweenPart(cells, "*", wholePart(1));
  const truth = test("ISLOGICAL", yes, wholePart(0));
  const numbers = test("ISNUMBER", callPart("INT", [cells]), truth);
  return callPart("SUMPRODUCT", [test("ISTEXT", callPart("LEN", [cells]), numbers)]);
}

/** The same number of cells that were read. */
export function sumOf({ door }: Pick<RecordsNow, "door">, cells: readonly unknown[]): number {
  const share = (value: unknown): number => {
    if (typeof value === "string") return ERROR.test(value) ? 0 : value.length;
    if (typeof value === "number") return Math.floor(value);
    if (typeof value === "boolean") return value ? 1 : 0;
    const cell = door.cell(value);
    return typeof cell === "object" ? serialOf(cell.day) : 0;
  };
  return cells.reduce((sum: number, value) => sum + share(value), 0);
}

/** An error comes to a script as its text. */
const ERROR = /^#(?:[A-Z]+[!?]|N\/A|DIV\/0!)$/;

/** A day as a spreadsheet counts it: days since 30 Dec 1899. */
function serialOf(day: CivilDay): number {
  return day + 25_569;
}
