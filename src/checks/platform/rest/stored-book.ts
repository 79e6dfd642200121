/**
 * A workbook as the emulator's services ask for it over the network: the fields of the Sheets REST
 * API that it names, kept in memory.
 * Shapes: https://developers.google.com/sheets/api/reference/rest/v4/spreadsheets
 */
export interface StoredBook {
  readonly id: string;
  readonly title: string;
  readonly sheets: StoredSheet[];
}

export interface StoredSheet {
  readonly properties: SheetProperties;
  /** Rows of cells from A1 on; what is missing is blank. Empty on a sheet without a grid. */
  rows: (StoredCell | undefined)[][];
  /** Widths of columns in pixels, where one was set. */
  widths: (number | undefined)[];
}

export interface SheetProperties {
  readonly sheetId: number;
  title: string;
  index: number;
  /** OBJECT is a chart on a sheet of its own. */
  readonly sheetType: "GRID" | "OBJECT";
  hidden?: boolean;
  /** None on a sheet without a grid. */
  gridProperties?: GridProperties;
}

export interface GridProperties {
  rowCount: number;
  columnCount: number;
  frozenRowCount?: number;
  frozenColumnCount?: number;
}

/** A cell's content is one of these; none is a blank cell. */
export interface EnteredValue {
  readonly numberValue?: number;
  readonly stringValue?: string;
  readonly boolValue?: boolean;
  readonly formulaValue?: string;
}

export interface StoredCell {
  userEnteredValue?: EnteredValue;
  userEnteredFormat?: CellFormat;
  /** Kept as it came; only the type is looked at. */
  dataValidation?: { readonly condition?: { readonly type?: string } };
}

export interface CellFormat {
  readonly numberFormat?: { readonly type: string; readonly pattern?: string };
  readonly [other: string]: unknown;
}

/** What the API answers with in place of a result: status 400 and a sentence. */
export class Refused extends Error {}

const NEW_ROWS = 1000;
const NEW_COLUMNS = 26;

/** An empty tab of the size that a new one has. */
export function gridSheet(sheetId: number, title: string): StoredSheet {
  return {
    properties: {
      sheetId,
      title,
      index: 0,
      sheetType: "GRID",
      gridProperties: { rowCount: NEW_ROWS, columnCount: NEW_COLUMNS },
    },
    rows: [],
    widths: [],
  };
}

/** A chart that was moved to a sheet of its own: it has no cells. */
export function chartSheet(sheetId: number, title: string): StoredSheet {
  return {
    properties: { sheetId, title, index: 0, sheetType: "OBJECT" },
    rows: [],
    widths: [],
  };
}

/** Numbers the sheets by the order in which they stand. */
export function renumber({ sheets }: StoredBook): void {
  sheets.forEach(({ properties }, index) => {
    properties.index = index;
  });
}
