import {
  type Answer,
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
  type Timetable,
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
  grid(value: unknown): Grid;
  cell(value: unknown): Cell;
  day(name: string, value: unknown): CivilDay;
  /** A timetable that can be used whole; the built-in one where none is given. */
  timetable(value: unknown): Timetable;
  /** A timetable with what is wrong in it. */
  timetableWithFaults(value: unknown): BuiltTimetable;
  records(value: unknown, with_: RecordsWith): Records;
  /** What `columns` tells of the table that can't be followed any more. */
  lostColumns(value: unknown, with_: Omit<RecordsWith, "asOf">): readonly LostColumn[];
  orders(value: unknown, asOf: CivilDay): Orders;
  crew(value: unknown, timetable: Timetable, asOf: CivilDay): CrewReading;
  /** None where none are given. */
  closedDays(value: unknown, asOf: CivilDay): ClosedDaysReading;
  places(value: unknown): PlacesReading;
  /** None where none are given. */
  prices(value: unknown): PricesReading;
  out(answer: Answer): CellOut[][];
  /** A day as a spreadsheet takes it: its first instant in the spreadsheet's zone. */
  date(day: CivilDay): Date;
}

export interface RecordsWith {
  readonly timetable: Timetable;
  readonly asOf: CivilDay | null;
  /** The columns argument: our name, the header in the sheet. */
  readonly columns: unknown;
}

/** A door is made for each call, so that nothing of one spreadsheet is kept for another. */
export function openDoor(host: Host): Door {
  const days: DaysOfInstants = daysOfInstants(host);
  // Asking the runtime for a locale's habits takes longer than reading a small table, and most tables
  // hold nothing that needs them.
  const order = lazily(() => localeOrder(host.locale()));
  const mark = lazily(() => decimalMark(host.locale()));
  const timetableWithFaults = (value: unknown): BuiltTimetable =>
    isMissing(value)
      ? { timetable: builtInTimetable(), faults: [] }
      : readTimetable(gridIn(value, days));
  return {
    grid: (value) => gridIn(value, days),
    cell: (value) => cellIn(value, days),
    day: (name, value) => dayArgument(name, cellIn(value, days), order),
    timetableWithFaults,
    timetable: (value) => {
      const { timetable, faults } = timetableWithFaults(value);
      const [fault, ...more] = faults;
      if (fault !== undefined) {
        throw new InputError({ code: "timetable-unusable", fault, more: more.length });
      }
      return timetable;
    },
    records: (value, { timetable, asOf, columns }) => {
      mustBeGiven("records", value, "table");
      return readRecords(gridIn(value, days), {
        stepNames: stepNames(timetable),
        asOf,
        get localeOrder() {
          return order();
        },
        get decimalMark() {
          return mark();
        },
        told: toldColumns(gridIn(columns, days)),
      });
    },
    lostColumns: (value, { timetable, columns }) =>
      lostColumns(gridIn(value, days), {
        stepNames: stepNames(timetable),
        told: toldColumns(gridIn(columns, days)),
      }),
    orders: (value, asOf) => {
      mustBeGiven("orders", value, "table");
      return readOrders(gridIn(value, days), {
        asOf,
        get localeOrder() {
          return order();
        },
        get decimalMark() {
          return mark();
        },
      });
    },
    crew: (value, timetable, asOf) => {
      mustBeGiven("crew", value, "crew");
      const steps = timetable.methods.flatMap((method) => method.steps);
      const stepKeys = new Set(steps.map(({ key }) => key));
      return readCrew(gridIn(value, days), { stepKeys, asOf, localeOrder: order() });
    },
    closedDays: (value, asOf) =>
      readClosedDays(isMissing(value) ? null : gridIn(value, days), {
        asOf,
        localeOrder: order(),
      }),
    places: (value) => {
      mustBeGiven("places", value, "places");
      return readPlaces(gridIn(value, days), decimalMark(host.locale()));
    },
    prices: (value) =>
      readPrices(isMissing(value) ? null : gridIn(value, days), decimalMark(host.locale())),
    out: (answer) => cellsOut(answer, days),
    date: (day) => new Date(days.instantOf(day)),
  };
}

function mustBeGiven(argument: string, value: unknown, needs: "table" | "crew" | "places"): void {
  if (isMissing(value)) throw new InputError({ code: "argument-missing", argument, needs });
}

function stepNames({ methods }: Timetable): readonly string[] {
  return methods.flatMap(({ steps }) => steps.map(({ name }) => name));
}

/** The header that such a range may begin with. */
export const TOLD_HEADER = ["Our column", "Header in your sheet"] as const;

/** Our column name by the header in the sheet, from two columns of cells. Blank rows are passed over. */
function toldColumns(grid: Grid): ReadonlyMap<string, string> {
  const told = new Map<string, string>();
  for (let row = 0; row < grid.rowCount; row += 1) {
    const name = grid.at(row, 0);
    const header = grid.at(row, 1);
    if (name === "" && header === "") continue;
    if (row === 0 && name === TOLD_HEADER[0] && header === TOLD_HEADER[1]) continue;
    if (typeof name !== "string" || typeof header !== "string" || header === "") {
      throw new InputError({ code: "columns-unreadable", name, header });
    }
    told.set(header, name);
  }
  return told;
}
