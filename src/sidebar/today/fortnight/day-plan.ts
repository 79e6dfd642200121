import * as text from "../../../sentences/made/work-page";
import type { PlannedDay, PlannedPart } from "../../../wire/work";
import { type Child, element } from "../../controls/element";
import { hoursCounted, hoursOfHours } from "../../controls/hours-words";
import { longList } from "../../controls/long-list";
import { paragraph, quiet } from "../../controls/paragraph";
import { userText } from "../../controls/user-text";
import { partItem } from "./part-item";

/** Who does what on a day, who has time left, and who is not there. */
export function dayPlan(
  day: PlannedDay,
  persons: readonly string[],
  parts: readonly PlannedPart[],
): HTMLElement {
  const hands = persons.map((name, at) => ({
    name,
    there: day.hands[at] ?? 0,
    own: parts.filter(({ person }) => person === name),
  }));
  const busy = hands.filter(({ own }) => own.length > 0);
  const nobodys = parts.filter(({ person }) => person === null);
  const free = hands.filter(({ own, there }) => own.length === 0 && there > 0);
  const away = hands.filter(({ there }) => there === 0);
  return element(
    "div",
    { class: "behind" },
    parts.length === 0 ? paragraph(text.nothingPlanned()) : null,
    ...busy.map(({ name, there, own }) => {
      const asked = own.reduce((sum, { hours }) => sum + (hours ?? 0), 0);
      const title = [element("strong", {}, userText(name)), ` · ${hoursOfHours(asked, there)}`];
      return group(title, own);
    }),
    nobodys.length === 0 ? null : group([element("strong", {}, text.hoursUnknown())], nobodys),
    names(
      text.freeHands(),
      free.map(({ name, there }) => [userText(name), ` (${hoursCounted(there)})`]),
    ),
    day.isClosed
      ? null
      : names(
          text.awayHands(),
          away.map(({ name }) => [userText(name)]),
        ),
  );
}

function group(title: readonly Child[], parts: readonly PlannedPart[]): HTMLElement {
  return element("div", { class: "hands" }, paragraph(...title), longList(parts, partItem));
}

function names(title: string, people: readonly (readonly Child[])[]): HTMLElement | null {
  if (people.length === 0) return null;
  const list = people.flatMap((one, at) => (at === 0 ? one : [", ", ...one]));
  return quiet(title, " ", ...list);
}
