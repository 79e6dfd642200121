import type { LeftOut } from "../core";
import * as text from "../sentences/made/records";
import type { SentencesOf } from "./sentence-of";

/** Remarks on records, which those of every capability hold. */
export const RECORDS_REMARKS: SentencesOf<LeftOut> = {
  "rows-left-out": (facts, where) =>
    where === "cell" ? text.rowsLeftOutOfCell(facts) : text.rowsLeftOutOfPage(facts),
};
