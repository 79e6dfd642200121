import { type CivilDay, calendarText, type Task } from "../core";
import * as text from "../sentences/made/due-calendar";
import { dayWords } from "./days";

/** The due list as a calendar file, RFC 5545: an entry a task. */
export function dueCalendar(tasks: readonly Task[], asOf: CivilDay): string {
  return calendarText(
    tasks.map((task) => ({ task, summary: summary(task), description: description(task) })),
    asOf,
  );
}

function summary({ step, batch, plants }: Task): string {
  const facts = { task: step.name, batch };
  return plants === null ? text.summary(facts) : text.summaryPlants({ ...facts, plants });
}

function description({ from, by, doOn, daysLate, step }: Task): string {
  return [
    text.window({ from: dayWords(from), by: dayWords(by), usual: dayWords(doOn) }),
    ...(daysLate > 0 ? [text.daysLate({ days: daysLate })] : []),
    ...(step.caution === "" ? [] : [step.caution]),
  ].join("\n");
}
