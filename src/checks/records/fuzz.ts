import {
  type Answer,
  balances,
  builtInTimetable,
  type CivilDay,
  checkedRecords,
  civilDay,
  type Grid,
  InputError,
  isBlank,
  type ReadingOptions,
  readRecords,
} from "../../core";
import type { RowTally } from "../../core/records/records";
import { balanceTable } from "../../wording/batch-tables";
import { checkTable } from "../../wording/check";
import { errorSentence } from "../../wording/errors";
import { type Dice, dice } from "./dice";
import { randomGrid } from "./random-grid";
import { rowsNamed } from "./reading";

export interface FuzzResult {
  readonly grids: number;
  /** Grids that were read as records; the others got a sentence. */
  readonly read: number;
  readonly batches: number;
  /** Each fault with the seed of its grid. */
  readonly faults: readonly string[];
  /** The grid that took longest. */
  readonly slowest: { readonly seed: number; readonly milliseconds: number };
}

const TIMETABLE = builtInTimetable();
const STEP_NAMES = TIMETABLE.methods.flatMap(({ steps }) => steps.map(({ name }) => name));

/** Reads random grids; nothing but our own sentences may be thrown, and every row is accounted for. */
export function fuzz({ from, grids }: { from: number; grids: number }): FuzzResult {
  const faults: string[] = [];
  let read = 0;
  let batches = 0;
  let slowest = { seed: from, milliseconds: 0 };
  for (let seed = from; seed < from + grids; seed += 1) {
    const { grid, how } = randomQuestion(seed);
    const started = performance.now();
    try {
      batches += readOnce(grid, how);
      read += 1;
    } catch (error) {
      if (!(error instanceof InputError) || !isSentence(errorSentence(error))) {
        faults.push(`seed ${seed}: ${error instanceof Error ? error.message : String(error)}`);
      }
    }
    const milliseconds = performance.now() - started;
    if (milliseconds > slowest.milliseconds) slowest = { seed, milliseconds };
  }
  return { grids, read, batches, faults, slowest };
}

/** A grid and how it is to be read, the same for the same seed. */
export function randomQuestion(seed: number): { grid: Grid; how: ReadingOptions } {
  const rolls = dice(seed).part("fuzz");
  return { grid: randomGrid(rolls), how: options(rolls) };
}

function options(rolls: Dice): ReadingOptions {
  return {
    stepNames: STEP_NAMES,
    asOf: rolls.chance(0.8) ? (civilDay(2026, 6, 30) as CivilDay) : null,
    localeOrder: rolls.pick(["day-first", "month-first", null]),
    decimalMark: rolls.pick([".", ",", null]),
    told: new Map(rolls.chance(0.1) ? [["batch", "Variety"]] : []),
  };
}

/** @returns how many batches were read */
function readOnce(grid: Grid, how: ReadingOptions): number {
  const records = readRecords(grid, how);
  const { heading, used, leftOut, notBatches, blank } = records.rows;
  const sum = heading + used + leftOut + notBatches + blank;
  if (sum !== grid.rowCount) throw new Error(`${sum} rows tallied of ${grid.rowCount}`);
  const check = checkTable(checkedRecords(records, { timetable: TIMETABLE, faults: [] }, how.asOf));
  checkCells(check, "BATCH_CHECK");
  checkCells(balanceTable(balances(records, TIMETABLE)), "BATCH_BALANCE");
  rowsAreListed(records.rows, check, grid);
  for (const { row, counts, culled, dispatched } of records.batches) {
    for (const count of [...counts, culled, dispatched]) {
      if (count !== null && (!Number.isSafeInteger(count) || count < 0)) {
        throw new Error(`row ${row} has a count of ${count}`);
      }
    }
  }
  return records.batches.length;
}

/** What is said to be left out has its rows in BATCH_CHECK, and what is said to be blank is. */
function rowsAreListed({ leftOut, notBatches, blank }: RowTally, check: Answer, grid: Grid): void {
  const listed = new Set(
    check.rows.flatMap((cells) => [
      ...(typeof cells[0] === "number" ? [cells[0]] : []),
      ...rowsNamed(cells[cells.length - 1]),
    ]),
  );
  if (listed.size < leftOut + notBatches) {
    throw new Error(`${leftOut + notBatches} rows not used, ${listed.size} listed`);
  }
  let blankRows = 0;
  for (let row = 0; row < grid.rowCount; row += 1) {
    let filled = false;
    for (let column = 0; column < grid.columnCount && !filled; column += 1) {
      filled = !isBlank(grid.at(row, column));
    }
    if (!filled) blankRows += 1;
  }
  if (blank > blankRows) throw new Error(`${blank} rows said to be blank, ${blankRows} are`);
}

/** No cell of an answer may hold what a person can't read. */
function checkCells({ columns, rows }: Answer, name: string): void {
  for (const row of rows) {
    if (row.length !== columns.length) throw new Error(`${name} has a row of ${row.length} cells`);
    for (const cell of row) {
      const fine =
        cell === null ||
        (typeof cell === "number" ? Number.isFinite(cell) : typeof cell !== "object");
      if (!fine || cell === undefined) throw new Error(`${name} holds ${String(cell)}`);
    }
  }
}

function isSentence(message: string): boolean {
  // Where messages are nonsense each begins with its name (nonsense.ts).
  return (
    /^(?:records|columns|⟦\S+) .{5,}/su.test(message) &&
    !/undefined|\[object|NaN/.test(message.replace(/"[^"]*"/g, ""))
  );
}
