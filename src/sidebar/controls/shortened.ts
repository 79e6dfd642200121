import { cut } from "../../sentences/made/controls";

/** Longer text is cut where it is one of many things shown. */
const SHOWN = 160;

/**
 * Text cut to a length that a narrow page can hold, saying how long it is.
 *
 * @param most UTF-16 units kept, 1 or more
 * @example shortened("Lorem ipsum", 5) // "Lorem… (11 characters in all)"
 */
export function shortened(text: string, most: number = SHOWN): string {
  if (text.length <= most) return text;
  // Half of a character of two units is no text.
  const end = isFirstHalf(text.charCodeAt(most - 1)) ? most - 1 : most;
  return cut({ text: text.slice(0, end), length: text.length });
}

function isFirstHalf(unit: number): boolean {
  return unit >= 0xd800 && unit <= 0xdbff;
}

/** First strong isolate and its end: Unicode Standard Annex 9, section 2.4. */
const ISOLATE = "\u2068";
const END_OF_ISOLATE = "\u2069";

/**
 * The same for a sentence that can't hold elements: its direction stays its own affair.
 *
 * @param most UTF-16 units kept, 1 or more
 */
export function isolated(text: string, most: number = SHOWN): string {
  return `${ISOLATE}${shortened(text, most)}${END_OF_ISOLATE}`;
}
