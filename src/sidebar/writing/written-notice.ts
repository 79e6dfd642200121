import * as text from "../../sentences/made/writing";
import type { CellWritten, RecordAnswer } from "../../wire/writing";
import { faultSentence } from "../../wording/writing";
import { actionButton } from "../controls/action-button";
import { element } from "../controls/element";
import { paragraph, quiet } from "../controls/paragraph";
import { plainValue } from "../controls/plain-value";
import { sentenceNodes } from "../controls/sentence-nodes";
import { isolated } from "../controls/shortened";
import { userText } from "../controls/user-text";
import type { SidebarContext } from "../section";
import { questionAsked } from "./asked-list";

export interface WrittenOptions {
  readonly context: SidebarContext;
  /** What was done, as "Done and written". */
  readonly title: string;
  /** What it was about, as "Grafting, H26-039". */
  readonly what: string;
  /** When it was and who did it, where that is not plain. */
  readonly detail?: string;
  readonly answer: Pick<RecordAnswer, "written" | "logId">;
  /** Shows what it changes elsewhere; what is said comes after that. */
  readonly onTakenBack: () => Promise<void>;
}

/** What was written where, and the button that takes it back. */
export function writtenNotice(options: WrittenOptions): HTMLElement {
  const { context, title, what, detail, answer, onTakenBack } = options;
  const { logId, written } = answer;
  const notice = element(
    "div",
    {
      class: "written",
      role: "group",
      "aria-label": text.writtenNamed({ what: isolated(what) }),
      tabindex: -1,
    },
    paragraph(element("strong", {}, `${title}: `), userText(what)),
    detail === undefined ? null : quiet(userText(detail)),
    cellList(written),
  );
  if (logId === null) return notice;
  const takeBack = actionButton({
    label: text.takeBack(),
    status: context.status,
    doing: text.taking(),
    work: async () => {
      const { restored, asked } = await context.call("sidebarTakeBack", { logId });
      if (restored.length === 0 && asked.length === 0) {
        throw new Error(faultSentence({ code: "notInLog" }));
      }
      const done = restored.length > 0;
      notice.replaceChildren(
        paragraph(
          element("strong", {}, `${done ? text.taken() : text.notTakenBack()}: `),
          userText(what),
        ),
        cellList(restored),
        ...asked.map(questionAsked),
      );
      notice.focus();
      if (done) await onTakenBack();
      context.status.say(done ? text.takenDone() : text.notTakenBackSee());
    },
  });
  notice.append(takeBack);
  return notice;
}

function cellList(cells: readonly CellWritten[]): HTMLElement {
  return element(
    "ul",
    { class: "cells" },
    ...cells.map(({ where, header, value }) =>
      element(
        "li",
        {},
        userText(header),
        ": ",
        plainValue(value),
        " ",
        element(
          "span",
          { class: "quiet" },
          ...(where === null
            ? [text.inLogOnly()]
            : sentenceNodes(text.inCell, { where: userText(where) })),
        ),
      ),
    ),
  );
}
