import type { NamedText } from "../../wire/named-text";
import { groupText } from "../../wording/takes";
import { stateOf } from "../state";

/** What a group is called on the page. */
export type Called = (texts: readonly NamedText[]) => string;

/** Whether people are called by their initials: one choice for all that the page shows and prints. */
export interface PeopleShown {
  byInitials(): boolean;
  choose(byInitials: boolean): void;
  /** Called whenever the choice changes. */
  onChange(draw: () => void): void;
  /** The texts as they are shown now; a blank is told from a group that is called "". */
  readonly called: Called;
}

/** People are called by their names until it is chosen otherwise; the page keeps that while it is open. */
export function peopleShown(): PeopleShown {
  const state = stateOf({ byInitials: false });
  return {
    byInitials: () => state.now.byInitials,
    choose: (byInitials) => state.set({ byInitials }),
    onChange: (draw) => state.on(["byInitials"], draw),
    called: (texts) => calledBy(texts, state.now.byInitials),
  };
}

/** @example calledBy([{ text: "Kesto", initials: "K." }], true) // "K." */
export function calledBy(texts: readonly NamedText[], byInitials: boolean): string {
  return texts
    .map(({ text, initials }) => groupText(byInitials ? (initials ?? text) : text))
    .join(" ");
}
