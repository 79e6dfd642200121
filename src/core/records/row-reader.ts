import type { Grid, UndatedDay } from "../cells";
import type { CivilDay } from "../dates";
import type { BatchFact } from "../words";
import { type Batch, NAMES } from "./batch";
import { type CellReaders, cellReaders, type ReadingHabits } from "./cell-readers";
import type { FilledDown } from "./fill-down";
import type { TableColumns } from "./table-columns";
import type { Trouble } from "./trouble";

/** Reads the rows of one table that has a row a batch. */
export interface RowReader {
  /** All that was listed so far, in order. */
  readonly troubles: readonly Trouble[];
  list(trouble: Trouble): void;
  /** Counts of a row in the order of the steps, culled and dispatched last, listing nothing. */
  bareCounts(row: number): (number | null)[];
  hasDay(row: number): boolean;
  /** Whether anything with a digit stands where days and plants are due in a row, readable or not. */
  hasNumber(row: number): boolean;
  /** Reads one row, from 0; what can't be read goes to the troubles. */
  read(row: number, sectionYear: number | null): Batch;
}

/** A table of one row a batch, and what is known of it before its rows are read. */
export interface TableToRead {
  readonly grid: Grid;
  /** Which of the range's tables it is, from 0. */
  readonly table: number;
  readonly columns: TableColumns;
  readonly habits: ReadingHabits;
  /** Facts written once for the rows below them. */
  readonly down: ReadonlyMap<BatchFact, FilledDown>;
}

/** One for all: hardly any row says it. */
const NONE: readonly string[] = [];

/**
 * Reads the rows of a table, one batch each.
 *
 * Longer than most: everything here is made once a table and shared by its rows, since a table has thousands.
 */
export function rowReader({ grid, table, columns, habits, down }: TableToRead): RowReader {
  const { facts, steps, closed } = columns;
  const cells = cellReaders(grid, habits);
  const silent = cellReaders(grid, habits);
  const culled = facts.get("culled");
  const dispatched = facts.get("dispatched");
  const stepCells = [...steps.flatMap(({ day, count }) => [day?.match, count]), culled, dispatched];

  let notDone: string[] = [];
  const howOf = steps.map(({ key, day }) =>
    day === null ? null : { read: day.read, notDone: () => notDone.push(key) },
  );
  const daysIn = (row: number, sectionYear: number | null): (CivilDay | null)[] => {
    // Loops that make nothing: few rows hold a day without a year, and tables have thousands.
    const days: (CivilDay | null)[] = [];
    let undated: { readonly index: number; readonly day: UndatedDay }[] | null = null;
    for (let index = 0; index < steps.length; index += 1) {
      const column = steps[index]?.day ?? null;
      const how = howOf[index] ?? null;
      const day = column === null || how === null ? null : cells.day(row, column.match, how);
      if (day === null || typeof day === "number") days.push(day);
      else {
        undated ??= [];
        undated.push({ index, day });
        days.push(null);
      }
    }
    if (undated === null) return days;
    const neighbours = days.filter((day) => day !== null);
    for (const { index, day } of undated) {
      const match = steps[index]?.day?.match;
      if (match === undefined) continue;
      const hints = { neighbours, sectionYear, asOf: habits.asOf };
      days[index] = cells.settledDay(row, match, { day, ...hints });
    }
    return days;
  };
  const countsIn = (row: number, reader: CellReaders): (number | null)[] => {
    let before: number | null = null;
    const counts: (number | null)[] = [];
    for (const { count } of steps) {
      const counted = reader.count(row, count, before);
      before = counted ?? before;
      counts.push(counted);
    }
    return counts;
  };
  const textOf = (fact: BatchFact): ((row: number) => string) => {
    const match = facts.get(fact);
    const filled = down.get(fact);
    const read = NAMES.has(fact) ? cells.name : cells.text;
    if (filled === undefined) return (row) => read(row, match);
    return (row) => read(filled.rowFor(row), match);
  };
  const fromLot = textOf("fromLot");
  const variety = textOf("variety");
  const rootstock = textOf("rootstock");
  const crop = textOf("crop");
  const method = textOf("method");
  const place = textOf("place");
  const grafter = textOf("grafter");
  const scionSource = textOf("scionSource");
  let isWithoutNames = false;
  const nameIn = (row: number): string => {
    const given = cells.text(row, facts.get("batch"));
    if (given !== "") return given;
    const called = `Row ${row + 1}`;
    const column = facts.get("batch")?.header ?? "";
    if (facts.has("batch")) {
      cells.list({ row: row + 1, column, found: "", code: "batch-unnamed", called });
    } else if (!isWithoutNames) {
      isWithoutNames = true;
      cells.list({ row: null, column, found: "", code: "no-batch-column", called });
    }
    return called;
  };

  return {
    troubles: cells.troubles,
    list: cells.list,
    bareCounts: (row) => [
      ...countsIn(row, silent),
      silent.count(row, culled, null),
      silent.count(row, dispatched, null),
    ],
    hasDay: (row) =>
      steps.some(({ day }) => day !== null && silent.day(row, day.match, day) !== null),
    hasNumber: (row) =>
      stepCells.some((match) => {
        if (match === undefined) return false;
        const cell = grid.at(row, match.column);
        return typeof cell === "string" ? /\d/.test(cell) : true;
      }),
    read: (row, sectionYear) => {
      const name = nameIn(row);
      notDone = [];
      const closing = closed !== null && cells.yes(row, closed.match, closed.read);
      return {
        row: row + 1,
        table,
        name,
        // One by one: an object that is put together from a list or from another is slower to read
        // ever after, and tables have thousands of rows.
        fromLot: fromLot(row),
        variety: variety(row),
        rootstock: rootstock(row),
        crop: crop(row),
        method: method(row),
        place: place(row),
        grafter: grafter(row),
        scionSource: scionSource(row),
        culled: cells.count(row, culled, null),
        dispatched: cells.count(row, dispatched, null),
        given: 0,
        givenBeforeCount: 0,
        received: null,
        closed: closing !== false,
        closedOn: typeof closing === "number" ? closing : null,
        days: daysIn(row, sectionYear),
        counts: countsIn(row, cells),
        notDone: notDone.length === 0 ? NONE : notDone,
      };
    },
  };
}
