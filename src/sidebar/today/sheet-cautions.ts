import * as text from "../../sentences/made/today-sheet";
import { element } from "../controls/element";
import { paragraph } from "../controls/paragraph";
import { userText } from "../controls/user-text";

/** Each caution once, with the tasks that it belongs to; null where no task has one. */
export function sheetCautions(
  tasks: readonly { readonly caution: string; readonly task: string }[],
): HTMLElement | null {
  const tasksOf = new Map<string, Set<string>>();
  for (const { caution, task } of tasks) {
    if (caution === "") continue;
    const named = tasksOf.get(caution) ?? new Set<string>();
    tasksOf.set(caution, named.add(task));
  }
  if (tasksOf.size === 0) return null;
  return element(
    "section",
    {},
    element("h2", {}, text.cautions()),
    ...[...tasksOf].map(([caution, names]) =>
      paragraph(
        ...[...names].flatMap((name, index) => [index === 0 ? "" : ", ", userText(name)]),
        ": ",
        element("bdi", {}, caution),
      ),
    ),
  );
}
