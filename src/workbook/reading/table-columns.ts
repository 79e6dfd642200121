import type { Records } from "../../core";

/** A cell of the records tab; rows and columns from 1. */
export interface TableCell {
  readonly row: number;
  readonly column: number;
  readonly header: string;
}

/**
 * The column of a table that is read as something; null when it has none.
 *
 * @param key such as "fact note", "event eventDay", "step grafting count"
 */
export function columnReadAs(
  { columns }: Records,
  table: number,
  key: string,
): Omit<TableCell, "row"> | null {
  const match = columns.find(({ target, table: of }) => {
    if (target === null || of !== table) return false;
    const own =
      target.kind === "step"
        ? `step ${target.key} ${target.what}`
        : `${target.kind} ${target.fact}`;
    return own === key;
  });
  return match === undefined ? null : { column: match.column + 1, header: match.header };
}
