import type { MendedBy } from "../../wording/writing-codes";
import { MARK } from "../host/mark";
import { safeText } from "../host/safe-text";
import { WritingError } from "../host/writing-error";

type Sheet = GoogleAppsScript.Spreadsheet.Sheet;
type Values = readonly (readonly unknown[])[];

/** How a table of ours stands in its tab: its title in the first row, its header in the second. */
export interface OwnLayout {
  /** What its first cell says after our mark, should it have to be written again. */
  readonly title: string;
  readonly header: readonly string[];
  /**
   * Headers of columns that every row of the table fills. A row that fills them and stands above the
   * header was sorted there; another is a person's own line. Null where no row is known by them.
   */
  readonly filled: readonly string[] | null;
  /** What a person does once they have moved away what is in the way. */
  readonly mendedBy: MendedBy;
}

/** Title and header stand within these rows, or a person has put a table of their own above. */
const ROWS_LOOKED_AT = 12;

/**
 * All values of a tab of ours. A person may have tidied it: taken its title away, put in or moved a
 * column, renamed a header. Then it is first brought back to how we make it, by moving whole rows and
 * columns, so that whatever points at its cells goes on pointing at them; a column of the person's
 * comes to stand on the right.
 *
 * @throws Error in a sentence when a person's own lines stand above the header
 */
export function straightValues(sheet: Sheet, layout: OwnLayout): Values {
  const values = sheet.getDataRange().getValues();
  if (isStraight(values, layout)) return values;
  straightenRows(sheet, values, layout);
  straightenColumns(sheet, layout);
  return sheet.getDataRange().getValues();
}

/** Whether a tab stands as we make it. */
export function isStraight(values: Values, { header }: OwnLayout): boolean {
  return isTitle(values[0]?.[0]) && header.every((text, column) => values[1]?.[column] === text);
}

function isTitle(value: unknown): boolean {
  return String(value ?? "").startsWith(MARK);
}

/**
 * Index of the row that has most of a header's words, near the top or where a tab was sorted with its
 * header; -1 when none has half of them.
 */
export function headerRowIn(values: Values, header: readonly string[]): number {
  const known = new Set(header);
  const words = (row: readonly unknown[]) => row.filter((cell) => known.has(String(cell))).length;
  const enough = Math.max(2, header.length / 2);
  const found = values.slice(0, ROWS_LOOKED_AT).map(words);
  const most = Math.max(0, ...found);
  return most >= enough ? found.indexOf(most) : values.findIndex((row) => words(row) >= enough);
}

/** Title in the first row, header in the second. */
function straightenRows(sheet: Sheet, values: Values, layout: OwnLayout): void {
  const title = values.findIndex((row) => row.some(isTitle));
  const header = headerRowIn(values, layout.header);
  if (header === -1) {
    // Its header row was deleted: the rows below the title are what they were.
    mustBeBlank(sheet, values.slice(0, Math.max(0, title)), layout);
    if (title > 0) sheet.deleteRows(1, title);
    if (title === -1) sheet.insertRowsBefore(1, 2);
    else sheet.insertRowsAfter(1, 1);
    writeHeader(sheet, layout);
    return;
  }
  const above = values.slice(0, header).filter((_, at) => at !== title);
  const isOwn = ownRow(values[header] ?? [], layout);
  mustBeBlank(
    sheet,
    above.filter((row) => !isOwn(row)),
    layout,
  );
  if (title > header || above.some(isOwn)) {
    headFirst(sheet, title, header);
    return;
  }
  if (title === -1 && header === 0) sheet.insertRowsBefore(1, 1);
  // From below, so that the numbers of the rows above hold.
  for (let at = header - 1; at >= 0; at -= 1) {
    if (at !== title && !(title === -1 && at === 0)) sheet.deleteRows(at + 1, 1);
  }
}

/** Whether a row is one of the table's, as its header stands. */
function ownRow(
  header: readonly unknown[],
  { filled }: Pick<OwnLayout, "filled">,
): (row: readonly unknown[]) => boolean {
  if (filled === null) return () => false;
  const columns = filled.map((text) => header.indexOf(text));
  return (row) => columns.every((at) => (row[at] ?? "") !== "") && row.some((cell) => cell !== "");
}

