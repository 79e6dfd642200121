import {
  type Answer,
  NEEDS_COLUMNS,
  type PlannedWork,
  WORK_COLUMNS,
  type WorkNeeds,
} from "../core";
import { headers } from "../sentences/made/work-columns";
import { fewNames } from "./names";
import { tableOf } from "./table-of";
import { neededForWords, partRemarks, tooMuchDays, tooMuchSum } from "./work";
import { workRemarks } from "./work-remarks";

const MOST_NAMES = 4;

/**
 * The coming days' tasks by day and person. On top what doesn't fit: a row for each overload, which
 * adds up what is asked and what is there, then a row without a day for each task that is left over
 * or late and not begun in these days. The hours of an overload stand in its sentence alone, so that
 * the column adds up to the work.
 */
export function workTable({ proofs, leftOver, placed, remarks }: PlannedWork): Answer {
  const few = (names: readonly string[]) => fewNames(names, MOST_NAMES).join(", ");
  const nothing = { day: null, place: null, plants: null, hours: null };
  return tableOf({
    columns: WORK_COLUMNS,
    headers: headers(),
    rows: [
      ...proofs.map((proof) => ({
        cells: {
          ...nothing,
          task: few(proof.tasks),
          batch: few(proof.batches),
          person: few(proof.persons) || null,
          by: proof.to,
          remarks: `${tooMuchDays(proof)} ${tooMuchSum(proof)}`,
        },
      })),
      ...[...leftOver, ...placed].map(({ task, ...part }) => ({
        cells: {
          ...part,
          task: task.step.name,
          batch: task.batch,
          place: task.place || null,
          by: task.by,
          remarks: partRemarks(part.remarks) || null,
        },
      })),
    ],
    remark: workRemarks(remarks, "cell"),
  });
}

/** What the work needs: a row an item and unit. */
export function needsTable({ needs, remarks }: WorkNeeds): Answer {
  return tableOf({
    columns: NEEDS_COLUMNS,
    headers: headers(),
    rows: needs.map((one) => ({ cells: { ...one, neededFor: neededForWords(one.steps) } })),
    remark: workRemarks(remarks, "cell"),
  });
}
