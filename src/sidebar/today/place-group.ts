import { noPlace } from "../../sentences/made/today-page";
import type { DueTask } from "../../wire/today";
import { group } from "../controls/group";
import { longList } from "../controls/long-list";
import { userText } from "../controls/user-text";
import { type PlaceTasks, statusTally } from "./places";

/** The tasks of a place under a line that counts them. */
export function placeGroup(
  { place, tasks }: PlaceTasks,
  open: boolean,
  item: (task: DueTask) => HTMLElement,
): HTMLElement {
  return group({
    title: place === "" ? noPlace() : userText(place),
    tally: statusTally(tasks),
    open,
    content: () => longList(tasks, item),
  });
}
