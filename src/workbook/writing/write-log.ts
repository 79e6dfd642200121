import * as text from "../../sentences/made/own-tabs";
import { LOG_HEADER as HEADER } from "../host/mark";
import { safeText } from "../host/safe-text";
import { WritingError } from "../host/writing-error";
import { OWN_TABS, ownTab } from "../tabs/own-tabs";
import { isStraight, type OwnLayout, straightValues } from "../tabs/straighten";
import type { TabContent } from "../tabs/tab-content";

/** One cell that was, or is to be, written. */
export interface LoggedCell {
  readonly tab: string;
  /** Such as "F12"; '' for something that the table has no column for and only the log keeps. */
  readonly cell: string;
  readonly header: string;
  readonly batch: string;
  readonly task: string;
  /** What stood there and what was written, as cells hold them; '' is blank. */
  readonly before: CellContent;
  readonly after: CellContent;
}

export type CellContent = string | number | boolean | Date;

/**
 * "writing" and "taking back" stand for as long as that lasts, and where it was cut off, until the
 * next run looks; "not known" where the cell can't be found again or holds something else by then.
 */
export type LogState =
  | "writing"
  | "written"
  | "kept here"
  | "not written"
  | "taking back"
  | "taken back"
  | "not known";

export interface LogEntry extends LoggedCell {
  readonly id: string;
  /** The minute at which it was written, as text. */
  readonly when: string;
  /** Who did it, as it was typed. */
  readonly who: string;
  readonly state: LogState;
  /** Row in the log tab, from 1. */
  readonly row: number;
}

/** Which write a line of the log belongs to. */
export type LogLine = LoggedCell & Pick<LogEntry, "id" | "when" | "who">;

/** The log of a workbook, open for one run that holds the lock. */
export interface WriteLog {
  /** Whether it has lines of a write that was cut off. */
  readonly hasUnsettled: boolean;
  /** All lines, in the order in which they stand. */
  entries(): readonly LogEntry[];
  /** Puts cells down before they are written. @returns their rows, for mark */
  begin(lines: readonly LogLine[], state?: LogState): readonly number[];
  /** Writes what became of lines. Neighbouring lines take one call. */
  mark(marks: readonly { readonly row: number; readonly state: LogState }[]): void;
  /** Writes where cells stand that were moved while they were written. */
  setCells(cells: readonly { readonly row: number; readonly cell: string }[]): void;
}

const FIRST_ROW = 3;
const CELL_COLUMN = HEADER.indexOf("Cell") + 1;
const STATE_COLUMN = HEADER.length;
const LAYOUT: OwnLayout = {
  title: text.log(),
  header: HEADER,
  filled: ["Write", "State"],
  mendedBy: "again",
};

/** The log tab as it is first made; never again, since it is the memory of all writes. */
export function logContent(): TabContent {
  return {
    name: OWN_TABS.log,
    madeBy: text.log(),
    rows: [HEADER.map((header) => ({ text: header }))],
    frozenRows: 2,
    widths: [90, 120, 110, 90, 50, 120, 90, 120, 120, 120, 90],
    formats: {},
  };
}

/**
 * Opens the log and reads the states of its lines. Whoever opens it holds the lock: its end is
 * looked for once.
 *
 * @throws Error in a sentence when the workbook has no log
 */
export function openLog(workbook: GoogleAppsScript.Spreadsheet.Spreadsheet): WriteLog {
  const sheet = logTab(workbook);
  const found = sheet.getDataRange().getValues();
  // A log that was tidied is brought back to how it is read.
  const values = isStraight(found, LAYOUT) ? found : straightValues(sheet, LAYOUT);
  let last = Math.max(FIRST_ROW - 1, values.length);
  const states = values.slice(FIRST_ROW - 1).map((row) => row[STATE_COLUMN - 1]);
  const write = (column: number, cells: readonly { row: number; text: string }[]) => {
    for (const { first, texts } of neighbours(cells)) {
      sheet.getRange(first, column, texts.length, 1).setValues(texts.map((one) => [one]));
    }
  };
  return {
    hasUnsettled: states.some((state) => isUnsettled(state as LogState)),
    entries() {
      const rows = last - FIRST_ROW + 1;
      if (rows < 1) return [];
      return sheet.getRange(FIRST_ROW, 1, rows, HEADER.length).getValues().map(entryOf);
    },
    begin(lines, state = "writing") {
      const first = last + 1;
      roomFor(sheet, first, lines.length).setValues(lines.map((line) => rowOf(line, state)));
      last += lines.length;
      return lines.map((_, at) => first + at);
    },
    mark: (marks) =>
      write(
        STATE_COLUMN,
        marks.map(({ row, state }) => ({ row, text: state })),
      ),
    setCells: (cells) =>
      write(
        CELL_COLUMN,
        cells.map(({ row, cell }) => ({ row, text: safeText(cell) })),
      ),
  };
}

