import type { CivilDay } from "../../core";
import type { RecordsNow } from "../reading/records-tab";
import type { TableCell } from "../reading/table-columns";
import type { Sample } from "../writing/column-form";
import type { TaskTarget } from "./task-cells";

/** The days in a column, as its cells hold them and as they are read. */
export function daysIn(
  now: RecordsNow,
  target: Pick<TaskTarget, "table" | "stepKey">,
  cell: TableCell,
): readonly Sample<CivilDay>[] {
  return samplesIn(now, {
    area: target,
    match: cell,
    ofBatch: ({ days }, step) => days[step] ?? null,
    ofLine: ({ day }) => day,
  });
}

/** The same of counts. */
export function countsIn(
  now: RecordsNow,
  target: Pick<TaskTarget, "table" | "stepKey">,
  cell: TableCell,
): readonly Sample<number>[] {
  return samplesIn(now, {
    area: target,
    match: cell,
    ofBatch: ({ counts }, step) => counts[step] ?? null,
    ofLine: ({ count }) => count,
  });
}

type Batch = RecordsNow["records"]["batches"][number];
type Line = RecordsNow["records"]["lines"][number];

function samplesIn<Read>(
  { records, values }: RecordsNow,
  {
    area: { table, stepKey },
    match: { column },
    ofBatch,
    ofLine,
  }: {
    readonly area: Pick<TaskTarget, "table" | "stepKey">;
    readonly match: TableCell;
    readonly ofBatch: (batch: Batch, step: number) => Read | null;
    readonly ofLine: (line: Line) => Read | null;
  },
): readonly Sample<Read>[] {
  const step = records.stepKeys.indexOf(stepKey);
  const isLog = records.tables[table]?.kind === "log";
  const rows = isLog
    ? records.lines
        .filter((line) => line.table === table)
        .map((line) => [line.row, ofLine(line)] as const)
    : records.batches
        .filter((batch) => batch.table === table)
        .map((batch) => [batch.row, ofBatch(batch, step)] as const);
  return rows.flatMap(([row, read]) => {
    const value = values[row - 1]?.[column - 1] ?? "";
    return read === null || value === "" ? [] : [{ row, value, read }];
  });
}
