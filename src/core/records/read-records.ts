import { cellText, type Grid, isBlank } from "../cells/cell";
import { errorShown, isLoading } from "../cells/upstream";
import type { CivilDay } from "../dates/civil-day";
import type { DayOrder } from "../dates/read-day-column";
import { InputError } from "../input-error";
import type { Batch } from "./batch";
import { findHeader, headersOf } from "./find-header";
import { headerWords } from "./header-words";
import { type ColumnMatch, matchColumns } from "./match-columns";
import type { Records } from "./records";
import { isTotalsRow, looksLikeHeader } from "./row-kinds";
import { rowReader } from "./row-reader";
import { targetsTold } from "./target-names";
import { COST, type Trouble } from "./trouble";

export interface ReadingOptions {
  /** Names of the timetable's steps, which may be columns of the table. */
  readonly stepNames: readonly string[];
  readonly asOf: CivilDay | null;
  /** How the workbook's locale writes dates of two numbers. */
  readonly localeOrder: DayOrder | null;
  /** Columns that a person has named by hand: our column name by the header in the sheet. */
  readonly told: ReadonlyMap<string, string>;
}

/**
 * Reads a nursery's records table, one row a batch.
 *
 * Every row of the range is either used, or listed among the troubles, or blank. A cell that
 * can't be read leaves out the cell, never the table.
 *
 * @throws InputError "no-header" when no header is found; "not-ready-yet" when a cell that it
 *   reads from is still loading; "unknown-column" when `told` names what is not there
 */
export function readRecords(grid: Grid, options: ReadingOptions): Records {
  const words = headerWords(options.stepNames);
  const headerRow = findHeader(grid, words);
  if (headerRow === null) throw noHeader(grid);
  const headers = headersOf(grid, headerRow);
  const { matches, troubles: columnTroubles } = matchColumns(
    grid,
    headers,
    headerRow + 1,
    words,
    targetsTold(options.told, headers, words),
  );
  const troubles: Trouble[] = [...columnTroubles];
  const nameColumn = matches.find(
    ({ target }) => target?.kind === "fact" && target.fact === "batch",
  );
  const reader = rowReader(grid, headerRow + 1, matches, options, troubles);
  const batches: Batch[] = [];
  let leftOut = 0;
  let blank = 0;
  for (let row = headerRow + 1; row < grid.rowCount; row += 1) {
    if (isBlankRow(grid, row, matches)) {
      blank += 1;
      continue;
    }
    const notABatch = whyNotABatch(grid, row, matches, nameColumn);
    if (notABatch !== null) {
      troubles.push({ ...notABatch, row: row + 1 });
      leftOut += 1;
    } else batches.push(reader.read(row));
  }
  return {
    batches,
    stepKeys: reader.stepKeys,
    troubles,
    columns: matches,
    rows: { heading: headerRow + 1, used: batches.length, leftOut, blank },
    textIn: (batch, column) => cellText(grid.at(batch.row - 1, column)),
  };
}

function isBlankRow(grid: Grid, row: number, matches: readonly ColumnMatch[]): boolean {
  for (const { column } of matches) if (!isBlank(grid.at(row, column))) return false;
  return true;
}

function whyNotABatch(
  grid: Grid,
  row: number,
  matches: readonly ColumnMatch[],
  nameColumn: ColumnMatch | undefined,
): Omit<Trouble, "row"> | null {
  const first = nameColumn ?? matches.find(({ column }) => !isBlank(grid.at(row, column)));
  if (first === undefined) return null;
  const cell = grid.at(row, first.column);
  if (typeof cell !== "string" || cell === "") return null;
  const found = cellText(cell);
  if (isTotalsRow(found)) {
    return {
      column: first.header,
      found,
      trouble: "A row of sums, not a batch",
      whatHappens: "The row is left out",
      whatToDo: "Nothing, if it is a row of sums; else give the batch another name",
      cost: COST.row,
    };
  }
  if (found === first.header && looksLikeHeader(grid, row, matches)) {
    return {
      column: first.header,
      found,
      trouble: "The header again, not a batch",
      whatHappens: "The row is left out",
      whatToDo: "Nothing",
      cost: COST.row,
    };
  }
  return null;
}

function noHeader(grid: Grid): InputError {
  const rows = Math.min(10, grid.rowCount);
  for (let row = 0; row < rows; row += 1) {
    for (let column = 0; column < grid.columnCount; column += 1) {
      const cell = grid.at(row, column);
      const where = `row ${row + 1}, column ${column + 1}`;
      if (isLoading(cell)) {
        return new InputError("not-ready-yet", `records is still loading at ${where}`);
      }
      const error = errorShown(cell);
      if (error !== null)
        return new InputError("not-ready-yet", `records shows ${error} at ${where}`);
    }
  }
  const start = cellText(grid.at(0, 0)).slice(0, 40);
  return new InputError(
    "no-header",
    `records has no header row in its first ten rows that names a batch or a step; it starts with ${
      start === "" ? "a blank cell" : `"${start}"`
    }`,
  );
}
