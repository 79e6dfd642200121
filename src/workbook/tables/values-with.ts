import type { CellWrite } from "../writing/table-write";

type NewContent = Pick<CellWrite, "row" | "column" | "after">;

/** The cells of a tab as they will be when some of them are written; each row as wide as the widest. */
export function valuesWith(
  values: readonly (readonly unknown[])[],
  cells: readonly NewContent[],
): readonly (readonly unknown[])[] {
  const width = Math.max(values[0]?.length ?? 0, ...cells.map(({ column }) => column));
  const rows: unknown[][] = [];
  const changed = new Map<number, NewContent[]>();
  for (const cell of cells) changed.set(cell.row, [...(changed.get(cell.row) ?? []), cell]);
  const height = Math.max(values.length, ...changed.keys());
  for (let row = 1; row <= height; row += 1) {
    const standing = values[row - 1] ?? [];
    const writes = changed.get(row);
    if (writes === undefined && standing.length === width) rows.push(standing as unknown[]);
    else {
      const copy = Array.from({ length: width }, (_, at) => standing[at] ?? "");
      for (const { column, after } of writes ?? []) copy[column - 1] = after;
      rows.push(copy);
    }
  }
  return rows;
}
