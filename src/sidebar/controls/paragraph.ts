import { type Child, element } from "./element";
import { wholeText } from "./user-text";

/** Plain words on lines of their own. */
export function paragraph(...words: readonly Child[]): HTMLElement {
  return element("p", {}, ...words);
}

/** What is said beside the matter, in a paler ink. */
export function quiet(...words: readonly Child[]): HTMLElement {
  return element("p", { class: "quiet" }, ...words);
}

/** What asks to be read, in a frame of its own; nothing where there is nothing to say. */
export function notes(sentence: string | null): HTMLElement[] {
  return sentence === null ? [] : [element("div", { class: "note" }, wholeText(sentence))];
}
