import { needed, optional } from "./entry";

/** Parameters that many functions share, described once. */
export const RECORDS = needed("records", "Your table of batches with its header.");
export const TIMETABLE = needed(
  "timetable",
  "Your table of steps with its header; leave blank for the built-in steps.",
);
export const TIMETABLE_OPTIONAL = optional(TIMETABLE.name, TIMETABLE.sentence);
export const AS_OF = needed("asOf", "The day to look from: a cell with a date.");
export const AS_OF_OPTIONAL = optional(
  "asOf",
  "The day to look from; leave out to skip what needs a day.",
);
export const LEVEL = optional(
  "level",
  "How many of 100 ranges should hold, as a share; 0.8 if left out.",
);
export const COLUMNS = optional(
  "columns",
  "Two columns, our column name and the header in your sheet, where a header can't be guessed.",
);
