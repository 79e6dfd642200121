import { type Answer, type AnswerValue, columns } from "../answer";
import { plannedWork, type WorkPart, type WorkPlanQuestion } from "./planned-work";
import type { Proof } from "./proof";

const COLUMNS = columns({
  Day: "day",
  Task: "text",
  Batch: "text",
  Place: "text",
  Plants: "count",
  Hours: "hours",
  Person: "text",
  By: "day",
  Remark: "text",
});

/**
 * The coming days' tasks by day and person. On top what doesn't fit: a row for each overload, which
 * adds up what is asked and what is there, then a row without a day for each task that is left over
 * or late and not begun in these days. The order of the rows of records and crew does not matter.
 *
 * @throws InputError "argument-unreadable" when days is not 1 to 366
 */
export function workPlanAnswer(question: WorkPlanQuestion): Answer {
  const { proofs, leftOver, placed, remark } = plannedWork(question);
  return {
    columns: COLUMNS,
    rows: [...proofs.map(proofRow), ...[...leftOver, ...placed].map(partRow)],
    remark,
  };
}

function partRow({ day, task, plants, hours, person, remarks }: WorkPart): AnswerValue[] {
  return [
    day,
    task.step.name,
    task.batch,
    task.place || null,
    plants,
    hours,
    person,
    task.by,
    remarks.join("; ") || null,
  ];
}

/** The hours stand in the sentence alone, so that the column adds up to the work. */
function proofRow({ tasks, batches, persons, to, sentence }: Proof): AnswerValue[] {
  return [null, tasks, batches, null, null, null, persons || null, to, sentence];
}
