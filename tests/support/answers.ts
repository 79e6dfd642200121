import type { Answer, AnswerValue, Kinds } from "../../src/core/answer";
import type { CivilDay } from "../../src/core/dates/civil-day";
import { iso } from "./days";

/** The rows of an answer by column name; days as ISO texts. */
export function rowsByName(answer: Answer): Record<string, AnswerValue>[] {
  return answer.rows.map((row) => {
    if (row.length !== answer.columns.length) throw new Error("a row is not as wide as its table");
    return Object.fromEntries(
      answer.columns.map(({ name, kind }, index) => {
        const value = row[index] as AnswerValue;
        return [name, kind === "day" ? iso(value as number | null) : value];
      }),
    );
  });
}

/** Rows of core with their days as ISO texts. */
type WithIsoDays<Row> = {
  readonly [Key in keyof Row]: NonNullable<Row[Key]> extends CivilDay ? string | null : Row[Key];
};

/** @param columns the kinds of the rows' columns, which tell which are days */
export function withIsoDays<Row extends object>(
  columns: Kinds,
  rows: readonly Row[],
): WithIsoDays<Row>[] {
  return rows.map((row) => {
    const days = Object.entries(row).map(([key, value]) => [
      key,
      columns[key] === "day" ? iso(value as number | null) : value,
    ]);
    return Object.fromEntries(days) as WithIsoDays<Row>;
  });
}
