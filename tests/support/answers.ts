import type { Answer, AnswerValue } from "../../src/core/answer";
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
