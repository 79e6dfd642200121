import { disclosure } from "../../controls/disclosure";
import { element } from "../../controls/element";

const RULES = [
  "A reading is about batches, not about a person. It says that takes differ, never why.",
  "Look for what else was different first: scions, tape, weather, the place, how tired the hands were.",
  "Speak with the person before anybody else does, and show them the numbers.",
  "Too few to tell means just that. Wait for more batches.",
  "Keep names off walls and out of print. Follow the rules and the law of your place on records of people's work.",
];

/** How to use a comparison of people without harm. */
export function fairUse(): HTMLElement {
  return disclosure({
    summary: "Fair use",
    content: () => element("ul", {}, ...RULES.map((rule) => element("li", {}, rule))),
  });
}
