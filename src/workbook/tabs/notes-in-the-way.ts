import * as text from "../../sentences/made/menu";
import { cellName } from "../host/cell-name";
import { safeText } from "../host/safe-text";

type Sheet = GoogleAppsScript.Spreadsheet.Sheet;

/** A note of a person's that stood where an answer is to stand. */
export interface MovedNote {
  /** Such as "Stages!C7". */
  readonly from: string;
  readonly to: string;
}

/** What a cell shows whose answer finds another cell filled. */
export function isBlocked(shown: unknown): boolean {
  return /^#(?:REF|SPILL)!/.test(String(shown));
}

/** What stands right of and below a formula, with indexes that count from it. */
function besideAnchor(sheet: Sheet, anchor: { readonly row: number; readonly column: number }) {
  const [high, wide] = [sheet.getLastRow(), sheet.getLastColumn()];
  const range = sheet.getRange(
    anchor.row,
    anchor.column,
    Math.max(1, high - anchor.row + 1),
    Math.max(1, wide - anchor.column + 1),
  );
  const formulas = range.getFormulas();
  const values = range.getValues();
  const isFilled = (row: number, column: number) =>
    (values[row]?.[column] ?? "") !== "" || (formulas[row]?.[column] ?? "") !== "";
  const notes = values.flatMap((cells, row) =>
    cells.flatMap((_, column) =>
      isFilled(row, column) && !(row === 0 && column === 0) ? [{ row, column }] : [],
    ),
  );
  return { values, formulas, notes, isFilled };
}

/**
 * Cells that may be in the way of an answer that shows nothing, rows and columns from 1, the one in
 * the leftmost column first.
 */
export function cellsInTheWay(
  sheet: Sheet,
  anchor: { readonly row: number; readonly column: number },
): readonly { readonly row: number; readonly column: number; readonly shown: unknown }[] {
  const { values, formulas, notes } = besideAnchor(sheet, anchor);
  return [...notes]
    .sort((a, b) => a.column - b.column || a.row - b.row)
    .map(({ row, column }) => {
      const [value, formula] = [values[row]?.[column], formulas[row]?.[column] ?? ""];
      return {
        row: anchor.row + row,
        column: anchor.column + column,
        shown: formula === "" ? value : formula,
      };
    });
}

/** Notes that were moved, the first ones each by where it was and is, the others as a number. */
export function movedNames(moved: readonly MovedNote[]): readonly string[] {
  const named = moved.slice(0, MOST_NAMED).map(text.moved);
  const more = moved.length - named.length;
  return more === 0 ? named : [...named, text.moreMoved({ more })];
}

/** More would not be read while a message is shown. */
const MOST_NAMED = 3;

/**
 * Moves what a person has put where the answer of a formula is to stand to the right of it, in its own
 * row. Called while the answer shows nothing, so that whatever stands there is a person's.
 *
 * @param columns how many the answer usually has
 */
export function moveNotesAway(
  sheet: Sheet,
  anchor: { readonly row: number; readonly column: number },
  columns: number,
): readonly MovedNote[] {
  const { values, formulas, notes, isFilled } = besideAnchor(sheet, anchor);
  const within = notes.filter(({ column }) => column < columns);
  // An answer may be wider than it usually is.
  const inTheWay = within.length > 0 ? within : notes;
  const right = Math.max(columns, ...inTheWay.map(({ column }) => column + 1));
  const targets = new Set<string>();
  const moved = inTheWay.map(({ row, column }) => {
    let to = right + 1;
    while (isFilled(row, to) || targets.has(`${row},${to}`)) to += 1;
    targets.add(`${row},${to}`);
    return { row, column, to };
  });
  const last = anchor.column + Math.max(0, ...moved.map(({ to }) => to));
  const room = sheet.getMaxColumns();
  if (last > room) sheet.insertColumnsAfter(room, last - room);
  const cellAt = (row: number, column: number) =>
    sheet.getRange(anchor.row + row, anchor.column + column);
  // First where they go: a fault in between leaves a note twice, never not at all.
  for (const { row, column, to } of moved) {
    const value = values[row]?.[column];
    const formula = formulas[row]?.[column] ?? "";
    if (formula !== "") cellAt(row, to).setFormula(formula);
    else cellAt(row, to).setValue(typeof value === "string" ? safeText(value) : value);
  }
  SpreadsheetApp.flush();
  for (const { row, column } of moved) cellAt(row, column).clearContent();
  const named = (row: number, column: number) =>
    `${sheet.getName()}!${cellName({ row: anchor.row + row, column: anchor.column + column })}`;
  return moved.map(({ row, column, to }) => ({ from: named(row, column), to: named(row, to) }));
}
