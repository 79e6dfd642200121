import * as text from "../../sentences/made/set-up-page";
import type { ColumnChoice } from "../../wire/columns";
import { element } from "../controls/element";
import { paragraph } from "../controls/paragraph";
import { sentenceNodes } from "../controls/sentence-nodes";
import { userText } from "../controls/user-text";

/** What was told of columns and leads nowhere by now, each with what it was told; null when none. */
export function lostColumnsNote(title: string, lost: readonly ColumnChoice[]): HTMLElement | null {
  if (lost.length === 0) return null;
  return element(
    "div",
    { class: "note" },
    paragraph(title),
    element(
      "ul",
      { class: "cells" },
      ...lost.map(({ header, readAs }) =>
        element(
          "li",
          {},
          ...sentenceNodes(text.lostColumn, {
            header: userText(header),
            readAs: userText(readAs ?? text.leaveAlone()),
          }),
        ),
      ),
    ),
  );
}
