import type { CivilDay } from "../dates";
import { missedJobs } from "../due";
import { lazily } from "../lazily";
import { madeOnce } from "../made-once";
import { type BatchState, stateFinder, taskWindow } from "../projection";
import type { Batch, Records, Trouble } from "../records";
import { scionsCutOn } from "../takes";
import type { Method } from "../timetable";
import { batchCells } from "./batch-cells";
import { listedCells } from "./listed-cells";

/** Wood that lay longer hardly takes, in days (common practice, no source). */
const LONGEST_KEPT = 30;
/** Plants that may be miscounted or not written as culled, as a share of the last count (our choice). */
const LEFT_OVER = 0.1;
/** What is left out fewer times is no habit, though it is all (our choice). */
const FEWEST_FOR_A_HABIT = 3;
const CLOSING = "closed";
/** Later than any day of a table. */
const EVER = 1e6 as CivilDay;

export interface BatchDoubts {
  see(batch: Batch, method: Method): void;
  /** Once all batches were seen. */
  troubles(): Trouble[];
}

interface Habit {
  kept: number;
  readonly broken: Trouble[];
}

/**
 * Whether what was left out is what the nursery always leaves out, or mostly (our choice). Without the takes
 * nothing can be said of the plants to come, so that only who never counts them has that habit.
 */
function isUsual(key: string, { kept, broken }: Habit): boolean {
  const times = broken.length;
  if (key === "take count") return kept === 0 && times >= FEWEST_FOR_A_HABIT;
  return kept < times && (key !== CLOSING || times >= FEWEST_FOR_A_HABIT);
}

/** What is looked for in the batches of a method. */
interface Looked {
  readonly grafting: number;
  readonly release: number;
  /** Counted steps by their index in the method, each with what the nursery does there. */
  readonly counted: readonly {
    readonly index: number;
    /** What its column is read as, and where that stands in each table; null where it has none. */
    readonly wanted: string;
    readonly columns: readonly (number | null)[];
    readonly habit: Habit;
  }[];
}

/**
 * Finds what a batch's counts and days leave open or contradict: more dispatched than were there, closed
 * with plants standing, done and not counted, a wrap never opened, scions cut too late or too early.
 *
 * What a nursery leaves out by habit is not listed.
 *
 * Longer than most: a function for each doubt, which share what is known of habits, columns and methods.
 *
 * @param asOf null when the question has no day
 */
export function batchDoubts(records: Records, asOf: CivilDay | null): BatchDoubts {
  const stateOf = stateFinder(records, asOf ?? EVER);
  const cutOn = scionsCutOn(records);
  const isListed = lazily(() => listedCells(records));
  const always: Trouble[] = [];
  const habits = new Map<string, Habit>();
  const habitOf = (key: string) => madeOnce(habits, key, () => ({ kept: 0, broken: [] }));
  const closing = habitOf(CLOSING);
  const lookedFor = new Map<Method, Looked>();
  const lookedIn = (method: Method): Looked =>
    madeOnce(lookedFor, method, () => ({
      grafting: method.steps.findIndex(({ key }) => key === "grafting"),
      release: method.steps.findIndex(({ key }) => key === "first release"),
      counted: method.steps.flatMap(({ key, counted }, index) => {
        const wanted = `step ${key} count`;
        const columns = records.tables.map((_, table) => columnOf(table, wanted));
        return counted ? { index, wanted, columns, habit: habitOf(key) } : [];
      }),
    }));
  const { columnOf, ...cells } = batchCells(records);
  /** A cell of the batch; null where there is none, or it is listed already. */
  const cell = (batch: Batch, wanted: string) => {
    const at = cells.cell(batch, wanted);
    return at === null || isListed().has(`${at.row} ${at.column}`) ? null : at;
  };
  /** Done, or so late that it should be, and no number: a blank cell of a count that is due stands in the due list. */
  const seeCounts = (state: BatchState, { counted }: Looked) => {
    const { batch, doneOn, plannedOn, counts, reached, open } = state;
    for (const { index, wanted, columns, habit } of counted) {
      const isDone = (doneOn[index] ?? null) !== null;
      if ((counts[index] ?? null) !== null) {
        if (isDone) habit.kept += 1;
        continue;
      }
      // What is written for a day to come is a plan.
      if (!isDone && ((index > reached && !open) || plannedOn[index] !== null)) continue;
      const column = columns[batch.table] ?? null;
      const isMarked = () =>
        column !== null && records.textIn(batch, column) !== "" && isPast(state, index);
      const at = isDone || isMarked() ? cell(batch, wanted) : null;
      if (at === null) continue;
      (at.found === "" ? habit.broken : always).push({ ...at, code: "count-missing" });
    }
  };
  const isPast = (state: BatchState, index: number): boolean =>
    index < state.reached || (taskWindow(state, index)?.by ?? EVER) < state.asOf;
  /** A wrap that is still on though a step has a day after its last one. */
  const seeRelease = (state: BatchState, release: number, start: CivilDay) => {
    const { batch, method, doneOn, open } = state;
    if (release === -1 || !open || (doneOn[release] ?? null) !== null) return;
    const { key, name, by } = method.steps[release] as Method["steps"][number];
    const past = method.steps.find((_, index) => (doneOn[index] ?? start) > start + by);
    if (past === undefined || !missedJobs(state).includes(release)) return;
    const hasColumn = columnOf(batch.table, `step ${key} day`) !== null;
    const at = hasColumn
      ? cell(batch, `step ${key} day`)
      : { row: batch.row, column: "", found: "" };
    if (at?.found !== "") return;
    always.push({ ...at, code: "release-missed", release: name, step: past.name });
  };
  const seeScions = (batch: Batch, start: CivilDay) => {
    const cut = cutOn?.(batch, start) ?? null;
    if (cut === null || (cut <= start && cut >= start - LONGEST_KEPT)) return;
    const at = cell(batch, "cut");
    if (at !== null) always.push({ ...at, code: "scions-cut", days: start - cut });
  };
  const seeEnd = ({ batch, method, counts, lastCounted, plants }: BatchState) => {
    const there = lastCounted === null ? null : (counts[lastCounted] ?? null);
    if (there === null || lastCounted === null) return;
    if ((batch.dispatched ?? 0) > there && batch.received === null) {
      const at = cell(batch, "fact dispatched");
      const step = method.steps[lastCounted]?.name ?? "";
      if (at !== null) always.push({ ...at, code: "count-rises", before: there, step });
    }
    if (!batch.closed) return;
    const at = (plants ?? 0) > there * LEFT_OVER ? cell(batch, "fact closed") : null;
    if (at === null) closing.kept += 1;
    else closing.broken.push({ ...at, code: "closed-standing", plants: plants ?? 0 });
  };
  return {
    see: (batch, method) => {
      const looked = lookedIn(method);
      const state = stateOf(batch, method);
      seeCounts(state, looked);
      seeEnd(state);
      const start = state.doneOn[looked.grafting] ?? null;
      if (start === null) return;
      seeRelease(state, looked.release, start);
      seeScions(batch, start);
    },
    troubles: () => [
      ...always,
      ...[...habits].flatMap(([key, habit]) => (isUsual(key, habit) ? [] : habit.broken)),
    ],
  };
}
