import { SEE_CHECK } from "../core";

/**
 * A sentence of an answer for a person in the sidebar: there the rest is told in a section, not by a
 * function in a cell.
 */
export function sidebarWords(sentence: string): string {
  return sentence.replace(SEE_CHECK, "see Check");
}
