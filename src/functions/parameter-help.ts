/** Sentences of parameters that many functions share. The built file leaves them out. */
export const RECORDS = "Your table of batches with its header.";
export const TIMETABLE = "Your table of steps with its header; leave blank for the built-in steps.";
export const AS_OF = "The day to look from: a cell with a date.";
export const AS_OF_OR_NONE = "The day to look from; leave out to skip what needs a day.";
export const LEVEL = "How many of 100 ranges should hold, as a share.";
export const COLUMNS =
  "Two columns, our column name and the header in your sheet, where a header can't be guessed; blank rows are passed over.";
