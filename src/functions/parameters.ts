import type { ParameterHelp } from "./entry";

/** Parameters that many functions share, described once. */
export const RECORDS: ParameterHelp = ["records", "Your table of batches with its header."];
const STEPS = "Your table of steps with its header; leave blank for the built-in steps.";
export const TIMETABLE: ParameterHelp = ["timetable", STEPS];
export const TIMETABLE_OPTIONAL: ParameterHelp = ["timetable?", STEPS];
export const AS_OF: ParameterHelp = ["asOf", "The day to look from: a cell with a date."];
export const AS_OF_OPTIONAL: ParameterHelp = [
  "asOf?",
  "The day to look from; leave out to skip what needs a day.",
];
export const LEVEL: ParameterHelp = [
  "level?",
  "How many of 100 ranges should hold, as a share; 0.8 if left out.",
];
export const COLUMNS: ParameterHelp = [
  "columns?",
  "Two columns, our column name and the header in your sheet, where a header can't be guessed; blank rows are passed over.",
];
