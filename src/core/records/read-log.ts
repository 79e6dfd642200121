import { cellText, dayColumnReader, type Grid } from "../cells";
import type { CivilDay } from "../dates";
import { type BatchFact, type EventFact, normalText, stepKey, wordSet } from "../words";
import { NAMES, TEXT_FACTS, type TextFact } from "./batch";
import { type CellReaders, cellReaders, type ReadingHabits, saysNotDone } from "./cell-readers";
import type { ColumnMatch } from "./column-match";
import { columnCells, type TableArea } from "./find-tables";
import { isTotalsText, rowOutline } from "./row-kinds";
import type { Trouble } from "./trouble";

/** One line of a log: something that was done to a batch. */
export interface LogEvent {
  /** Row in the range, from 1. */
  readonly row: number;
  readonly table: number;
  readonly batch: string;
  readonly what:
    | { readonly kind: "step"; readonly key: string; readonly isNotDone?: boolean }
    | { readonly kind: "culled" | "dispatched" | "moved" | "splitOff" | "closed" };
  readonly day: CivilDay | null;
  readonly count: number | null;
  readonly person: string;
  /** Why, as it is written; where a log has no column for that, its note. */
  readonly reason: string;
  readonly facts: Readonly<Partial<Record<TextFact, string>>>;
}

export interface LogReading {
  readonly events: readonly LogEvent[];
  /** Rows, from 0, of which nothing could be used. */
  readonly leftOut: readonly number[];
  /** Rows, from 0, that hold something but no event. */
  readonly notEvents: readonly number[];
  readonly troubles: readonly Trouble[];
}

/** What was done, by what single words of a cell say: "Tape loosened", "pricked out"; null where they tell nothing for sure. */
type DoneByParts = (text: string) => LogEvent["what"] | null;

const CULLED = wordSet((words) => words.facts.culled);
const DISPATCHED = wordSet((words) => words.facts.dispatched);
const MOVED = wordSet((words) => words.moved);
const SPLIT_OFF = wordSet((words) => words.splitOff);
const CLOSED = wordSet((words) => words.facts.closed);

/** The area of a log, and its columns. */
export interface LogToRead {
  readonly grid: Grid;
  readonly area: TableArea;
  readonly matches: readonly ColumnMatch[];
  /** Keys of the steps that the timetable or a language knows. */
  readonly stepKeys: ReadonlySet<string>;
  readonly byParts: DoneByParts;
  /** Whether a text says one step alone; see notPlain of the words. */
  readonly isPlain: (text: string) => boolean;
  readonly habits: ReadingHabits;
}

/** Reads a log, one row an event. */
export function readLog(log: LogToRead): LogReading {
  const { grid, area } = log;
  const cells = cellReaders(grid, log.habits);
  const readLine = lineReader(log, cells);
  const events: LogEvent[] = [];
  const leftOut: number[] = [];
  const notEvents: number[] = [];
  for (let row = area.firstRow; row < area.endRow; row += 1) {
    if (area.repeats.has(row)) continue;
    const outline = rowOutline(grid, row, area);
    if (outline.filled === 0) continue;
    const lone = cellText(grid.at(row, outline.first));
    if (outline.filled === 1 || isTotalsText(lone)) {
      notEvents.push(row);
      cells.list({ row: row + 1, column: "", found: lone, code: "no-line" });
      continue;
    }
    const event = readLine(row);
    if (event === null) leftOut.push(row);
    else events.push(event);
  }
  return { events, leftOut, notEvents, troubles: cells.troubles };
}

