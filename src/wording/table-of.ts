import type { Answer, Cells, Kinds } from "../core";

/** A table to be laid out: rows of core, with the headers and texts that a person reads. */
export interface Table<Columns extends Kinds> {
  /** Headers of leading columns of texts that the records name, such as those of groups. */
  readonly own?: readonly string[];
  readonly columns: Columns;
  /** Of each column by its key; one that is lacking does not compile. */
  readonly headers: { readonly [Key in keyof Columns]: string };
  readonly rows: readonly TableRow<Columns>[];
  /** A closing row. */
  readonly remark: string | null;
}

export interface TableRow<Columns extends Kinds> {
  readonly own?: readonly string[];
  readonly cells: Cells<Columns>;
}

/** The table as an answer, which becomes cells at the door. */
export function tableOf<Columns extends Kinds>(table: Table<Columns>): Answer {
  const { own = [], columns, headers, rows, remark } = table;
  const keys: (keyof Columns & string)[] = Object.keys(columns);
  return {
    columns: [
      ...own.map((name) => ({ name, kind: "text" as const })),
      ...keys.map((key) => ({ name: headers[key], kind: columns[key] as Columns[typeof key] })),
    ],
    rows: rows.map((row) => [...(row.own ?? []), ...keys.map((key) => row.cells[key])]),
    remark,
  };
}
