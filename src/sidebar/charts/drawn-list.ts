import { element } from "./element";

/** The numbers at the two ends of what ranges are drawn over. */
export function scaleLine(least: string, most: string): HTMLElement {
  return element(
    "div",
    { class: "scale", "aria-hidden": "true" },
    element("span", {}, least),
    element("span", {}, most),
  );
}
