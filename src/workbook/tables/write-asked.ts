import type { Question, RecordAnswer } from "../../wire/writing";
import type { RecordsNow } from "../reading/records-tab";
import { ChangedMeanwhile } from "../writing/changed-meanwhile";
import type { TableMarks } from "../writing/table-write";
import { type WriteInto, writeGroups } from "../writing/write-groups";
import type { LoggedCell, WriteLog } from "../writing/write-log";
import { cellShown, type PlannedCell } from "./planned-cell";
import { question } from "./questions";

/** A write into one of the person's tables as it was thought out. */
export interface PlannedWrite {
  readonly writes: readonly PlannedCell[];
  /** What the table has no column for. */
  readonly kept: readonly LoggedCell[];
  /** What speaks against it: each has to be answered first. */
  readonly asked: readonly Question[];
  /** What tells the cells to be written again. */
  readonly marks: TableMarks;
}

/**
 * Writes what was thought out, or tells what has to be asked first; then nothing is written. What
 * changed meanwhile is asked, too.
 *
 * @param table the tab, with its cells as they were read
 * @param sure ids of the questions that were answered with yes
 * @param first done right before it is written
 */
export function writeUnlessAsked(
  { now, log, table }: { readonly now: RecordsNow; readonly log: WriteLog; readonly table: Table },
  { writes, kept, asked, marks }: PlannedWrite,
  { sure, who, first }: { readonly sure: readonly string[]; readonly who: string; first?(): void },
): RecordAnswer {
  const askedOnly = (asked: readonly Question[]) => ({ written: [], asked, logId: null });
  if (asked.some(({ id }) => !sure.includes(id))) return askedOnly(asked);
  first?.();
  const id = Utilities.getUuid();
  try {
    const { sheet, values } = table;
    writeGroups({ log, sheet, values, when: now.minute() }, [{ id, who, writes, kept, ...marks }]);
  } catch (error) {
    if (!(error instanceof ChangedMeanwhile)) throw error;
    return askedOnly([question(error.asked)]);
  }
  return { written: writes.map((cell) => cellShown(now, cell)), asked: [], logId: id };
}

type Table = Pick<WriteInto, "sheet" | "values">;
