import {
  type Cell,
  type DayColumnReader,
  type DayOrder,
  dayColumnReader,
  type Grid,
  settleYear,
  type UndatedDay,
} from "../cells";
import type { CivilDay } from "../dates";
import type { BatchFact } from "../words";
import { type Batch, TEXT_FACTS, type TextFact } from "./batch";
import { type CellReaders, cellReaders, type ReadingHabits } from "./cell-readers";
import type { FilledDown } from "./fill-down";
import type { TableArea } from "./find-tables";
import type { ColumnMatch } from "./match-columns";
import type { Trouble } from "./trouble";

/** Reads the rows of one table that has a row a batch. */
export interface RowReader {
  /** Keys of the steps that the table has columns for. */
  readonly stepKeys: readonly string[];
  /** Counts of a row in the order of stepKeys, culled and dispatched last, listing nothing. */
  bareCounts(row: number): (number | null)[];
  hasDay(row: number): boolean;
  /** Whether anything with a digit stands where days and plants are due in a row, readable or not. */
  hasNumber(row: number): boolean;
  /** Reads one row, from 0; what can't be read goes to the troubles. */
  read(row: number, sectionYear: number | null): Batch;
}

interface StepColumns {
  readonly day: DayColumn | null;
  readonly count: ColumnMatch | undefined;
}

export interface DayColumn extends DayColumnReader {
  readonly match: ColumnMatch;
}

/** A table of one row a batch, its columns, and what is known from the tables above it. */
export interface TableToRead {
  readonly grid: Grid;
  readonly area: TableArea;
  readonly matches: readonly ColumnMatch[];
  readonly habits: ReadingHabits;
  readonly troubles: Trouble[];
  /** Facts written once for the rows below them. */
  readonly down: ReadonlyMap<BatchFact, FilledDown>;
  /** Days of every table so far; this one's are added. */
  readonly allDayColumns: DayColumn[];
  /** Keys of the timetable's steps, in its order. */
  readonly stepOrder: readonly string[];
}

export function rowReader({
  grid,
  area,
  matches,
  habits,
  troubles,
  down,
  allDayColumns,
  stepOrder,
}: TableToRead): RowReader {
  const cells = cellReaders(grid, habits, troubles);
  const silent = cellReaders(grid, habits, []);
  const { facts, dayMatches, countMatches } = byTarget(matches);
  const dayColumns: DayColumn[] = [];
  const dayColumn = (match: ColumnMatch): DayColumn => {
    const column = {
      match,
      ...dayColumnReader(() => cellsOf(grid, area, match.column), {
        asOf: habits.asOf,
        usualOrder: () => tableOrder(dayColumns) ?? tableOrder(allDayColumns) ?? habits.localeOrder,
      }),
    };
    dayColumns.push(column);
    allDayColumns.push(column);
    return column;
  };
  // In the timetable's order, since a per cent is one of the plants at the step before.
  const found = new Set([...dayMatches.keys(), ...countMatches.keys()]);
  const stepKeys = [...new Set([...stepOrder, ...found])].filter((key) => found.has(key));
  const steps = stepKeys.map((key): StepColumns => {
    const match = dayMatches.get(key);
    return { day: match ? dayColumn(match) : null, count: countMatches.get(key) };
  });
  const stepCells = [
    ...dayMatches.values(),
    ...countMatches.values(),
    ...[facts.get("culled"), facts.get("dispatched")].filter((match) => match !== undefined),
  ];
  const closedMatch = facts.get("closed");
  const closedColumn = closedMatch ? dayColumn(closedMatch) : null;

  const daysIn = (row: number, sectionYear: number | null): (CivilDay | null)[] => {
    const days: (CivilDay | null)[] = [];
    let undated: { index: number; day: UndatedDay }[] | null = null;
    for (const { day: column } of steps) {
      const day = column === null ? null : cells.day(row, column.match, column.read);
      if (day === null || typeof day === "number") days.push(day);
      else {
        undated ??= [];
        undated.push({ index: days.length, day });
        days.push(null);
      }
    }
    if (undated === null) return days;
    const neighbours = days.filter((day): day is CivilDay => day !== null);
    for (const { index, day } of undated) {
      const match = dayMatches.get(stepKeys[index] as string) as ColumnMatch;
      const settled = settleYear(day, { neighbours, sectionYear, asOf: habits.asOf });
      days[index] = settled;
      if (settled === null) cells.listUnread(row, match, { code: "no-year" });
      else cells.listReading(row, match, { code: "day", day: settled });
    }
    return days;
  };
  const countsIn = (row: number, reader: CellReaders): (number | null)[] => {
    let before: number | null = null;
    return steps.map(({ count }) => {
      const counted = reader.count(row, count, before);
      before = counted ?? before;
      return counted;
    });
  };
  const fact = (row: number, name: BatchFact): string => {
    const match = facts.get(name);
    return cells.text(down.get(name)?.rowFor(row) ?? row, match);
  };
  const nameIn = (row: number): string => {
    const given = cells.text(row, facts.get("batch"));
    if (given !== "") return given;
    const called = `Row ${row + 1}`;
    const column = facts.get("batch")?.header ?? "";
    troubles.push({ row: row + 1, column, found: "", code: "batch-unnamed", called });
    return called;
  };

  return {
    stepKeys,
    bareCounts: (row) => [
      ...countsIn(row, silent),
      silent.count(row, facts.get("culled"), null),
      silent.count(row, facts.get("dispatched"), null),
    ],
    hasDay: (row) =>
      steps.some(({ day }) => day !== null && silent.day(row, day.match, day.read) !== null),
    hasNumber: (row) =>
      stepCells.some(({ column }) => {
        const cell = grid.at(row, column);
        return typeof cell === "string" ? /\d/.test(cell) : true;
      }),
    read: (row, sectionYear) => {
      const name = nameIn(row);
      const texts = Object.fromEntries(TEXT_FACTS.map((one) => [one, fact(row, one)]));
      return {
        row: row + 1,
        table: matches[0]?.table ?? 0,
        name,
        ...(texts as Record<TextFact, string>),
        culled: cells.count(row, facts.get("culled"), null),
        dispatched: cells.count(row, facts.get("dispatched"), null),
        given: 0,
        givenBeforeCount: 0,
        received: null,
        closed: closedColumn !== null && cells.yes(row, closedColumn.match, closedColumn.read),
        days: daysIn(row, sectionYear),
        counts: countsIn(row, cells),
      };
    },
  };
}

function byTarget(matches: readonly ColumnMatch[]) {
  const facts = new Map<BatchFact, ColumnMatch>();
  const dayMatches = new Map<string, ColumnMatch>();
  const countMatches = new Map<string, ColumnMatch>();
  for (const match of matches) {
    const { target } = match;
    if (target === null || target.kind === "event") continue;
    if (target.kind === "fact") facts.set(target.fact, match);
    else (target.what === "day" ? dayMatches : countMatches).set(target.key, match);
  }
  return { facts, dayMatches, countMatches };
}

/** The order that the other day columns of the table give away, if they agree. */
function tableOrder(columns: readonly DayColumn[]): DayOrder | null {
  const shown = new Set(columns.map((column) => column.orderShown()));
  if (shown.has("mixed") || (shown.has("day-first") && shown.has("month-first"))) return null;
  if (shown.has("day-first")) return "day-first";
  return shown.has("month-first") ? "month-first" : null;
}

function* cellsOf(grid: Grid, { firstRow, endRow }: TableArea, column: number): Iterable<Cell> {
  for (let row = firstRow; row < endRow; row += 1) yield grid.at(row, column);
}
