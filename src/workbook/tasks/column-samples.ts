import type { CivilDay } from "../../core";
import type { RecordsNow } from "../reading/records-tab";
import type { TableCell } from "../reading/table-columns";
import type { Sample } from "../writing/column-form";
import type { TaskTarget } from "./task-cells";

/** The days in a column, as its cells hold them and as they are read. */
export const daysIn = samplesOf<CivilDay>(
  ({ days }, step) => days[step] ?? null,
  ({ day }) => day,
);

/** The same of counts. */
export const countsIn = samplesOf<number>(
  ({ counts }, step) => counts[step] ?? null,
  ({ count }) => count,
);

type Batch = RecordsNow["records"]["batches"][number];
type Line = RecordsNow["records"]["lines"][number];

function samplesOf<Read>(
  ofBatch: (batch: Batch, step: number) => Read | null,
  ofLine: (line: Line) => Read | null,
) {
  return (
    { records, values }: RecordsNow,
    { table, stepKey }: Pick<TaskTarget, "table" | "stepKey">,
    { column }: TableCell,
  ): readonly Sample<Read>[] => {
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
  };
}