/** The log's tab; one that was tidied is first brought back to how it is read. */
function logTab(
  workbook: GoogleAppsScript.Spreadsheet.Spreadsheet,
): GoogleAppsScript.Spreadsheet.Sheet {
  const called = workbook.getSheetByName(OWN_TABS.log);
  if (called !== null && isStraight(topOf(called), LAYOUT)) return called;
  const sheet = ownTab(workbook, OWN_TABS.log);
  if (sheet === null) throw new WritingError({ code: "tabMissing", tab: OWN_TABS.log });
  straightValues(sheet, LAYOUT);
  return sheet;
}

/** Title and header, as far as a tab has them. */
function topOf(sheet: GoogleAppsScript.Spreadsheet.Sheet): readonly (readonly unknown[])[] {
  try {
    return sheet.getRange(1, 1, 2, HEADER.length).getValues();
  } catch {
    // It has fewer columns, or no cells at all.
    return [];
  }
}

/** The cells of new lines; a tab that is full is made taller. */
function roomFor(
  sheet: GoogleAppsScript.Spreadsheet.Sheet,
  first: number,
  count: number,
): GoogleAppsScript.Spreadsheet.Range {
  try {
    return sheet.getRange(first, 1, count, HEADER.length);
  } catch {
    const room = sheet.getMaxRows();
    sheet.insertRowsAfter(room, Math.max(1, first + count - 1 - room));
    return sheet.getRange(first, 1, count, HEADER.length);
  }
}

/** The last lines of the log, as they are without settling anything, and whether there are older ones. */
export function lastEntries(
  workbook: GoogleAppsScript.Spreadsheet.Spreadsheet,
  most: number,
): { readonly entries: readonly LogEntry[]; readonly isMore: boolean } {
  const sheet = logTab(workbook);
  const last = sheet.getLastRow();
  const first = Math.max(FIRST_ROW, last - most + 1);
  if (last < first) return { entries: [], isMore: false };
  const values = sheet.getRange(first, 1, last - first + 1, HEADER.length).getValues();
  const entries = values.map((row, at) => entryOf(row, first - FIRST_ROW + at));
  const isSorted = entries.some(({ when }, at) => when < (entries[at - 1]?.when ?? when));
  if (isSorted) {
    // A person has sorted it: the last writes may stand anywhere.
    if (first > FIRST_ROW) return lastEntries(workbook, last);
    const inOrder = [...entries].sort((a, b) => (a.when < b.when ? -1 : a.when > b.when ? 1 : 0));
    return { entries: inOrder, isMore: false };
  }
  const isMore = first > FIRST_ROW;
  // The first write may have lines above those that are read.
  const [cut] = entries;
  return { entries: isMore ? entries.filter(({ id }) => id !== cut?.id) : entries, isMore };
}

export function isUnsettled(state: LogState): boolean {
  return state === "writing" || state === "taking back";
}

function entryOf(row: readonly unknown[], index: number): LogEntry {
  return {
    id: String(row[0]),
    when: String(row[1]),
    who: String(row[2]),
    row: index + FIRST_ROW,
    tab: String(row[3]),
    cell: String(row[4]),
    header: String(row[5]),
    batch: String(row[6]),
    task: String(row[7]),
    before: row[8] as CellContent,
    after: row[9] as CellContent,
    state: String(row[10]) as LogState,
  };
}

function rowOf(line: LogLine, state: LogState): CellContent[] {
  const { id, when, who, tab, cell, header, batch, task, before, after } = line;
  const texts = [id, when, who, tab, cell, header, batch, task].map(safeText);
  return [...texts, kept(before), kept(after), state];
}

/** Text as text, numbers and days as they are, so that they can be put back unchanged. */
function kept(value: CellContent): CellContent {
  return typeof value === "string" ? safeText(value) : value;
}

function neighbours(
  cells: readonly { readonly row: number; readonly text: string }[],
): readonly { readonly first: number; readonly texts: string[] }[] {
  const runs: { first: number; texts: string[] }[] = [];
  for (const { row, text } of [...cells].sort((a, b) => a.row - b.row)) {
    const run = runs[runs.length - 1];
    if (run !== undefined && run.first + run.texts.length === row) run.texts.push(text);
    else runs.push({ first: row, texts: [text] });
  }
  return runs;
}
