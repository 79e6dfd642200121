import { methodOrRefuse } from "../../core";
import { planLive } from "../../sentences/made/order-tabs";
import type { MadeTab } from "../../wire/made-tab";
import type { OrderTabRequest } from "../../wire/orders";
import { columnLetters } from "../host/cell-name";
import { cellsPart, columnsPart, formulaCall, isCallOf, sameFormula } from "../host/formula-text";
import { hasCells } from "../host/grid-tabs";
import { withLock } from "../host/lock";
import { FIRST_WORDS, PLAN_HEADER as HEADER } from "../host/mark";
import { topCells } from "../host/top-cells";
import { type RecordsNow, recordsNow } from "../reading/records-tab";
import { timetablePart } from "../reading/timetable-source";
import { settingCells } from "../settings/settings";
import { otherTabs } from "../tabs/find-tab";
import { sweepLeftovers } from "../tabs/leftovers";
import { makeTab } from "../tabs/make-tab";
import { isBlocked, type MovedNote, moveNotesAway } from "../tabs/notes-in-the-way";
import { isPlan, PLAN_TAB } from "../tabs/own-tabs";
import { columnsStanding, headerRowIn } from "../tabs/straighten";
import { DAY_FORMAT, type TabContent } from "../tabs/tab-content";
import { orderAsked } from "./planned-order";

const PLAN_FUNCTION = "ORDER_PLAN";
const ASKED_ROW = 3;
const FORMULA_ROW = 5;
/** A plan's formula stands within these rows and columns, whatever was put in. */
const ROWS_LOOKED_AT = 12;

