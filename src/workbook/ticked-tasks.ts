import { DUE_COLUMN, DUE_FIRST_ROW } from "./due-columns";
import { dueKey, isTicked } from "./due-entries";
import { DUE_LAYOUT } from "./due-tab";
import { withLock } from "./lock";
import { minuteNow } from "./minute-now";
import { OWN_TABS, ownTab } from "./own-tabs";
import { planRecord } from "./record-task";
import { plainText, type RecordsNow, recordsNow } from "./records-tab";
import { safeText } from "./safe-text";
import { settleLog } from "./settle-log";
import { straightValues } from "./straighten";
import { writeGroups } from "./write-groups";
import { openLog, type WriteLog } from "./write-log";

/** What the Written column of a task begins with that is in the records. */
const WRITTEN = "written";

export interface Ticked {
  /** How many tasks were written now. */
  readonly recorded: number;
  /** How many ticked tasks could not be written; their rows say why. */
  readonly refused: number;
  /** Keys of the ticked tasks that are in the records, see dueKey. */
  readonly inRecords: ReadonlySet<string>;
}

/**
 * Records every task of the due tab that is ticked and not, or not wholly, in the records. It looks at
 * the whole tab, so that a tick whose edit was never told of is recorded with the next one, or from
 * the menu, and a count that is typed after the tick is added.
 */
export function recordTicked(): Ticked {
  return withLock(recordTickedUnderLock);
}

/** The same with the lock held. */
export function recordTickedUnderLock(): Ticked {
  const read = recordsNow();
  const log = openLog(read.workbook);
  let now = settleLog(read, log);
  const sheet = ownTab(now.workbook, OWN_TABS.due);
  if (sheet === null) throw new Error("The due list is missing: run Set up again");
  const values = straightValues(sheet, DUE_LAYOUT);
  const inRecords = new Set<string>();
  let recorded = 0;
  let refused = 0;
  for (let row = DUE_FIRST_ROW; row <= values.length; row += 1) {
    const cells = values[row - 1] ?? [];
    const cell = (column: number): unknown => cells[column - 1] ?? "";
    const task = String(cell(DUE_COLUMN.task));
    const batch = String(cell(DUE_COLUMN.batch));
    const done = cell(DUE_COLUMN.done);
    if (done === "" || done === false) continue;
    const { state, wrote, stale } = isTicked(done)
      ? recordRow(now, log, cell)
      : refusal(`Done holds "${plainText(now.door, done)}": tick the box`);
    if (wrote) recorded += 1;
    if (state.startsWith(WRITTEN)) inRecords.add(dueKey({ task, batch }));
    else refused += 1;
    if (state !== cell(DUE_COLUMN.state)) say(sheet, row, [task, batch], state);
    if (stale) now = recordsNow();
  }
  return { recorded, refused, inRecords };
}

interface RowOutcome {
  readonly state: string;
  readonly wrote: boolean;
  /** Whether the records may not be what they were. */
  readonly stale: boolean;
}

function refusal(why: string): RowOutcome {
  return { state: `not ${WRITTEN}: ${why}`, wrote: false, stale: false };
}

/** Records one ticked row. What is asked is said in the row; nothing is written then. */
function recordRow(now: RecordsNow, log: WriteLog, cell: (column: number) => unknown): RowOutcome {
  const count = countIn(now, cell(DUE_COLUMN.count));
  if (typeof count === "object" && count !== null) return refusal(count.unread);
  try {
    const text = (column: number) => plainText(now.door, cell(column));
    const { asked, already, writes, kept, marks, missesCount } = planRecord(now, {
      batch: text(DUE_COLUMN.batch),
      task: text(DUE_COLUMN.task),
      // The box says that it is done, not when: a day that stands there is the day.
      day: null,
      count,
      who: text(DUE_COLUMN.who),
      note: text(DUE_COLUMN.note),
    });
    const [question] = asked;
    if (question !== undefined) return refusal(question.question);
    const wrote = writes.length > 0;
    if (wrote) {
      const id = Utilities.getUuid();
      const into = { log, sheet: now.sheet, values: now.values, when: minuteNow(now.workbook) };
      writeGroups(into, [{ id, who: text(DUE_COLUMN.who), writes, kept, ...marks }]);
    }
    const cells = [...already, ...writes].map(({ tab, cell }) => `${tab}!${cell}`).join(", ");
    const more = missesCount ? ". Count is blank: fill it to add it" : "";
    return { state: `${WRITTEN}${wrote ? "" : " already"}: ${cells}${more}`, wrote, stale: wrote };
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error);
    return { ...refusal(why), stale: true };
  }
}

function countIn(
  { door }: RecordsNow,
  value: unknown,
): number | null | { readonly unread: string } {
  const text = plainText(door, value).trim();
  if (text === "") return null;
  if (typeof value === "number" || /^\d+$/.test(text)) return Number(text);
  return { unread: `"${text}" is no count` };
}

/** Says what became of a row, unless another row has come to stand there meanwhile. */
function say(
  sheet: GoogleAppsScript.Spreadsheet.Sheet,
  row: number,
  named: readonly string[],
  state: string,
): void {
  const [stands = []] = sheet.getRange(row, DUE_COLUMN.task, 1, 2).getValues();
  if (stands.map(String).join("\n") !== named.join("\n")) return;
  sheet.getRange(row, DUE_COLUMN.state).setValue(safeText(state));
}

/** The edit trigger: an edit of what a person enters in our due tab records what is ticked. */
export function recordOnEdit(event: GoogleAppsScript.Events.SheetsOnEdit): void {
  const { range } = event;
  if (range.getSheet().getName() !== OWN_TABS.due) return;
  if (range.getColumn() > DUE_COLUMN.note) return;
  // A person's own tab may bear the name.
  if (ownTab(SpreadsheetApp.getActiveSpreadsheet(), OWN_TABS.due) === null) return;
  recordTicked();
}
