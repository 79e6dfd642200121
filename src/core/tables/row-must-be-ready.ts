import { errorShown, isLoading } from "../cells";
import { InputError } from "../faults";
import type { HeadedTable } from "./headed-table";

/** A row whose cells are not calculated yet would silently lack something. @throws InputError "row-not-ready" */
export function rowMustBeReady<Field extends string>(
  argument: string,
  table: HeadedTable<Field>,
  row: number,
): void {
  for (const field of Object.keys(table.columnOf) as Field[]) {
    const cell = table.cell(row, field);
    const error = errorShown(cell);
    if (error === null && !isLoading(cell)) continue;
    throw new InputError({ code: "row-not-ready", argument, row: row + 1, shown: error });
  }
}
