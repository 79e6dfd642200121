import * as text from "../../sentences/made/set-up-page";
import type { ColumnsAnswer, ComparableColumn } from "../../wire/set-up";
import { choice } from "../controls/choice";
import { element } from "../controls/element";
import { field } from "../controls/field";
import { shortened } from "../controls/shortened";
import { initialsTick } from "../people/initials-tick";
import type { PeopleShown } from "../people/people-shown";

export interface CompareChoice {
  readonly elements: readonly HTMLElement[];
  /** A header; "" for no tab. */
  compareBy(): string;
  /** Whether looks are to be listed. */
  looks(): boolean;
}

/**
 * By what the tab of takes compared is made, how people are called, and whether looks are listed: nobody
 * is ranked unasked.
 */
export function compareChoice(
  { comparable, compareBy }: ColumnsAnswer,
  people: PeopleShown,
  showsLooks: boolean,
): CompareChoice {
  const looks = element("input", { type: "checkbox" });
  looks.checked = showsLooks;
  const select = choice(
    [
      ...comparable.map((one) => ({
        value: one.header,
        label: nameOf(one),
      })),
      { value: "", label: text.compareNone() },
    ],
    compareBy,
  );
  const warning = element("p", { class: "note" }, text.everybodySees());
  const warn = () => {
    warning.hidden = !comparable.some((one) => one.people && one.header === select.value);
  };
  select.addEventListener("change", warn);
  warn();
  return {
    elements: [
      field(text.compareBy(), select),
      warning,
      initialsTick(people),
      element("small", {}, text.inTabsToo()),
      element("label", { class: "tick" }, looks, ` ${text.showLooks()}`),
    ],
    compareBy: () => select.value,
    looks: () => looks.checked,
  };
}

function nameOf({ header: whole, people }: ComparableColumn): string {
  const header = shortened(whole, 40);
  return people ? text.ranksPeople({ header }) : header;
}
