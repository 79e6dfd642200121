import { type Cell, cellText, type Grid, isBlank } from "../cells/cell";
import { readDayText } from "../dates/read-day-text";
import { type HeaderWords, type Target, targetKey, type Understanding } from "./header-words";
import { targetName } from "./target-names";
import { COST, type Trouble } from "./trouble";

/** How one column of a records table was understood. */
export interface ColumnMatch {
  /** From 0. */
  readonly column: number;
  /** As it stands in the sheet. */
  readonly header: string;
  /** null when the column is left alone. */
  readonly target: Target | null;
  /** 1: chosen by what the cells hold; 2: by part of the header; 3: by the whole header; 4: told. */
  readonly sureness: 1 | 2 | 3 | 4;
  /** What else the column could be. */
  readonly others: readonly Target[];
}

const CELLS_LOOKED_AT = 60;

/**
 * Understands every column under a header row. Two columns for one thing are a trouble that
 * names both; the surer one is used, else the left one.
 *
 * @param told what a person has said of columns, by header in the sheet
 */
export function matchColumns(
  grid: Grid,
  headers: readonly string[],
  firstRow: number,
  words: HeaderWords,
  told: ReadonlyMap<string, Target>,
): { readonly matches: readonly ColumnMatch[]; readonly troubles: readonly Trouble[] } {
  const troubles: Trouble[] = [];
  const matches = headers.map((header, column): ColumnMatch => {
    const byHand = told.get(header);
    if (byHand !== undefined) return { column, header, target: byHand, sureness: 4, others: [] };
    return chooseTarget(grid, column, header, firstRow, words.understand(header));
  });
  return { matches: dropSeconds(matches, troubles), troubles };
}

function chooseTarget(
  grid: Grid,
  column: number,
  header: string,
  firstRow: number,
  ways: readonly Understanding[],
): ColumnMatch {
  const best = ways[0];
  if (best === undefined) return { column, header, target: null, sureness: 1, others: [] };
  const others = ways.slice(1).map((way) => way.target);
  if (!ways.some((way) => way.openAspect)) {
    return { column, header, target: best.target, sureness: best.sureness, others };
  }
  const holds = mostlyHolds(grid, column, firstRow);
  const chosen = ways.find(({ target }) => target.kind === "step" && target.what === holds) ?? best;
  return {
    column,
    header,
    target: chosen.target,
    sureness: holds === null ? best.sureness : 1,
    others: ways.filter((way) => way !== chosen).map((way) => way.target),
  };
}

/** Whether the first filled cells of a column look like days or like plants; null when it is blank. */
function mostlyHolds(grid: Grid, column: number, firstRow: number): "day" | "count" | null {
  let days = 0;
  let counts = 0;
  for (let row = firstRow; row < grid.rowCount && days + counts < CELLS_LOOKED_AT; row += 1) {
    const cell = grid.at(row, column);
    if (isBlank(cell)) continue;
    if (looksLikeDay(cell)) days += 1;
    else counts += 1;
  }
  if (days + counts === 0) return null;
  return days >= counts ? "day" : "count";
}

function looksLikeDay(cell: Cell): boolean {
  if (typeof cell === "object") return true;
  if (typeof cell === "number") return Number.isInteger(cell) && cell > 32000 && cell < 80000;
  const text = cellText(cell);
  if (/^[+-]?[\d.,]+$/.test(text)) return false;
  const reading = readDayText(text, null);
  return reading.kind !== "unread" || reading.why.includes("without a year");
}

/** Leaves one column for each target, and says so. */
function dropSeconds(matches: readonly ColumnMatch[], troubles: Trouble[]): ColumnMatch[] {
  const holder = new Map<string, ColumnMatch>();
  for (const match of matches) {
    if (match.target === null) continue;
    const key = targetKey(match.target);
    const other = holder.get(key);
    if (other === undefined || match.sureness > other.sureness) holder.set(key, match);
  }
  return matches.map((match) => {
    if (match.target === null) return match;
    const used = holder.get(targetKey(match.target)) as ColumnMatch;
    if (used === match) return match;
    troubles.push({
      row: null,
      column: match.header,
      found: match.header,
      trouble: `"${used.header}" and "${match.header}" both read as ${targetName(match.target)}`,
      whatHappens: `"${used.header}" is used, "${match.header}" is left alone`,
      whatToDo: "Rename one of the two, or name the right one in the columns argument",
      cost: COST.column,
    });
    return { ...match, target: null, others: [match.target, ...match.others] };
  });
}
