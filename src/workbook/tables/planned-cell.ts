import type { CellWritten } from "../../wire/writing";
import { cellName } from "../host/cell-name";
import { plainText, type RecordsNow } from "../reading/records-tab";
import type { TableCell } from "../reading/table-columns";
import type { CellWrite } from "../writing/table-write";
import type { CellContent, LoggedCell } from "../writing/write-log";

/** A cell that is to be written, or holds what it would get already. */
export type PlannedCell = CellWrite & LoggedCell;

/**
 * @param table the name of its tab, and the cells as they were read
 * @param planned what it is about, and what is to stand there
 */
export function plannedCell(
  { tab, values }: Pick<RecordsNow, "tab" | "values">,
  { row, column, header }: TableCell,
  planned: Pick<PlannedCell, "batch" | "task" | "after">,
): PlannedCell {
  return {
    ...planned,
    row,
    column,
    header,
    tab,
    cell: cellName({ row, column }),
    before: (values[row - 1]?.[column - 1] ?? "") as CellContent,
  };
}

/** The same as the page shows it. */
export function cellShown(now: RecordsNow, { tab, cell, header, after }: PlannedCell): CellWritten {
  return { where: `${tab}!${cell}`, header, value: plainText(now.door, after) };
}
