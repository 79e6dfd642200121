import type { LeftOut } from "../core";
import * as text from "../sentences/made/records";
import { type SentencesOf, sentenceOf, together, type Where } from "./sentence-of";

/** Remarks on records, which those of every capability hold. */
export const RECORDS_REMARKS: SentencesOf<LeftOut> = {
  "rows-left-out": (facts, where) =>
    where === "cell" ? text.rowsLeftOutOfCell(facts) : text.rowsLeftOutOfPage(facts),
};

/** What was left out of records; null where nothing was. */
export function recordsRemarks(remarks: readonly LeftOut[], where: Where): string | null {
  return together(remarks.map((one) => sentenceOf(RECORDS_REMARKS, one, where)));
}
