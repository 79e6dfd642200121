import type { Grid } from "../cells";
import type { TimetableFault } from "../faults";
import { lazily } from "../lazily";
import { everyWord, stepKey } from "../words";
import type { Batch } from "./batch";
import type { ReadingHabits } from "./cell-readers";
import { doneByParts, plainStep } from "./done-by-parts";
import { fillDowns } from "./fill-downs";
import type { MatchedTable } from "./match-columns";
import { type LogEvent, readLog } from "./read-log";
import { readRows } from "./read-rows";
import { rowReader } from "./row-reader";
import { orderShownBy, type TableColumns, tableColumns } from "./table-columns";
import type { Trouble } from "./trouble";

export interface ReadingOptions extends ReadingHabits {
  /** Names of the timetable's steps, which may be columns of the table, in the timetable's order. */
  readonly stepNames: readonly string[];
  /** What of the timetable can't be used; none if left out. */
  readonly timetableFaults?: readonly TimetableFault[];
  /** Columns that a person has named by hand: our column name by the header in the sheet. */
  readonly told: ReadonlyMap<string, string>;
}

/** What one table of the range says. Rows are counted from 0. */
export interface TableReading {
  /** Keys of the steps that it has columns for, in which order its batches give days and counts. */
  readonly stepKeys: readonly string[];
  readonly batches: readonly Batch[];
  /** Lines of a log. */
  readonly events: readonly LogEvent[];
  /** Rows of which nothing could be used. */
  readonly leftOut: readonly number[];
  /** Sums, headings of sections, notes. */
  readonly notBatches: readonly number[];
}

export interface TablesReading {
  /** In the order of the tables. */
  readonly tables: readonly TableReading[];
  readonly troubles: readonly Trouble[];
}

/** Reads every table of a range: rows of batches, or lines of a log. */
export function readTables(
  grid: Grid,
  tables: readonly MatchedTable[],
  options: ReadingOptions,
): TablesReading {
  const { downsOf, troubles: ofBlanks } = fillDowns(grid, tables);
  const stepOrder = options.stepNames.map(stepKey);
  const knownSteps = new Set([...everyWord(({ steps }) => Object.keys(steps)), ...stepOrder]);
  const byParts = doneByParts(options.stepNames);
  const isPlain = plainStep(options.stepNames);
  const columnsOf = new Map<MatchedTable, TableColumns>();
  // Asked for when a day needs it: by then the columns of all tables are known.
  const orderElsewhere = lazily(() =>
    orderShownBy([...columnsOf.values()].flatMap(({ days }) => days)),
  );
  for (const table of tables) {
    if (table.kind === "log") continue;
    const habits = options;
    columnsOf.set(table, tableColumns({ grid, ...table, habits, stepOrder, orderElsewhere }));
  }
  const readings = tables.map((matched, table) => {
    const columns = columnsOf.get(matched);
    if (columns === undefined) {
      const { events, leftOut, notEvents, troubles } = readLog({
        grid,
        ...matched,
        stepKeys: knownSteps,
        byParts,
        isPlain,
        habits: options,
      });
      return { stepKeys: [], batches: [], events, leftOut, notBatches: notEvents, troubles };
    }
    const down = downsOf.get(matched) ?? new Map();
    const reader = rowReader({ grid, table, columns, habits: options, down });
    const rows = readRows({ grid, ...matched, reader, stepCount: columns.steps.length });
    const stepKeys = columns.steps.map(({ key }) => key);
    return { stepKeys, ...rows, events: [], leftOut: [] };
  });
  return {
    tables: readings,
    troubles: [
      ...ofBlanks,
      ...readings.flatMap(({ troubles }, table) => [
        ...(tables[table]?.troubles ?? []),
        ...troubles,
      ]),
    ],
  };
}
