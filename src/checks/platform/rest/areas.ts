import { type GridProperties, Refused, type StoredBook, type StoredSheet } from "./stored-book";

/** Cells of a sheet, from 0, the ends not included, as the API counts them. */
export interface Area {
  readonly sheet: StoredSheet;
  readonly top: number;
  readonly bottom: number;
  readonly left: number;
  readonly right: number;
}

/** https://developers.google.com/sheets/api/reference/rest/v4/spreadsheets/other#GridRange */
export interface GridRange {
  readonly sheetId: number;
  readonly startRowIndex?: number;
  readonly endRowIndex?: number;
  readonly startColumnIndex?: number;
  readonly endColumnIndex?: number;
}

export function sheetById({ sheets }: StoredBook, id: number): StoredSheet {
  const sheet = sheets.find(({ properties }) => properties.sheetId === id);
  if (!sheet) throw new Refused(`No sheet with id: ${id}`);
  return sheet;
}

/** @throws Refused where the sheet has no cells */
export function gridOf({ properties }: StoredSheet): GridProperties {
  // The API's wording for a sheet that is no grid is from memory.
  if (!properties.gridProperties) throw new Refused(`Sheet ${properties.title} is not a grid`);
  return properties.gridProperties;
}

export function areaOf(book: StoredBook, range: GridRange): Area {
  const sheet = sheetById(book, range.sheetId);
  const { rowCount, columnCount } = gridOf(sheet);
  return inside({
    sheet,
    top: range.startRowIndex ?? 0,
    bottom: range.endRowIndex ?? rowCount,
    left: range.startColumnIndex ?? 0,
    right: range.endColumnIndex ?? columnCount,
  });
}

const CELLS = /^\$?([A-Z]+)\$?(\d+)(?::\$?([A-Z]+)\$?(\d+))?$/;

/** The cells of a range in A1 notation with its tab, such as "Due list!A1:C4"; a tab alone is all of it. */
export function areaNamed(book: StoredBook, notation: string): Area {
  const bang = notation.lastIndexOf("!");
  const [name, cells] =
    bang === -1 ? [notation, ""] : [notation.slice(0, bang), notation.slice(bang + 1)];
  const title = name.replace(/^'(.*)'$/, "$1");
  const sheet = book.sheets.find(({ properties }) => properties.title === title);
  if (!sheet) throw new Refused(`Unable to parse range: ${notation}`);
  if (cells === "") return areaOf(book, { sheetId: sheet.properties.sheetId });
  gridOf(sheet);
  const [, left = "", top, right = left, bottom = top] = CELLS.exec(cells) ?? [];
  if (left === "") throw new Refused(`Unable to parse range: ${notation}`);
  return inside({
    sheet,
    top: Number(top) - 1,
    bottom: Number(bottom),
    left: columnNumber(left) - 1,
    right: columnNumber(right),
  });
}

function columnNumber(letters: string): number {
  return [...letters].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0);
}

function inside(area: Area): Area {
  const { rowCount, columnCount } = gridOf(area.sheet);
  if (area.bottom > rowCount || area.right > columnCount) {
    throw new Refused(
      `Range (${area.sheet.properties.title}) exceeds grid limits. Max rows: ${rowCount}, max columns: ${columnCount}`,
    );
  }
  return area;
}

/** Calls for every cell of an area, row by row. */
export function eachCell(area: Area, visit: (row: number, column: number) => void): void {
  for (let row = area.top; row < area.bottom; row += 1) {
    for (let column = area.left; column < area.right; column += 1) visit(row, column);
  }
}
