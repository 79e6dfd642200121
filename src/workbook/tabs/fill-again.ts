/*
 * Longer than most: the three kinds of tabs (a table, one formula, values in a formula's place) share how
 * their first cell is guarded, and the order of the writes can be judged only side by side.
 */
import { ifThisStays } from "../../sentences/made/own-tabs";
import { isOurFormula, sameFormula } from "../host/formula-text";
import { BEING_MADE, MARK, STILL } from "../host/mark";
import { safeText } from "../host/safe-text";
import { topCells } from "../host/top-cells";
import { isBlocked, type MovedNote, moveNotesAway } from "./notes-in-the-way";
import { isStraight, type OwnLayout, straightValues } from "./straighten";
import {
  blockOf,
  columnsWritten,
  fillTop,
  makeRoom,
  setFormats,
  setLook,
  setStress,
  type TabContent,
  tickBox,
  tickColumns,
  titleOf,
} from "./tab-content";
import { withoutFilter } from "./tab-filter";

type Sheet = GoogleAppsScript.Spreadsheet.Sheet;

/** Whether a first cell says that its tab was left half made. */
export function isHalfMade(first: unknown): boolean {
  return String(first).startsWith(MARK) && String(first).includes(BEING_MADE);
}

/**
 * Fills a tab of ours again in the same sheet. Its first cell says so meanwhile; the new rows are
 * written in one call, and only then what an older, longer table has left below is cleared. So a
 * fault leaves the old tab, or one that says that it is half made, in which nothing is lost that a
 * person has entered.
 *
 * Widths, frozen rows and whatever stands beside the table stay as they are.
 *
 * @returns notes of a person's that stood in the way of an answer, and where they stand now
 */
export function fillAgain(
  sheet: Sheet,
  content: TabContent,
  mayFill: (old: Sheet) => void,
): readonly MovedNote[] {
  if ((content.rows[0]?.length ?? 0) > 0) fillTable(sheet, content, mayFill);
  else if (content.rows.length > 2 || columnsWritten(content) > 1) fillStill(sheet, content);
  else return fillOneCell(sheet, content);
  return [];
}

function fillTable(sheet: Sheet, content: TabContent, mayFill: (old: Sheet) => void): void {
  const layout = layoutOf(content);
  const found = sheet.getDataRange().getValues();
  const wasStraight = isStraight(found, layout);
  const values = wasStraight ? found : straightValues(sheet, layout);
  const [width, last] = [columnsWritten(content), content.rows.length + 1];
  const fill = {
    first: sheet.getRange(1, 1),
    content,
    work: (begin: () => void) => {
      makeRoom(sheet, content);
      setFormats(sheet, content);
      setBoxes(sheet, content);
      mayFill(sheet);
      begin();
      sheet.getRange(2, 1, content.rows.length, width).setValues(blockOf(content));
      fillTop(sheet, content);
      // Writes wait in a queue: a refusal must be met before anything of the old table goes.
      SpreadsheetApp.flush();
      if (formulaIn(content) !== null) clearStrayFormulas(sheet, content);
      else if (values.length > last) clearBelow(sheet, content, values.length);
      if (!wasStraight) setLook(sheet, content);
      setStress(sheet, content);
    },
  };
  withoutFilter(sheet, FIRST_HEADER_ROW, () => guarded(fill));
}

const FIRST_HEADER_ROW = 2;

/** A tab of one formula, or of one sentence in its place; wherever in its tab that has come to stand. */
function fillOneCell(sheet: Sheet, content: TabContent): readonly MovedNote[] {
  const { shown, formulas, title, stands } = headUp(sheet, content);
  if (title === null) sheet.insertRowsBefore(1, 1);
  const [first, moved] = title === null ? [{ row: 1, column: 1 }, 1] : [title, 0];
  const still = stillColumns(content, shown, title);
  const cell =
    stands === null
      ? { row: first.row + content.rows.length, column: first.column }
      : { row: stands.row + moved, column: stands.column };
  makeRoom(sheet, content, first.column - 1);
  const formula = formulaIn(content);
  const isBroken =
    stands !== null && isBlocked(shown[stands.row - 1]?.[stands.column - 1]) && formula !== null;
  const notes = isBroken ? moveNotesAway(sheet, cell, content.widths.length) : [];
  const isSame =
    stands !== null &&
    formula !== null &&
    sameFormula(formulas[stands.row - 1]?.[stands.column - 1] ?? "", formula) &&
    title !== null &&
    safeText(String(shown[title.row - 1]?.[title.column - 1])) === titleOf(content) &&
    !String(shown[stands.row - 1]?.[stands.column - 1]).startsWith("#");
  if (isSame) return notes;
  const work = (begin: () => void) => {
    begin();
    clearStill(sheet, first, still);
    const [value = ""] = blockOf(content)[content.rows.length - 1] ?? [];
    sheet.getRange(cell.row, cell.column).setValue(value);
  };
  guarded({ first: sheet.getRange(first.row, first.column), content, work, isStill: still > 0 });
  return notes;
}

