import { type Records, type TargetKey, targetKey } from "../../core";

/** A cell of the records tab; rows and columns from 1. */
export interface TableCell {
  readonly row: number;
  readonly column: number;
  readonly header: string;
}

/** The column of a table that is read as something; null when it has none. */
export function columnReadAs(
  { columns }: Records,
  table: number,
  key: TargetKey,
): Omit<TableCell, "row"> | null {
  const match = columns.find(
    ({ target, table: of }) => target !== null && of === table && targetKey(target) === key,
  );
  return match === undefined ? null : { column: match.column + 1, header: match.header };
}
