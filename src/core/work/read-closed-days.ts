import { cellText, type DayOrder, type Grid, isBlank } from "../cells";
import type { CivilDay } from "../dates";
import { InputError } from "../faults";
import { lazily } from "../lazily";
import { headedTable, type RowFault, type RowTrouble, rowMustBeReady } from "../tables";
import { everyLanguage, everyWord, normalText, tableWords } from "../words";
import { type ClosedDays, type DayStretch, NEVER_CLOSED } from "./crew";
import { stretchReader } from "./stretches";

export const closedWords = lazily(() => {
  const headers = tableWords("closedDays");
  return { ...headers, day: [...headers.day, ...everyWord((words) => words.from)] };
});

const weekdayOf = lazily<ReadonlyMap<string, number>>(
  () =>
    new Map(
      everyLanguage().flatMap(({ weekdayNames }) =>
        weekdayNames.flatMap((names, index) => names.map((name) => [name, index + 1] as const)),
      ),
    ),
);

/** Columns of tables of other days: whose leave, of which batch. */
const otherWords = lazily(() =>
  everyWord(({ facts, tables }) => [...facts.batch, ...facts.eventPerson, ...tables.crew.person]),
);

const leaveWords = lazily(() => ({
  name: everyWord((words) => words.name),
  from: everyWord((words) => words.from),
}));

/** Whether a table, by its header, is one of days on which the whole nursery is closed. */
export function isClosedDays(grid: Grid): boolean {
  const table = headedTable(grid, { ...closedWords(), other: otherWords() }, ["day"]);
  if (table === null || table.columnOf.other !== undefined) return false;
  // A day may have a name; who is away from when to when has one, too.
  return headedTable(grid, leaveWords(), ["name", "from"]) === null;
}

export interface ClosedDaysReading {
  readonly closed: ClosedDays;
  /** What could not be used. */
  readonly troubles: readonly RowTrouble[];
}

/**
 * Reads the days on which nobody works: days, stretches of days, or weekdays by their names.
 *
 * @param grid null where no day is closed
 * @throws InputError "no-header-row"; "row-not-ready" when a cell shows an error or is still loading
 */
export function readClosedDays(
  grid: Grid | null,
  habits: { readonly asOf: CivilDay; readonly localeOrder: DayOrder | null },
): ClosedDaysReading {
  if (grid === null) return { closed: NEVER_CLOSED, troubles: [] };
  const table = headedTable(grid, closedWords(), ["day"]);
  if (table === null) {
    throw new InputError({ code: "no-header-row", argument: "closedDays", columns: ["Day"] });
  }
  const readStretch = stretchReader(table, {
    from: "day",
    to: "to",
    habits: { ...habits, openEnd: false },
  });
  const stretches: DayStretch[] = [];
  const weekdays = new Set<number>();
  const troubles: RowTrouble[] = [];
  for (const row of table.rows) {
    rowMustBeReady("closedDays", table, row);
    const leaveOut = (why: RowFault) =>
      troubles.push({ code: "row-left-out", table: "closed-days", row: row + 1, why });
    const weekday = weekdayNamed(cellText(table.cell(row, "day")));
    if (weekday !== null) {
      if (isBlank(table.cell(row, "to"))) weekdays.add(weekday);
      else leaveOut({ code: "weekday-with-last-day" });
      continue;
    }
    const stretch = readStretch(row);
    if (stretch === null) continue;
    if ("code" in stretch) leaveOut(stretch);
    else if (stretch.from === null) leaveOut({ code: "no-first-day" });
    else stretches.push(stretch);
  }
  return { closed: { stretches, weekdays }, troubles };
}

/** "Sunday" and "Sundays". */
function weekdayNamed(text: string): number | null {
  const name = normalText(text);
  return weekdayOf().get(name) ?? weekdayOf().get(name.replace(/s$/, "")) ?? null;
}
