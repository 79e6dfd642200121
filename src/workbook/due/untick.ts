import { askedSentence } from "../../wording/writing";
import { troubleSentence } from "../host/writing-error";
import type { RecordsNow } from "../reading/records-tab";
import {
  planTakeBack,
  restore,
  restoredCells,
  type TakeBackPlan,
  writtenLines,
} from "../tables/take-back";
import type { CellWrite } from "../writing/table-write";
import type { WriteLog } from "../writing/write-log";
import type { DueRow } from "./due-rows";
import { ownLines } from "./own-writes";
import { notTakenBack, type RowState, takenBack } from "./row-state";

export interface Unticked {
  readonly states: ReadonlyMap<DueRow, RowState>;
  /** The cells that were put back, by row. */
  readonly cells: ReadonlyMap<DueRow, readonly CellWrite[]>;
}

/**
 * Takes back what rows of the due tab have written whose boxes are clear again. A row that was
 * corrected has several writes: the newest goes first.
 *
 * @param reread the records as they stand at that moment
 */
export function takeBackUnticked(
  rows: readonly DueRow[],
  {
    now,
    log,
    reread,
  }: { readonly now: RecordsNow; readonly log: WriteLog; readonly reread: () => RecordsNow },
): Unticked {
  const states = new Map<DueRow, RowState>();
  const cells = new Map<DueRow, readonly CellWrite[]>();
  const names = new Map<DueRow, string[]>();
  const rounds = Math.max(0, ...rows.map(({ memory }) => memory.writes.length));
  let read = now;
  for (let round = 1; round <= rounds; round += 1) {
    const entries = log.entries();
    const plans = rows.flatMap((row) => {
      const id = row.memory.writes[row.memory.writes.length - round];
      if (id === undefined || states.has(row)) return [];
      return [{ row, lines: writtenLines(ownLines(entries, row), id) }];
    });
    const open = plans.filter(({ lines }) => lines.length > 0);
    if (open.length === 0) continue;
    if (round > 1) read = reread();
    for (const { row, plan } of allOrEach(open)) {
      cells.set(row, [...(cells.get(row) ?? []), ...plan.found.cells]);
      const where = restoredCells(plan).flatMap((cell) => cell.where ?? []);
      names.set(row, [...(names.get(row) ?? []), ...where]);
    }
  }
  for (const row of rows) {
    if (states.has(row)) continue;
    states.set(row, takenBack([...new Set(names.get(row) ?? [])]));
  }
  return { states, cells };

  type Open = { readonly row: DueRow; readonly lines: TakeBackPlan["lines"] };
  type Planned = { readonly row: DueRow; readonly plan: TakeBackPlan };

  function allOrEach(open: readonly Open[]): readonly Planned[] {
    const planned = open.flatMap((one) => planOf(one, read));
    const tabs = new Set(planned.map(({ plan }) => plan.table.sheet.getName()));
    const [first] = planned;
    if (first === undefined) return [];
    if (tabs.size === 1 && planned.length > 1) {
      try {
        restore(
          log,
          first.plan.table,
          planned.map(({ plan }) => plan),
        );
        return planned;
      } catch {
        // One of them was in the way of the others: each for itself.
      }
    }
    return planned.flatMap(({ row, plan: { lines } }) =>
      planOf({ row, lines }, planned.length === 1 ? read : reread()).filter(({ plan }) => {
        try {
          restore(log, plan.table, [plan]);
          return true;
        } catch (error) {
          states.set(row, notTakenBack(troubleSentence(error), row));
          return false;
        }
      }),
    );
  }

  function planOf({ row, lines }: Open, at: RecordsNow): Planned[] {
    try {
      const plan = planTakeBack(at, lines);
      const [question] = plan.asked;
      if (question === undefined) return [{ row, plan }];
      states.set(row, notTakenBack(askedSentence(question.ask), row));
    } catch (error) {
      states.set(row, notTakenBack(troubleSentence(error), row));
    }
    return [];
  }
}
