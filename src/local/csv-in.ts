import type { ICellData } from "@univerjs/core";
import { PersonError } from "./person-error";
import { serialOfIso } from "./serial-day";
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
 * @param bytes UTF-8, UTF-16 with a mark, or else Windows-1252 as older programs save it
 * @param fileName for the message
 * @param tabName such as "records"
 * @throws PersonError when nothing is in it
 */
export function readCsv(bytes: Uint8Array, fileName: string, tabName: string): SheetDraft {
  const text = decode(bytes);
  const separator = guessSeparator(text);
  const rows = splitCsv(text, separator);
  if (!rows.some((row) => row.some((field) => field.trim() !== ""))) {
    throw new PersonError(`${fileName} is empty`);
  }
  return {
    name: tabName,
    rows: rows.map((row) => row.map((field) => typedCell(field, separator))),
  };
}

function decode(bytes: Uint8Array): string {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return new TextDecoder("utf-16le").decode(bytes);
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(bytes);
  } catch {
    return new TextDecoder("windows-1252").decode(bytes);
  }
}

/** The mark that the first filled line has most of, outside quotes; a comma if it has none. */
function guessSeparator(text: string): string {
  const line = text.replace(/"(?:[^"]|"")*"/g, "").match(/[^\r\n]*[,;\t][^\r\n]*/)?.[0] ?? "";
  const count = (mark: string) => line.split(mark).length;
  return [",", ";", "\t"].reduce((best, mark) => (count(mark) > count(best) ? mark : best));
}

/** Fields of a text by RFC 4180: quotes around a field may hold separators and line ends. */
function splitCsv(text: string, separator: string): string[][] {
  const rows: string[][] = [];
  let row: string[] = [];
  let field = "";
  let quoted = false;
  const endField = () => {
    row.push(field);
    field = "";
  };
  const endRow = () => {
    endField();
    rows.push(row);
    row = [];
  };
  for (let at = 0; at < text.length; at++) {
    const mark = text[at] as string;
    if (quoted) {
      if (mark !== '"') field += mark;
      else if (text[at + 1] === '"') {
        field += '"';
        at++;
      } else quoted = false;
    } else if (mark === '"' && field === "") quoted = true;
    else if (mark === separator) endField();
    else if (mark === "\n") endRow();
    else if (mark !== "\r" || text[at + 1] !== "\n") field += mark;
  }
  if (field !== "" || row.length > 0) endRow();
  return rows;
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
