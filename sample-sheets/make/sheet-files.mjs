/**
 * Writes one table as csv and several tables as one workbook.
 */
import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { utils, write } from "@e965/xlsx";
import { isoFromDay, serialFromDay } from "./days.mjs";

/** Width of the narrowest column, in characters: a day fits, also under a short header. */
const narrowest = 12;

/** Width of the widest column, in characters; longer text is read in the cell itself. */
const widest = 120;

/**
 * A cell: text, a number, a day, or nothing (not the same as 0).
 *
 * @typedef {string | number | { readonly day: number } | null} Cell
 *
 * @typedef {object} Table
 * @property {string} sheet name of the sheet; its lower case, hyphens for spaces, names the csv file
 * @property {readonly (readonly Cell[])[]} rows the header, where there is one, is the first row
 */

/**
 * The csv text: commas, ISO days, a line feed after every row.
 *
 * @param {Table} table
 * @returns {string}
 */
function csvText(table) {
  const line = (/** @type {readonly Cell[]} */ row) => row.map(csvField).join(",");
  return `${table.rows.map(line).join("\n")}\n`;
}

/**
 * Writes `<sheet>.csv` for each table and `<name>.xlsx` with all of them.
 *
 * @param {string} folder made when it is not there
 * @param {string} name file name of the workbook, without its ending
 * @param {readonly Table[]} tables
 */
export function writeSheetFiles(folder, name, tables) {
  mkdirSync(folder, { recursive: true });
  for (const table of tables) {
    writeFileSync(
      join(folder, `${table.sheet.toLowerCase().replaceAll(" ", "-")}.csv`),
      csvText(table),
    );
  }
  const book = utils.book_new();
  for (const table of tables) utils.book_append_sheet(book, workbookSheet(table), table.sheet);
  writeFileSync(
    join(folder, `${name}.xlsx`),
    write(book, { type: "buffer", bookType: "xlsx", compression: true }),
  );
}

/** @param {Cell} cell @returns {string} */
function csvField(cell) {
  const text = cellText(cell);
  return /[",\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}

/** @param {Cell} cell @returns {string} */
function cellText(cell) {
  if (cell === null) return "";
  return typeof cell === "object" ? isoFromDay(cell.day) : String(cell);
}

/** @param {Table} table */
function workbookSheet(table) {
  const sheet = utils.aoa_to_sheet(table.rows.map((row) => row.map(workbookCell)));
  const columns = Math.max(...table.rows.map((row) => row.length));
  sheet["!cols"] = Array.from({ length: columns }, (_, column) => {
    const longest = Math.max(...table.rows.map((row) => cellText(row[column] ?? null).length));
    return { wch: Math.min(widest, Math.max(narrowest, longest + 2)) };
  });
  return sheet;
}

/** @param {Cell} cell */
function workbookCell(cell) {
  if (cell === null || typeof cell !== "object") return cell;
  return { t: "n", v: serialFromDay(cell.day), z: "yyyy-mm-dd" };
}
