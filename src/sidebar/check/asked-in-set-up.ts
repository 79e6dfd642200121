import type { CheckRow } from "../../wire/check";

type Code = NonNullable<CheckRow["code"]>;

/** What a word in cells means is a question of Set up. */
const WORDS = new Set<Code | null>(["no-such-method", "several-methods", "near-alike"]);
/** So is what a column is read as. */
const COLUMNS = new Set<Code | null>([
  "column-left",
  "column-open",
  "columns-alike",
  "no-such-column",
  "before-step",
]);

/** The part of Set up where a trouble is mended; null where it is mended elsewhere. */
export function askedInSetUp({ code, found, column, rows }: CheckRow): string | null {
  if (WORDS.has(code)) return wordPart(found);
  // A day out of order is a slip; a column of them may be another step's.
  if (code === "before-step" && rows.length < 2) return null;
  return COLUMNS.has(code) && column !== "" ? columnPart(column) : null;
}

/** The question what a word in cells means, or whether a name is the same as another. */
export function wordPart(word: string): string {
  return `word ${word}`;
}

function columnPart(header: string): string {
  return `column ${header}`;
}