/** As much as other spreadsheet programs take for a tab's name; from memory, no source. */
const LONGEST_NAME = 31;
/** Signs that a tab's name may not hold here or there, line breaks, and the brackets of leftovers. */
const NOT_IN_NAMES = /[()[\]*?:\\/'"<>|\p{C}]+/gu;

/**
 * Makes a tab with the plan of an order as a live formula: whoever changes the row above it sees the
 * plan follow. A plan of the same order is made anew, since it is the one that has been changed in
 * the form; any other tab of that name stays, and the new one gets a number.
 */
export function makeOrderTab(request: OrderTabRequest): MadeTab {
  return withLock(() => {
    const now = recordsNow();
    const { order, variety, wanted } = request;
    const content = planContent(now, order, request);
    sweepLeftovers(now.workbook);
    const words = nameWords(order) || nameWords(`${wanted} ${variety}`);
    const tab = freeName(now, order, words);
    makeTab(now.workbook, { ...content, name: tab });
    now.workbook.getSheetByName(tab)?.activate();
    return { tab };
  });
}

/** Columns of what a plan's formula answers. */
export const PLAN_ANSWER_COLUMNS = 5;

/**
 * Lets the plans that are there follow the records tab and the timetable that are chosen now.
 *
 * @returns notes of a person's that stood in the way of a plan, and where they stand now
 */
export function refreshPlans(now: RecordsNow): readonly MovedNote[] {
  const moved: MovedNote[] = [];
  for (const { sheet } of otherTabs(now.workbook, now.settings.recordsTab)) {
    if (!isPlan(sheet)) continue;
    const top = topCells(sheet, ROWS_LOOKED_AT, ROWS_LOOKED_AT);
    const formulas = top.getFormulas();
    const row = formulas.findIndex((cells) => cells.some(isPlanFormula));
    const stands = formulas[row]?.find(isPlanFormula);
    // A person may have put something of their own in its place.
    if (stands === undefined) continue;
    const column = formulas[row]?.indexOf(stands) ?? 0;
    const formula = planFormula(now, askedCells(top.getValues(), row, column));
    const missing = row + 1 + answerRows(now.timetable) - sheet.getMaxRows();
    if (missing > 0) sheet.insertRowsAfter(sheet.getMaxRows(), missing);
    const cell = sheet.getRange(row + 1, column + 1);
    // One in another locale's syntax says the same, but is an error.
    const shown = cell.getDisplayValue();
    if (isBlocked(shown)) {
      moved.push(
        ...moveNotesAway(sheet, { row: row + 1, column: column + 1 }, PLAN_ANSWER_COLUMNS),
      );
    }
    const isAlive = !shown.startsWith("#");
    if (!isAlive || !sameFormula(stands, formula)) cell.setFormula(formula);
  }
  return moved;
}

/** Text of the page stands in cells of its own, never in the formula. */
function planContent(
  now: RecordsNow,
  order: string,
  request: OrderTabRequest,
): Omit<TabContent, "name"> {
  const { wanted, readyBy, timetable, methodName, variety, assurance } = orderAsked(now, request);
  return {
    firstWords: FIRST_WORDS.plan,
    madeBy: `${FIRST_WORDS.plan}, ${planLive({ row: String(ASKED_ROW) })}`,
    rows: [
      HEADER.map((text) => ({ text })),
      [
        { text: order },
        { date: now.door.date(readyBy) },
        { number: wanted },
        { text: methodOrRefuse(timetable, methodName).name },
        { text: variety },
        { number: assurance },
        { text: request.harvest },
      ],
      [],
      [{ formula: planFormula(now) }],
    ],
    filled: ["By", "Wanted"],
    frozenRows: FORMULA_ROW,
    tall: FORMULA_ROW + answerRows(timetable),
    widths: [130, 100, 70, 260, 420, 80, 150],
    formats: { 1: DAY_FORMAT },
  };
}

/** Rows that a plan takes at most: its header, the steps, their sum, and what is said below. */
function answerRows({ methods }: RecordsNow["timetable"]): number {
  return Math.max(0, ...methods.map(({ steps }) => steps.length)) + 10;
}

const isPlanFormula = (text: string): boolean => isCallOf(PLAN_FUNCTION, text);

/** Where the cells are that a plan's formula refers to: below their headers, wherever those stand. */
function askedCells(
  values: readonly (readonly unknown[])[],
  formulaRow: number,
  formulaColumn: number,
): AskedCells {
  const header = headerRowIn(values, HEADER);
  const stands = (values[header] ?? []).map(String);
  const columns = columnsStanding(HEADER, stands);
  const moved = formulaRow - (FORMULA_ROW - ASKED_ROW) + 1;
  // Where rows were sorted, what is asked stands elsewhere.
  const wanted = columns[HEADER.indexOf("Wanted")] ?? -1;
  const isAsked = (row: readonly unknown[] | undefined) => typeof row?.[wanted] === "number";
  const sorted = isAsked(values[header + 1]) ? -1 : values.findIndex(isAsked);
  const row = sorted !== -1 ? sorted + 1 : header + 2;
  return (name) => {
    const at = HEADER.indexOf(name);
    const column = (header === -1 ? undefined : columns[at]) ?? formulaColumn + at;
    return { row: header === -1 ? moved : row, column: column + 1 };
  };
}

/** The order that a plan is of. */
function plannedOrder(sheet: GoogleAppsScript.Spreadsheet.Sheet): string {
  const values = sheet.getDataRange().getValues().slice(0, ROWS_LOOKED_AT);
  const { row, column } = askedCells(values, FORMULA_ROW - 1, 0)("Order");
  return String(values[row - 1]?.[column - 1] ?? "");
}

/** Row and column, from 1, of what is asked under a header. */
type AskedCells = (header: (typeof HEADER)[number]) => {
  readonly row: number;
  readonly column: number;
};

const AS_MADE: AskedCells = (header) => ({ row: ASKED_ROW, column: HEADER.indexOf(header) + 1 });

function planFormula(
  { workbook, sheet, settings, values }: RecordsNow,
  cells: AskedCells = AS_MADE,
): string {
  const asked = (header: (typeof HEADER)[number]) => {
    const { row, column } = cells(header);
    return cellsPart(`$${columnLetters(column)}$${row}`);
  };
  const { asOf, columns } = settingCells(workbook);
  const parts = [
    asked("Wanted"),
    asked("By"),
    timetablePart(workbook, settings.timetableTab),
    asked("Method"),
    asked("Assurance"),
    columnsPart(sheet.getName(), values[0]?.length ?? 1),
    columns,
    asOf,
    asked("Variety"),
    asked("Harvest months"),
  ];
  return formulaCall(PLAN_FUNCTION, parts);
}

function nameWords(text: string): string {
  return text.replace(NOT_IN_NAMES, " ").replace(/\s+/g, " ").trim();
}

/** "Plan O1"; with a number where another tab than this order's plan is called so. */
function freeName({ workbook }: RecordsNow, order: string, words: string): string {
  const sheets = new Map(workbook.getSheets().map((one) => [one.getName().toLowerCase(), one]));
  for (let number = 1; ; number += 1) {
    const end = number === 1 ? "" : ` ${number}`;
    const room = LONGEST_NAME - end.length;
    // Whole letters, since half of one is none.
    const name = `${[...`${PLAN_TAB} ${words}`].slice(0, room).join("").trim()}${end}`;
    const there = sheets.get(name.toLowerCase());
    if (there === undefined) return name;
    if (hasCells(there) && isPlan(there) && plannedOrder(there) === order) return there.getName();
  }
}
