import type { EnteredValue, StoredCell } from "./stored-book";

/** A value on its way into a cell. */
export type Typed = string | number | boolean | Date | null;

const NUMERAL = /^-?\d+(\.\d+)?$/;
const DAY_MS = 86_400_000;
/** Serial number of 1 Jan 1970; 0 is 30 Dec 1899. */
const UNIX_SERIAL = 25_569;

/**
 * What a cell makes of a value that is written as if a person had typed it (USER_ENTERED). Part of
 * what we lend: numerals, yes and no, formulas, and an apostrophe that keeps text as text. Typed
 * days, percentages, money and other locales are not read: they stay text here.
 */
export function typeInto(cell: StoredCell, value: Typed): void {
  if (value === null) return;
  if (isDate(value)) {
    cell.userEnteredValue = { numberValue: serialOf(value) };
    cell.userEnteredFormat ??= { numberFormat: { type: "DATE", pattern: "yyyy-mm-dd" } };
    return;
  }
  const read = readValue(value, cell.userEnteredFormat?.numberFormat?.pattern === "@");
  if (read) cell.userEnteredValue = read;
  else delete cell.userEnteredValue;
}

function readValue(value: string | number | boolean, asText: boolean): EnteredValue | null {
  if (typeof value === "number") return { numberValue: value };
  if (typeof value === "boolean") return { boolValue: value };
  if (value === "") return null;
  if (value.startsWith("'")) return { stringValue: value.slice(1) };
  // Also in a cell of plain text: a script's "=" text becomes a formula there.
  if (value.startsWith("=")) return { formulaValue: value };
  if (asText) return { stringValue: value };
  if (NUMERAL.test(value)) return { numberValue: Number(value) };
  if (/^(true|false)$/i.test(value)) return { boolValue: /^true$/i.test(value) };
  return { stringValue: value };
}

function isDate(value: unknown): value is Date {
  return Object.prototype.toString.call(value) === "[object Date]";
}

/** A day's serial number; the workbook's zone is UTC here. */
export function serialOf(date: Date): number {
  return date.getTime() / DAY_MS + UNIX_SERIAL;
}

export function dateOf(serial: number): Date {
  return new Date((serial - UNIX_SERIAL) * DAY_MS);
}
