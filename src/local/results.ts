import { isDate, isPromise } from "./value-kind";

/** What a custom function may put into a cell. '' shows as an empty cell. */
export type ResultCell = string | number | boolean | Date;

/** The longest text a cell holds. Source: the host's own message, quoted in a public issue. */
const LONGEST_TEXT = 50_000;

/**
 * The rows that a custom function answered with; one value is one row of one cell.
 *
 * Stricter than a real spreadsheet on purpose: what is not documented there (a list that is not
 * a table, rows of unequal length, nothing at all, NaN, an object, a promise) is refused here,
 * so that the add-in never leans on it.
 *
 * @throws Error that names the function and what it returned
 */
export function resultRows(name: string, result: unknown): ResultCell[][] {
  if (!Array.isArray(result)) return [[resultCell(name, result, "")]];
  if (result.length === 0) throw new Error(`${name} returned an empty array, which has no cell`);
  const width = Array.isArray(result[0]) ? result[0].length : 0;
  return result.map((row: unknown, index) => {
    if (!Array.isArray(row)) {
      throw new Error(`${name} returned a list whose item ${index + 1} is not a row of cells`);
    }
    if (row.length === 0) throw new Error(`${name} returned an empty row ${index + 1}`);
    if (row.length !== width) {
      throw new Error(
        `${name} returned rows of unequal length: row ${index + 1} has ${row.length} cells, row 1 has ${width}`,
      );
    }
    return Array.from(row, (cell: unknown, column) =>
      resultCell(name, cell, ` in row ${index + 1}, column ${column + 1}`),
    );
  });
}

function resultCell(name: string, value: unknown, where: string): ResultCell {
  if (typeof value === "boolean") return value;
  if (typeof value === "number") {
    if (Number.isFinite(value)) return value;
    throw new Error(`${name} returned ${value}${where}`);
  }
  if (typeof value === "string") {
    if (value.length <= LONGEST_TEXT) return value;
    throw new Error(
      `text result of ${name} is longer than the limit of ${LONGEST_TEXT} characters`,
    );
  }
  if (isDate(value)) {
    if (!Number.isNaN(value.getTime())) return value;
    throw new Error(`${name} returned an invalid Date${where}`);
  }
  throw new Error(`${name} returned ${kindOf(value)}${where}, which no cell can hold`);
}

function kindOf(value: unknown): string {
  if (value === null || value === undefined) return String(value);
  if (isPromise(value)) return "a Promise";
  if (Array.isArray(value)) return "an array inside a row";
  return typeof value === "object" ? "an object" : `a ${typeof value}`;
}
