import { type Cell, cellText, type DayOrder, type Grid, isBlank, shortened } from "../cells";
import type { CivilDay } from "../dates";
import { InputError } from "../faults";
import { lazily } from "../lazily";
import { foldName } from "../names";
import { headedTable, type RowFault, type RowTrouble, rowMustBeReady } from "../tables";
import { everyWord, normalText, stepKey, tableWords, wordPattern, wordSet } from "../words";
import type { DayStretch, Person } from "./crew";
import { hundredthsThere } from "./hundredths";
import { stretchReader } from "./stretches";
import type { CrewRemark } from "./work-remark";

export const crewWords = lazily(() => {
  const headers = tableWords("crew");
  const persons = everyWord(({ name, facts }) => [...name, ...facts.eventPerson]);
  return { ...headers, person: [...headers.person, ...persons] };
});

const logWords = lazily(() => ({
  day: everyWord(({ facts }) => facts.eventDay),
  hours: crewWords().hours,
}));

const EVERYTHING = wordSet((words) => words.everything);
const HOUR_UNITS = wordSet(({ units }) => ["", "h", ...units.hour]);
/** Between two steps: "Sowing and grafting", "Sowing/grafting". */
const and = lazily(
  () => new RegExp(`[/+&]|(?<!\\p{L})(?:${wordPattern((words) => words.and)})(?!\\p{L})`, "iu"),
);
const HOURS_IN_A_DAY = 24;

/** The columns as we name them. */
export const CREW_HEADER = ["Person", "Tasks", "Hours a day", "Off from", "Off to"] as const;

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
  readonly asOf: CivilDay;
  readonly localeOrder: DayOrder | null;
  /** Our name for one that was told. */
  readonly nameOf?: ((word: string) => string) | undefined;
}

interface CrewRow {
  readonly name: string;
  /** Null for all. */
  readonly skills: readonly string[] | null;
  /** Null where the row says none: a further time off of a person above. */
  readonly hundredthsADay: number | null;
  readonly off: DayStretch | null;
}

/** How many of its columns a table of persons has; 0 where it is none, or a log of hours by the day. */
export function crewColumns(grid: Grid): number {
  const table = crewTable(grid);
  if (table === null || headedTable(grid, logWords(), ["day", "hours"]) !== null) return 0;
  return Object.keys(table.columnOf).length;
}

function crewTable(grid: Grid) {
  return headedTable(grid, crewWords(), ["person", "hours"]);
}

/**
 * Reads the table of persons. Rows of one name are one person: with every time off, every task
 * named, and the fewest hours. A row that can't be read is left out and said.
 *
 * @throws InputError "no-header-row"; "row-not-ready" when a cell shows an error or is still loading
 */
export function readCrew(
  grid: Grid,
  { stepKeys, asOf, localeOrder, nameOf = (word) => word }: CrewHabits,
): CrewReading {
  const table = crewTable(grid);
  if (table === null) {
    const columns = [CREW_HEADER[0], CREW_HEADER[2]];
    throw new InputError({ code: "no-header-row", argument: "crew", columns });
  }
  const readOff = stretchReader(table, {
    from: "offFrom",
    to: "offTo",
    habits: { asOf, localeOrder, openEnd: true },
  });
  const rowsOf = new Map<string, CrewRow[]>();
  const troubles: RowTrouble[] = [];
  for (const row of table.rows) {
    rowMustBeReady("crew", table, row);
    const at = { table: "crew", row: row + 1 } as const;
    const leaveOut = (why: RowFault) => troubles.push({ code: "row-left-out", ...at, why });
    const name = nameOf(cellText(table.cell(row, "person")));
    const hours = readHours(table.cell(row, "hours"));
    const off = readOff(row);
    if (name === "") leaveOut({ code: "nobody-named" });
    else if (typeof hours === "object" && hours !== null) leaveOut(hours);
    else if (off !== null && "code" in off) leaveOut(off);
    else {
      const skills = readSkills(table.cell(row, "tasks"), stepKeys);
      const unknown = (skills ?? []).filter((one) => !stepKeys.has(stepKey(one)));
      for (const one of unknown) {
        const what = { code: "no-such-step", found: shortened(one) } as const;
        troubles.push({ code: "row-noted", ...at, what });
      }
      const key = foldName(name);
      const rows = rowsOf.get(key) ?? [];
      rowsOf.set(key, [...rows, { name, skills, hundredthsADay: hours, off }]);
    }
  }
  const crew: Person[] = [];
  const withoutHours: string[] = [];
  for (const key of [...rowsOf.keys()].sort()) {
    const person = personOf(rowsOf.get(key) ?? []);
    if (typeof person === "string") withoutHours.push(person);
    else crew.push(person);
  }
  return { crew, withoutHours, troubles };
}

/** What of the crew's table could not be used. */
export function crewRemarks({ troubles, withoutHours }: CrewReading): readonly CrewRemark[] {
  return [
    ...troubles,
    ...withoutHours.map((name) => ({ code: "no-hours-a-day", name: shortened(name) }) as const),
  ];
}

/** A name alone when no row of the person says hours. */
function personOf(rows: readonly CrewRow[]): Person | string {
  const name = rows.map((row) => row.name).sort()[0] as string;
  const hours = rows.flatMap(({ hundredthsADay }) => hundredthsADay ?? []);
  if (hours.length === 0) return name;
  const named = rows.flatMap(({ skills }) => skills ?? []);
  const all = rows.every(({ skills }) => skills === null);
  return {
    name,
    skills: all ? null : new Set(named.map(stepKey)),
    hundredthsADay: Math.min(...hours),
    off: rows.flatMap(({ off }) => off ?? []),
  };
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

/** Names of steps; null for all. What has no such name is taken apart at "/", "+" and "and". */
function readSkills(cell: Cell, stepKeys: ReadonlySet<string>): string[] | null {
  const text = typeof cell === "string" ? cell.trim() : cellText(cell);
  if (text === "" || EVERYTHING.has(normalText(text))) return null;
  return text
    .split(/[;,\r\n]/)
    .flatMap((part) => (stepKeys.has(stepKey(part)) ? [part] : part.split(and())))
    .map(cellText)
    .filter((part) => part !== "");
}
