import * as text from "../../sentences/made/today-page";
import type { DueTask } from "../../wire/today";
import { DUE_WORDS } from "../../wording/batches";

/** What is to be done at one place. */
export interface PlaceTasks {
  /** Empty where the records name none. */
  readonly place: string;
  /** Late, then due, then coming; soonest first in each. */
  readonly tasks: readonly DueTask[];
}

export const STATUSES = ["late", "due", "coming"] as const;

/** Tasks by place, in the order in which names are counted ("Bay 2" before "Bay 10"). */
export function byPlace(tasks: readonly DueTask[]): readonly PlaceTasks[] {
  const places = new Map<string, DueTask[]>();
  for (const task of tasks) {
    const there = places.get(task.place) ?? [];
    places.set(task.place, there);
    there.push(task);
  }
  const order = new Intl.Collator("en", { numeric: true });
  return [...places]
    .sort(([a], [b]) => Number(a === "") - Number(b === "") || order.compare(a, b))
    .map(([place, there]) => ({
      place,
      tasks: STATUSES.flatMap((status) => there.filter((task) => task.status === status)),
    }));
}

/** How many tasks are late, due and coming. @example statusTally([{ status: "coming" }, { status: "late" }, { status: "late" }]) // "2 late, 1 coming" */
export function statusTally(tasks: readonly DueTask[]): string {
  return STATUSES.map((status) => ({
    status,
    count: tasks.filter((task) => task.status === status).length,
  }))
    .filter(({ count }) => count > 0)
    .map(({ status, count }) => text.tally({ tasks: count, status: DUE_WORDS[status]() }))
    .join(", ");
}
