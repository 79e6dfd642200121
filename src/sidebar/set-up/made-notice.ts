import * as text from "../../sentences/made/set-up-page";
import type { SetUpAnswer } from "../../wire/set-up";
import { element } from "../controls/element";
import { paragraph } from "../controls/paragraph";
import { userText } from "../controls/user-text";
import { lostColumnsNote } from "./lost-columns";

/** Which tabs were made, which stayed, and the way on. */
export function madeNotice(
  { made, kept, forgotten, moved }: SetUpAnswer,
  onToday: () => void,
): HTMLElement {
  const today = element("button", { type: "button", class: "main" }, text.goToToday());
  today.addEventListener("click", onToday);
  return element(
    "div",
    { class: "written", role: "group", "aria-label": text.tabsMade(), tabindex: -1 },
    tabNames(text.made(), made),
    tabNames(text.kept(), kept),
    tabNames(text.moved(), moved.map(text.movedTo)),
    lostColumnsNote(text.forgotten(), forgotten),
    today,
  );
}

function tabNames(title: string, names: readonly string[]): HTMLElement | null {
  if (names.length === 0) return null;
  return element(
    "div",
    {},
    paragraph(element("strong", {}, title)),
    element("ul", { class: "cells" }, ...names.map((name) => element("li", {}, userText(name)))),
  );
}
