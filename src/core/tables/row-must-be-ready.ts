import { type Cell, errorShown, isLoading } from "../cells";
import { InputError } from "../faults";
import type { HeadedTable } from "./headed-table";

/** A row whose cells are not calculated yet would silently lack something. @throws InputError "row-not-ready" */
export function rowMustBeReady<Field extends string>(
  argument: string,
  table: HeadedTable<Field>,
  row: number,
): void {
  const fields = Object.keys(table.columnOf) as Field[];
  cellsMustBeReady(
    argument,
    row,
    fields.map((field) => table.cell(row, field)),
  );
}

/** The same, of the cells that are read of a row from 0. */
export function cellsMustBeReady(argument: string, row: number, cells: readonly Cell[]): void {
  for (const cell of cells) {
    const shown = errorShown(cell);
    if (shown === null && !isLoading(cell)) continue;
    throw new InputError({ code: "row-not-ready", argument, row: row + 1, shown });
  }
}
