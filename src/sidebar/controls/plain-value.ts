import * as text from "../../sentences/made/controls";
import type { PlainValue } from "../../wire/writing";
import { dayText } from "./day-words";
import { element } from "./element";
import { wholeText } from "./user-text";

/** A cell's value in words: a blank cell is named, a day is said as a day. */
export function plainValue(value: PlainValue): HTMLElement {
  if (value === null || value === "") return element("span", { class: "quiet" }, text.blank());
  if (typeof value === "boolean") return element("span", {}, value ? text.yes() : text.no());
  if (typeof value === "number") return element("span", {}, String(value));
  return wholeText(dayText(value));
}
