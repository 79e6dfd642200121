/**
 * A text that a cell keeps as text: written values are read as if typed, so "=1+1" would become a
 * formula, "007" a number, "3/4" a date. A leading apostrophe stops that and is no part of the value.
 *
 * Source: platform notes C9 to C11 (Apps Script reference, Range.setValues).
 */
export function safeText(text: string): string {
  const short = fittingText(text);
  return short === "" ? "" : `'${short}`;
}

/** A text as a cell can hold it: one that is too long ends in "…". */
export function fittingText(text: string): string {
  return text.length > LONGEST_TEXT ? `${text.slice(0, LONGEST_TEXT - 1)}…` : text;
}

/** A cell holds 50,000 characters; the apostrophe is one. Source: platform notes C17. */
export const LONGEST_TEXT = 49_999;
