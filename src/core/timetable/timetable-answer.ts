import type { Answer, AnswerValue } from "../answer";
import { methodOrRefuse } from "./method-of-batch";
import { needsText } from "./needs";
import type { Method, Timetable } from "./timetable";
import { TIMETABLE_COLUMNS } from "./timetable-columns";

/**
 * The steps of one method, or of all, as a table that readTimetable reads back.
 *
 * @param name null for every method
 * @throws InputError "unknown-method"
 */
export function timetableAnswer(timetable: Timetable, name: string | null): Answer {
  const methods = name === null ? timetable.methods : [methodOrRefuse(timetable, name)];
  return { columns: TIMETABLE_COLUMNS, rows: methods.flatMap(rowsOf), remark: null };
}

function rowsOf(method: Method): AnswerValue[][] {
  return method.steps.map((step) => {
    const first = step.after === null;
    return [
      method.name,
      step.name,
      first ? null : (method.steps[step.after]?.name ?? null),
      first ? null : step.from,
      first ? null : step.usual,
      first ? null : step.by,
      step.counted ? "yes" : null,
      step.kept === null ? null : Math.round(step.kept * 1e6) / 1e4,
      step.perPersonHour,
      needsText(step.needs) || null,
      step.caution || null,
      step.source || null,
    ];
  });
}
