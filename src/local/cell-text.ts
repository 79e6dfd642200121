import { isDatePattern } from "./cell-kinds";
import { isoOfSerial } from "./serial-day";
import type { SheetCell } from "./sheet-cells";

/** What a cell shows as plain text: days as ISO 8601, numbers with three decimals at most. */
export function shownText(cell: SheetCell | null | undefined): string {
  if (!cell) return "";
  const { value, pattern } = cell;
  if (typeof value === "boolean") return value ? "TRUE" : "FALSE";
  if (typeof value === "string") return value;
  if (isDatePattern(pattern)) return isoOfSerial(value);
  if (pattern.includes("%")) return `${(value * 100).toFixed(1)}%`;
  return String(Number(value.toFixed(3)));
}
