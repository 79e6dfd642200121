import { asMeant, cellText, dittoRows, type Grid, shortened } from "../cells";
import type { BesideTable } from "./beside-fields";
import type { BesideRead } from "./beside-table";
import type { ColumnsRemark } from "./row-trouble";

/** A table read with the values above in place of its ditto marks, and which columns have some. */
export interface Undittoed {
  readonly grid: Grid;
  readonly remarks: readonly ColumnsRemark[];
}

/**
 * The grid of a table with the value above in place of each ditto mark, in columns where that is usual.
 *
 * @param fields columns of names and of what may be the same in rows below one another
 */
export function withoutDittos<Field extends string>(
  grid: Grid,
  kind: BesideTable,
  {
    table,
    fields,
  }: {
    readonly table: Pick<BesideRead<Field>, "headerRow" | "rows" | "columnsOf">;
    readonly fields: readonly NoInfer<Field>[];
  },
): Undittoed {
  const rowsOf = new Map(
    fields
      .flatMap((field) => table.columnsOf.get(field) ?? [])
      .map((column) => [column, dittoRows(grid, column, table.rows)] as const)
      .filter(([, rows]) => rows.size > 0),
  );
  if (rowsOf.size === 0) return { grid, remarks: [] };
  const columns = [...rowsOf.keys()].map((column) => ({
    header: shortened(cellText(grid.at(table.headerRow, column))),
    field: null,
  }));
  return {
    grid: asMeant(grid, rowsOf),
    remarks: [{ code: "columns-ditto", table: kind, columns }],
  };
}
