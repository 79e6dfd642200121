/**
 * Functions of the language that the bundle calls so often that it names them once: the spreadsheet
 * loads every byte of it for each formula.
 */
const OFTEN_CALLED: Readonly<Record<string, string>> = {
  "Math.max": "$x",
  "Math.min": "$n",
  "Math.floor": "$f",
  "Math.round": "$r",
  "Math.abs": "$a",
  "Array.from": "$l",
  "Object.entries": "$e",
  "Object.fromEntries": "$o",
};

/** What the bundle has in place of long names, for the build's `define`. */
export const SHORT_NAMES: Readonly<Record<string, string>> = {
  ...OFTEN_CALLED,
  "Number.POSITIVE_INFINITY": "Infinity",
};

/** Where the short names come from; stands before the bundle. */
export function shortNamesMade(): string {
  const made = Object.entries(OFTEN_CALLED).map(([long, short]) => `${short}=${long}`);
  return `const ${made.join(",")};`;
}