/**
 * A tab of values below a blank row, where one formula, one sentence or older values may stand: they
 * go, and so does a formula that rows or columns put in by hand have moved, since it would go on
 * showing what the values leave out.
 */
function fillStill(sheet: Sheet, content: TabContent): void {
  const { shown, formulas, title } = topOf(sheet);
  if (title === null) sheet.insertRowsBefore(1, 1);
  const [first, moved] = title === null ? [{ row: 1, column: 1 }, 1] : [title, 0];
  const still = stillColumns(content, shown, title);
  makeRoom(sheet, content, first.column - 1);
  setFormats(sheet, content);
  const work = (begin: () => void) => {
    begin();
    formulas.forEach((row, at) => {
      row.forEach((formula, column) => {
        if (isOurFormula(formula)) sheet.getRange(at + 1 + moved, column + 1).clearContent();
      });
    });
    clearStill(sheet, first, still);
    const block = blockOf(content);
    sheet
      .getRange(first.row + 1, first.column, block.length, columnsWritten(content))
      .setValues(block);
    SpreadsheetApp.flush();
  };
  guarded({ first: sheet.getRange(first.row, first.column), content, work, isStill: true });
}

const IS_STILL = new RegExp(`^[^,.;]*${STILL},`);

/** How many columns of values stand below a title; 0 where it is none of such a tab. */
function stillColumns(
  { widths }: TabContent,
  shown: readonly (readonly string[])[],
  title: CellAt | null,
): number {
  const text = title === null ? "" : (shown[title.row - 1]?.[title.column - 1] ?? "");
  return IS_STILL.test(text) ? widths.length : 0;
}

/** Clears the table of a tab of values: all below its title's blank row, down to a blank one. */
function clearStill(sheet: Sheet, first: CellAt, columns: number): void {
  if (columns === 0) return;
  const ours = sheet
    .getDataRange()
    .getValues()
    .slice(first.row + 1)
    .map((row) => row.slice(first.column - 1, first.column - 1 + columns));
  const end = ours.findIndex((row) => row.every((cell) => cell === ""));
  const count = end === -1 ? ours.length : end;
  if (count > 0) sheet.getRange(first.row + 2, first.column, count, columns).clearContent();
}

/**
 * What stands at the top of a tab of one formula. Where a person has sorted the tab with its title, so
 * that the formula stands above it or far below, the title goes back to the first cell and the formula
 * from where it is.
 */
function headUp(sheet: Sheet, content: TabContent): Top {
  const top = topOf(sheet);
  const isHeadFirst = top.stands !== null && (top.title?.row ?? 0) < top.stands.row;
  if (isHeadFirst || formulaIn(content) === null) return top;
  const all = sheet.getDataRange();
  const { title, stands } = placesIn(all.getDisplayValues(), all.getFormulas());
  if (title === null || stands === null) return top;
  const isOwn = [title, stands].some(({ row, column }) => row === 1 && column === 1);
  const down = isOwn || top.shown[0]?.[0] === "" ? 0 : 1;
  // A line of the person's has come to stand there.
  if (down > 0) sheet.insertRowsBefore(1, down);
  // First where it goes: without its title the tab would not be known for ours.
  sheet.getRange(1, 1).setValue(halfMade(content, false));
  for (const { row, column } of [title, stands]) {
    if (row + down > 1 || column > 1) sheet.getRange(row + down, column).clearContent();
  }
  return topOf(sheet);
}

type Top = ReturnType<typeof topOf>;

function placesIn(shown: readonly (readonly string[])[], formulas: readonly (readonly string[])[]) {
  return {
    title: cellWith(shown, (text) => text.startsWith(MARK)),
    stands: cellWith(formulas, isOurFormula),
  };
}

