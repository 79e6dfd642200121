import { areaOf, type GridRange, gridOf, sheetById } from "./areas";
import { cellAt, setAll } from "./cell-fields";
import {
  type GridProperties,
  gridSheet,
  Refused,
  renumber,
  type SheetProperties,
  type StoredBook,
  type StoredCell,
} from "./stored-book";

/**
 * The requests of batchUpdate that the emulator makes for the add-in; every other one is refused by
 * its name, so that nothing is taken for done that was not.
 * https://developers.google.com/sheets/api/reference/rest/v4/spreadsheets/request
 */
export interface BatchRequest {
  readonly addSheet?: { readonly properties: Partial<SheetProperties> };
  readonly deleteSheet?: { readonly sheetId: number };
  readonly updateSheetProperties?: {
    readonly properties: Partial<SheetProperties> & { readonly sheetId: number };
    readonly fields: string;
  };
  readonly updateCells?: {
    readonly range: GridRange;
    readonly rows?: readonly { readonly values?: readonly StoredCell[] }[];
    readonly fields: string;
  };
  readonly repeatCell?: {
    readonly range: GridRange;
    readonly cell: StoredCell;
    readonly fields: string;
  };
  readonly setDataValidation?: {
    readonly range: GridRange;
    readonly rule: StoredCell["dataValidation"] | null;
  };
  readonly updateDimensionProperties?: {
    readonly range: DimensionRange;
    readonly properties: { readonly pixelSize?: number };
  };
  readonly insertDimension?: { readonly range: DimensionRange };
  readonly deleteDimension?: { readonly range: DimensionRange };
  readonly moveDimension?: { readonly source: DimensionRange; readonly destinationIndex: number };
}

export interface DimensionRange {
  readonly sheetId: number;
  readonly dimension: "ROWS" | "COLUMNS";
  readonly startIndex: number;
  readonly endIndex: number;
}

type Reply = { readonly addSheet?: { readonly properties: SheetProperties } };

type Doers = {
  readonly [Name in keyof BatchRequest]-?: (
    book: StoredBook,
    request: NonNullable<BatchRequest[Name]>,
  ) => Reply;
};

const DO: Doers = {
  addSheet: (book, { properties }) => ({ addSheet: { properties: addSheet(book, properties) } }),
  deleteSheet(book, { sheetId }) {
    const sheet = sheetById(book, sheetId);
    // The platform's wording, from memory.
    if (book.sheets.length === 1)
      throw new Refused("You can't remove all the sheets in a document");
    book.sheets.splice(book.sheets.indexOf(sheet), 1);
    renumber(book);
    return {};
  },
  updateSheetProperties(book, { properties, fields }) {
    const stored = sheetById(book, properties.sheetId).properties;
    if (fields === "title" && properties.title !== undefined) {
      mustBeFree(book, properties.title, properties.sheetId);
      stored.title = properties.title;
    } else if (fields.startsWith("gridProperties.")) {
      const field = fields.slice("gridProperties.".length) as keyof GridProperties;
      gridOf(sheetById(book, properties.sheetId))[field] = properties.gridProperties?.[field] ?? 0;
    } else if (fields === "hidden") stored.hidden = properties.hidden === true;
    else throw new Refused(`the lent layer does not set the sheet's ${fields}`);
    return {};
  },
  updateCells(book, { range, rows, fields }) {
    const area = areaOf(book, range);
    setAll(area, fields, (row, column) => rows?.[row]?.values?.[column]);
    return {};
  },
  repeatCell(book, { range, cell, fields }) {
    setAll(areaOf(book, range), fields, () => cell);
    return {};
  },
  setDataValidation(book, { range, rule }) {
    const area = areaOf(book, range);
    setAll(area, "dataValidation", () => (rule ? { dataValidation: rule } : {}));
    if (rule?.condition?.type !== "BOOLEAN") return {};
    for (let row = area.top; row < area.bottom; row += 1) {
      for (let column = area.left; column < area.right; column += 1) {
        // A box is unticked at first, as insertCheckboxes documents.
        cellAt(area, row, column).userEnteredValue ??= { boolValue: false };
      }
    }
    return {};
  },
  updateDimensionProperties(book, { range, properties }) {
    const { widths } = sheetById(book, range.sheetId);
    if (range.dimension === "COLUMNS" && properties.pixelSize !== undefined) {
      for (let at = range.startIndex; at < range.endIndex; at += 1) {
        widths[at] = properties.pixelSize;
      }
    }
    return {};
  },
  insertDimension(book, { range }) {
    splice(book, range, range.endIndex - range.startIndex);
    return {};
  },
  deleteDimension(book, { range }) {
    splice(book, range, range.startIndex - range.endIndex);
    return {};
  },
  moveDimension(book, { source, destinationIndex }) {
    const sheet = sheetById(book, source.sheetId);
    const count = source.endIndex - source.startIndex;
    // The place is counted before anything is taken away.
    const to = destinationIndex > source.startIndex ? destinationIndex - count : destinationIndex;
    const move = (line: unknown[], length: number) => {
      line.length = Math.max(line.length, length);
      line.splice(to, 0, ...line.splice(source.startIndex, count));
    };
    const { rowCount, columnCount } = gridOf(sheet);
    if (source.dimension === "ROWS") move(sheet.rows, rowCount);
    else for (const row of sheet.rows) if (row) move(row, columnCount);
    return {};
  },
};

/** @throws Refused where the request is not among those that are lent, or can't be done */
export function doRequest(book: StoredBook, request: BatchRequest): Reply {
  const [name, ...more] = Object.keys(request) as (keyof BatchRequest)[];
  if (name === undefined || more.length > 0 || !(name in DO)) {
    throw new Refused(
      `the lent layer does not know the request ${Object.keys(request).join(", ")}`,
    );
  }
  const work = DO[name] as (book: StoredBook, asked: unknown) => Reply;
  return work(book, request[name]);
}

function addSheet(book: StoredBook, { title, index }: Partial<SheetProperties>): SheetProperties {
  const id = 1 + Math.max(0, ...book.sheets.map(({ properties }) => properties.sheetId));
  const name = title ?? `Sheet${id}`;
  mustBeFree(book, name, id);
  const sheet = gridSheet(id, name);
  book.sheets.splice(index ?? book.sheets.length, 0, sheet);
  renumber(book);
  return { ...sheet.properties };
}

function mustBeFree({ sheets }: StoredBook, title: string, except: number): void {
  const taken = sheets.some(
    ({ properties }) =>
      properties.sheetId !== except && properties.title.toLowerCase() === title.toLowerCase(),
  );
  if (taken) {
    throw new Refused(
      `A sheet with the name "${title}" already exists. Please enter another name.`,
    );
  }
}

/** Puts rows or columns in, or takes them out where the number is below 0. */
function splice(book: StoredBook, range: DimensionRange, count: number): void {
  const sheet = sheetById(book, range.sheetId);
  const grid = gridOf(sheet);
  const { startIndex } = range;
  const change = <Item>(line: (Item | undefined)[]) => {
    if (line.length <= startIndex) return;
    const fresh = Array<undefined>(Math.max(0, count)).fill(undefined);
    line.splice(startIndex, Math.max(0, -count), ...fresh);
  };
  if (range.dimension === "ROWS") {
    if (sheet.rows.length > startIndex) {
      const fresh = Array.from({ length: Math.max(0, count) }, () => []);
      sheet.rows.splice(startIndex, Math.max(0, -count), ...fresh);
    }
    grid.rowCount += count;
    return;
  }
  for (const row of sheet.rows) if (row) change(row);
  change(sheet.widths);
  grid.columnCount += count;
}
