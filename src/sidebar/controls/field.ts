import { type Child, element } from "./element";

/** A control under its label. */
export function field(label: Child, control: HTMLElement, hint: Child = null): HTMLLabelElement {
  return element(
    "label",
    { class: "field" },
    element("span", {}, label),
    control,
    hint === null ? null : element("small", {}, hint),
  );
}
