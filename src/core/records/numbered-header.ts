import { normalText, wordSet } from "../words";

const DAY_WORDS = wordSet((words) => words.dayWords);
const COUNT_WORDS = wordSet((words) => words.countWords);

export interface Numbered {
  readonly what: "day" | "count";
  readonly number: number;
}

/** "Date 1", "nb 2": a word for days or plants and a number, nothing else; null for any other header. */
export function numberedHeader(header: string): Numbered | null {
  const [word = "", digit = "", ...more] = normalText(header).split(" ");
  if (more.length > 0 || !/^[1-9]$/.test(digit)) return null;
  if (DAY_WORDS.has(word)) return { what: "day", number: Number(digit) };
  return COUNT_WORDS.has(word) ? { what: "count", number: Number(digit) } : null;
}
