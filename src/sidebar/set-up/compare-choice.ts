import type { ColumnsAnswer } from "../../workbook/sidebar-calls";
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
}

/** By what the tab of takes compared is made, and how people are called: nobody is ranked unasked. */
export function compareChoice(
  { comparable, compareBy }: ColumnsAnswer,
  people: PeopleShown,
): CompareChoice {
  const select = choice(
    [
      ...comparable.map((one) => ({
        value: one.header,
        label: `${shortened(one.header, 40)}${one.people ? " (ranks people)" : ""}`,
      })),
      { value: "", label: "Nothing: make no such tab" },
    ],
    compareBy,
  );
  const warning = element(
    "p",
    { class: "note" },
    "Everybody who can open this workbook will see that tab. Speak with your people first.",
  );
  const warn = () => {
    warning.hidden = !comparable.some((one) => one.people && one.header === select.value);
  };
  select.addEventListener("change", warn);
  warn();
  return {
    elements: [
      field("Takes compared, in a tab by", select),
      warning,
      initialsTick(people),
      element("small", {}, "In the tabs too, once they are made."),
    ],
    compareBy: () => select.value,
  };
}
