import { allOfIt } from "../../sentences/made/controls";
import { disclosure } from "./disclosure";
import { element } from "./element";
import { shortened } from "./shortened";

/** Text of the workbook within our own words; writing from right to left stays inside it. */
export function userText(text: string): HTMLElement {
  return element("bdi", {}, shortened(text));
}

/** The same, with the whole of a long text behind a disclosure. */
export function wholeText(text: string): HTMLElement {
  const short = shortened(text);
  if (short === text) return userText(text);
  return element(
    "div",
    {},
    element("bdi", {}, short),
    disclosure({ summary: allOfIt(), content: () => element("bdi", {}, text) }),
  );
}
