import { cellText, errorShown, type Grid, isLoading } from "../cells";
import { InputError } from "../faults";
import { everyWord, stepKey } from "../words";
import type { Batch } from "./batch";
import type { ReadingHabits } from "./cell-readers";
import { withoutDittos } from "./ditto-marks";
import { fillDowns } from "./fill-downs";
import { findTables } from "./find-tables";
import { gatherEvents } from "./gather-events";
import { headerWords } from "./header-words";
import { linkLots } from "./lots";
import { type ColumnMatch, type MatchedTable, matchColumns } from "./match-columns";
import { oneSpelling } from "./one-spelling";
import { type LogEvent, readLog } from "./read-log";
import { readRows } from "./read-rows";
import type { Records } from "./records";
import { type DayColumn, rowReader } from "./row-reader";
import { ROW_KIND, rowTally } from "./row-tally";
import { alignSteps } from "./step-order";
import { targetsTold } from "./target-names";
import type { Trouble } from "./trouble";

export interface ReadingOptions extends ReadingHabits {
  /** Names of the timetable's steps, which may be columns of the table, in the timetable's order. */
  readonly stepNames: readonly string[];
  /** Columns that a person has named by hand: our column name by the header in the sheet. */
  readonly told: ReadonlyMap<string, string>;
}

/**
 * Reads a nursery's records: tables of one row a batch, logs of one row an event, or both, beside
 * or under one another.
 *
 * Every row of the range is either used, or listed among the troubles, or blank. A cell that
 * can't be read leaves out the cell, never the table.
 *
 * @throws InputError "no-header" when no header is found; "not-ready-yet" when a cell that it
 *   reads from is still loading; "no-such-header" or "no-such-name" when `told` names what is not there
 */
export function readRecords(written: Grid, options: ReadingOptions): Records {
  const words = headerWords(options.stepNames, options.told);
  const areas = findTables(written, words);
  if (areas.length === 0) throw noHeader(written);
  const troubles: Trouble[] = [];
  const columns: ColumnMatch[] = [];
  const tally = rowTally(written.rowCount);
  const told = targetsTold(
    options.told,
    areas.flatMap(({ header }) => header.headers),
    // Our names mean what they mean, even where a header that is told bears one of them.
    headerWords(options.stepNames),
  );
  const knownSteps = new Set([
    ...everyWord(({ steps }) => Object.keys(steps)),
    ...options.stepNames.map(stepKey),
  ]);
  const tables: { stepKeys: readonly string[]; batches: readonly Batch[] }[] = [];
  const events: LogEvent[] = [];
  const matched = areas.map((area, table) => matchColumns(written, area, { table, words, told }));
  const grid = withoutDittos(written, { areas, matched, troubles });
  const dayColumns: DayColumn[] = [];
  const downs = fillDowns(grid, { areas, matched, troubles });
  const stepOrder = options.stepNames.map(stepKey);
  const readers = areas.map((area, table) => {
    const one = matched[table] as MatchedTable;
    return one.kind === "log"
      ? null
      : rowReader({
          grid,
          area,
          matches: one.matches,
          habits: options,
          troubles,
          down: downs[table] ?? new Map(),
          allDayColumns: dayColumns,
          stepOrder,
        });
  });
  areas.forEach((area, table) => {
    const one = matched[table] as MatchedTable;
    columns.push(...one.matches);
    troubles.push(...one.troubles);
    tally.mark(area.header.row, ROW_KIND.heading);
    if (area.header.height === 2) tally.mark(area.header.row + 1, ROW_KIND.heading);
    for (const row of area.repeats) tally.mark(row, ROW_KIND.heading);
    const reader = readers[table] ?? null;
    if (reader === null) {
      const log = readLog({
        grid,
        area,
        matches: one.matches,
        stepKeys: knownSteps,
        habits: options,
        troubles,
      });
      events.push(...log.events);
      for (const event of log.events) tally.mark(event.row - 1, ROW_KIND.used);
      for (const row of log.leftOut) tally.mark(row, ROW_KIND.leftOut);
      for (const row of log.notEvents) tally.mark(row, ROW_KIND.notBatch);
    } else {
      tables.push(readRows({ grid, area, matches: one.matches, tally, troubles, reader }));
    }
  });
  for (const row of tally.outside(grid, areas)) {
    tally.mark(row, ROW_KIND.notBatch);
    troubles.push({
      row: row + 1,
      column: "",
      found: firstText(grid, row),
      code: "outside-tables",
    });
  }
  const eventKeys = events.flatMap(({ what }) => (what.kind === "step" ? [what.key] : []));
  const stepKeys = stepOrderOf(options, [
    ...tables.flatMap((table) => table.stepKeys),
    ...eventKeys,
  ]);
  const rows = tables.flatMap((table) => alignSteps(table.batches, table.stepKeys, stepKeys));
  return {
    batches: oneSpelling(linkLots(gatherEvents(rows, events, { stepKeys, troubles }), troubles)),
    stepKeys,
    troubles,
    columns,
    tables: areas.map(({ header }, table) => ({
      kind: (matched[table] as MatchedTable).kind,
      headerRow: header.row + 1,
      headerHeight: header.height,
    })),
    lines: events,
    rows: tally.count(grid, areas),
    firstHeader: Math.min(...areas.map(({ header }) => header.row)) + 1,
    textIn: (batch, column) => cellText(grid.at(batch.row - 1, column)),
  };
}

function firstText(grid: Grid, row: number): string {
  for (let column = 0; column < grid.columnCount; column += 1) {
    const text = cellText(grid.at(row, column));
    if (text !== "") return text;
  }
  return "";
}

/** Steps in the timetable's order, then in the order in which they were found. */
function stepOrderOf({ stepNames }: ReadingOptions, found: readonly string[]): readonly string[] {
  const have = new Set(found);
  return [...new Set([...stepNames.map(stepKey), ...found])].filter((key) => have.has(key));
}

function noHeader(grid: Grid): InputError {
  const rows = Math.min(10, grid.rowCount);
  for (let row = 0; row < rows; row += 1) {
    for (let column = 0; column < grid.columnCount; column += 1) {
      const cell = grid.at(row, column);
      const shown = errorShown(cell);
      if (shown === null && !isLoading(cell)) continue;
      return new InputError({
        code: "not-ready-yet",
        argument: "records",
        row: row + 1,
        column: String(column + 1),
        shown,
      });
    }
  }
  return new InputError({ code: "no-header", begins: grid.at(0, 0) });
}
