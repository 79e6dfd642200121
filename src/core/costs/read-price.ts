import { type Cell, cellText, isBlank } from "../cells/cell";
import { quoted } from "../cells/quoted";
import type { DecimalMark } from "../cells/read-count-text";
import { DIGITS, writtenNumber } from "./written-number";

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
  const wrong = `${quoted(text)} is no price that can be read`;
  if (typeof cell !== "string") return wrong;
  const match = WITH_SIGN.exec(text.trim());
  const price = match === null ? null : writtenNumber(match[1] as string, decimalMark);
  return price === null || price > MOST ? wrong : price;
}

/** "Rs. 500" and "500/-" too. */
const WITH_SIGN = new RegExp(
  `^(?:\\p{L}\\.|[^\\d\\-+.,])*(${DIGITS})(?:[/.,]-)?[^\\d\\-+.,]*$`,
  "u",
);

/** Sums of such over all batches stay exact enough for a cell. */
const MOST = 1e9;
