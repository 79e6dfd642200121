import { type Cell, cellText, type Grid } from "../cells";
import { type HeaderWords, targetKey } from "./column-target";
import { type ColumnSpan, type HeaderBlock, headerAt, rowTexts } from "./header-block";
import { numberedHeader } from "./numbered-header";

/** A table within a grid: a header and the rows under it, up to the next header. */
export interface TableArea {
  readonly span: ColumnSpan;
  readonly header: HeaderBlock;
  /** First row under the header, and one past the last. */
  readonly firstRow: number;
  readonly endRow: number;
  /** Rows below it in which the very same header comes again. */
  readonly repeats: ReadonlySet<number>;
}

/** The cells of a column below the header, from the top. */
export function* columnCells(
  grid: Grid,
  { firstRow, endRow }: TableArea,
  column: number,
): Iterable<Cell> {
  for (let row = firstRow; row < endRow; row += 1) yield grid.at(row, column);
}

const ROWS_SEARCHED = 10;

/**
 * Finds the tables of a grid: side by side where a header starts again behind a blank column, and
 * under one another where a header comes again further down.
 *
 * @returns none when no row of the first ten is a header
 */
export function findTables(grid: Grid, words: HeaderWords): readonly TableArea[] {
  const whole: ColumnSpan = { first: 0, end: grid.columnCount };
  const top = bestHeader(grid, whole, words) ?? bestHeader(grid, whole, loosely(words));
  if (top === null) return [];
  return sideBySide(top, words).flatMap((span) => {
    const header = span === null ? top : bestHeader(grid, span, words);
    return header === null ? [] : stacked(grid, { span: span ?? whole, top: header, words });
  });
}

/** The same words, and headers that are understood by their parts alone: "Gref. le", "qt enx". */
function loosely(words: HeaderWords): HeaderWords {
  return {
    ...words,
    understand: (header) => {
      const known = words.understand(header);
      if (known.length > 0) return known;
      const numbered = numberedHeader(header);
      if (numbered !== null) {
        const target = { kind: "step", key: "sowing", what: numbered.what } as const;
        return [{ target, sureness: 2, openAspect: false }];
      }
      const parts = words.byParts(header);
      if (parts === null || parts.target === null || !parts.sure) return [];
      return [{ target: parts.target, sureness: 2, openAspect: false }];
    },
  };
}

/**
 * The header among the first ten rows: the first that names at least half as much as the best, so
 * that a small table above a wide one is not taken for its title lines.
 */
function bestHeader(grid: Grid, span: ColumnSpan, words: HeaderWords): HeaderBlock | null {
  const headers: HeaderBlock[] = [];
  for (let row = 0; row < Math.min(ROWS_SEARCHED, grid.rowCount); row += 1) {
    const header = headerAt(grid, row, { span, words });
    if (header !== null) headers.push(header);
  }
  const most = headers.reduce((best, { named }) => Math.max(best, named), 0);
  return headers.find(({ named }) => named * 2 >= most) ?? null;
}

/** Spans of tables beside one another; [null] when the header is one. */
function sideBySide({ headers }: HeaderBlock, words: HeaderWords): readonly (ColumnSpan | null)[] {
  let start: number | null = null;
  let names = 0;
  const spans: ColumnSpan[] = [];
  headers.forEach((header, column) => {
    if (header === "") {
      if (start !== null && names > 0) spans.push({ first: start, end: column });
      start = null;
      names = 0;
      return;
    }
    start ??= column;
    if (words.understand(header).some(({ target }) => targetKey(target) === "fact batch")) {
      names += 1;
    }
  });
  if (start !== null && names > 0) spans.push({ first: start, end: headers.length });
  return spans.length > 1 ? spans : [null];
}

/** The table of a header, and those of the headers that come again below it. */
function stacked(
  grid: Grid,
  {
    span,
    top,
    words,
  }: { readonly span: ColumnSpan; readonly top: HeaderBlock; readonly words: HeaderWords },
): readonly TableArea[] {
  const areas: TableArea[] = [];
  let header = top;
  let repeats = new Set<number>();
  const close = (endRow: number) => {
    areas.push({ span, header, firstRow: header.row + header.height, endRow, repeats });
    repeats = new Set();
  };
  const isTextAlone = textRows(grid, span);
  for (let row = top.row + top.height; row < grid.rowCount; row += 1) {
    if (!isTextAlone(row)) continue;
    const next = headerAgain(grid, row, { span, above: header, words });
    if (next === null) continue;
    if (next.headers.every((text, column) => text === header.headers[column])) {
      for (let line = 0; line < next.height; line += 1) repeats.add(row + line);
      row += next.height - 1;
      continue;
    }
    close(row);
    header = next;
    row += next.height - 1;
  }
  close(grid.rowCount);
  return areas;
}

/**
 * Tells rows of texts alone. Nearly every row of batches holds a number or a day, mostly in the column
 * in which the row above had one.
 */
function textRows(grid: Grid, { first, end }: ColumnSpan): (row: number) => boolean {
  let likely = first;
  return (row) => {
    if (typeof grid.at(row, likely) !== "string") return false;
    for (let column = first; column < end; column += 1) {
      if (typeof grid.at(row, column) === "string") continue;
      likely = column;
      return false;
    }
    return true;
  };
}

/**
 * Whether a header stands in a row of texts further down: its first text is a header's, and most of
 * its texts are. Rows are many, so the first text is looked at alone first.
 */
function headerAgain(
  grid: Grid,
  row: number,
  {
    span,
    above,
    words,
  }: { readonly span: ColumnSpan; readonly above: HeaderBlock; readonly words: HeaderWords },
): HeaderBlock | null {
  if (!mayBeHeader(grid, row, { span, above, words })) return null;
  const header = headerAt(grid, row, { span, words });
  if (header === null) return null;
  const filled = rowTexts(grid, row, span).filter((text) => text !== "").length;
  return header.height === 2 || header.named * 2 > filled ? header : null;
}

/** Whether one of a row's first few texts is understood or stands in the header above. */
function mayBeHeader(
  grid: Grid,
  row: number,
  {
    span: { first, end },
    above,
    words,
  }: { readonly span: ColumnSpan; readonly above: HeaderBlock; readonly words: HeaderWords },
): boolean {
  let known = false;
  let texts = 0;
  for (let column = first; column < end && !(known && texts >= 2); column += 1) {
    const text = cellText(grid.at(row, column));
    if (text === "") continue;
    texts += 1;
    known ||= words.understand(text).length > 0 || above.headers.includes(text);
    if (texts >= 3 && !known) return false;
  }
  return known && texts >= 2;
}
