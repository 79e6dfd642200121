import { type CellObject, utils, type WorkSheet, write } from "@e965/xlsx";
import { shownText } from "./cell-text";
import { callsAddIn } from "./known-formulas";
import type { SheetCell, SheetCells } from "./sheet-cells";

/**
 * A calculated workbook as an .xlsx file.
 *
 * What calls one of the add-in's functions is written as values only. Other programs do not have
 * these functions: they would show the values until their next recalculation and #NAME? from then
 * on, and one of the formulas fills a whole tab. Who wants to know how a tab was made finds the
 * formula as text above it (see report-tabs.ts). Formulas that every program knows are kept, with
 * the calculated value beside them, and one that fills an area is written as an array formula.
 *
 * Left out because the library can't write it: bold headers, frozen rows, colours.
 *
 * @param addInNames names of the add-in's functions, upper case
 */
export function writeXlsx(
  sheets: readonly SheetCells[],
  addInNames: ReadonlySet<string>,
): Uint8Array {
  const book = utils.book_new();
  for (const sheet of sheets)
    utils.book_append_sheet(book, writeSheet(sheet, addInNames), sheet.name);
  book.Workbook = { Sheets: sheets.map(({ hidden }) => ({ Hidden: hidden ? 1 : 0 })) };
  // With shared strings on, text is stored as text; else the library marks it as a formula's result.
  return new Uint8Array(
    write(book, { type: "array", bookType: "xlsx", compression: true, bookSST: true }),
  );
}

function writeSheet(sheet: SheetCells, addInNames: ReadonlySet<string>): WorkSheet {
  const out: WorkSheet = {};
  let lastColumn = 0;
  sheet.rows.forEach((row, r) => {
    row.forEach((cell, c) => {
      if (!cell) return;
      lastColumn = Math.max(lastColumn, c);
      out[utils.encode_cell({ r, c })] = writeCell(cell, addInNames);
    });
  });
  // An array formula names its whole area; the cells in it carry only their values.
  for (const cell of sheet.rows.flat()) {
    if (!cell?.spills || !cell.formula || callsAddIn(cell.formula, addInNames)) continue;
    const { startRow, startColumn, endRow, endColumn } = cell.spills;
    const anchor = out[utils.encode_cell({ r: startRow, c: startColumn })] as CellObject;
    if (anchor.t === "e") continue;
    anchor.F = utils.encode_range({
      s: { r: startRow, c: startColumn },
      e: { r: endRow, c: endColumn },
    });
  }
  const lastRow = Math.max(0, sheet.rows.length - 1);
  out["!ref"] = utils.encode_range({ s: { r: 0, c: 0 }, e: { r: lastRow, c: lastColumn } });
  out["!cols"] = columnWidths(sheet, lastColumn);
  out["!merges"] = sheet.merges.map((area) => ({
    s: { r: area.startRow, c: area.startColumn },
    e: { r: area.endRow, c: area.endColumn },
  }));
  return out;
}

/** The codes that a file stores for error values. Source: ECMA-376 part 1, [MS-XLS] 2.5.10 BErr. */
const ERROR_CODES: Readonly<Record<string, number>> = {
  "#NULL!": 0x00,
  "#DIV/0!": 0x07,
  "#VALUE!": 0x0f,
  "#REF!": 0x17,
  "#NAME?": 0x1d,
  "#NUM!": 0x24,
  "#N/A": 0x2a,
};
/** The longest text that an .xlsx cell may hold. */
const LONGEST_TEXT = 32_767;

function writeCell(cell: SheetCell, addInNames: ReadonlySet<string>): CellObject {
  const out = valueCell(cell);
  if (cell.pattern) out.z = cell.pattern;
  if (cell.formula && !callsAddIn(cell.formula, addInNames)) {
    out.f = (cell.fileFormula ?? cell.formula).slice(1);
  }
  return out;
}

function valueCell({ value, message }: SheetCell): CellObject {
  if (typeof value === "boolean") return { t: "b", v: value };
  if (typeof value === "number") return { t: "n", v: value };
  const code = ERROR_CODES[value];
  if (code !== undefined) return { t: "e", v: code };
  // #ERROR! is no error value of the file format; as text it can at least say what is wrong.
  const text = message ? `${value} ${message}` : value;
  return { t: "s", v: text.length > LONGEST_TEXT ? `${text.slice(0, LONGEST_TEXT - 1)}…` : text };
}

const NARROWEST = 6;
const WIDEST = 60;

/** The width that the file named, else what the longest cell needs. */
function columnWidths(sheet: SheetCells, lastColumn: number): { wpx?: number; wch?: number }[] {
  const longest: number[] = new Array(lastColumn + 1).fill(NARROWEST);
  for (const row of sheet.rows) {
    // A line of text alone in its row is a caption; it may run over its neighbours.
    if (row.filter(Boolean).length < 2) continue;
    row.forEach((cell, column) => {
      longest[column] = Math.max(longest[column] ?? 0, shownText(cell).length + 3);
    });
  }
  return longest.map((characters, column) => {
    const wpx = sheet.widths[column];
    return wpx === undefined ? { wch: Math.min(WIDEST, characters) } : { wpx };
  });
}
