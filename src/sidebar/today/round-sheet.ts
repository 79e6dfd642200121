import type { DueTask } from "../../workbook/sidebar-calls";
import { dayText, windowText } from "../controls/day-words";
import { element } from "../controls/element";
import { userText } from "../controls/user-text";
import { byPlace, NO_PLACE, type PlaceTasks, statusTally } from "./places";
import { statusWords } from "./task-words";

export interface RoundSheet {
  readonly workbook: string;
  readonly asOf: string;
  readonly tasks: readonly DueTask[];
  /** The last month's takes in a sentence; null where none are counted. */
  readonly takes: string | null;
}

const HEADERS = ["Task", "Batch", "Plants", "Window", "Day done", "Count", "Who", "Note"];

/** The due list on paper: by place, with blanks to fill in by hand. */
export function roundSheet({ workbook, asOf, tasks, takes }: RoundSheet): HTMLElement {
  return element(
    "main",
    {},
    element("h1", {}, "Round sheet, ", dayText(asOf)),
    element("p", {}, userText(workbook), ` · ${statusTally(tasks)}`),
    takes === null ? null : element("p", {}, takes),
    ...byPlace(tasks).map(placeTable),
    cautions(tasks),
  );
}

function placeTable({ place, tasks }: PlaceTasks): HTMLElement {
  const name = place === "" ? NO_PLACE : userText(place);
  return element(
    "table",
    {},
    element("colgroup", {}, ...HEADERS.map(() => element("col"))),
    element(
      "thead",
      {},
      // Within the head, which is printed on every page that the table goes on.
      element(
        "tr",
        { class: "place" },
        element("th", { colspan: HEADERS.length, scope: "colgroup" }, name),
      ),
      element("tr", {}, ...HEADERS.map((header) => element("th", { scope: "col" }, header))),
    ),
    element("tbody", {}, ...tasks.map(taskRow)),
  );
}

function taskRow(task: DueTask): HTMLElement {
  return element(
    "tr",
    {},
    element("th", { scope: "row" }, userText(task.task)),
    element("td", {}, userText(task.batch)),
    element("td", { class: "number" }, task.plants === null ? "" : String(task.plants)),
    element("td", {}, windowText(task.from, task.by), element("br"), statusWords(task)),
    element("td", { class: "blank" }),
    // What nobody counts has no blank that would ask for a number.
    task.counted ? element("td", { class: "blank" }) : element("td", { class: "none" }, "–"),
    element("td", { class: "blank" }),
    element("td", { class: "blank wide" }),
  );
}

/** Each caution once, with the tasks that it belongs to. */
function cautions(tasks: readonly DueTask[]): HTMLElement | null {
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
    element("h2", {}, "Cautions"),
    ...[...tasksOf].map(([caution, names]) =>
      element(
        "p",
        {},
        ...[...names].flatMap((name, index) => [index === 0 ? "" : ", ", userText(name)]),
        ": ",
        element("bdi", {}, caution),
      ),
    ),
  );
}
