import { type CivilDay, calendarText, type DueTasks, type Task } from "../core";
import * as text from "../sentences/made/due-calendar";
import { dayWords } from "./days";
import { recordsRemarks } from "./records";

/** The due list as a calendar file, RFC 5545: an entry a task, and a last one that names what is left out. */
export function dueCalendar(
  { rows, remarks }: Pick<DueTasks, "rows" | "remarks">,
  asOf: CivilDay,
): string {
  const leftOut = recordsRemarks(remarks, "page");
  return calendarText(
    rows.map((task) => ({ task, summary: summary(task), description: description(task) })),
    { asOf, last: leftOut === null ? null : { summary: text.leftOut(), description: leftOut } },
  );
}

function summary({ step, batch, plants, isEstimate }: Task): string {
  const facts = { task: step.name, batch };
  if (plants === null) return text.summary(facts);
  const counted = { ...facts, plants };
  return isEstimate ? text.summaryPlantsAbout(counted) : text.summaryPlants(counted);
}

function description({ from, by, doOn, daysLate, step }: Task): string {
  return [
    text.window({ from: dayWords(from), by: dayWords(by), usual: dayWords(doOn) }),
    ...(daysLate > 0 ? [text.daysLate({ days: daysLate })] : []),
    ...(step.caution === "" ? [] : [step.caution]),
  ].join("\n");
}
