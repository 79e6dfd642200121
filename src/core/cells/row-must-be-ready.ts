import { InputError } from "../input-error";
import type { HeadedTable } from "./headed-table";
import { errorShown, isLoading } from "./upstream";

/** A row whose cells are not calculated yet would silently lack something. */
export function rowMustBeReady<Field extends string>(
  argument: string,
  table: HeadedTable<Field>,
  row: number,
): void {
  for (const field of Object.keys(table.columnOf) as Field[]) {
    const cell = table.cell(row, field);
    const error = errorShown(cell);
    if (error === null && !isLoading(cell)) continue;
    const what = error === null ? "is still loading" : `shows ${error}`;
    throw new InputError("not-ready-yet", `a cell of ${argument} row ${row + 1} ${what}`);
  }
}
