import { initials } from "../../sentences/made/controls";
import { element } from "../controls/element";
import type { PeopleShown } from "./people-shown";

/** The box to tick for initials. Wherever it stands, it is the same choice. */
export function initialsTick(people: PeopleShown): HTMLElement {
  const box = element("input", { type: "checkbox" });
  box.checked = people.byInitials();
  box.addEventListener("change", () => people.choose(box.checked));
  people.onChange(() => {
    box.checked = people.byInitials();
  });
  return element("label", { class: "tick" }, box, ` ${initials()}`);
}
