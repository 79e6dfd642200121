import type { Child } from "./element";
import { element } from "./element";
import { field } from "./field";

export interface CheckedField {
  readonly element: HTMLElement;
  /** Says beside the control what is wrong with it; null says nothing. */
  tell(trouble: string | null): void;
}

export interface CheckedFieldOptions {
  readonly label: string;
  readonly control: HTMLInputElement;
  /** Letters and hyphens, unique in the page: part of an id. */
  readonly name: string;
  readonly hint?: Child;
}

/** A field with a place for what is wrong, which is told with the control and goes when it is changed. */
export function checkedField(options: CheckedFieldOptions): CheckedField {
  const { label, control, name, hint = null } = options;
  const wrong = element("p", { class: "wrong", id: `wrong-${name}`, hidden: true });
  const tell = (trouble: string | null) => {
    wrong.hidden = trouble === null;
    wrong.textContent = trouble;
    if (trouble === null) {
      control.removeAttribute("aria-invalid");
      control.removeAttribute("aria-describedby");
      return;
    }
    control.setAttribute("aria-invalid", "true");
    control.setAttribute("aria-describedby", wrong.id);
  };
  control.addEventListener("input", () => tell(null));
  return { element: element("div", {}, field(label, control, hint), wrong), tell };
}
