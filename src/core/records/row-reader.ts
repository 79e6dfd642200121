import { type Cell, cellText, type Grid, isBlank } from "../cells/cell";
import { readCount } from "../cells/read-count";
import { errorShown, isLoading } from "../cells/upstream";
import type { CivilDay } from "../dates/civil-day";
import { type DayReading, dayColumnReader } from "../dates/read-day-column";
import { InputError } from "../input-error";
import { allLanguages } from "../words/all-languages";
import type { BatchFact } from "../words/language-words";
import { normalText } from "../words/normal-text";
import type { Batch } from "./batch";
import type { ColumnMatch } from "./match-columns";
import type { ReadingOptions } from "./read-records";
import { COST, type Trouble } from "./trouble";

export interface RowReader {
  readonly stepKeys: readonly string[];
  /** Reads one row, from 0, as a batch; what can't be read goes to the troubles. */
  read(row: number): Batch;
}

interface StepColumns {
  readonly day: DayColumn | null;
  readonly count: ColumnMatch | null;
}

interface DayColumn {
  readonly match: ColumnMatch;
  readonly reading: (cell: Cell) => DayReading;
}

const YES: ReadonlySet<string> = new Set(allLanguages.flatMap((words) => words.yes));
const NO: ReadonlySet<string> = new Set(allLanguages.flatMap((words) => words.no));

/** Makes the reader for the rows under one header. */
export function rowReader(
  grid: Grid,
  firstRow: number,
  matches: readonly ColumnMatch[],
  options: ReadingOptions,
  troubles: Trouble[],
): RowReader {
  const factColumn = new Map<BatchFact, ColumnMatch>();
  const dayColumn = new Map<string, ColumnMatch>();
  const countColumn = new Map<string, ColumnMatch>();
  for (const match of matches) {
    const { target } = match;
    if (target === null || target.kind === "event") continue;
    if (target.kind === "fact") factColumn.set(target.fact, match);
    else (target.what === "day" ? dayColumn : countColumn).set(target.key, match);
  }
  const stepKeys = [...new Set([...dayColumn.keys(), ...countColumn.keys()])];
  const makeDayColumn = (match: ColumnMatch): DayColumn => ({
    match,
    reading: dayColumnReader(() => cellsBelow(grid, firstRow, match.column), options),
  });
  const steps = stepKeys.map((key): StepColumns => {
    const day = dayColumn.get(key);
    return {
      day: day === undefined ? null : makeDayColumn(day),
      count: countColumn.get(key) ?? null,
    };
  });
  const closedMatch = factColumn.get("closed");
  const closedColumn = closedMatch === undefined ? null : makeDayColumn(closedMatch);

  const listUnread = (row: number, match: ColumnMatch, cell: Cell, why: string) => {
    if (isLoading(cell)) {
      throw new InputError(
        "not-ready-yet",
        `records is still loading at row ${row + 1}, column "${match.header}"`,
      );
    }
    troubles.push({
      row: row + 1,
      column: match.header,
      found: cellText(cell),
      trouble: sentence(why),
      whatHappens: "The cell is left out, the rest of the row is used",
      whatToDo: "Correct the cell, or empty it",
      cost: COST.cell,
    });
  };
  const listReading = (row: number, match: ColumnMatch, cell: Cell, readAs: string) => {
    troubles.push({
      row: row + 1,
      column: match.header,
      found: cellText(cell),
      trouble: "Not plainly written",
      whatHappens: `Read as ${readAs}`,
      whatToDo: "Nothing if that is right; else write it out",
      cost: COST.reading,
    });
  };
  const day = (row: number, column: DayColumn | null): CivilDay | null => {
    if (column === null) return null;
    const cell = grid.at(row, column.match.column);
    if (typeof cell === "object") return cell.day;
    if (cell === "") return null;
    const reading = column.reading(cell);
    if (reading.kind === "blank") return null;
    if (reading.kind === "unread") {
      listUnread(row, column.match, cell, reading.why);
      return null;
    }
    if (reading.readAs !== null) listReading(row, column.match, cell, reading.readAs);
    return reading.day;
  };
  const count = (row: number, match: ColumnMatch | null | undefined): number | null => {
    if (match === null || match === undefined) return null;
    const cell = grid.at(row, match.column);
    if (cell === "") return null;
    const reading = readCount(cell);
    if (reading.kind === "blank") return null;
    if (reading.kind === "unread") {
      listUnread(row, match, cell, reading.why);
      return null;
    }
    if (reading.readAs !== null) listReading(row, match, cell, reading.readAs);
    return reading.count;
  };
  const text = (row: number, fact: BatchFact): string => {
    const match = factColumn.get(fact);
    if (match === undefined) return "";
    const cell = grid.at(row, match.column);
    if (cell === "") return "";
    const shown = errorShown(cell);
    if (shown === null && !isLoading(cell)) return cellText(cell);
    listUnread(row, match, cell, `the cell shows ${shown ?? "Loading..."}`);
    return "";
  };
  const closed = (row: number): boolean => {
    if (closedColumn === null) return false;
    const cell = grid.at(row, closedColumn.match.column);
    if (typeof cell === "object") return true;
    if (isBlank(cell)) return false;
    if (typeof cell === "boolean") return cell;
    const normal = normalText(cellText(cell));
    if (NO.has(normal)) return false;
    if (YES.has(normal)) return true;
    if (closedColumn.reading(cell).kind === "day") return true;
    listUnread(row, closedColumn.match, cell, "neither a day nor yes or no");
    return false;
  };
  const name = (row: number): string => {
    const given = text(row, "batch");
    if (given !== "") return given;
    troubles.push({
      row: row + 1,
      column: factColumn.get("batch")?.header ?? "",
      found: "",
      trouble: "The batch has no name",
      whatHappens: `It is called "Row ${row + 1}"`,
      whatToDo: "Give the batch a name of its own",
      cost: COST.doubt,
    });
    return `Row ${row + 1}`;
  };

  return {
    stepKeys,
    read: (row) => ({
      row: row + 1,
      name: name(row),
      fromLot: text(row, "fromLot"),
      variety: text(row, "variety"),
      rootstock: text(row, "rootstock"),
      method: text(row, "method"),
      place: text(row, "place"),
      grafter: text(row, "grafter"),
      scionSource: text(row, "scionSource"),
      culled: count(row, factColumn.get("culled")),
      dispatched: count(row, factColumn.get("dispatched")),
      closed: closed(row),
      days: steps.map((step) => day(row, step.day)),
      counts: steps.map((step) => count(row, step.count)),
    }),
  };
}

function* cellsBelow(grid: Grid, firstRow: number, column: number): Iterable<Cell> {
  for (let row = firstRow; row < grid.rowCount; row += 1) yield grid.at(row, column);
}

function sentence(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
