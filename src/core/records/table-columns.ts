import { type DayColumnReader, type DayOrder, dayColumnReader, type Grid } from "../cells";
import type { BatchFact } from "../words";
import type { ReadingHabits } from "./cell-readers";
import type { ColumnMatch } from "./column-match";
import { columnCells, type TableArea } from "./find-tables";

/** A column of days, and how they are written there. */
export interface DayColumn extends DayColumnReader {
  readonly match: ColumnMatch;
}

/** The columns of one step; either may be missing. */
export interface StepColumns {
  readonly key: string;
  readonly day: DayColumn | null;
  readonly count: ColumnMatch | undefined;
}

/** The columns of a table that has a row a batch, by what they hold. */
export interface TableColumns {
  readonly facts: ReadonlyMap<BatchFact, ColumnMatch>;
  /** In the timetable's order, since a per cent is one of the plants at the step before. */
  readonly steps: readonly StepColumns[];
  /** Says whether a batch is closed, or on which day it was. */
  readonly closed: DayColumn | null;
  /** All columns of days. */
  readonly days: readonly DayColumn[];
}

/** A table of one row a batch, its columns, and what is known from elsewhere. */
export interface TableToSort {
  readonly grid: Grid;
  readonly area: TableArea;
  readonly matches: readonly ColumnMatch[];
  readonly habits: ReadingHabits;
  /** Keys of the timetable's steps, in its order. */
  readonly stepOrder: readonly string[];
  /** The order of day and month that all tables give away; asked for when a day needs it. */
  readonly orderElsewhere: () => DayOrder | null;
}

/** Sorts the columns of a table by what they hold. Columns of days are not looked through yet. */
export function tableColumns({
  grid,
  area,
  matches,
  habits,
  stepOrder,
  orderElsewhere,
}: TableToSort): TableColumns {
  const { facts, dayMatches, countMatches } = byTarget(matches);
  const days: DayColumn[] = [];
  const dayColumn = (match: ColumnMatch | undefined): DayColumn | null => {
    if (match === undefined) return null;
    const reader = dayColumnReader(() => columnCells(grid, area, match.column), {
      asOf: habits.asOf,
      usualOrder: () => orderShownBy(days) ?? orderElsewhere() ?? habits.localeOrder,
    });
    const column = { match, ...reader };
    days.push(column);
    return column;
  };
  const found = new Set([...dayMatches.keys(), ...countMatches.keys()]);
  const keys = [...new Set([...stepOrder, ...found])].filter((key) => found.has(key));
  const steps = keys.map(
    (key): StepColumns => ({
      key,
      day: dayColumn(dayMatches.get(key)),
      count: countMatches.get(key),
    }),
  );
  return { facts, steps, closed: dayColumn(facts.get("closed")), days };
}

/** The order of day and month that columns give away, if they agree. */
export function orderShownBy(columns: readonly DayColumn[]): DayOrder | null {
  const shown = new Set(columns.map((column) => column.orderShown()));
  if (shown.has("mixed") || (shown.has("day-first") && shown.has("month-first"))) return null;
  if (shown.has("day-first")) return "day-first";
  return shown.has("month-first") ? "month-first" : null;
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
