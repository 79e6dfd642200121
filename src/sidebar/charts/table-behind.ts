import { disclosure } from "../controls/disclosure";
import { type NumberTable, numberTable } from "./number-table";

export interface TableBehind extends Omit<NumberTable, "rows"> {
  /** The line that opens it. */
  readonly summary: string;
  /** Made when it is opened. */
  readonly rows: () => NumberTable["rows"];
}

/** What was drawn as a table, for those who listen or want the numbers, behind a line that opens it. */
export function tableBehind({ summary, title, headers, rows }: TableBehind): HTMLElement {
  return disclosure({ summary, content: () => numberTable({ title, headers, rows: rows() }) });
}
