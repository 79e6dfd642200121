import { cellText, type Grid } from "../cells/cell";
import { allLanguages } from "../words/all-languages";
import { normalText } from "../words/normal-text";
import type { ColumnMatch } from "./match-columns";

const TOTALS: readonly string[] = allLanguages.flatMap((words) => words.totals);
/** Making text comparable is slow, and few names begin like a word for sums. */
const FIRST_LETTERS: ReadonlySet<string> = new Set(
  TOTALS.flatMap((word) => [word.charAt(0), word.charAt(0).toUpperCase()]),
);

/** Whether a row's first text opens a row of sums: "Total", "Sub-total Bay 2". */
export function isTotalsRow(firstText: string): boolean {
  if (!FIRST_LETTERS.has(firstText.charAt(0))) return false;
  const normal = normalText(firstText);
  return TOTALS.some((word) => normal === word || normal.startsWith(`${word} `));
}

/** Whether a row repeats the header: most of its filled cells say what the header says. */
export function looksLikeHeader(grid: Grid, row: number, matches: readonly ColumnMatch[]): boolean {
  let filled = 0;
  let same = 0;
  matches.forEach(({ header, column }) => {
    const text = cellText(grid.at(row, column));
    if (text === "") return;
    filled += 1;
    if (text === header) same += 1;
  });
  return filled >= 2 && same * 2 > filled;
}
