import { cellText, type Grid, isBlank } from "../cells";
import { lazily } from "../lazily";
import { everyWord, normalText, wordSet } from "../words";
import { nameShape } from "./batch-names";
import type { TableArea } from "./find-tables";

const totals = lazily(() => everyWord((words) => words.totals));
/** Making text comparable is slow, and few names begin like a word for sums. */
const FIRST_LETTERS = wordSet((words) =>
  words.totals.flatMap((word) => [word.charAt(0), word.charAt(0).toUpperCase()]),
);

/** Whether a row's first text opens a row of sums: "Total", "Sub-total Bay 2". */
export function isTotalsText(firstText: string): boolean {
  if (!FIRST_LETTERS.has(firstText.charAt(0))) return false;
  const normal = normalText(firstText);
  return totals().some((word) => normal === word || normal.startsWith(`${word} `));
}

/** What a row holds, told by how many of its cells are filled and by the first of them. */
export interface RowOutline {
  /** 0, 1, or 2 for two and more. */
  readonly filled: 0 | 1 | 2;
  /** Column of the first filled cell, from 0; -1 when blank. */
  readonly first: number;
}

const BLANK_ROW: RowOutline = { filled: 0, first: -1 };

export function rowOutline(grid: Grid, row: number, { span }: TableArea): RowOutline {
  let first = -1;
  for (let column = span.first; column < span.end; column += 1) {
    const cell = grid.at(row, column);
    if (cell === "" || isBlank(cell)) continue;
    if (first !== -1) return { filled: 2, first };
    first = column;
  }
  return first === -1 ? BLANK_ROW : { filled: 1, first };
}

/** Knows how the batches of a table are named. */
export interface BatchNames {
  /** Whether any batch with more to it than a name is there to judge by. */
  any(): boolean;
  /** Whether a cell is the name column's, and named in the shape of such a batch. */
  like(row: number, column: number): boolean;
}

/**
 * Tells batches that have little but a name yet from headings and notes: a lone text is a batch when
 * batches with more to them are named in its shape.
 */
export function batchNames(grid: Grid, area: TableArea, nameColumn: number | null): BatchNames {
  let shapes: ReadonlySet<string> | null = null;
  const shapesOfBatches = (): ReadonlySet<string> => {
    const found = new Set<string>();
    if (nameColumn === null) return found;
    const much = muchOf(area);
    for (let row = area.firstRow; row < area.endRow; row += 1) {
      const cell = grid.at(row, nameColumn);
      if (!area.repeats.has(row) && !isBlank(cell) && holdsMuch(grid, row, { area, much })) {
        const text = cellText(cell);
        if (!isTotalsText(text)) found.add(nameShape(text));
      }
    }
    return found;
  };
  const known = () => {
    shapes ??= shapesOfBatches();
    return shapes;
  };
  return {
    any: () => known().size > 0,
    like: (row, column) =>
      column === nameColumn && known().has(nameShape(cellText(grid.at(row, column)))),
  };
}

/** A year that a heading names: "Season 2024", "Campagne 2025-26". */
export function yearNamed(text: string): number | null {
  const match = /(?<!\d)((?:19|20)\d\d)(?!\d)/.exec(text);
  return match ? Number(match[1]) : null;
}

/** A row with half of the header's columns filled, or five, is no note. */
function muchOf({ header }: TableArea): number {
  const named = header.headers.filter((text) => text !== "").length;
  return Math.min(5, Math.max(2, Math.ceil(named / 2)));
}

function holdsMuch(
  grid: Grid,
  row: number,
  { area: { span }, much }: { readonly area: TableArea; readonly much: number },
): boolean {
  let filled = 0;
  for (let column = span.first; column < span.end && filled < much; column += 1) {
    if (!isBlank(grid.at(row, column))) filled += 1;
  }
  return filled >= much;
}
