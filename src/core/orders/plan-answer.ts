import { type Answer, type AnswerValue, columns } from "../answer";
import { type PlanQuestion, plannedOrder } from "./planned-order";

const COLUMNS = columns({
  Step: "text",
  "Do by": "day",
  Plants: "count",
  Needs: "text",
  Remark: "text",
});

/** Name of the last row, which adds up the needs. */
const ALL = "All";

/**
 * The plan of an order in the contract's columns.
 *
 * @throws InputError "unknown-method" | "timetable-unusable" when the timetable is empty
 */
export function planAnswer(question: PlanQuestion): Answer {
  const { steps, needs, remark } = plannedOrder(question);
  const rows = steps.map(({ step, doBy, plants, ...details }): AnswerValue[] => [
    step.name,
    doBy,
    plants,
    details.needs || null,
    [...details.facts, ...details.warnings].join(" ") || null,
  ]);
  if (needs !== "") rows.push([ALL, null, null, needs, null]);
  return { columns: COLUMNS, rows, remark };
}
