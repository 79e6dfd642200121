import { shortened } from "../cells";
import type { BesideTable } from "./beside-fields";
import type { BesideRead } from "./beside-table";
import type { ColumnInDoubt, ColumnsRemark } from "./row-trouble";

/** What to say of a table's columns; a new list. */
export function columnRemarks(
  table: BesideTable,
  { unread, guessed }: Pick<BesideRead<string>, "unread" | "guessed">,
): ColumnsRemark[] {
  const remark = (code: ColumnsRemark["code"], columns: readonly ColumnInDoubt[]) =>
    columns.length === 0
      ? []
      : [
          {
            code,
            table,
            columns: columns.map((one) => ({ ...one, header: shortened(one.header) })),
          },
        ];
  return [...remark("columns-guessed", guessed), ...remark("columns-unread", unread)];
}