/** Indexes of the rows of title and header in a tab that was sorted with them; null where they are first. */
export function sortedHead(
  values: Values,
  layout: Pick<OwnLayout, "header" | "filled">,
): { readonly title: number; readonly header: number } | null {
  const header = headerRowIn(values, layout.header);
  const title = values.findIndex((row) => row.some(isTitle));
  const isOwn = ownRow(values[header] ?? [], layout);
  const above = values.slice(0, Math.max(0, header)).filter((_, at) => at !== title);
  const isSorted = header !== -1 && (title > header || above.some(isOwn));
  return isSorted ? { title, header } : null;
}

/** Brings title and header, indexes of their rows, to the top of a tab that was sorted with them. */
export function headFirst(sheet: Sheet, title: number, header: number): void {
  // Boxes go along with rows, and refuse what is no tick. They are taken off first: a row that has come to
  // its place must not be left with any.
  const rows = new Set([0, 1, header, ...(title === -1 ? [] : [title])]);
  for (const row of rows) {
    sheet.getRange(row + 1, 1, 1, sheet.getMaxColumns()).setDataValidation(null);
  }
  if (title === -1) sheet.insertRowsBefore(1, 1);
  else if (title > 0) sheet.moveRows(sheet.getRange(title + 1, 1), 1);
  const from = title === -1 || title > header ? header + 2 : header + 1;
  if (from > 2) sheet.moveRows(sheet.getRange(from, 1), 2);
}

function mustBeBlank(sheet: Sheet, rows: Values, { mendedBy }: OwnLayout): void {
  if (rows.every((row) => row.every((cell) => cell === ""))) return;
  throw new WritingError({ code: "linesAbove", tab: sheet.getName(), mendedBy });
}

/** Every column of ours in its place, one that is gone as a new one. */
function straightenColumns(sheet: Sheet, layout: OwnLayout): void {
  const { header } = layout;
  const wide = sheet.getMaxColumns();
  const stands = (sheet.getRange(2, 1, 1, wide).getValues()[0] ?? []).map(String);
  const columns = columnsStanding(header, stands);
  // What stands where by now, as columns are moved: their indexes at the start, null for a new one.
  const order: (number | null)[] = stands.map((_, column) => column);
  header.forEach((_, column) => {
    const from = columns[column];
    const at = from === undefined ? -1 : order.indexOf(from);
    if (at === column) return;
    if (at === -1) insertColumn(sheet, column);
    else moveColumn(sheet, at, column);
    if (at !== -1) order.splice(at, 1);
    order.splice(column, 0, from ?? null);
  });
  writeHeader(sheet, layout);
}

/** Where, from 0, each column of ours stands; undefined for one that is gone. */
export function columnsStanding(
  header: readonly string[],
  stands: readonly string[],
): readonly (number | undefined)[] {
  const columns = header.map((text) => {
    const at = stands.indexOf(text);
    return at === -1 ? undefined : at;
  });
  const known = new Set(header);
  return columns.map((standing, column) => {
    if (standing !== undefined) return standing;
    // A renamed one stands beside its neighbours still.
    const [left, right] = [columns[column - 1], columns[column + 1]];
    const nextToThem = [left === undefined ? -1 : left + 1, right === undefined ? -1 : right - 1];
    if (column === 0) nextToThem.push(0);
    return nextToThem.find(
      (at) => at >= 0 && at < stands.length && !known.has(stands[at] as string),
    );
  });
}

function moveColumn(sheet: Sheet, from: number, to: number): void {
  sheet.moveColumns(sheet.getRange(1, from + 1), to + 1);
}

function insertColumn(sheet: Sheet, at: number): void {
  if (at === 0) sheet.insertColumnsBefore(1, 1);
  else sheet.insertColumnsAfter(at, 1);
  // From memory: a new column takes over the boxes of the one beside it.
  sheet.getRange(1, at + 1, sheet.getMaxRows(), 1).setDataValidation(null);
}

function writeHeader(sheet: Sheet, { title, header }: OwnLayout): void {
  const cell = sheet.getRange(1, 1);
  if (!isTitle(cell.getValue())) cell.setValue(safeText(`${MARK} ${title}`));
  sheet.getRange(2, 1, 1, header.length).setValues([header.map(safeText)]);
}
