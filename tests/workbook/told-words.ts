import { type Nursery, SETTINGS } from "./nursery";

/** Rows above the table of words in the settings tab, its header among them. */
const ABOVE = 11;

/** What was told of words, as the settings tab keeps it. @example "Amberlow | Amberlo | value" */
export function toldWords(nursery: Nursery): string[] {
  const rows = nursery.values(SETTINGS).slice(ABOVE);
  return rows.map((row) => row.slice(0, 3).join(" | ")).filter((row) => /[^ |]/.test(row));
}
