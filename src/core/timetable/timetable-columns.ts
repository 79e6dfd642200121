import { columns } from "../answer";
import { tableWords } from "../words/all-languages";
import type { TablesText } from "../words/language-text";
import { lazily } from "../words/lazy-value";

export type TimetableField = keyof TablesText["timetable"];

/** The columns of a timetable, as TIMETABLE writes them. */
export const TIMETABLE_COLUMNS = columns({
  Method: "text",
  Step: "text",
  After: "text",
  "From day": "count",
  "Usual day": "count",
  "By day": "count",
  Counted: "text",
  "Kept of 100": "number",
  "Per person-hour": "number",
  Needs: "text",
  Caution: "text",
  Source: "text",
});

/** Headers by which each column of a timetable is known, in normal form; in the order of the columns. */
export const timetableWords = lazily(() => tableWords("timetable"));
