import type { DecimalMark } from "../cells";

/** Digits as they may stand in a written number, with marks and spaces; for a regular expression. */
export const DIGITS = "\\d(?:[\\d.,'\\u00a0\\u202f ]*\\d)?";

/**
 * A number as people write it: "1,234.50", "5 000", "0,25".
 *
 * @param digits     such as DIGITS matches
 * @param decimalMark how the workbook's locale writes decimals; null when not known
 * @returns 0 or more; null where it can't be read, or may be read in two ways
 */
export function writtenNumber(digits: string, decimalMark: DecimalMark | null): number | null {
  const text = digits.replace(/['\u00a0\u202f ]/gu, "");
  const marks = text.match(/[.,]/g) ?? [];
  const last = marks[marks.length - 1];
  if (last === undefined) return Number.isFinite(Number(text)) ? Number(text) : null;
  const first = marks[0] as string;
  const both = first !== last;
  const after = text.length - 1 - text.lastIndexOf(last);
  // "5.000" is five thousand or five: the workbook's own mark tells. "0.125" is no thousands.
  const either = !both && marks.length === 1 && after === 3 && !text.startsWith("0");
  if (either && decimalMark === null) return null;
  const groups = !both && (marks.length > 1 || (either && last !== decimalMark));
  if (groups && !/^[1-9]\d{0,2}(?:[.,]\d{3})+$/.test(text)) return null;
  const group = last === "," ? "." : ",";
  const plain = groups ? text.replace(/[.,]/g, "") : text.split(group).join("").replace(last, ".");
  const value = Number(plain);
  return Number.isFinite(value) ? value : null;
}
