import { cellText, errorShown, type Grid, isLoading } from "../cells";
import { InputError } from "../faults";
import { stepKey } from "../words";
import { withoutDittos } from "./ditto-marks";
import { findTables, type TableArea } from "./find-tables";
import { gatherEvents } from "./gather-events";
import { headerWords } from "./header-words";
import { linkLots } from "./lots";
import { matchColumns } from "./match-columns";
import { asTold, oneSpelling } from "./one-spelling";
import { type ReadingOptions, readTables, type TableReading } from "./read-tables";
import type { Records } from "./records";
import { ROW_KIND, rowTally, type TallyingRows } from "./row-tally";
import { alignSteps } from "./step-order";
import { targetsTold } from "./target-names";

/**
 * Reads a nursery's records: tables of one row a batch, logs of one row an event, or both, beside
 * or under one another.
 *
 * Every row of the range is either used, or listed among the troubles, or blank. A cell that
 * can't be read leaves out the cell, never the table.
 *
 * @throws InputError "no-header" when no header is found; "not-ready-yet" when a cell that it
 *   reads from is still loading
 */
export function readRecords(written: Grid, options: ReadingOptions): Records {
  const words = headerWords(options.stepNames, options.told);
  const areas = findTables(written, words);
  if (areas.length === 0) throw noHeader(written);
  const { targets: told, troubles: ofTold } = targetsTold(
    options.told,
    areas.flatMap(({ header }) => header.headers),
    // Our names mean what they mean, even where a header that is told bears one of them.
    headerWords(options.stepNames),
  );
  const matched = areas.map((area, table) => matchColumns(written, area, { table, words, told }));
  const { grid, troubles: ofDittos } = withoutDittos(written, matched);
  const read = readTables(grid, matched, options);
  const tally = tallied(grid, areas, read.tables);
  const outside = tally.outside(grid, areas);
  for (const row of outside) tally.mark(row, ROW_KIND.notBatch);

  const events = read.tables.flatMap((table) => table.events);
  const eventKeys = events.flatMap(({ what }) => (what.kind === "step" ? [what.key] : []));
  const columnKeys = read.tables.flatMap((table) => table.stepKeys);
  const stepKeys = stepOrderOf(options, [...columnKeys, ...eventKeys]);
  const rows = read.tables.flatMap((table) => alignSteps(table.batches, table.stepKeys, stepKeys));
  const gathered = gatherEvents(rows, events, stepKeys);
  const linked = linkLots(gathered.batches);
  return {
    batches: oneSpelling(
      options.words === undefined ? linked.batches : asTold(linked.batches, options.words),
    ),
    words: options.words,
    stepKeys,
    troubles: [
      ...ofTold,
      ...ofDittos,
      ...read.troubles,
      ...outside.map((row) => ({
        row: row + 1,
        column: "",
        found: firstText(grid, row),
        code: "outside-tables" as const,
      })),
      ...gathered.troubles,
      ...linked.troubles,
    ],
    timetableFaults: options.timetableFaults ?? [],
    columns: matched.flatMap(({ matches }) => matches),
    tables: matched.map(({ kind, area: { header } }) => ({
      kind,
      headerRow: header.row + 1,
      headerHeight: header.height,
    })),
    lines: events,
    rows: tally.count(grid, areas),
    firstHeader: Math.min(...areas.map(({ header }) => header.row)) + 1,
    textIn: (batch, column) => cellText(grid.at(batch.row - 1, column)),
  };
}

/** What each row was used for, by the headers and by what was read of the tables. */
function tallied(
  { rowCount }: Grid,
  areas: readonly TableArea[],
  tables: readonly TableReading[],
): TallyingRows {
  const tally = rowTally(rowCount);
  for (const { header, repeats } of areas) {
    for (let line = 0; line < header.height; line += 1) {
      tally.mark(header.row + line, ROW_KIND.heading);
    }
    for (const row of repeats) tally.mark(row, ROW_KIND.heading);
  }
  for (const { batches, events, leftOut, notBatches } of tables) {
    for (const { row } of [...batches, ...events]) tally.mark(row - 1, ROW_KIND.used);
    for (const row of leftOut) tally.mark(row, ROW_KIND.leftOut);
    for (const row of notBatches) tally.mark(row, ROW_KIND.notBatch);
  }
  return tally;
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
