import { methodOrRefuse } from "../core";
import { otherTabs } from "./find-tab";
import { wholeTab } from "./formula-tabs";
import { withLock } from "./lock";
import type { MakeTabAnswer, OrderTabRequest } from "./order-calls";
import { isPlan, PLAN_TAB, PLAN_WORDS } from "./own-tabs";
import { pageText } from "./page-text";
import { orderAsked } from "./planned-order";
import { type RecordsNow, recordsNow } from "./records-tab";
import { SETTING_CELLS } from "./settings";
import { replaceTab, sweepLeftovers } from "./swap-tab";
import { DAY_FORMAT, type TabContent } from "./tab-content";
import { timetableRange } from "./timetable-source";

/** What the formula refers to, in one row, for the person to change. */
const HEADER = ["Order", "By", "Wanted", "Method", "Variety", "Assurance", "Harvest months"];
const ASKED_ROW = 3;
const FORMULA_ROW = 5;

/** As much as other spreadsheet programs take for a tab's name; from memory, no source. */
const LONGEST_NAME = 31;
/** Signs that a tab's name may not hold here or there, line breaks, and the brackets of leftovers. */
const NOT_IN_NAMES = /[()[\]*?:\\/'"<>|\p{C}]+/gu;

/**
 * Makes a tab with the plan of an order as a live formula: whoever changes the row above it sees the
 * plan follow. A plan of the same order is made anew, since it is the one that has been changed in
 * the form; any other tab of that name stays, and the new one gets a number.
 */
export function makeOrderTab(request: OrderTabRequest): MakeTabAnswer {
  return withLock(() => {
    const now = recordsNow();
    const order = pageText("Order", request.order);
    const content = planContent(now, order, request);
    sweepLeftovers(now.workbook);
    const { variety, wanted } = request;
    const words = nameWords(order) || nameWords(`${wanted} ${pageText("Variety", variety)}`);
    const tab = freeName(now, order, words);
    replaceTab(now.workbook, { ...content, name: tab });
    now.workbook.getSheetByName(tab)?.activate();
    return { tab };
  });
}

/** Lets the plans that are there follow the records tab and the timetable that are chosen now. */
export function refreshPlans(now: RecordsNow): void {
  const formula = planFormula(now);
  for (const { sheet } of otherTabs(now.workbook, now.settings.recordsTab)) {
    if (!isPlan(sheet)) continue;
    const cell = sheet.getRange(FORMULA_ROW, 1);
    const stands = cell.getFormula();
    // A person may have moved it, or put something of their own in its place.
    if (stands.startsWith("=ORDER_PLAN(") && stands !== formula) cell.setFormula(formula);
  }
}

/** Text of the page stands in cells of its own, never in the formula. */
function planContent(
  now: RecordsNow,
  order: string,
  request: OrderTabRequest,
): Omit<TabContent, "name"> {
  const { wanted, readyBy, timetable, methodName, variety, assurance } = orderAsked(now, request);
  return {
    madeBy: `${PLAN_WORDS}, live. Change row ${ASKED_ROW} and the plan follows.`,
    rows: [
      HEADER.map((text) => ({ text })),
      [
        { text: order },
        { date: now.door.date(readyBy) },
        { number: wanted },
        { text: methodOrRefuse(timetable, methodName).name },
        { text: variety },
        { number: assurance },
        { text: pageText("Harvest months", request.harvest) },
      ],
      [],
      [{ formula: planFormula(now) }],
    ],
    frozenRows: FORMULA_ROW,
    widths: [130, 100, 70, 260, 420, 80, 150],
    formats: { 1: DAY_FORMAT },
  };
}

function planFormula({ workbook, sheet, settings, values }: RecordsNow): string {
  const asked = (header: string) =>
    `$${String.fromCharCode(65 + HEADER.indexOf(header))}$${ASKED_ROW}`;
  const { asOf } = SETTING_CELLS;
  const parts = [
    ...[asked("Wanted"), asked("By"), timetableRange(workbook, settings.timetableTab)],
    ...[asked("Method"), asked("Assurance"), wholeTab(sheet, values[0]?.length ?? 1)],
    ...[settings.columnCells, asOf, asked("Variety"), asked("Harvest months")],
  ];
  return `=ORDER_PLAN(${parts.join(",")})`;
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
    const planned = isPlan(there) ? there.getRange(ASKED_ROW, 1).getValue() : null;
    if (planned !== null && String(planned) === order) return there.getName();
  }
}
