import { type Cell, cellText, type DecimalMark, isBlank, shortened } from "../cells";
import type { RowFault } from "../tables";
import { DIGITS, writtenNumber } from "./written-number";

/**
 * Reads a price: a number 0 or more, in whatever money the nursery reckons in, with or without its
 * sign before or after ("€ 3.50", "5 000 F"). Money itself is of no concern: all prices of a table
 * are taken to be in the same.
 *
 * @param decimalMark how the workbook's locale writes decimals; null when not known
 * @returns null when blank; what is wrong with one that can't be read
 */
export function readPrice(cell: Cell, decimalMark: DecimalMark | null): number | null | RowFault {
  if (isBlank(cell)) return null;
  if (typeof cell === "number") {
    return Number.isFinite(cell) && cell >= 0 && cell <= MOST
      ? cell
      : { code: "price-out-of-range" };
  }
  const text = cellText(cell);
  const wrong: RowFault = { code: "not-a-price", found: shortened(text) };
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
