import type { ICellData } from "@univerjs/core";
import { empty } from "../sentences/made/file-faults";
import { MOST_ROWS } from "./file-limits";
import { PersonError } from "./person-error";
import { isFilled, readingLimits, withoutBlankEnd } from "./reading-limits";
import { serialOfIso } from "./serial-day";
import { readText } from "./text-in";
import { booleanCell, numberCell, type SheetDraft, textCell } from "./workbook-data";

/**
 * The one tab of a .csv file.
 *
 * Cells get the type that they would get in a sheet, where that is beyond doubt: plain numbers,
 * ISO days and TRUE or FALSE. The rest stays text as it stands: "0012" (an id), "+44 20", "3/4",
 * and "=1+1", which must never become a formula.
 *
 * The xlsx library could read csv too, but it looks at the first bytes to guess what kind of file
 * this is (a first header "ID" makes it something else), so the few rules are written out here.
 *
 * @param bytes UTF-8, UTF-16, or else Windows-1252 as older programs save it
 * @param fileName for the message
 * @param tabName such as "records"
 * @throws PersonError when nothing is in it, or more than is read
 */
export function readCsv(bytes: Uint8Array, fileName: string, tabName: string): SheetDraft {
  const text = readText(bytes, fileName);
  const separator = guessSeparator(text);
  const limits = readingLimits(fileName);
  const rows: (ICellData | undefined)[][] = [];
  for (const fields of csvRows(text, separator)) {
    const row = fields.map((field) => typedCell(field, separator));
    row.forEach((cell, column) => {
      if (isFilled(cell)) limits.cell(null, { row: rows.length, column }, cell);
    });
    // Far below the table there may be any number of blank lines.
    if (rows.length < MOST_ROWS) rows.push(row);
  }
  const filled = withoutBlankEnd(rows);
  if (filled.length === 0) throw new PersonError(empty({ file: fileName }));
  return { name: tabName, rows: filled };
}

/** The mark that the first line with any has most of, outside quotes; a comma if it has none. */
function guessSeparator(text: string): string {
  const counts = new Map([...MARKS].map((mark) => [mark, 0]));
  let quoted = false;
  let found = false;
  for (const mark of text.matchAll(/["\r\n,;\t]/g)) {
    const [sign] = mark;
    if (sign === '"') quoted = !quoted;
    else if (quoted) continue;
    else if (!counts.has(sign)) {
      if (found) break;
    } else {
      counts.set(sign, (counts.get(sign) ?? 0) + 1);
      found = true;
    }
  }
  const count = (mark: string) => counts.get(mark) ?? 0;
  return [...MARKS].reduce((best, mark) => (count(mark) > count(best) ? mark : best));
}

const MARKS = ",;\t";

/**
 * Rows of the fields of a text by RFC 4180: quotes around a field may hold separators and line ends.
 * Fields are cut out of the text whole: put together from single characters, a long one would take
 * many times its size.
 */
function* csvRows(text: string, separator: string): Generator<string[]> {
  let row: string[] = [];
  let at = 0;
  while (at < text.length) {
    const field = text[at] === '"' ? quotedField(text, at) : { text: "", end: at };
    const end = endOfField(text, field.end, separator);
    row.push(field.text + text.slice(field.end, end));
    const isLineEnd = text[end] !== separator;
    at = end + (text[end] === "\r" ? 2 : 1);
    if (isLineEnd) {
      yield row;
      row = [];
    } else if (at >= text.length) row.push("");
  }
  if (row.length > 0) yield row;
}

/** Where a separator, a line end or the text's end comes next. A lone \\r belongs to the field. */
function endOfField(text: string, from: number, separator: string): number {
  for (let at = from; at < text.length; at++) {
    const mark = text[at];
    if (mark === separator || mark === "\n") return at;
    if (mark === "\r" && text[at + 1] === "\n") return at;
  }
  return text.length;
}

/** What stands between quotes, in which a doubled one is a quote; to the end if none closes it. */
function quotedField(text: string, at: number): { readonly text: string; readonly end: number } {
  let close = text.indexOf('"', at + 1);
  while (close >= 0 && text[close + 1] === '"') close = text.indexOf('"', close + 2);
  const end = close < 0 ? text.length : close;
  return {
    text: text.slice(at + 1, end).replaceAll('""', '"'),
    end: close < 0 ? end : end + 1,
  };
}

function typedCell(field: string, separator: string): ICellData | undefined {
  const text = field.trim();
  if (text === "") return undefined;
  // Where ; parts the fields, the comma is free to be the decimal mark.
  const number = separator === ";" ? text.replace(/^(-?\d+),(\d+)$/, "$1.$2") : text;
  // "1.200" is twelve hundred in half of the world: what reads it has to decide.
  if (/^\d{1,3}\.\d{3}$/.test(number)) return textCell(field);
  // 15 digits are what a cell can hold exactly; a longer one is an id.
  if (/^-?(?:0|[1-9]\d{0,14})(?:\.\d+)?$/.test(number)) return numberCell(Number(number));
  if (/^(?:TRUE|FALSE)$/i.test(text)) return booleanCell(text.toUpperCase() === "TRUE");
  const serial = serialOfIso(text);
  if (serial !== null) {
    return numberCell(serial, Number.isInteger(serial) ? "yyyy-mm-dd" : "yyyy-mm-dd hh:mm:ss");
  }
  return textCell(field);
}
