import {
  type Answer,
  type BesideTable,
  type BuiltTimetable,
  builtInTimetable,
  type Cell,
  type CivilDay,
  type ClosedDaysReading,
  type CrewReading,
  type Grid,
  InputError,
  type LostColumn,
  lazily,
  lostColumns,
  type Orders,
  type PlacesReading,
  type PricesReading,
  type Records,
  readClosedDays,
  readCrew,
  readOrders,
  readPlaces,
  readPrices,
  readRecords,
  readTimetable,
  readTold,
  recordedSteps,
  type SampleHabits,
  type Timetable,
  type Told,
  type ToldWords,
  toldWords,
  withOurHeaders,
} from "../core";
import { type CellOut, cellsOut } from "./answer-out";
import { dayArgument, isMissing } from "./arguments";
import { cellIn, gridIn } from "./cells-in";
import { type DaysOfInstants, daysOfInstants } from "./days-of-instants";
import { decimalMark } from "./decimal-mark";
import type { Host } from "./host";
import { localeOrder } from "./locale-order";

/** The one way in from a spreadsheet's values to core's, and out again. */
export interface Door {
  /** The same, with the headers of the tables beside the records that a columns argument tells of. */
  hearing(columns: unknown): Door;
  grid(value: unknown): Grid;
  /** A table beside the records, with the headers that were told of it under our names. */
  beside(table: BesideTable, value: unknown): Grid;
  /** The tab in which such a table was told to stand, or NO_TAB; null where nothing was told. */
  toldTab(table: BesideTable): string | null;
  /** How the workbook's locale writes days and numbers. */
  habits(): SampleHabits;
  cell(value: unknown): Cell;
  day(name: string, value: unknown): CivilDay;
  /**
   * What can be used of a timetable; the built-in one where none is given.
   *
   * @throws InputError "timetable-unusable" where no method of it can be used
   */
  timetable(value: unknown): Timetable;
  /** The same with what is wrong in it, even where nothing can be used. */
  timetableWithFaults(value: unknown): BuiltTimetable;
  records(value: unknown, with_: RecordsWith): Records;
  /** What `columns` tells of the table that can't be followed any more. */
  lostColumns(value: unknown, with_: Omit<RecordsWith, "asOf">): readonly LostColumn[];
  /** What a columns argument tells of words in cells, if anything. */
  words(columns: unknown, timetable: Timetable): ToldWords | undefined;
  orders(value: unknown, asOf: CivilDay, words?: ToldWords | undefined): Orders;
  crew(value: unknown, with_: CrewWith): CrewReading;
  /** None where none are given. */
  closedDays(value: unknown, asOf: CivilDay): ClosedDaysReading;
  places(value: unknown, words?: ToldWords | undefined): PlacesReading;
  /** None where none are given. */
  prices(value: unknown, words?: ToldWords | undefined): PricesReading;
  out(answer: Answer): CellOut[][];
  /** A day as a spreadsheet takes it: its first instant in the spreadsheet's zone. */
  date(day: CivilDay): Date;
}

export interface RecordsWith {
  readonly timetable: Timetable;
  readonly asOf: CivilDay | null;
  /** The columns argument: our name, the person's word, what it is. */
  readonly columns: unknown;
}

export interface CrewWith {
  readonly timetable: Timetable;
  readonly asOf: CivilDay;
  readonly words?: ToldWords | undefined;
}

/**
 * A door is made for each call, so that nothing of one spreadsheet is kept for another.
 *
 * Longer than most: a list, a few lines for each kind of table and argument that comes in.
 */
export function openDoor(host: Host, columns: unknown = ""): Door {
  const days: DaysOfInstants = daysOfInstants(host);
  // Asking the runtime for a locale's habits takes longer than reading a small table, and most tables
  // hold nothing that needs them.
  const order = lazily(() => localeOrder(host.locale()));
  const mark = lazily(() => decimalMark(host.locale()));
  const told = (columns: unknown) => readTold(gridIn(columns, days));
  const toldHere = lazily(() => told(columns));
  const beside = (table: BesideTable, value: unknown) =>
    withOurHeaders(gridIn(value, days), toldHere().tableHeaders.get(table));
  const timetableWithFaults = (value: unknown): BuiltTimetable =>
    isMissing(value)
      ? { timetable: builtInTimetable(), faults: [] }
      : readTimetable(gridIn(value, days));
  return {
    hearing: (more) => openDoor(host, more),
    grid: (value) => gridIn(value, days),
    beside,
    toldTab: (table) => toldHere().tabs.get(table) ?? null,
    habits: () => ({ localeOrder: order(), decimalMark: mark() }),
    cell: (value) => cellIn(value, days),
    day: (name, value) => dayArgument(name, cellIn(value, days), order),
    timetableWithFaults,
    timetable: (value) => {
      const { timetable, faults } = timetableWithFaults(value);
      const [fault, ...more] = faults;
      if (fault !== undefined && timetable.methods.length === 0) {
        throw new InputError({ code: "timetable-unusable", fault, more: more.length });
      }
      return timetable;
    },
    records: (value, { timetable, asOf, columns }) => {
      mustBeGiven("records", value, "table");
      const read = told(columns);
      return readRecords(gridIn(value, days), {
        stepNames: stepNames(timetable),
        timetableFaults: timetable.leftOut?.faults ?? [],
        asOf,
        get localeOrder() {
          return order();
        },
        get decimalMark() {
          return mark();
        },
        told: read.headers,
        words: wordsOf(read, timetable),
      });
    },
    words: (columns, timetable) => wordsOf(told(columns), timetable),
    lostColumns: (value, { timetable, columns }) =>
      lostColumns(gridIn(value, days), {
        stepNames: stepNames(timetable),
        told: told(columns).headers,
      }),
    orders: (value, asOf, words) => {
      mustBeGiven("orders", value, "table");
      return readOrders(beside("orders", value), {
        asOf,
        words,
        get localeOrder() {
          return order();
        },
        get decimalMark() {
          return mark();
        },
      });
    },
    crew: (value, { timetable, asOf, words }) => {
      mustBeGiven("crew", value, "crew");
      const steps = timetable.methods.flatMap(recordedSteps);
      const stepKeys = new Set(steps.map(({ key }) => key));
      return readCrew(beside("crew", value), {
        stepKeys,
        timetable,
        asOf,
        localeOrder: order(),
        words,
      });
    },
    closedDays: (value, asOf) =>
      readClosedDays(isMissing(value) ? null : beside("closed-days", value), {
        asOf,
        localeOrder: order(),
      }),
    places: (value, words) => {
      mustBeGiven("places", value, "places");
      return readPlaces(beside("places", value), decimalMark(host.locale()), words?.nameOf);
    },
    prices: (value, words) =>
      readPrices(
        isMissing(value) ? null : beside("prices", value),
        decimalMark(host.locale()),
        words?.nameOf,
      ),
    out: (answer) => cellsOut(answer, days),
    date: (day) => new Date(days.instantOf(day)),
  };
}

/** Undefined where nothing was told of words in cells, as mostly: then none is looked up. */
function wordsOf(told: Told, timetable: Timetable): ToldWords | undefined {
  return told.values.size + told.notSame.size === 0 ? undefined : toldWords(told, timetable);
}

function mustBeGiven(argument: string, value: unknown, needs: "table" | "crew" | "places"): void {
  if (isMissing(value)) throw new InputError({ code: "argument-missing", argument, needs });
}

function stepNames({ methods }: Timetable): readonly string[] {
  return methods.flatMap((method) => recordedSteps(method).map(({ name }) => name));
}
