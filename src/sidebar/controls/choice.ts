import { element } from "./element";
import { shortened } from "./shortened";

export interface ChoiceOption {
  readonly value: string;
  readonly label: string;
}

/** A drop-down list. */
export function choice(options: readonly ChoiceOption[], chosen: string): HTMLSelectElement {
  const select = element("select");
  for (const { value, label } of options) {
    select.append(element("option", { value }, shortened(label, 60)));
  }
  select.value = chosen;
  return select;
}
