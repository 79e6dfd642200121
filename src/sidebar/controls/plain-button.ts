import { element } from "./element";

/** A button that does what needs no waiting, or sees to the waiting itself. */
export function plainButton(label: string, press: () => void): HTMLButtonElement {
  const button = element("button", { type: "button", class: "plain" }, label);
  button.addEventListener("click", press);
  return button;
}
