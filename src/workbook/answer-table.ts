import { type Answer, type AnswerValue, type CivilDay, isoDay } from "../core";
import { sidebarWords } from "./sidebar-words";

/** A row of an answer, its values by column name. */
export interface AnswerRow {
  /** '' when not known. */
  text(column: string): string;
  number(column: string): number | null;
  /** ISO text. */
  day(column: string): string | null;
  /** The first column's text. */
  first(): string;
}

/** An answer with its rows by column name, for a page that takes nothing but text and numbers. */
export function answerTable(answer: Answer): {
  readonly rows: readonly AnswerRow[];
  /** In the words of the sidebar. */
  readonly remark: string | null;
} {
  const indexes = new Map(answer.columns.map(({ name }, index) => [name, index]));
  const valueIn = (row: readonly AnswerValue[], column: string): AnswerValue => {
    const index = indexes.get(column);
    if (index === undefined) throw new Error(`the answer has no column ${column}`);
    return row[index] ?? null;
  };
  return {
    remark: answer.remark === null ? null : sidebarWords(answer.remark),
    rows: answer.rows.map((row) => ({
      text: (column) => String(valueIn(row, column) ?? ""),
      number: (column) => {
        const value = valueIn(row, column);
        return typeof value === "number" ? value : null;
      },
      day: (column) => {
        const value = valueIn(row, column);
        return typeof value === "number" ? isoDay(value as CivilDay) : null;
      },
      first: () => String(row[0] ?? ""),
    })),
  };
}
