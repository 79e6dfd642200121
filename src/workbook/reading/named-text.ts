import { type GroupColumn, type Initials, initialsOf, peopleOf, type Records } from "../../core";
import type { NamedText } from "../../wire/named-text";

/** The people of the records by their initials, the same in everything that is shown. */
export function initialsIn(records: Records): Initials {
  return initialsOf(peopleOf(records));
}

/** @param texts what stands in the columns, in their order */
export function namedTexts(
  texts: readonly string[],
  columns: readonly Pick<GroupColumn, "people">[],
  initials: Initials,
): readonly NamedText[] {
  return texts.map((text, index) => namedText(text, columns[index]?.people ?? false, initials));
}

export function namedText(text: string, people: boolean, initials: Initials): NamedText {
  return { text, initials: people && text !== "" ? initials(text) : null };
}
