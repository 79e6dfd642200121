import { shownText } from "./cell-text";
import type { SheetCell } from "./sheet-cells";

/** Rows that matter most: by their text in a column. */
export interface Foremost {
  readonly column: string;
  readonly isOne: (text: string) => boolean;
}

type Row = readonly (SheetCell | null)[];

/** The rows below the header with the foremost first; each kind in its own order. */
export function foremostRows(rows: readonly Row[], { column, isOne }: Foremost): readonly Row[] {
  const [header = [], ...body] = rows;
  const at = header.map(shownText).indexOf(column);
  const isForemost = (row: Row) => isOne(shownText(row[at]));
  return [header, ...body.filter(isForemost), ...body.filter((row) => !isForemost(row))];
}
