import * as text from "../../../sentences/made/work-page";
import type { PlannedDay, PlannedPart } from "../../../wire/work";
import { hoursBar } from "../../charts/hours-bar";
import { weekdayText } from "../../controls/day-words";
import { disclosure } from "../../controls/disclosure";
import { element } from "../../controls/element";
import { hoursOfHours } from "../../controls/hours-words";
import { dayPlan } from "./day-plan";
import { isUnrated } from "./part-item";

export interface DayItemOptions {
  readonly day: PlannedDay;
  readonly persons: readonly string[];
  /** Those of the day. */
  readonly parts: readonly PlannedPart[];
  /** Hours that the full width of a bar stands for. */
  readonly most: number;
}

/** A day: hours asked of hours there, in numbers and as a bar; opened, who does what. */
export function dayItem({ day, persons, parts, most }: DayItemOptions): HTMLElement {
  const unrated = parts.filter(isUnrated).length;
  const words = element(
    "span",
    { class: "day-words" },
    element("strong", {}, weekdayText(day.day)),
    element("span", {}, day.isClosed ? text.closed() : hoursOfHours(day.asked, day.there)),
    unrated === 0
      ? null
      : element("span", { class: "quiet" }, text.unratedTasks({ tasks: unrated })),
    day.isOverloaded && !day.isClosed ? element("span", { class: "mark" }, text.tooMuch()) : null,
  );
  if (day.isClosed && parts.length === 0) return element("p", { class: "day closed" }, words);
  const bar = day.isClosed || most === 0 ? null : hoursBar(day.asked, day.there, most);
  return disclosure({
    kind: "day",
    summary: element("span", {}, words, bar),
    content: () => dayPlan(day, persons, parts),
  });
}
