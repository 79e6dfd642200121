import { openFile } from "../../local/open-file";
import type { SheetDraft } from "../../local/workbook-data";
import {
  chartSheet,
  gridSheet,
  renumber,
  type StoredBook,
  type StoredCell,
  type StoredSheet,
} from "./rest/stored-book";

/** Invented, see its README. */
const SAMPLE = "sample-sheets/hillside-nursery/hillside-nursery.xlsx";
export const CHART_TAB = "Chart of takes";

/** The sample nursery. @param chart whether a chart on a sheet of its own stands second in it */
export function sampleBook(chart: boolean): StoredBook {
  const sheets = openFile(SAMPLE, new Set()).map((draft, at) => stored(draft, at + 1));
  if (chart) sheets.splice(1, 0, chartSheet(sheets.length + 1, CHART_TAB));
  const book: StoredBook = { id: "sample-nursery", title: "Sample nursery", sheets };
  renumber(book);
  return book;
}

function stored({ name, rows }: SheetDraft, id: number): StoredSheet {
  const sheet = gridSheet(id, name);
  const grid = sheet.properties.gridProperties;
  if (grid) {
    grid.columnCount = Math.max(grid.columnCount, ...rows.map((row) => row.length));
    grid.rowCount = Math.max(grid.rowCount, rows.length);
  }
  sheet.rows = rows.map((row) => row.map((cell) => (cell ? storedCell(cell) : undefined)));
  return sheet;
}

type DraftCell = NonNullable<SheetDraft["rows"][number][number]>;

function storedCell({ v, t, s }: DraftCell): StoredCell {
  const pattern = typeof s === "object" ? s?.n?.pattern : undefined;
  const format = pattern ? { userEnteredFormat: { numberFormat: { type: "DATE", pattern } } } : {};
  // 3 is the local engine's kind of a yes or no.
  if (t === 3) return { userEnteredValue: { boolValue: v === 1 }, ...format };
  if (typeof v === "number") return { userEnteredValue: { numberValue: v }, ...format };
  return v === undefined || v === null ? {} : { userEnteredValue: { stringValue: String(v) } };
}
