import { type Cell, cellText, type Grid } from "../cells";
import type { Batch } from "./batch";
import type { ColumnMatch } from "./column-match";
import type { TableArea } from "./find-tables";
import { batchNames, isTotalsText, rowOutline, yearNamed } from "./row-kinds";
import type { RowReader } from "./row-reader";
import { runningSums } from "./running-sums";
import type { Trouble } from "./trouble";

type NoBatch = Extract<Trouble, { code: "no-batch" }>;

/** The area of a table, its columns, and what reads its rows. */
export interface RowsToRead {
  readonly grid: Grid;
  readonly area: TableArea;
  readonly matches: readonly ColumnMatch[];
  readonly reader: RowReader;
  /** How many steps the table has columns for. */
  readonly stepCount: number;
}

export interface RowsReading {
  readonly batches: readonly Batch[];
  /** Rows, from 0, that hold something but no batch. */
  readonly notBatches: readonly number[];
  readonly troubles: readonly Trouble[];
}

/**
 * Reads a table of one row a batch. Headings of sections, notes, and rows of sums (by their word, or
 * by their numbers) are listed, not read as batches.
 */
export function readRows({ grid, area, matches, reader, stepCount }: RowsToRead): RowsReading {
  const nameColumn =
    matches.find(({ target }) => target?.kind === "fact" && target.fact === "batch")?.column ??
    null;
  const names = batchNames(grid, area, nameColumn);
  // "Signed | | Kesto" below a table: no number in it where plants and days stand, and named unlike
  // the batches that there are.
  const isNote = (nameCell: Cell, row: number): boolean => {
    // First what nearly every row answers at once.
    if (nameColumn === null || reader.hasNumber(row)) return false;
    if (!names.any() || names.like(row, nameColumn)) return false;
    const name = cellText(nameCell);
    const isSentence = name.split(" ").length >= 3;
    return isSentence || !/\d/.test(name);
  };
  const sums = runningSums(stepCount + 2);
  const batches: Batch[] = [];
  const notBatches: number[] = [];
  // A season's heading stands above its table's header as often as below it.
  let sectionYear = yearAbove(grid, area);
  const setAside = (row: number, column: number, as: NoBatch["as"]) => {
    notBatches.push(row);
    reader.list({
      row: row + 1,
      column: "",
      found: cellText(grid.at(row, column)),
      code: "no-batch",
      as,
    });
  };
  for (let row = area.firstRow; row < area.endRow; row += 1) {
    if (area.repeats.has(row)) {
      sums.newTable();
      continue;
    }
    const { filled, first } = rowOutline(grid, row, area);
    if (filled === 0) continue;
    const nameCell = nameColumn === null ? "" : grid.at(row, nameColumn);
    if (filled === 1 && !names.like(row, first)) {
      setAside(row, first, "heading");
      sectionYear = yearNamed(cellText(grid.at(row, first))) ?? sectionYear;
      continue;
    }
    const totalsAt = nameCell === "" ? totalsColumn(grid, row, area) : nameColumn;
    if (totalsAt !== null && isTotalsText(cellText(grid.at(row, totalsAt)))) {
      setAside(row, totalsAt, "sums");
      sums.reset();
      continue;
    }
    if (nameCell === "" && !reader.hasDay(row) && sums.matches(reader.bareCounts(row))) {
      setAside(row, first, "sums by numbers");
      sums.reset();
      continue;
    }
    if (filled === 2 && isNote(nameCell, row)) {
      setAside(row, nameColumn ?? first, "note");
      continue;
    }
    const batch = reader.read(row, sectionYear);
    sums.add([...batch.counts, batch.culled, batch.dispatched]);
    batches.push(batch);
  }
  return { batches, notBatches, troubles: reader.troubles };
}

/** Whether a row is one of batches, by its words and its outline. */
export function batchRows(
  grid: Grid,
  area: TableArea,
  matches: readonly ColumnMatch[],
): (row: number) => boolean {
  const nameColumn =
    matches.find(({ target }) => target?.kind === "fact" && target.fact === "batch")?.column ??
    null;
  const names = batchNames(grid, area, nameColumn);
  const isBatch = (row: number): boolean => {
    if (area.repeats.has(row)) return false;
    const { filled, first } = rowOutline(grid, row, area);
    if (filled === 0 || (filled === 1 && !names.like(row, first))) return false;
    const nameCell = nameColumn === null ? "" : grid.at(row, nameColumn);
    const totalsAt = nameCell === "" ? totalsColumn(grid, row, area) : nameColumn;
    return !(totalsAt !== null && isTotalsText(cellText(grid.at(row, totalsAt))));
  };
  // Every column asks for the same rows. 0 is not known yet, 1 no, 2 yes.
  const known = new Uint8Array(Math.max(0, area.endRow - area.firstRow));
  return (row) => {
    const index = row - area.firstRow;
    if (known[index] === 0) known[index] = isBatch(row) ? 2 : 1;
    return known[index] === 2;
  };
}

/** The column in which a nameless row says that it holds sums; null when none does. */
function totalsColumn(grid: Grid, row: number, { span }: TableArea): number | null {
  for (let column = span.first; column < span.end; column += 1) {
    const cell = grid.at(row, column);
    if (typeof cell === "string" && cell !== "" && isTotalsText(cellText(cell))) return column;
  }
  return null;
}

/** The year of a heading in the three rows above a table. */
function yearAbove(grid: Grid, area: TableArea): number | null {
  for (let row = area.header.row - 1; row >= Math.max(0, area.header.row - 3); row -= 1) {
    const { filled, first } = rowOutline(grid, row, area);
    if (filled === 1) {
      const year = yearNamed(cellText(grid.at(row, first)));
      if (year !== null) return year;
    }
  }
  return null;
}
