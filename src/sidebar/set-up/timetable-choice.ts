import * as text from "../../sentences/made/set-up-page";
import type { OpenAnswer } from "../../wire/open";
import { choice } from "../controls/choice";
import { element } from "../controls/element";
import { field } from "../controls/field";
import { isolated, shortened } from "../controls/shortened";

/** What is left out of a timetable is told whole. */
const LONGEST_WHY = 400;

export interface TimetableChoice {
  /** Nothing where there is nothing to choose or tell. */
  readonly elements: readonly HTMLElement[];
  /** A tab of the person's own; null for the add-in's. */
  chosen(): string | null;
}

/** Whose steps and days count: those of a tab that the person keeps already, or the built-in ones. */
export function timetableChoice(
  { timetables, setUp }: OpenAnswer,
  onChange: () => void,
): TimetableChoice {
  const inUse = setUp?.timetableTab ?? null;
  const usable = timetables.filter(({ tab, methods }) => methods.length > 0 || tab === inUse);
  const notes = timetables
    .filter(({ trouble }) => trouble !== null)
    .map(({ tab, methods, trouble }) => {
      const told = { tab: isolated(tab), why: shortened(trouble ?? "", LONGEST_WHY) };
      const said = methods.length === 0 ? text.cantUse(told) : text.partlyUsed(told);
      return element("p", { class: "note" }, said);
    });
  if (usable.length === 0) return { elements: notes, chosen: () => null };
  const select = choice(
    [
      ...usable.map(({ tab, methods }) => ({
        value: tab,
        label: text.yours({ tab: shortened(tab, 30), methods: methods.length }),
      })),
      { value: "", label: text.builtIn() },
    ],
    // Once set up, what was chosen stays; before, what the person keeps comes first.
    setUp === null
      ? (usable[0]?.tab ?? "")
      : usable.some(({ tab }) => tab === inUse)
        ? (inUse ?? "")
        : "",
  );
  select.addEventListener("change", onChange);
  return {
    elements: [field(text.timetable(), select, text.timetableHint()), ...notes],
    chosen: () => select.value || null,
  };
}
