import {
  type Cell,
  cellText,
  type DayOrder,
  type DayReading,
  type DecimalMark,
  errorShown,
  type Grid,
  isBlank,
  isLoading,
  type ReadAs,
  readCount,
  settleYear,
  type UndatedDay,
  type Unread,
  type YearHints,
} from "../cells";
import type { CivilDay } from "../dates";
import { InputError } from "../faults";
import { normalText, wordSet } from "../words";
import type { ColumnMatch } from "./column-match";
import type { ToldWords } from "./told-words";
import type { Trouble } from "./trouble";

export interface ReadingHabits {
  readonly asOf: CivilDay | null;
  /** How the workbook's locale writes dates of two numbers, and decimals; null when not known. */
  readonly localeOrder: DayOrder | null;
  readonly decimalMark: DecimalMark | null;
  /** What was told of words in cells; nothing where it is left out. */
  readonly words?: ToldWords | undefined;
}

/** How a cell for a day is read. */
export interface DayCellReader {
  readonly read: (cell: Cell) => DayReading;
  /** Called where the cell says that the step is not to be done, which is unread where this is left out. */
  readonly notDone?: () => void;
}

/** Reads single cells, and lists among its troubles what is not plainly written. */
export interface CellReaders {
  /** All that was listed so far, in order. */
  readonly troubles: readonly Trouble[];
  list(trouble: Trouble): void;
  text(row: number, match: ColumnMatch | undefined): string;
  /** A name; empty where the cell names nobody, as "?" or "mixed" do. */
  name(row: number, match: ColumnMatch | undefined): string;
  /** @param outOf the plants counted before, of which a cell may give a per cent */
  count(row: number, match: ColumnMatch | undefined, outOf: number | null): number | null;
  day(row: number, match: ColumnMatch, how: DayCellReader): CivilDay | UndatedDay | null;
  /** Whether a cell says yes, or holds a day: that day, where it is plain. */
  yes(
    row: number,
    match: ColumnMatch | undefined,
    read: (cell: Cell) => DayReading,
  ): CivilDay | boolean;
  /** Gives a day its year, and lists it as read so, or as unread where none is likely; null then. */
  settledDay(row: number, match: ColumnMatch, undated: Undated): CivilDay | null;
}

/** A day without a year, and what its year is told by. */
interface Undated extends YearHints {
  readonly day: UndatedDay;
}

const YES = wordSet((words) => words.yes);
const NO = wordSet((words) => words.no);
/** A day farther away than this is a slip: no batch is older, none is planned farther ahead. */
const YEARS_BACK = 15;
const YEARS_AHEAD = 3;
/** 1990 to the end of 2099, for questions that have no as-of day. */
const WITHOUT_AS_OF = { from: 7305 as CivilDay, by: 47481 as CivilDay };

/**
 * Reads cells of a table by their kind; what is not plainly read goes to the troubles.
 *
 * Longer than most: a reader for each kind of cell, which share one list of troubles.
 */
