import { TIMETABLE_HEADER } from "../../core";
import { isCallOf } from "../host/formula-text";
import { type LOG_HEADER, MARK, type PLAN_HEADER, type SETTINGS_HEADER } from "../host/mark";
import { topCells } from "../host/top-cells";
import { dueHeaderOf } from "./due-columns";

type Sheet = GoogleAppsScript.Spreadsheet.Sheet;

/** Of the timetable's header; a person may have put theirs in their place. */
export const TIMETABLE_WORDS: readonly string[] = (
  ["method", "step", "after", "from", "usual", "kept"] as const
).map((field) => TIMETABLE_HEADER[field]);
const SETTINGS_WORDS: readonly (typeof SETTINGS_HEADER)[number][] = [
  "Setting",
  "Value",
  "What it is for",
];
/** Without those that an older log called otherwise. */
const LOG_WORDS: readonly (typeof LOG_HEADER)[number][] = [
  "Write",
  "When",
  "Tab",
  "Cell",
  "Column",
  "Before",
  "After",
  "State",
];
const PLAN_WORDS: readonly (typeof PLAN_HEADER)[number][] = [
  "Order",
  "By",
  "Wanted",
  "Method",
  "Assurance",
  "Harvest months",
];
const DUE_KEYS = ["done", "count", "who", "state", "task", "batch", "status", "caution"] as const;

/**
 * By what a tab of ours is known whose first line a person has taken away or moved: words that stand
 * together in its header, and that hardly anybody has together in a table of their own. Those of formats
 * are held to them by type; the due list's come from what writes them.
 */
function wordsOf(name: string): readonly string[] | undefined {
  if (name.startsWith("Plan ")) return PLAN_WORDS;
  if (name === "Due list") return DUE_KEYS.map(dueHeaderOf);
  return WORDS[name];
}

const WORDS: Readonly<Record<string, readonly string[]>> = {
  "Nursery settings": SETTINGS_WORDS,
  "Nursery timetable": TIMETABLE_WORDS,
  "Write log": LOG_WORDS,
};

/** The functions of the tabs that are one formula each. */
const FUNCTIONS: Readonly<Record<string, string>> = {
  Stages: "BATCH_STAGES",
  "Ready by month": "BATCH_READY",
  Takes: "TAKE_SUMMARY",
  "Takes compared": "TAKE_COMPARED",
  "Takes by month": "TAKE_TREND",
  "What takes go with": "TAKE_REASONS",
  Checks: "BATCH_CHECK",
  "Work plan": "WORK_PLAN",
  "Look back": "BATCH_LOOKBACK",
  "Where plants went": "BATCH_BALANCE",
  "Plants lost": "BATCH_LOSSES",
  "Places by week": "PLACE_LOAD",
  "Needs ahead": "WORK_NEEDS",
  "Batch costs": "BATCH_COST",
  // One of its links leads to our settings, by name.
  "Nursery overview": "HYPERLINK",
};

/** Whether a tab of one live formula bears a name. */
export function isLiveName(name: string): boolean {
  return FUNCTIONS[name] !== undefined;
}

/** With a row or two that were put in above. */
export const ROWS_LOOKED_AT = 6;
const COLUMNS_LOOKED_AT = 20;

/**
 * Whether a tab that does not begin as ours do is one of ours all the same, with its first line gone
 * or moved by a row or a column that was put in, or sorted among the others.
 *
 * @param name of the tab of ours that it may be
 * @param mark what the first line of that begins with
 * @param rowsLookedAt all if left out
 */
export function isOursWithoutTitle(
  sheet: Sheet,
  {
    name = sheet.getName(),
    mark = MARK,
    rows: rowsLookedAt,
  }: { readonly name?: string; readonly mark?: string; readonly rows?: number } = {},
): boolean {
  const called = FUNCTIONS[name];
  const words = wordsOf(name);
  if (called === undefined && words === undefined) return false;
  const high = rowsLookedAt ?? Math.max(ROWS_LOOKED_AT, sheet.getLastRow());
  const top = topCells(sheet, high, COLUMNS_LOOKED_AT);
  const rows = top.getValues().map((row) => row.map(String));
  if (rows.some((row) => row.some((text) => text.startsWith(mark)))) return true;
  if (words !== undefined) return rows.some((row) => words.every((word) => row.includes(word)));
  if (called === undefined) return false;
  // Ours refer to our settings; a person's own formula of that name hardly does.
  return top
    .getFormulas()
    .some((row) => row.some((text) => isCallOf(called, text) && text.includes("Nursery settings")));
}
