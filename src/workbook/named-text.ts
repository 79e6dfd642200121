import { type GroupColumn, type Initials, initialsOf, peopleOf, type Records } from "../core";

/** What stands in a column of the records, and what to show instead where it names people. */
export interface NamedText {
  /** Empty where the column is blank. */
  readonly text: string;
  /** Initials, each told from all others'; null where the text names nobody. */
  readonly initials: string | null;
}

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