export function cellReaders(grid: Grid, habits: ReadingHabits): CellReaders {
  const { asOf } = habits;
  const troubles: Trouble[] = [];
  const earliest = asOf === null ? WITHOUT_AS_OF.from : asOf - YEARS_BACK * 366;
  const latest = asOf === null ? WITHOUT_AS_OF.by : asOf + YEARS_AHEAD * 366;
  const where = (row: number, match: ColumnMatch) => ({
    row: row + 1,
    column: match.header,
    found: cellText(grid.at(row, match.column)),
  });
  const listUnread = (row: number, match: ColumnMatch, why: Unread) => {
    if (isLoading(grid.at(row, match.column))) {
      throw new InputError({
        code: "not-ready-yet",
        argument: "records",
        row: row + 1,
        column: match.header,
        shown: null,
      });
    }
    troubles.push({ ...where(row, match), code: "cell-unread", why });
  };
  const listReading = (row: number, match: ColumnMatch, readAs: ReadAs) => {
    troubles.push({ ...where(row, match), code: "cell-read-as", readAs });
  };
  const inReach = (row: number, match: ColumnMatch, day: CivilDay): CivilDay | null => {
    if (day >= earliest && day <= latest) return day;
    listUnread(row, match, { code: "too-far-away", day });
    return null;
  };
  const text = (row: number, match: ColumnMatch | undefined): string => {
    if (match === undefined) return "";
    const cell = grid.at(row, match.column);
    if (cell === "") return "";
    const shown = errorShown(cell);
    if (shown === null && !isLoading(cell)) return cellText(cell);
    listUnread(row, match, { code: "cell-shows", shown: shown ?? "Loading..." });
    return "";
  };
  // A person may have told that it names somebody all the same.
  const namesNobody = (written: string) =>
    (NO_NAME.has(normalText(written)) || CROSSES.test(written)) &&
    (habits.words?.nameOf(written) ?? written) === written;
  // Tables say the same few names by the thousand.
  const names = new Map<string, string>();
  const name = (row: number, match: ColumnMatch | undefined): string => {
    const written = text(row, match);
    if (match === undefined || written === "") return "";
    let read = names.get(written);
    if (read === undefined) {
      read = isNothing(written) || namesNobody(written) ? "" : written;
      names.set(written, read);
    }
    // A sign says of itself that nothing is noted; a word may be somebody's name all the same.
    if (read === "" && !isNothing(written)) listReading(row, match, { code: "nobody" });
    return read;
  };
  const count = (row: number, match: ColumnMatch | undefined, outOf: number | null) => {
    if (match === undefined) return null;
    const cell = grid.at(row, match.column);
    if (cell === "") return null;
    // Nearly every count is a plain whole number.
    if (typeof cell === "number" && cell >= 1 && cell % 1 === 0 && cell < 1e6) return cell;
    const reading = readCount(cell, { decimalMark: habits.decimalMark, outOf });
    if (reading.kind === "blank") return null;
    if (reading.kind === "unread") {
      listUnread(row, match, reading.why);
      return null;
    }
    if (reading.readAs !== null) listReading(row, match, reading.readAs);
    else if (reading.count >= 1e6) listReading(row, match, { code: "many", count: reading.count });
    return reading.count;
  };
  const day: CellReaders["day"] = (row, match, { read, notDone }) => {
    const cell = grid.at(row, match.column);
    if (typeof cell === "object") return inReach(row, match, cell.day);
    if (cell === "") return null;
    const reading = read(cell);
    if (reading.kind === "blank") return null;
    if (reading.kind === "undated") return reading;
    if (reading.kind === "unread") {
      if (notDone !== undefined && typeof cell === "string" && saysNotDone(cell)) {
        // Some write it of what they don't know.
        if (isNothing(cell)) listReading(row, match, { code: "not-to-be-done" });
        notDone();
        return null;
      }
      // A word for "not noted" is as good as blank.
      if (typeof cell !== "string" || !isNothing(cell)) listUnread(row, match, reading.why);
      return null;
    }
    if (!reading.isPlain) listReading(row, match, { code: "day", day: reading.day });
    return inReach(row, match, reading.day);
  };
  const yes = (
    row: number,
    match: ColumnMatch | undefined,
    read: (cell: Cell) => DayReading,
  ): CivilDay | boolean => {
    if (match === undefined) return false;
    const said = saysYes(grid.at(row, match.column), read);
    if (said === null) listUnread(row, match, { code: "neither-day-nor-yes" });
    return said ?? false;
  };
  const settledDay = (row: number, match: ColumnMatch, { day: undated, ...hints }: Undated) => {
    const settled = settleYear(undated, hints);
    if (settled === null) listUnread(row, match, { code: "no-year" });
    else listReading(row, match, { code: "day", day: settled });
    return settled;
  };
  const list = (trouble: Trouble) => {
    troubles.push(trouble);
  };
  return { troubles, list, text, name, count, day, yes, settledDay };
}

/** Whether a cell says yes, or the day it holds; null where it says neither yes nor no. */
function saysYes(cell: Cell, read: (cell: Cell) => DayReading): CivilDay | boolean | null {
  if (typeof cell === "object") return cell.day;
  if (isBlank(cell)) return false;
  if (typeof cell === "boolean") return cell;
  const text = cellText(cell);
  const normal = normalText(text);
  if (NO.has(normal) || isNothing(text)) return false;
  if (YES.has(normal)) return true;
  const reading = read(cell);
  if (reading.kind === "day") return reading.day;
  if (reading.kind === "undated") return true;
  return /^\d{1,2}[/.-]\d{1,2}[/.-]\d{2,4}$/.test(text) || null;
}

const NOT_DONE = wordSet((words) => words.notDone);

/** Whether a text says that something is not to be done. */
export function saysNotDone(text: string): boolean {
  return NOT_DONE.has(normalText(text));
}

/** The same of a word that can't mean as well that nothing is known, as "n/a" may. */
export function plainlyNotDone(text: string): boolean {
  return saysNotDone(text) && !isNothing(text);
}

const NO_NAME = wordSet((words) => words.noName);
/** "xxx": some letter to fill the cell. */
const CROSSES = /^[x×]{2,}$/i;

const NOTHING = wordSet((words) => words.nothing);

function isNothing(text: string): boolean {
  return NOTHING.has(text.trim().toLowerCase()) || NOTHING.has(normalText(text));
}
