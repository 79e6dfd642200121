/**
 * Makes a workbook out of csv tables, for the samples whose csv is kept by hand: merged cells,
 * date cells and number cells are what a csv can't hold.
 */
import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { read, utils, write } from "@e965/xlsx";
import { dayFromIso, serialFromDay } from "./days.mjs";

/**
 * @typedef {object} Sheet
 * @property {string} sheet name of the sheet
 * @property {string} csv file name of its table, in the same folder
 * @property {readonly string[]} [merges] cells that are one, such as "A4:A5"; only the first holds a value
 * @property {boolean} [allText] whether whole numbers and ISO days stay text, as in a scan
 */

/**
 * Writes `<name>.xlsx` beside the tables.
 *
 * @param {string} folder
 * @param {string} name file name of the workbook, without its ending
 * @param {readonly Sheet[]} sheets
 */
export function writeWorkbookFromCsv(folder, name, sheets) {
  const book = utils.book_new();
  for (const { sheet, csv, merges = [], allText = false } of sheets) {
    const rows = csvRows(readFileSync(join(folder, csv), "utf8"));
    const made = utils.aoa_to_sheet(rows.map((row) => row.map((text) => cell(text, allText))));
    made["!merges"] = merges.map((range) => utils.decode_range(range));
    made["!cols"] = columnWidths(rows);
    utils.book_append_sheet(book, made, sheet);
  }
  writeFileSync(
    join(folder, `${name}.xlsx`),
    write(book, { type: "buffer", bookType: "xlsx", compression: true }),
  );
}

/**
 * The ranges of a group column's merged cells: each filled cell with the blanks below it.
 *
 * @param {string} folder
 * @param {string} csv file name of the table
 * @param {object} where
 * @param {string} where.column letter of the column
 * @param {number} where.firstRow counted from 1
 * @param {number} where.lastRow counted from 1
 * @returns {string[]}
 */
export function mergesDown(folder, csv, { column, firstRow, lastRow }) {
  const rows = csvRows(readFileSync(join(folder, csv), "utf8"));
  const at = utils.decode_col(column);
  const starts = [];
  for (let row = firstRow; row <= lastRow; row += 1) if (rows[row - 1]?.[at]) starts.push(row);
  return starts
    .map((start, index) => ({ start, end: (starts[index + 1] ?? lastRow + 1) - 1 }))
    .filter(({ start, end }) => end > start)
    .map(({ start, end }) => `${column}${start}:${column}${end}`);
}

/** @param {string} text @returns {string[][]} every cell as it is written, blank cells as "" */
function csvRows(text) {
  const book = read(text, { type: "string", raw: true });
  return utils.sheet_to_json(book.Sheets[book.SheetNames[0]], {
    header: 1,
    defval: "",
    blankrows: true,
    raw: true,
  });
}

/** @param {string} text @param {boolean} allText */
function cell(text, allText) {
  if (text === "") return null;
  if (allText) return { t: "s", v: text };
  if (/^\d+$/.test(text)) return { t: "n", v: Number(text) };
  if (/^\d{4}-\d{2}-\d{2}$/.test(text)) {
    return { t: "n", v: serialFromDay(dayFromIso(text)), z: "yyyy-mm-dd" };
  }
  return { t: "s", v: text };
}

// Titles run over the cells beside them, so the widest cell is looked for below them.
/** @param {readonly (readonly string[])[]} rows */
function columnWidths(rows) {
  const table = rows.filter((row) => row.filter((text) => text !== "").length > 2);
  const columns = Math.max(...rows.map((row) => row.length));
  return Array.from({ length: columns }, (_, column) => {
    const lines = table.flatMap((row) => (row[column] ?? "").split("\n"));
    return { wch: Math.min(30, 2 + Math.max(0, ...lines.map((line) => line.length))) };
  });
}
