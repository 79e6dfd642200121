import * as text from "../../../sentences/made/takes-page";
import { disclosure } from "../../controls/disclosure";
import { element } from "../../controls/element";

const RULES = [text.fairReading, text.fairCauses, text.fairSpeak, text.fairWait, text.fairNames];

/** How to use a comparison of people without harm. */
export function fairUse(): HTMLElement {
  return disclosure({
    summary: text.fairTitle(),
    content: () => element("ul", {}, ...RULES.map((rule) => element("li", {}, rule()))),
  });
}
