import type { PlanWarning } from "../../../core";
import { planWarning } from "../../../wording/order-plan";
import { element } from "../../controls/element";
import { paragraph } from "../../controls/paragraph";
import { wholeText } from "../../controls/user-text";

/** What asks for care, behind one double line; null where there is none. */
export function warningsShown(warnings: readonly PlanWarning[]): HTMLElement | null {
  if (warnings.length === 0) return null;
  return element(
    "div",
    { class: "warning" },
    ...warnings.map((one) => paragraph(wholeText(planWarning(one)))),
  );
}
