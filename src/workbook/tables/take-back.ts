import type { CellWritten, Question, TakeBackAnswer, TakeBackRequest } from "../../wire/writing";
import type { Asked } from "../../wording/writing-codes";
import { withLock } from "../host/lock";
import { WritingError } from "../host/writing-error";
import { plainText, type RecordsNow } from "../reading/records-tab";
import { NotPutBack } from "../writing/changed-meanwhile";
import { type CellWrite, sameValue } from "../writing/table-write";
import { allOrNone } from "../writing/write-cells";
import { hitNotes } from "../writing/write-groups";
import type { LogEntry, LogState, WriteLog } from "../writing/write-log";
import { type FoundAgain, findAgain, type PersonTable } from "./person-table";
import { question, short } from "./questions";
import { settledNow } from "./settle-log";
import { writtenTable } from "./written-table";

/**
 * Takes a write back: every cell gets what stood there before, wherever it stands by now. Nothing is
 * taken back when a cell holds something else than what was written, since that is somebody's too.
 */
export function takeBack({ logId }: TakeBackRequest): TakeBackAnswer {
  return withLock(() => {
    const { now, log } = settledNow();
    const lines = writtenLines(log.entries(), logId);
    if (lines.length === 0) {
      throw new WritingError({ code: "notInLog" });
    }
    const plan = planTakeBack(now, lines);
    if (plan.asked.length > 0) return { restored: [], asked: plan.asked };
    restore(log, plan.table, [plan]);
    return { restored: restoredCells(plan), asked: [] };
  });
}

/** The lines of a write that can be taken back; none where it has no cell that is written. */
export function writtenLines(entries: readonly LogEntry[], id: string): readonly LogEntry[] {
  const lines = entries.filter(
    (line) => line.id === id && (line.state === "written" || line.state === "kept here"),
  );
  return lines.some(({ cell }) => cell !== "") ? lines : [];
}

/** A write that is to be taken back, and what speaks against it. */
export interface TakeBackPlan {
  readonly lines: readonly LogEntry[];
  readonly table: PersonTable;
  readonly found: FoundAgain;
  readonly asked: readonly Question[];
}

/** @throws Error in a sentence when its cells can't be found again */
export function planTakeBack(now: RecordsNow, lines: readonly LogEntry[]): TakeBackPlan {
  const entries = lines.filter(({ state }) => state === "written");
  const [first] = entries;
  if (first === undefined) throw new WritingError({ code: "notInLog" });
  const table = writtenTable(now, first);
  const found = findAgain(table, entries);
  return { lines, table, found, asked: changedSince(table, found) };
}

export function restoredCells({ table, found }: TakeBackPlan): readonly CellWritten[] {
  return found.cells.map(({ cell, entry }) => ({
    where: `${table.sheet.getName()}!${cell}`,
    header: entry.header,
    value: entry.before === "" ? null : plainText(table.door, entry.before),
  }));
}

/** Cells that no longer hold what was written, each with both values. */
function changedSince({ door, sheet }: PersonTable, { cells, ownBeside }: FoundAgain): Question[] {
  const filled = ownBeside.map(({ header, cell, holds }): Question => {
    const stands = plainText(door, holds);
    return question({ code: "filledSince", header, cell, stands: short(stands) }, stands);
  });
  const changed = cells.flatMap(({ entry, cell, row, column, holds }): Question[] => {
    const formula = sheet.getRange(row, column).getFormula();
    if (formula === "" && sameValue(holds, entry.after)) return [];
    const stands = formula === "" ? plainText(door, holds) : formula;
    const { header } = entry;
    const wrote = short(plainText(door, entry.after));
    const asked: Asked =
      stands === ""
        ? { code: "blankSince", header, cell, wrote }
        : { code: "changedSince", header, cell, stands: short(stands), wrote };
    return [question(asked, stands, plainText(door, entry.before))];
  });
  return [...changed, ...filled];
}

/** Puts back what stood in the cells of one or more writes into one table: all of them, or none. */
export function restore(
  log: WriteLog,
  { sheet, values }: Pick<PersonTable, "sheet" | "values">,
  plans: readonly TakeBackPlan[],
): void {
  const lines = plans.flatMap((plan) => plan.lines);
  const mark = (state: LogState) => log.mark(lines.map(({ row }) => ({ row, state })));
  const entryOf = new Map<CellWrite, LogEntry>(
    plans.flatMap(({ found }) => found.cells.map((cell) => [cell, cell.entry] as const)),
  );
  try {
    mark("taking back");
    allOrNone(
      sheet,
      plans.map(({ found }) => ({ ...found, writes: found.cells })),
      {
        known: values,
        end: () => mark("taken back"),
        noteHits: hitNotes(log, (write) => entryOf.get(write)),
      },
    );
  } catch (error) {
    if (error instanceof NotPutBack) mark("taking back");
    else log.mark(lines);
    throw error;
  }
}
