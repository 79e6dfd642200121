import * as text from "../../sentences/made/set-up-page";
import type { OpenAnswer } from "../../wire/open";
import { disclosure } from "../controls/disclosure";
import { element } from "../controls/element";

export interface MoreTabs {
  /** None where there is nothing to choose. */
  readonly elements: readonly HTMLElement[];
  /** Keys of those that are wanted. */
  chosen(): readonly string[];
}

/** Tabs that are made on choice; those that are there are made again unasked, and are not offered. */
export function moreTabs(tabs: OpenAnswer["moreTabs"]): MoreTabs {
  const offered = tabs
    .filter(({ isThere }) => !isThere)
    .map((tab) => ({ ...tab, box: element("input", { type: "checkbox" }) }));
  const content = element(
    "div",
    {},
    ...offered.map(({ box, tab, answers }) =>
      element(
        "label",
        { class: "tick" },
        box,
        element("span", {}, tab, " ", element("small", {}, answers)),
      ),
    ),
  );
  return {
    elements:
      offered.length === 0
        ? []
        : [disclosure({ summary: text.moreTabs(), content: () => content })],
    chosen: () => offered.filter(({ box }) => box.checked).map(({ key }) => key),
  };
}
