import type { SetUpAnswer } from "../../workbook/sidebar-calls";
import { element } from "../controls/element";
import { userText } from "../controls/user-text";
import { lostColumnsNote } from "./lost-columns";

/** Which tabs were made, which stayed, and the way on. */
export function madeNotice(
  { made, kept, forgotten, moved }: SetUpAnswer,
  onToday: () => void,
): HTMLElement {
  const today = element("button", { type: "button", class: "main" }, "Go to Today");
  today.addEventListener("click", onToday);
  return element(
    "div",
    { class: "written", role: "group", "aria-label": "Tabs made", tabindex: -1 },
    tabNames("Made", made),
    tabNames("Kept as they were", kept),
    tabNames(
      "Moved out of the way",
      moved.map(({ from, to }) => `${from} to ${to}`),
    ),
    lostColumnsNote("No longer read as you told, since the header or the step is gone", forgotten),
    today,
  );
}

function tabNames(title: string, names: readonly string[]): HTMLElement | null {
  if (names.length === 0) return null;
  return element(
    "div",
    {},
    element("p", {}, element("strong", {}, `${title}:`)),
    element("ul", { class: "cells" }, ...names.map((name) => element("li", {}, userText(name)))),
  );
}
