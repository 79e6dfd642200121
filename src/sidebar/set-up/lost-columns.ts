import type { ColumnChoice } from "../../workbook/sidebar-calls";
import { element } from "../controls/element";
import { userText } from "../controls/user-text";

/** What was told of columns and leads nowhere by now, each with what it was told; null when none. */
export function lostColumnsNote(title: string, lost: readonly ColumnChoice[]): HTMLElement | null {
  if (lost.length === 0) return null;
  return element(
    "div",
    { class: "note" },
    element("p", {}, `${title}:`),
    element(
      "ul",
      { class: "cells" },
      ...lost.map(({ header, readAs }) =>
        element("li", {}, userText(header), ": ", userText(readAs ?? "leave alone")),
      ),
    ),
  );
}
