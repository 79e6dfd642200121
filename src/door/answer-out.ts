import type { Answer, AnswerValue, CivilDay, ColumnKind } from "../core";
import type { DaysOfInstants } from "./days-of-instants";

/** What a cell of a spreadsheet can be given. */
export type CellOut = string | number | boolean | Date;

/** An answer as rows of cells: the header first, the remark last. Not known is the empty text. */
export function cellsOut(answer: Answer, days: DaysOfInstants): CellOut[][] {
  const kinds = answer.columns.map(({ kind }) => kind);
  const dates = new Map<number, Date>();
  const dateOf = (day: number): Date => {
    let date = dates.get(day);
    if (date === undefined) {
      date = new Date(days.instantOf(day as CivilDay));
      dates.set(day, date);
    }
    return date;
  };
  const rows: CellOut[][] = [answer.columns.map(({ name }) => name)];
  for (const row of answer.rows) {
    rows.push(row.map((value, column) => cellOut(value, kinds[column] as ColumnKind, dateOf)));
  }
  if (answer.remark !== null) {
    rows.push(answer.columns.map((_, column) => (column === 0 ? (answer.remark as string) : "")));
  }
  return rows;
}

function cellOut(value: AnswerValue, kind: ColumnKind, dateOf: (day: number) => Date): CellOut {
  if (value === null) return "";
  if (typeof value !== "number") return value;
  if (value - value !== 0) throw new Error(`${value} must not reach a cell`);
  return kind === "day" ? dateOf(value) : value;
}
