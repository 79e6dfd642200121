import { type Cell, cellText, isBlank } from "./cell";
import { type CountTextReading, type DecimalMark, readCountText } from "./read-count-text";
import type { ReadAs, Unread } from "./unread";
import { errorShown } from "./upstream";

/** What a cell says when a number of plants is due in it. */
export type CountReading =
  | { readonly kind: "blank" }
  | { readonly kind: "count"; readonly count: number; readonly readAs: ReadAs | null }
  | { readonly kind: "unread"; readonly why: Unread };

export interface CountHabits {
  /** How the workbook's locale writes decimals; null when not known. */
  readonly decimalMark: DecimalMark | null;
  /** The plants counted before, of which a share can be taken; null when not known. */
  readonly outOf: number | null;
}

/** No batch is larger; a count above has too many noughts. */
const MOST_PLANTS = 10_000_000;

const BLANK: CountReading = { kind: "blank" };
const PLAIN: CountHabits = { decimalMark: null, outOf: null };

/**
 * Reads a number of plants: a whole number, 0 or more. Blank is not 0, and words for "not
 * counted" are blank.
 *
 * @returns `readAs` says how the text was understood where it wasn't plainly a number
 */
export function readCount(cell: Cell, habits: CountHabits = PLAIN): CountReading {
  if (typeof cell === "number") {
    // A cell formatted as a per cent arrives as its share, and no plant is a part of one.
    const share = cell > 0 && cell < 1 && habits.outOf !== null;
    return share ? ofText({ kind: "share", share: cell }, habits.outOf) : wholeNumber(cell, true);
  }
  if (isBlank(cell)) return BLANK;
  if (typeof cell === "boolean") return unread({ code: "tick-box-for-count" });
  if (typeof cell === "object") return unread({ code: "date-for-count" });
  const shown = errorShown(cell);
  if (shown !== null) return unread({ code: "cell-shows", shown });
  return ofText(readCountText(cellText(cell), habits.decimalMark), habits.outOf);
}

function ofText(reading: CountTextReading, outOf: number | null): CountReading {
  if (reading.kind === "nothing") return BLANK;
  if (reading.kind === "unread") return reading;
  if (reading.kind === "number") return wholeNumber(reading.value, reading.isPlain);
  if (outOf === null) return unread({ code: "percent-of-nothing" });
  const count = Math.round(outOf * reading.share);
  const percent = Math.round(reading.share * 1000) / 10;
  return { kind: "count", count, readAs: { code: "share", count, percent, outOf } };
}

function wholeNumber(value: number, isPlain: boolean): CountReading {
  if (!Number.isFinite(value)) return unread({ code: "not-a-count" });
  if (value < 0) return unread({ code: "below-zero" });
  if (!Number.isInteger(value)) return unread({ code: "part-of-a-plant" });
  if (value > MOST_PLANTS) return unread({ code: "too-many-plants" });
  return { kind: "count", count: value, readAs: isPlain ? null : { code: "count", count: value } };
}

function unread(why: Unread): CountReading {
  return { kind: "unread", why };
}
