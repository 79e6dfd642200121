import { isCallOf } from "./formula-text";
import { MARK } from "./mark";
import { topCells } from "./top-cells";

type Sheet = GoogleAppsScript.Spreadsheet.Sheet;

/** Of the timetable's header; a person may have put theirs in their place. */
export const TIMETABLE_WORDS = ["Method", "Step", "After", "From day", "Usual day", "Kept of 100"];

/**
 * By what a tab of ours is known whose first line a person has taken away or moved: words that stand
 * together in its header, and that hardly anybody has together in a table of their own.
 */
const WORDS: Readonly<Record<string, readonly string[]>> = {
  "Nursery settings": ["Setting", "Value", "What it is for"],
  "Nursery timetable": TIMETABLE_WORDS,
  "Due list": ["Done", "Count", "Who", "Written", "Task", "Batch", "Status", "Caution"],
  "Write log": ["Write", "When", "Tab", "Cell", "Column", "Before", "After", "State"],
};
const PLAN_WORDS = ["Order", "By", "Wanted", "Method", "Assurance", "Harvest months"];

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
  const words = name.startsWith("Plan ") ? PLAN_WORDS : WORDS[name];
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
