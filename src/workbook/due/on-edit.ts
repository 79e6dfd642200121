import { copy, notMadeAnew } from "../../sentences/made/due-rows";
import { Busy, DoneAnyway, withLock } from "../host/lock";
import { FIRST_WORDS, MARK } from "../host/mark";
import { safeText } from "../host/safe-text";
import { troubleSentence } from "../host/writing-error";
import { recordsNow } from "../reading/records-tab";
import { DUE_COLUMN, DUE_FIRST_ROW, DUE_TOP } from "../tabs/due-columns";
import { dueTabOf } from "../tabs/due-tab-found";
import { beginsWithMark, OWN_TABS } from "../tabs/own-tabs";
import { isTicked } from "./due-entries";
import { readOwnDueList } from "./due-list";
import { type DueRow, dueRows } from "./due-rows";
import { refreshDueTab } from "./due-tab";
import { notWritten, notYet, type RowState, saysWritten } from "./row-state";
import { sayInRows } from "./say-in-rows";
import { recordTicksOf } from "./ticked-tasks";

type Sheet = GoogleAppsScript.Spreadsheet.Sheet;

/** Of the edited cells; the platform hands them over without a call. */
interface Edited {
  readonly rowStart?: number;
  readonly rowEnd?: number;
  readonly columnStart?: number;
}

/**
 * The edit trigger, for an edit in a tab that begins as our due list does: it records what is
 * ticked, or makes the list anew. What goes wrong is said in the rows, since nothing else is seen on a phone.
 */
export function dueListEdited(event: GoogleAppsScript.Events.SheetsOnEdit, sheet: Sheet): void {
  const edited: Edited = event.range as unknown as Edited;
  // To the right stands what nobody enters.
  if ((edited.columnStart ?? 1) > DUE_COLUMN.batch) return;
  try {
    const list = listBeside(sheet);
    if (list !== null) {
      const why = copy({ tab: list });
      sayOfEdited(sheet, edited, (row) => notWritten(why, row));
      return;
    }
    try {
      withLock(() => dueListWork(sheet));
    } catch (error) {
      if (!(error instanceof Busy)) throw error;
      sayOfEdited(sheet, edited, notYet);
      withLock(() => dueListWork(sheet));
    }
  } catch (error) {
    // What could not be said is found in the records by the next run.
    if (error instanceof Busy || error instanceof DoneAnyway) return;
    sayOfEdited(sheet, edited, (row) => notWritten(troubleSentence(error), row));
  }
}

/** The name of the due list where the edited tab is but a copy of it, or an old one; else null. */
function listBeside(sheet: Sheet): string | null {
  if (sheet.getName() === OWN_TABS.due) return null;
  const list = dueTabOf(SpreadsheetApp.getActiveSpreadsheet());
  return list === null || list.getSheetId() === sheet.getSheetId() ? null : list.getName();
}

function dueListWork(sheet: Sheet): void {
  const list = readOwnDueList(sheet);
  // A person's own tab may begin alike.
  if (list === null) return;
  const { inRecords } = recordTicksOf(list);
  if (isTicked(list.values[0]?.[DUE_TOP.anew - 1])) refreshDueTab(recordsNow(), inRecords);
}

/** Says something in the ticked rows of an edit that are not written yet. */
function sayOfEdited(
  sheet: Sheet,
  { rowStart = DUE_FIRST_ROW, rowEnd = Number.POSITIVE_INFINITY }: Edited,
  state: (row: Pick<DueRow, "memory">) => RowState,
): void {
  const range = sheet.getDataRange();
  const values = range.getValues();
  if (!beginsWithMark(values)) return;
  const rows = dueRows(values).filter(
    ({ row, box, state: written }) =>
      row >= rowStart && row <= rowEnd && box === "ticked" && !saysWritten(written),
  );
  sayInRows(sheet, range, { states: new Map(rows.map((row) => [row, state(row)])) });
  if (rowStart < DUE_FIRST_ROW && isTicked(values[0]?.[DUE_TOP.anew - 1])) {
    const why = state({ memory: { writes: [], asked: "" } }).text;
    sheet.getRange(1, 1).setValue(safeText(`${MARK} ${FIRST_WORDS.due}, ${notMadeAnew({ why })}`));
  }
}
