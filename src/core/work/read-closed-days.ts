import { cellText, type DayOrder, type Grid, isBlank, shortened } from "../cells";
import type { CivilDay } from "../dates";
import { InputError } from "../faults";
import { lazily } from "../lazily";
import {
  besideTable,
  columnRemarks,
  headedTable,
  type RowFault,
  type RowTrouble,
  rowMustBeReady,
} from "../tables";
import { everyWord, tableWords } from "../words";
import { type ClosedDays, type DayStretch, NEVER_CLOSED } from "./crew";
import { type OffRead, offBetween, offReader } from "./read-off";
import { weekOff } from "./read-week";

export const closedWords = lazily(() => {
  const headers = tableWords("closedDays");
  return { ...headers, day: [...headers.day, ...everyWord((words) => words.from)] };
});

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

/** Where its days stand, as `orderTable`; null where the grid has no header of such a table. */
export function closedTable(grid: Grid, byWordsAlone?: boolean) {
  return besideTable(grid, {
    kind: "closed-days",
    words: closedWords(),
    required: ["day"],
    byWordsAlone,
  });
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
  const table = closedTable(grid);
  if (table === null) {
    throw new InputError({ code: "no-header-row", argument: "closedDays", columns: ["Day"] });
  }
  const cellsIn = (row: number) => [table.cell(row, "day"), table.cell(row, "to")] as const;
  const readOff = offReader(() => table.rows.flatMap(cellsIn), habits);
  const stretches: DayStretch[] = [];
  const weekdays = new Set<number>();
  const troubles: RowTrouble[] = [];
  for (const row of table.rows) {
    rowMustBeReady("closedDays", table, row);
    const [first, last] = cellsIn(row);
    const leaveOut = (why: RowFault) =>
      troubles.push({ code: "row-left-out", table: "closed-days", row: row + 1, why });
    const days = weekOff(String(first));
    const read =
      days === null || isBlank(last) ? offBetween(readOff, [first, last], false) : WITH_LAST;
    if ("code" in read) leaveOut(read);
    else if (read.stretches.some(({ from }) => from === null)) leaveOut({ code: "no-first-day" });
    else if (isHalf(read)) leaveOut({ code: "not-a-day", found: shortened(cellText(first)) });
    else {
      stretches.push(...read.stretches);
      for (const [at, part] of (read.week ?? []).entries()) {
        if ("share" in part && part.share === 0) weekdays.add(at + 1);
      }
    }
  }
  return {
    closed: { stretches, weekdays },
    troubles: [...troubles, ...columnRemarks("closed-days", table)],
  };
}

const WITH_LAST = { code: "weekday-with-last-day" } as const;

/** Half a day is not closed. */
function isHalf({ stretches, week }: OffRead): boolean {
  return (
    stretches.some((one) => one.isHalf) ||
    (week ?? []).some((part) => "share" in part && part.share === 0.5)
  );
}
