import { cellName } from "../host/cell-name";
import { NEW_COLUMN } from "../host/mark";
import type { RecordsNow } from "../reading/records-tab";
import { columnReadAs, type TableCell } from "../reading/table-columns";
import { type PlannedCell, plannedCell } from "../tables/planned-cell";
import { valuesWith } from "../tables/values-with";
import { writeGroups } from "../writing/write-groups";
import type { WriteLog } from "../writing/write-log";
import type { TaskTarget } from "./task-cells";

/**
 * The header of a column for the days of a step, right of all that stands in the records tab; null where it
 * would not be read as that, or where anything else would be read otherwise.
 */
export function newColumnFor(
  now: RecordsNow,
  { stepKey, stepName }: Pick<TaskTarget, "stepKey" | "stepName">,
  batch: string,
): PlannedCell | null {
  const { records } = now;
  const found = records.batches.find(({ name }) => name === batch);
  const area = records.tables[found?.table ?? -1];
  if (found === undefined || area?.kind !== "batches") return null;
  const row = area.headerRow + area.headerHeight - 1;
  const column = Math.max(0, ...now.values.map((cells) => cells.length)) + 1;
  const at: TableCell = { row, column, header: stepName };
  const after = now.readAs(valuesWith(now.values, [{ ...at, after: stepName }]));
  const read = columnReadAs(after, found.table, `step ${stepKey} day`);
  const isElse =
    after.columns.length !== records.columns.length + 1 ||
    after.batches.length !== records.batches.length;
  if (read?.column !== column || isElse) return null;
  return plannedCell(now, at, { batch: "", task: NEW_COLUMN, after: stepName });
}

/**
 * Writes it, into a column that the sheet may lack. The log has it as a write of its own: what fails after it
 * leaves a column without a day, and the log true.
 */
export function addColumn(
  { now, log }: { readonly now: RecordsNow; readonly log: WriteLog },
  header: PlannedCell,
  who: string,
): void {
  const { sheet, values } = now;
  const wide = sheet.getMaxColumns();
  if (header.column > wide) sheet.insertColumnsAfter(wide, header.column - wide);
  const { row, column } = header;
  // Whatever stands left of it must stand there still.
  const left = { row, column: column - 1, value: values[row - 1]?.[column - 2] ?? "" };
  const marks = { landmarks: [left], headerRows: [], nameColumn: null };
  writeGroups({ log, sheet, values, when: now.minute() }, [
    { id: Utilities.getUuid(), who, writes: [header], kept: [], ...marks },
  ]);
}

/** Where it is to stand, as a question names it. */
export function columnPlace({ tab, row, column }: PlannedCell): string {
  return `${tab}!${cellName({ row, column })}`;
}
