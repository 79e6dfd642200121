import * as text from "../../../sentences/made/work-page";
import type { PlannedPart } from "../../../wire/work";
import { partRemarks } from "../../../wording/work";
import { weekdayText } from "../../controls/day-words";
import { element } from "../../controls/element";
import { hoursCounted } from "../../controls/hours-words";
import { paragraph, quiet } from "../../controls/paragraph";
import { userText } from "../../controls/user-text";

/** A task or a part of one in two lines: what and where, then how much and what there is to say. */
export function partItem({ task, batch, place, plants, hours, by, remarks }: PlannedPart): Node {
  const remark = partRemarks(remarks);
  const facts = [
    plants === null ? null : text.plants({ plants }),
    hours === null ? null : hoursCounted(hours),
    text.by({ day: weekdayText(by) }),
  ].filter((fact) => fact !== null);
  return element(
    "div",
    { class: "part" },
    paragraph(userText(task), " · ", userText(batch)),
    quiet(
      ...(place === "" ? [] : [userText(place), " · "]),
      facts.join(" · "),
      ...(remark === "" ? [] : [" · ", userText(remark)]),
    ),
  );
}

/** Whether it takes time of which nobody knows how much. */
export function isUnrated({ hours, plants }: PlannedPart): boolean {
  return hours === null && plants !== 0;
}
