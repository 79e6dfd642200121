import { isoDay } from "../core";
import { DUE_COLUMN, DUE_FIRST_ROW } from "./due-tab";
import { withLock } from "./lock";
import { OWN_TABS, ownTab } from "./own-tabs";
import { recordUnderLock } from "./record-task";
import { recordsNow } from "./records-tab";
import { safeText } from "./safe-text";

/** What stands in the Written column of a task that is in the records. */
const WRITTEN = "written";

/**
 * Records every task of the due tab that is ticked and not written yet. It looks at the whole tab, so
 * a tick whose edit was never told of is recorded with the next one, or from the menu.
 *
 * @returns how many were recorded
 */
export function recordTicked(): number {
  return withLock(() => {
    const now = recordsNow();
    const sheet = ownTab(now.workbook, OWN_TABS.due);
    if (sheet === null) throw new Error("The due list is missing: run Set up again");
    const values = sheet.getDataRange().getValues();
    let recorded = 0;
    for (let row = DUE_FIRST_ROW; row <= values.length; row += 1) {
      const cells = values[row - 1] ?? [];
      const cell = (column: number): unknown => cells[column - 1] ?? "";
      if (cell(DUE_COLUMN.done) !== true || String(cell(DUE_COLUMN.state)).startsWith(WRITTEN)) {
        continue;
      }
      const state = recordRow(cell);
      if (state.startsWith(WRITTEN)) recorded += 1;
      sheet.getRange(row, DUE_COLUMN.state).setValue(safeText(state));
    }
    return recorded;
  });
}

/** Records one ticked row. What is asked is said in the row; nothing is written then. */
function recordRow(cell: (column: number) => unknown): string {
  try {
    // Each task reads the records anew: the one before may have changed them.
    const now = recordsNow();
    const count = cell(DUE_COLUMN.count);
    if (count !== "" && typeof count !== "number")
      return `not written: "${String(count)}" is no count`;
    const result = recordUnderLock(now, {
      batch: String(cell(DUE_COLUMN.batch)),
      task: String(cell(DUE_COLUMN.task)),
      day: isoDay(now.asOf),
      count: typeof count === "number" ? count : null,
      who: String(cell(DUE_COLUMN.who)),
      note: String(cell(DUE_COLUMN.note)),
      sure: [],
    });
    const [question] = result.asked;
    return question === undefined
      ? `${WRITTEN}: ${result.written.map(({ where }) => where).join(", ")}`
      : `not written: ${question.question}`;
  } catch (error) {
    return `not written: ${error instanceof Error ? error.message : String(error)}`;
  }
}

/** The edit trigger: an edit in the Done or Count column of our due tab records what is ticked. */
export function recordOnEdit(event: GoogleAppsScript.Events.SheetsOnEdit): void {
  const { range } = event;
  if (range.getSheet().getName() !== OWN_TABS.due) return;
  const first = range.getColumn();
  const last = first + range.getNumColumns() - 1;
  if (first > DUE_COLUMN.count || last < DUE_COLUMN.done) return;
  recordTicked();
}
