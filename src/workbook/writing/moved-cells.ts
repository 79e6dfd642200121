import { type CellValues, columnsMoved, rowsMoved, valueAt } from "./moved-lines";
import { type CellWrite, isAlike, sameValue, type WriteGroup } from "./table-write";

/** What a write put into a cell that was not the one it was meant for. */
export interface Hit {
  readonly write: CellWrite;
  /** Where the cell stands, from 1. */
  readonly row: number;
  readonly column: number;
  /** What stood there; undefined where that can't be told. */
  readonly was: unknown;
  /** Where that stood before, from 1; null for a cell that was put in. */
  readonly from: { readonly row: number; readonly column: number } | null;
}

/** What became of the cells of a group of writes while somebody moved rows or columns. */
export interface Traced {
  /** Where the cell of each write stands now, in their order; null when it is gone. */
  readonly own: readonly ({ readonly row: number; readonly column: number } | null)[];
  readonly hits: readonly Hit[];
}

/**
 * Finds out where the cells of a table are that somebody sorted, or put rows or columns into or took
 * them out of, while we wrote. Columns are known by their headers, rows by what stands in them.
 *
 * @param hasFewerRows whether rows were taken out of the tab: then one that is nowhere any more need
 *   not have been written over
 */
export function traceCells(
  before: CellValues,
  now: CellValues,
  { group, hasFewerRows }: { readonly group: WriteGroup; readonly hasFewerRows: boolean },
): Traced {
  // What was blanked at the end of a tab is no part of its data any more.
  const missing = Math.max(0, before.length - now.length);
  const after = [...now, ...Array.from({ length: missing }, () => [])];
  const columns = columnsMoved(before, after, group.headerRows);
  const rows = rowsMoved(before, after, { group, columns, hasFewerRows });
  const own = group.writes.map(({ row, column }) => {
    const [toRow, toColumn] = [rows.to.get(row), columns.to.get(column)];
    return toRow === undefined || toColumn === undefined ? null : { row: toRow, column: toColumn };
  });
  const hits = group.writes.flatMap((write, at): Hit[] => {
    const { row, column } = write;
    if (!isAlike(valueAt(after, row, column), write.after)) return [];
    if (own[at]?.row === row && own[at]?.column === column) return [];
    const [fromRow, fromColumn] = [rows.from.get(row), columns.from.get(column)];
    const from =
      fromRow === undefined || fromColumn === undefined
        ? null
        : { row: fromRow, column: fromColumn };
    const was = from === null ? putIn() : valueAt(before, from.row, from.column);
    return sameValue(was, write.after) ? [] : [{ write, row, column, was, from }];

    /** A column or row that was put in was blank; what else it may be can't be told. */
    function putIn(): unknown {
      if (fromColumn === undefined) return "";
      const written = new Set(group.writes.map((one) => one.column));
      const others = (after[row - 1] ?? []).filter((_, at) => !written.has(at + 1));
      return others.every((value) => value === "") ? "" : undefined;
    }
  });
  return { own, hits };
}
