import { type Cell, cellText, isBlank } from "./cell";
import { errorShown } from "./upstream";

/** What a cell says when a number of plants is due in it. */
export type CountReading =
  | { readonly kind: "blank" }
  | { readonly kind: "count"; readonly count: number; readonly readAs: string | null }
  | { readonly kind: "unread"; readonly why: string };

const BLANK: CountReading = { kind: "blank" };

/**
 * Reads a number of plants: a whole number, 0 or more. Blank is not 0.
 *
 * @returns `readAs` says how the text was understood where it wasn't plainly a number
 */
export function readCount(cell: Cell): CountReading {
  if (typeof cell === "number") return readNumber(cell, null);
  if (isBlank(cell)) return BLANK;
  if (typeof cell === "boolean") return unread("a tick box, not a number of plants");
  if (typeof cell === "object") return unread("a date, not a number of plants");
  const shown = errorShown(cell);
  if (shown !== null) return unread(`the cell shows ${shown}`);
  const text = cellText(cell);
  if (/^[+-]?\d+(?:\.\d+)?$/.test(text)) return readNumber(Number(text), null);
  return unread("not a number of plants");
}

function readNumber(value: number, readAs: string | null): CountReading {
  if (!Number.isFinite(value)) return unread("not a number of plants");
  if (value < 0) return unread("a number of plants can't be below 0");
  if (!Number.isInteger(value)) return unread("a part of a plant");
  return { kind: "count", count: value, readAs };
}

function unread(why: string): CountReading {
  return { kind: "unread", why };
}
