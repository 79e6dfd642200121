import {
  type Cell,
  type CivilDay,
  type DayOrder,
  dayColumnReader,
  errorShown,
  InputError,
  isBlank,
  isLoading,
} from "../core";

/** Left out, or a blank cell. */
export function isMissing(value: unknown): boolean {
  if (Array.isArray(value)) {
    return value.every((row) => (Array.isArray(row) ? row.every(isMissing) : isMissing(row)));
  }
  return value === undefined || value === null || value === "";
}

/** @throws InputError when the cell that an argument points at is not ready */
export function cellMustBeReady(name: string, cell: Cell): void {
  const shown = errorShown(cell);
  if (shown === null && !isLoading(cell)) return;
  const whole = { row: null, column: null };
  throw new InputError({ code: "not-ready-yet", argument: name, ...whole, shown });
}

/** @throws InputError "argument-missing" | "argument-unreadable" | "not-ready-yet" */
export function dayArgument(name: string, cell: Cell, usualOrder: () => DayOrder | null): CivilDay {
  cellMustBeReady(name, cell);
  if (isBlank(cell))
    throw new InputError({ code: "argument-missing", argument: name, needs: "day" });
  const reader = dayColumnReader(() => [cell], { usualOrder, asOf: null });
  const reading = reader.read(cell);
  if (reading.kind === "day") return reading.day;
  throw unreadable(name, "day", cell);
}

/**
 * A share strictly between 0 and 1, as 0.8 or "80 %".
 *
 * @param usual the share where the cell is blank
 * @throws InputError "level-out-of-range" | "not-ready-yet"
 */
export function levelArgument(name: string, cell: Cell, usual: number): number {
  cellMustBeReady(name, cell);
  if (isBlank(cell)) return usual;
  const level = typeof cell === "string" ? percent(cell) : cell;
  if (typeof level === "number" && level > 0 && level < 1) return level;
  throw new InputError({ code: "level-out-of-range", argument: name, found: cell });
}

/** "80 %" as a share; null when the text is no per cent. */
function percent(text: string): number | null {
  const match = /^\s*(\d+(?:[.,]\d+)?)\s*%\s*$/.exec(text);
  return match ? Number((match[1] as string).replace(",", ".")) / 100 : null;
}

/**
 * A whole number, 0 or more.
 *
 * @param usual the number where the cell is blank
 * @throws InputError "argument-unreadable" | "not-ready-yet"
 */
export function wholeNumberArgument(name: string, cell: Cell, usual: number): number {
  cellMustBeReady(name, cell);
  if (isBlank(cell)) return usual;
  if (typeof cell === "number" && Number.isInteger(cell) && cell >= 0) return cell;
  throw unreadable(name, "number", cell);
}

/** What leaves looks out: a format, in no language, as it stands in the settings. */
export const HIDDEN = "hidden";

/** Whether looks are to be left out; whatever else stands there lists them. */
export function hidesLooks(cell: unknown): boolean {
  return cell === false || String(cell).trim().toLowerCase() === HIDDEN;
}

/** @throws InputError "argument-missing" | "argument-unreadable" | "not-ready-yet" */
export function textArgument(name: string, cell: Cell): string {
  cellMustBeReady(name, cell);
  if (isBlank(cell))
    throw new InputError({ code: "argument-missing", argument: name, needs: "name" });
  if (typeof cell === "string") return cell.trim();
  throw unreadable(name, "text", cell);
}

function unreadable(argument: string, wanted: "day" | "number" | "text", found: Cell): InputError {
  return new InputError({ code: "argument-unreadable", argument, wanted, found });
}
