/**
 * A text that a cell keeps as text: written values are read as if typed, so "=1+1" would become a
 * formula, "007" a number, "3/4" a date. A leading apostrophe stops that and is no part of the value.
 *
 * Source: platform notes C9 to C11 (Apps Script reference, Range.setValues).
 */
export function safeText(text: string): string {
  const short = text.length > LONGEST ? `${text.slice(0, LONGEST - 1)}…` : text;
  return short === "" ? "" : `'${short}`;
}

/** A cell holds 50,000 characters; the apostrophe is one. */
const LONGEST = 49_000;
