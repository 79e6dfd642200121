import type { Cell } from "./cell";

const ERROR_TEXT = /^#(?:N\/A|REF!|VALUE!|DIV\/0!|NUM!|NAME\?|NULL!|ERROR!|SPILL!|CALC!)/;

/** The error that a cell shows, such as "#N/A", or null. Error cells reach a function as text. */
export function errorShown(cell: Cell): string | null {
  if (typeof cell !== "string" || cell.charCodeAt(0) !== 35) return null;
  return ERROR_TEXT.exec(cell)?.[0] ?? null;
}

/** Whether the cell is another function's that has not finished; it reaches a function as this text. */
export function isLoading(cell: Cell): boolean {
  return cell === "Loading...";
}
