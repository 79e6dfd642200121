import type { CivilDay } from "../dates";
import { madeOnce } from "../made-once";
import { stateFinder } from "../projection";
import { type Batch, type Records, type Trouble, targetKey } from "../records";
import { scionsCutOn } from "../takes";
import type { Method } from "../timetable";

/** Wood that lay longer hardly takes, in days (common practice, no source). */
const LONGEST_KEPT = 30;
/** Plants that may be miscounted or not written as culled, as a share of the last count (our choice). */
const LEFT_OVER = 0.1;
/** Later than any day of a table. */
const EVER = 1e6 as CivilDay;

export interface BatchDoubts {
  see(batch: Batch, method: Method): void;
  /** Once all batches were seen. */
  troubles(): Trouble[];
}

/**
 * Finds what a batch's counts and days leave open or contradict: more dispatched than were there, closed
 * with plants standing, done and not counted, a wrap never opened, scions cut too late or too early.
 *
 * What a nursery leaves out more often than not is its habit, and is not listed (our choice).
 *
 * @param asOf null when the question has no day
 */
export function batchDoubts(records: Records, asOf: CivilDay | null): BatchDoubts {
  const stateOf = stateFinder(records, asOf ?? EVER);
  const cutOn = scionsCutOn(records);
  const unread = new Set(records.troubles.map(({ row, column }) => `${row} ${column}`));
  const always: Trouble[] = [];
  const habits = new Map<string, { kept: number; readonly broken: Trouble[] }>();
  const habit = (key: string) => madeOnce(habits, key, () => ({ kept: 0, broken: [] }));
  /** Where a column's cell of the batch stands; null where there is none, or it is listed already. */
  const cell = (batch: Batch, wanted: string) => {
    const { table, row } = batch;
    const match = records.columns.find(
      ({ target, scionsCut, ...one }) =>
        one.table === table && wanted === (scionsCut ? "cut" : target && targetKey(target)),
    );
    if (match === undefined || unread.has(`${row} ${match.header}`)) return null;
    return { row, column: match.header, found: records.textIn(batch, match.column) };
  };
  return {
    see: (batch, method) => {
      const { doneOn, counts, lastCounted, open, plants } = stateOf(batch, method);
      const start = doneOn[method.steps.findIndex(({ key }) => key === "grafting")] ?? null;
      method.steps.forEach(({ key, counted, by }, step) => {
        const done = doneOn[step] ?? null;
        if (counted && done !== null) {
          const count = counts[step] ?? null;
          const at = count === null ? cell(batch, `step ${key} count`) : null;
          if (count !== null) habit(key).kept += 1;
          else if (at !== null)
            (at.found === "" ? habit(key).broken : always).push({ ...at, code: "count-missing" });
        }
        if (key !== "first release" || done !== null || start === null || !open) return;
        const past = method.steps.find((_, other) => (doneOn[other] ?? start) > start + by);
        const at = past === undefined ? null : cell(batch, `step ${key} day`);
        if (past !== undefined && at?.found === "")
          always.push({ ...at, code: "release-missed", step: past.name });
      });
      const cut = start === null ? null : (cutOn?.(batch, start) ?? null);
      if (start !== null && cut !== null && (cut > start || cut < start - LONGEST_KEPT)) {
        const at = cell(batch, "cut");
        if (at !== null) always.push({ ...at, code: "scions-cut", days: start - cut });
      }
      const there = lastCounted === null ? null : (counts[lastCounted] ?? null);
      if (there === null || lastCounted === null) return;
      if ((batch.dispatched ?? 0) > there && batch.received === null) {
        const at = cell(batch, "fact dispatched");
        const step = method.steps[lastCounted]?.name ?? "";
        if (at !== null) always.push({ ...at, code: "count-rises", before: there, step });
      }
      if (!batch.closed) return;
      const at = (plants ?? 0) > there * LEFT_OVER ? cell(batch, "fact closed") : null;
      if (at === null) habit("closed").kept += 1;
      else habit("closed").broken.push({ ...at, code: "closed-standing", plants: plants ?? 0 });
    },
    troubles: () => [
      ...always,
      ...[...habits.values()].flatMap(({ kept, broken }) => (kept < broken.length ? [] : broken)),
    ],
  };
}