/** Reads line by line; null for a line that can't be used. A day without a year follows the day above. */
function lineReader(
  { grid, area, matches, habits, ...known }: LogToRead,
  cells: CellReaders,
): (row: number) => LogEvent | null {
  const nameOf = habits.words?.nameOf ?? ((word: string) => word);
  const matchOf = (fact: BatchFact | EventFact): ColumnMatch | undefined =>
    matches.find(({ target }) => target !== null && target.kind !== "step" && target.fact === fact);
  const batchMatch = matchOf("batch");
  const stepMatch = matchOf("eventStep");
  const dayMatch = matchOf("eventDay");
  const countMatch = matchOf("eventCount");
  const reasonMatch = matchOf("eventReason") ?? matchOf("note");
  const personMatch = matchOf("eventPerson");
  const factMatches = TEXT_FACTS.map((fact) => [fact, matchOf(fact)] as const);
  const dayReader = dayColumnReader(
    () => (dayMatch === undefined ? [] : columnCells(grid, area, dayMatch.column)),
    { asOf: habits.asOf, usualOrder: () => habits.localeOrder },
  );
  let before: CivilDay | null = null;
  const textAt = (row: number, match: ColumnMatch | undefined) =>
    match === undefined ? "" : cellText(grid.at(row, match.column));
  const listed = (row: number, match: ColumnMatch | undefined, code: LineTrouble): null => {
    const column = match?.header ?? "";
    cells.list({ row: row + 1, column, found: textAt(row, match), code });
    return null;
  };
  const dayIn = (row: number, notDone: () => void): CivilDay | null => {
    if (dayMatch === undefined) return null;
    const day = cells.day(row, dayMatch, { read: dayReader.read, notDone });
    if (day === null && textAt(row, dayMatch) === "") listed(row, dayMatch, "line-without-day");
    if (day === null || typeof day === "number") return day;
    return cells.settledDay(row, dayMatch, {
      day,
      neighbours: before === null ? [] : [before],
      sectionYear: null,
      asOf: habits.asOf,
    });
  };

  return (row) => {
    const batch = cells.text(row, batchMatch);
    if (batch === "") return listed(row, batchMatch, "line-without-batch");
    const what = whatWasDone(nameOf(cells.text(row, stepMatch)), known);
    if (what === null) return listed(row, stepMatch, "line-without-step");
    // "Moved" may be into bags, or out of the shade, where no place says that it was to another one.
    if (what.kind === "moved" && cells.text(row, matchOf("place")) === "") {
      return listed(row, stepMatch, "line-without-step");
    }
    let isNotDone = false;
    const day = dayIn(row, () => {
      isNotDone = true;
    });
    before = day ?? before;
    const facts: Partial<Record<TextFact, string>> = {};
    for (const [fact, match] of factMatches) {
      const text = NAMES.has(fact) ? cells.name(row, match) : cells.text(row, match);
      if (text !== "") facts[fact] = text;
    }
    return {
      row: row + 1,
      table: matches[0]?.table ?? 0,
      batch,
      what: isNotDone && what.kind === "step" ? { ...what, isNotDone } : what,
      day,
      count: cells.count(row, countMatch, null),
      person: cells.text(row, personMatch),
      reason: cells.text(row, reasonMatch),
      facts,
    };
  };
}

type LineTrouble = "line-without-batch" | "line-without-step" | "line-without-day";

type KnownSteps = Pick<LogToRead, "stepKeys" | "byParts" | "isPlain">;

function whatWasDone(text: string, known: KnownSteps): LogEvent["what"] | null {
  const normal = normalText(text);
  if (CULLED.has(normal)) return { kind: "culled" };
  if (DISPATCHED.has(normal)) return { kind: "dispatched" };
  if (MOVED.has(normal)) return { kind: "moved" };
  if (SPLIT_OFF.has(normal)) return { kind: "splitOff" };
  if (CLOSED.has(normal)) return { kind: "closed" };
  return notDoneIn(normal, known) ?? stepDone(text, known);
}

function stepDone(
  text: string,
  { stepKeys, byParts, isPlain }: KnownSteps,
): LogEvent["what"] | null {
  const key = stepKey(text);
  if (!isPlain(text)) return null;
  return stepKeys.has(key) ? { kind: "step", key } : byParts(text);
}

/** A step with words that it is not to be done behind it or before it: "First release: not needed". */
function notDoneIn(normal: string, known: KnownSteps): LogEvent["what"] | null {
  const words = normal.split(" ");
  for (let at = 1; at < words.length; at += 1) {
    const [one, other] = [words.slice(0, at).join(" "), words.slice(at).join(" ")];
    const step = saysNotDone(other) ? one : saysNotDone(one) ? other : null;
    const what = step === null ? null : stepDone(step, known);
    if (what?.kind === "step") return { ...what, isNotDone: true };
  }
  return null;
}
