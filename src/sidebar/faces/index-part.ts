import * as text from "../../sentences/made/faces-page";
import type { IndexRow } from "../../wire/faces";
import { disclosure } from "../controls/disclosure";
import { element } from "../controls/element";
import { longList } from "../controls/long-list";
import { plainButton } from "../controls/plain-button";
import { whileWorking } from "../controls/while-working";
import type { SidebarContext } from "../section";

/** Every answer with a line on what it answers; pressed, it leads there. Below all sections. */
export function indexPart({ call, status, go }: SidebarContext): HTMLElement {
  const body = element("fieldset", { class: "bare" });
  const item = ({ section, part, tab, answers }: IndexRow) =>
    element(
      "div",
      { class: "batch" },
      plainButton(tab, () => go(section, part)),
      element("p", { class: "quiet" }, answers),
    );
  return disclosure({
    summary: text.index(),
    kind: "group",
    content: () => {
      void whileWorking({
        status,
        doing: text.loading(),
        controls: [body],
        work: async () => body.replaceChildren(longList(await call("sidebarIndex", null), item)),
      });
      return body;
    },
  });
}
