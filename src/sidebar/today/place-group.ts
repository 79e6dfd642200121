import { dayLines } from "../../core";
import * as text from "../../sentences/made/today-page";
import type { DueTask } from "../../wire/today";
import { fewNames } from "../../wording/names";
import { disclosure } from "../controls/disclosure";
import { element } from "../controls/element";
import { group } from "../controls/group";
import { longList } from "../controls/long-list";
import { isolated } from "../controls/shortened";
import { userText } from "../controls/user-text";
import { type PlaceTasks, statusTally } from "./places";

/** Batches that are named of each task which can wait; of more their number. */
const MOST_NAMED = 12;

/**
 * The tasks of a place under a line that counts them. Those that can wait, and looks, are a line each that names
 * them and opens.
 */
export function placeGroup(
  { place, tasks }: PlaceTasks,
  open: boolean,
  item: (task: DueTask) => HTMLElement,
): HTMLElement {
  const content = () => {
    const lines = dayLines(tasks);
    const now = lines.flatMap((line) => (line.kind === "task" ? line.tasks : []));
    const folded = lines.filter(({ kind }) => kind !== "task");
    return element(
      "div",
      {},
      now.length === 0 ? null : longList(now, item),
      ...folded.map(({ kind, tasks: those }) =>
        disclosure({
          summary: (kind === "waits" ? text.canWait : text.lookFor)({ tasks: namedTasks(those) }),
          content: () => longList(those, item),
        }),
      ),
    );
  };
  return group({
    title: place === "" ? text.noPlace() : userText(place),
    tally: statusTally(tasks),
    open,
    content,
  });
}

/** A text a step, such as "Grafting (M1 and M2)". */
function namedTasks(tasks: readonly DueTask[]): readonly string[] {
  const steps = new Map<string, string[]>();
  for (const { task, batch } of tasks) {
    const batches = steps.get(task) ?? [];
    steps.set(task, batches);
    batches.push(isolated(batch));
  }
  return [...steps].map(([task, batches]) =>
    text.taskOf({ task: isolated(task), batches: fewNames(batches, MOST_NAMED) }),
  );
}
