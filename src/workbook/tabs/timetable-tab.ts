import { builtInTimetable, TIMETABLE_HEADER, timetableRows } from "../../core";
import { timetableTab as text } from "../../sentences/made/set-up";
import { timetableTable } from "../../wording/timetable";
import { TIMETABLE_WORDS } from "./own-heads";
import { OWN_TABS, ownCells, type TabCells } from "./own-tabs";
import { headFirst, sortedHead } from "./straighten";
import type { TabCell, TabContent } from "./tab-content";

/**
 * The values of our timetable, with title and header first where a person has sorted the tab with
 * them. Its rows are the person's in any order, and so are the words of its header.
 */
export function timetableCells({ values }: TabCells): TabCells["values"] {
  const head = sortedHead(values, TABLE);
  if (head === null) return values;
  const { title, header } = head;
  const above = title === -1 ? [[""]] : values.slice(title, title + 1);
  const rest = values.filter((_, at) => at !== title && at !== header);
  return [...above, ...values.slice(header, header + 1), ...rest];
}

/** The same in the tab itself, since live formulas read it. */
export function straightenTimetable(workbook: GoogleAppsScript.Spreadsheet.Spreadsheet): void {
  const own = ownCells(workbook, OWN_TABS.timetable);
  const head = own === null ? null : sortedHead(own.values, TABLE);
  if (own !== null && head !== null) headFirst(own.sheet, head.title, head.header);
}

const TABLE = { header: TIMETABLE_WORDS, filled: [TIMETABLE_HEADER.step, TIMETABLE_HEADER.usual] };

/**
 * The timetable as a tab: the built-in steps, for the person to change.
 *
 * @param methods names of those that are wanted; all when there are none
 */
export function timetableTab(methods: readonly string[], madeAt: string): TabContent {
  const chosen = new Set(methods);
  const steps = timetableRows(builtInTimetable(), null).filter(
    ({ method }) => chosen.size === 0 || chosen.has(method),
  );
  const { columns, rows } = timetableTable(steps);
  return {
    name: OWN_TABS.timetable,
    madeBy: text({ madeAt }),
    rows: [columns.map(({ name }) => ({ text: name })), ...rows.map((row) => row.map(cell))],
    frozenRows: 2,
    widths: [150, 120, 110, 70, 70, 70, 70, 80, 90, 220, 320, 320, 70],
    formats: {},
  };
}

function cell(value: unknown): TabCell {
  if (value === null || value === "") return null;
  return typeof value === "number" ? { number: value } : { text: String(value) };
}