/** What stands at a tab's top, with where our title and our formula are. */
function topOf(sheet: Sheet) {
  const top = topCells(sheet, ROWS_LOOKED_AT, COLUMNS_LOOKED_AT);
  const [shown, formulas] = [top.getDisplayValues(), top.getFormulas()];
  return { shown, formulas, ...placesIn(shown, formulas) };
}

const ROWS_LOOKED_AT = 12;
const COLUMNS_LOOKED_AT = 12;

/** Row and column, from 1. */
interface CellAt {
  readonly row: number;
  readonly column: number;
}

function cellWith(
  texts: readonly (readonly string[])[],
  is: (text: string) => boolean,
): CellAt | null {
  for (const [row, cells] of texts.entries()) {
    const column = cells.findIndex(is);
    if (column !== -1) return { row: row + 1, column: column + 1 };
  }
  return null;
}

/**
 * Marks the first cell while the work lasts.
 *
 * @param work calls `begin` just before the first row is written over: until then a failure leaves
 *   the tab as it was
 * @param isStill whether the tab holds values, or will: until it is done it says so, since whoever
 *   makes it next must clear them
 */
function guarded({
  first,
  content,
  work,
  isStill = false,
}: {
  readonly first: GoogleAppsScript.Spreadsheet.Range;
  readonly content: TabContent;
  readonly work: (begin: () => void) => void;
  readonly isStill?: boolean;
}): void {
  const before = String(first.getValue());
  let begun = false;
  try {
    first.setValue(halfMade(content, isStill));
    work(() => {
      begun = true;
    });
    first.setValue(titleOf(content));
  } catch (error) {
    if (!begun) putTitleBack(first, before);
    throw error;
  }
}

function putTitleBack(first: GoogleAppsScript.Spreadsheet.Range, before: string): void {
  try {
    first.setValue(safeText(before));
  } catch {
    // It goes on saying that the tab is being made, and the next run makes it.
  }
}

function halfMade(
  { name, firstWords = name.toLowerCase(), mendedBy = "setUp" }: TabContent,
  isStill: boolean,
): string {
  const still = isStill ? STILL : "";
  return safeText(`${MARK} ${firstWords}${still}${BEING_MADE} ${ifThisStays({ mendedBy })}`);
}

function layoutOf({ rows, madeBy, filled = null, mendedBy = "setUp" }: TabContent): OwnLayout {
  const header = (rows[0] ?? []).map((cell) => (cell && "text" in cell ? cell.text : ""));
  return { title: madeBy, header, filled, mendedBy };
}

/** The formula in the last row; null where there is none. */
function formulaIn({ rows }: TabContent): string | null {
  const [cell = null] = rows[rows.length - 1] ?? [];
  return cell !== null && "formula" in cell ? cell.formula : null;
}

/** Boxes to tick without touching what is ticked, as inserting boxes would. */
function setBoxes(sheet: Sheet, { rows }: TabContent): void {
  const columns = tickColumns(rows);
  if (columns.length === 0) return;
  const box = tickBox();
  for (const { column, first, count } of columns) {
    sheet.getRange(first + 2, column + 1, count, 1).setDataValidation(box);
  }
}

/**
 * The rows, boxes as well, that an older table had more; our columns only. What they hold goes in one
 * call, for half of a row that was left would be kept as somebody's entry.
 */
function clearBelow(sheet: Sheet, content: TabContent, lastBefore: number): void {
  const first = content.rows.length + 2;
  const count = lastBefore - first + 1;
  sheet.getRange(first, 1, count, columnsWritten(content)).clearContent();
  for (const { column } of tickColumns(content.rows)) {
    sheet.getRange(first, column + 1, count, 1).removeCheckboxes();
  }
}

/** A formula of ours that rows put in by hand have moved down, where it would stand in the way. */
function clearStrayFormulas(sheet: Sheet, content: TabContent): void {
  const first = content.rows.length + 2;
  const count = Math.min(ROWS_LOOKED_AT, sheet.getMaxRows()) - first + 1;
  if (count < 1) return;
  sheet
    .getRange(first, 1, count, 1)
    .getFormulas()
    .forEach(([formula = ""], at) => {
      if (isOurFormula(formula)) sheet.getRange(first + at, 1).clearContent();
    });
}
