import { type Cell, cellText, type DayOrder, type Grid, isBlank, shortened } from "../cells";
import type { CivilDay } from "../dates";
import { InputError } from "../faults";
import { lazily } from "../lazily";
import { foldName } from "../names";
import type { ToldWords } from "../records";
import {
  cellsMustBeReady,
  columnRemarks,
  headedTable,
  type RowFault,
  type RowTrouble,
  withoutDittos,
} from "../tables";
import type { Timetable } from "../timetable";
import { everyWord, normalText, wordSet } from "../words";
import type { Person } from "./crew";
import { type CrewRow, personOf } from "./crew-rows";
import { crewTable, crewWords } from "./crew-table";
import { hundredthsThere } from "./hundredths";
import { skillReader } from "./read-skills";
import { timesReader } from "./read-times";
import type { CrewRemark } from "./work-remark";

const logWords = lazily(() => ({
  day: everyWord(({ facts }) => facts.eventDay),
  hours: crewWords().hours,
}));

const HOUR_UNITS = wordSet(({ units }) => ["", "h", ...units.hour]);
const HOURS_IN_A_DAY = 24;

/** The columns as we name them. */
export const CREW_HEADER = [
  "Person",
  "Tasks",
  "Hours a day",
  "Days",
  "Off from",
  "Off to",
] as const;

export interface CrewReading {
  /** By name, so that the order of the rows does not matter. */
  readonly crew: readonly Person[];
  /** Whom no row gives hours, so that nothing can be planned with them. */
  readonly withoutHours: readonly string[];
  /** What else could not be used; no person is named in them. */
  readonly troubles: readonly RowTrouble[];
}

export interface CrewHabits {
  /** Keys of the timetable's steps. */
  readonly stepKeys: ReadonlySet<string>;
  /** By which tasks of one method are told apart; left out where they are not. */
  readonly timetable?: Timetable;
  readonly asOf: CivilDay;
  readonly localeOrder: DayOrder | null;
  /** What was told of words in cells. */
  readonly words?: ToldWords | undefined;
}

/**
 * How many of its columns a table of persons has; 0 where it is none, or a log of hours by the day.
 *
 * @param isCalledSo whether its tab is, so that what its columns hold counts as well
 */
export function crewColumns(grid: Grid, isCalledSo: boolean): number {
  if (headedTable(grid, logWords(), ["day", "hours"]) !== null) return 0;
  const table = crewTable(grid, !isCalledSo);
  return table === null ? 0 : [...table.columnsOf.values()].flat().length;
}

/**
 * Reads the table of persons. Rows of one name are one person: with every time off, every task
 * named, and on each weekday the fewest hours of the rows that tell of it. A row that can't be read is
 * left out and said.
 *
 * @throws InputError "no-header-row"; "row-not-ready" when a cell shows an error or is still loading
 */
export function readCrew(written: Grid, habits: CrewHabits): CrewReading {
  const { stepKeys, timetable = null, words } = habits;
  const nameOf = words?.nameOf ?? ((word: string) => word);
  const found = crewTable(written);
  if (found === null) {
    const columns = [CREW_HEADER[0], CREW_HEADER[2]];
    throw new InputError({ code: "no-header-row", argument: "crew", columns });
  }
  const { grid, remarks: ofDittos } = withoutDittos(written, "crew", {
    table: found,
    fields: ["person", "tasks", "methods", "hours", "days"],
  });
  const table = (ofDittos.length === 0 ? null : crewTable(grid)) ?? found;
  const readSkills = skillReader({ stepKeys, timetable, words });
  const readTimes = timesReader(table, habits);
  const rowsOf = new Map<string, CrewRow[]>();
  const troubles: RowTrouble[] = [];
  for (const row of table.rows) {
    cellsMustBeReady("crew", row, table.read(row));
    const at = { table: "crew", row: row + 1 } as const;
    const leaveOut = (why: RowFault) => troubles.push({ code: "row-left-out", ...at, why });
    const name = nameOf(cellText(table.cells(row, "person")[0] ?? ""));
    const hours = readHours(table.cells(row, "hours")[0] ?? "");
    const times = readTimes(row);
    if (name === "") leaveOut({ code: "nobody-named" });
    else if (typeof hours === "object" && hours !== null) leaveOut(hours);
    else if ("code" in times) leaveOut(times);
    else {
      const { skills, unknown } = readSkills(
        table.cells(row, "tasks"),
        table.cells(row, "methods"),
      );
      for (const one of unknown) {
        const what = { code: "no-such-step", found: shortened(one) } as const;
        troubles.push({ code: "row-noted", ...at, what });
      }
      const key = foldName(name);
      const rows = rowsOf.get(key) ?? [];
      rowsOf.set(key, [...rows, { name, skills, hundredthsADay: hours, ...times }]);
    }
  }
  const crew: Person[] = [];
  const withoutHours: string[] = [];
  for (const key of [...rowsOf.keys()].sort()) {
    const person = personOf(rowsOf.get(key) ?? []);
    if (typeof person === "string") withoutHours.push(person);
    else crew.push(person);
  }
  return {
    crew,
    withoutHours,
    troubles: [...troubles, ...ofDittos, ...columnRemarks("crew", table)],
  };
}

/** What of the crew's table could not be used. */
export function crewRemarks({ troubles, withoutHours }: CrewReading): readonly CrewRemark[] {
  return [
    ...troubles,
    ...withoutHours.map((name) => ({ code: "no-hours-a-day", name: shortened(name) }) as const),
  ];
}

/** Hundredths of an hour; null when blank; what is wrong. */
function readHours(cell: Cell): number | null | RowFault {
  if (isBlank(cell)) return null;
  const text = cellText(cell);
  const [, digits = "", unit = ""] = /^(\d+(?:[.,]\d+)?)\s*(\p{L}*)$/u.exec(text) ?? [];
  const isHours = digits !== "" && HOUR_UNITS.has(normalText(unit));
  const hours = isHours ? Number(digits.replace(",", ".")) : Number.NaN;
  if (hours >= 0 && hours <= HOURS_IN_A_DAY) return hundredthsThere(hours);
  const code = hours > HOURS_IN_A_DAY ? "more-hours-than-a-day" : "not-hours";
  return { code, found: shortened(text) };
}
