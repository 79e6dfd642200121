import { noPlace } from "../../sentences/made/today-page";
import type { DueTask } from "../../wire/today";
import { disclosure } from "../controls/disclosure";
import { element } from "../controls/element";
import { longList } from "../controls/long-list";
import { userText } from "../controls/user-text";
import { type PlaceTasks, statusTally } from "./places";

/** The tasks of a place under a line that counts them. */
export function placeGroup(
  { place, tasks }: PlaceTasks,
  open: boolean,
  item: (task: DueTask) => HTMLElement,
): HTMLElement {
  return disclosure({
    kind: "group",
    open,
    summary: element(
      "h3",
      {},
      place === "" ? noPlace() : userText(place),
      " ",
      element("span", { class: "tally" }, statusTally(tasks)),
    ),
    content: () => longList(tasks, item),
  });
}
