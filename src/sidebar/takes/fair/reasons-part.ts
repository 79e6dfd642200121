import * as text from "../../../sentences/made/takes-page";
import type { CompareAnswer, ReasonRow } from "../../../wire/takes";
import { REASON_WORDS, ratedWords, takesRemarks } from "../../../wording/takes";
import { drawnItem } from "../../charts/drawn-list";
import { shareText } from "../../controls/count-words";
import { element } from "../../controls/element";
import { notes, paragraph, quiet } from "../../controls/paragraph";
import { sentenceNodes } from "../../controls/sentence-nodes";
import { isolated } from "../../controls/shortened";
import { userText } from "../../controls/user-text";
import type { Called } from "../../people/people-shown";

/** What goes with takes, most first, with the warning that this is not what causes them. */
export function reasonsPart({ reasons, reasonsRemarks }: CompareAnswer, called: Called): Node[] {
  const remark = takesRemarks(reasonsRemarks, "page");
  return [
    paragraph(reasonsSentence(reasons)),
    element(
      "ol",
      { class: "list" },
      ...reasons.map((row) => element("li", {}, reasonItem(row, called))),
    ),
    ...notes(remark),
  ];
}

/** Which columns go with takes, most first; or that none does. */
export function reasonsSentence(reasons: readonly ReasonRow[]): string {
  const linked = reasons.filter(({ best }) => best !== null);
  if (linked.length === 0) return text.noReason();
  const columns = linked.map(({ column }) => isolated(column));
  return text.reasonsGo({ columns, linked: linked.length });
}

function reasonItem(row: ReasonRow, called: Called): HTMLElement {
  const { column, explained, best, worst, reading } = row;
  const named = (one: NonNullable<ReasonRow["best"]>) =>
    userText(ratedWords({ name: called([one.name]), takeRate: one.takeRate }));
  return drawnItem({
    name: userText(column),
    value: shareText(explained),
    drawing: null,
    below: [
      quiet(REASON_WORDS[reading]()),
      best === null || worst === null
        ? null
        : quiet(...sentenceNodes(text.bestAndWorst, { best: named(best), worst: named(worst) })),
    ],
  });
}
