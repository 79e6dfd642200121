import type { CrewRemark, NeedsRemark, WorkRemark } from "../core";
import { noHours } from "../sentences/made/small-tables";
import * as text from "../sentences/made/work";
import { dayWords } from "./days";
import { RECORDS_REMARKS } from "./records";
import { type SentencesOf, sentenceOf, together, type Where } from "./sentence-of";
import { ROW_TROUBLES } from "./small-tables";

const CREW_REMARKS: SentencesOf<CrewRemark> = {
  ...ROW_TROUBLES,
  "no-hours-a-day": noHours,
};

const REMARKS: SentencesOf<WorkRemark | NeedsRemark> = {
  ...RECORDS_REMARKS,
  ...CREW_REMARKS,
  "planned-later": ({ tasks, end }) => text.plannedLater({ tasks, end: dayWords(end) }),
  "tasks-not-counted": text.tasksNotCounted,
};

/** Remarks beside work as sentences; null where there are none. */
export function workRemarks(
  remarks: readonly (WorkRemark | NeedsRemark)[],
  where: Where,
): string | null {
  return together(remarks.map((one) => sentenceOf(REMARKS, one, where)));
}
