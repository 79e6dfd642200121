import { type Cell, cellText, type Grid, isBlank } from "../cells/cell";
import { quoted } from "../cells/quoted";
import { readCount } from "../cells/read-count";
import type { DecimalMark } from "../cells/read-count-text";
import { errorShown, isLoading } from "../cells/upstream";
import type { CivilDay } from "../dates/civil-day";
import { sentenceDay } from "../dates/day-text";
import type { DayOrder, DayReading } from "../dates/read-day-column";
import type { UndatedDay } from "../dates/read-day-text";
import { InputError } from "../input-error";
import { wordSet } from "../words/all-languages";
import { normalText } from "../words/normal-text";
import type { ColumnMatch } from "./match-columns";
import { COST, type Trouble } from "./trouble";

export interface ReadingHabits {
  readonly asOf: CivilDay | null;
  /** How the workbook's locale writes dates of two numbers, and decimals; null when not known. */
  readonly localeOrder: DayOrder | null;
  readonly decimalMark: DecimalMark | null;
}

/** Reads single cells, and lists among the troubles what is not plainly written. */
export interface CellReaders {
  text(row: number, match: ColumnMatch | undefined): string;
  /** @param outOf the plants counted before, of which a cell may give a per cent */
  count(row: number, match: ColumnMatch | undefined, outOf: number | null): number | null;
  day(
    row: number,
    match: ColumnMatch,
    read: (cell: Cell) => DayReading,
  ): CivilDay | UndatedDay | null;
  /** Whether a cell says yes, or holds a day. */
  yes(row: number, match: ColumnMatch | undefined, read: (cell: Cell) => DayReading): boolean;
  listReading(row: number, match: ColumnMatch, readAs: string): void;
  listUnread(row: number, match: ColumnMatch, why: string): void;
}

const YES = wordSet((words) => words.yes);
const NO = wordSet((words) => words.no);
/** A day farther away than this is a slip: no batch is older, none is planned farther ahead. */
const YEARS_BACK = 15;
const YEARS_AHEAD = 3;
const WITHOUT_AS_OF = { from: 7305 as CivilDay, by: 47481 as CivilDay };

export function cellReaders(
  grid: Grid,
  { asOf, decimalMark }: ReadingHabits,
  troubles: Trouble[],
): CellReaders {
  const earliest = asOf === null ? WITHOUT_AS_OF.from : asOf - YEARS_BACK * 366;
  const latest = asOf === null ? WITHOUT_AS_OF.by : asOf + YEARS_AHEAD * 366;
  const list = (
    row: number,
    match: ColumnMatch,
    wording: Pick<Trouble, "trouble" | "whatHappens" | "whatToDo" | "cost">,
  ) => {
    troubles.push({
      row: row + 1,
      column: match.header,
      found: cellText(grid.at(row, match.column)),
      ...wording,
    });
  };
  const listUnread = (row: number, match: ColumnMatch, why: string) => {
    if (isLoading(grid.at(row, match.column))) {
      throw new InputError(
        "not-ready-yet",
        `records is still loading at row ${row + 1}, column ${quoted(match.header)}`,
      );
    }
    list(row, match, {
      trouble: why.charAt(0).toUpperCase() + why.slice(1),
      whatHappens: "The cell is left out, the rest of the row is used",
      whatToDo: "Correct the cell, or empty it",
      cost: COST.cell,
    });
  };
  const listReading = (row: number, match: ColumnMatch, readAs: string) => {
    list(row, match, {
      trouble: "Not plainly written",
      whatHappens: `Read as ${readAs}`,
      whatToDo: "Nothing if that is right; else write it out",
      cost: COST.reading,
    });
  };
  const inReach = (row: number, match: ColumnMatch, day: CivilDay): CivilDay | null => {
    if (day >= earliest && day <= latest) return day;
    listUnread(row, match, `${sentenceDay(day)} is too far away to be meant`);
    return null;
  };
  const text = (row: number, match: ColumnMatch | undefined): string => {
    if (match === undefined) return "";
    const cell = grid.at(row, match.column);
    if (cell === "") return "";
    const shown = errorShown(cell);
    if (shown === null && !isLoading(cell)) return cellText(cell);
    listUnread(row, match, `the cell shows ${shown ?? "Loading..."}`);
    return "";
  };
  const count = (row: number, match: ColumnMatch | undefined, outOf: number | null) => {
    if (match === undefined) return null;
    const cell = grid.at(row, match.column);
    if (cell === "") return null;
    // Nearly every count is a plain whole number.
    if (typeof cell === "number" && cell >= 1 && cell % 1 === 0 && cell < 1e6) return cell;
    const reading = readCount(cell, { decimalMark, outOf });
    if (reading.kind === "blank") return null;
    if (reading.kind === "unread") {
      listUnread(row, match, reading.why);
      return null;
    }
    if (reading.readAs !== null) listReading(row, match, reading.readAs);
    else if (reading.count >= 1e6) listReading(row, match, `${reading.count} plants`);
    return reading.count;
  };
  const day = (row: number, match: ColumnMatch, read: (cell: Cell) => DayReading) => {
    const cell = grid.at(row, match.column);
    if (typeof cell === "object") return inReach(row, match, cell.day);
    if (cell === "") return null;
    const reading = read(cell);
    if (reading.kind === "blank") return null;
    if (reading.kind === "undated") return reading;
    if (reading.kind === "unread") {
      // A word for "not noted" is as good as blank.
      if (typeof cell !== "string" || !isNothing(cell)) listUnread(row, match, reading.why);
      return null;
    }
    if (reading.readAs !== null) listReading(row, match, reading.readAs);
    return inReach(row, match, reading.day);
  };
  const yes = (
    row: number,
    match: ColumnMatch | undefined,
    read: (cell: Cell) => DayReading,
  ): boolean => {
    if (match === undefined) return false;
    const cell = grid.at(row, match.column);
    if (typeof cell === "object") return true;
    if (isBlank(cell)) return false;
    if (typeof cell === "boolean") return cell;
    const normal = normalText(cellText(cell));
    if (NO.has(normal) || isNothing(cellText(cell))) return false;
    if (YES.has(normal)) return true;
    const reading = read(cell).kind;
    if (reading === "day" || reading === "undated") return true;
    if (/^\d{1,2}[/.-]\d{1,2}[/.-]\d{2,4}$/.test(cellText(cell))) return true;
    listUnread(row, match, "neither a day nor yes or no");
    return false;
  };
  return { text, count, day, yes, listReading, listUnread };
}

const NOTHING = wordSet((words) => words.nothing);

function isNothing(text: string): boolean {
  return NOTHING.has(text.trim().toLowerCase()) || NOTHING.has(normalText(text));
}
