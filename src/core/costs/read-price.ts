import { type Cell, cellText, isBlank } from "../cells/cell";
import type { DecimalMark } from "../cells/read-count-text";

/**
 * Reads a price: a number 0 or more, in whatever money the nursery reckons in, with or without its
 * sign before or after ("€ 3.50", "5 000 F"). Money itself is of no concern: all prices of a table
 * are taken to be in the same.
 *
 * @param decimalMark how the workbook's locale writes decimals; null when not known
 * @returns null when blank; a text that says what is wrong
 */
export function readPrice(cell: Cell, decimalMark: DecimalMark | null): number | null | string {
  if (isBlank(cell)) return null;
  if (typeof cell === "number") {
    return Number.isFinite(cell) && cell >= 0 && cell <= MOST ? cell : "the price is out of range";
  }
  const text = cellText(cell);
  const wrong = `"${text.slice(0, 40)}" is no price that can be read`;
  if (typeof cell !== "string") return wrong;
  const match = /^[^\d\-+.,]*(\d[\d.,'\u00a0\u202f ]*?)[^\d\-+.,]*$/u.exec(text.trim());
  const price = match === null ? null : numberIn(match[1] as string, decimalMark);
  return price === null || price > MOST ? wrong : price;
}

/** Sums of such over all batches stay exact enough for a cell. */
const MOST = 1e9;

function numberIn(digits: string, decimalMark: DecimalMark | null): number | null {
  const text = digits.replace(/['\u00a0\u202f ]/gu, "");
  const marks = text.match(/[.,]/g) ?? [];
  const last = marks[marks.length - 1];
  if (last === undefined) return Number(text);
  const first = marks[0] as string;
  const both = first !== last;
  const after = text.length - 1 - text.lastIndexOf(last);
  // "5.000" is five thousand or five: the workbook's own mark tells.
  if (!both && marks.length === 1 && after === 3 && decimalMark === null) return null;
  const groups = !both && (marks.length > 1 || (after === 3 && last !== decimalMark));
  const mark = groups ? null : last;
  const group = mark === "," ? "." : ",";
  const plain = mark === null ? text : text.split(group).join("").replace(mark, ".");
  const grouped = mark === null ? /^\d{1,3}(?:[.,]\d{3})+$/.test(text) : true;
  const value = Number(mark === null ? plain.replace(/[.,]/g, "") : plain);
  return grouped && Number.isFinite(value) ? value : null;
}
