/*
 * What the add-in writes into workbooks to know its own things by, and reads again years later: a format,
 * in no language, and no sentences. Whatever changes here has to go on being read.
 */

/** Every tab of ours begins with these words, so that a tab of the person's own is never taken for it. */
export const MARK = "Nursery batches:";

/**
 * What stands after the mark in the first cell of tabs that are known by more than that they are ours,
 * whatever they are called. What comes after it is for people.
 */
export const FIRST_WORDS = { due: "due list", plan: "plan of an order", toFill: "your" } as const;

/** Stands in a tab's first cell, after the first words of its title, while it is filled again. */
export const BEING_MADE = ", being made.";

/** Ends the first words of a title whose table is values, not what a formula answers. */
export const STILL = " with initials";

/** Stands after a tab's name while it is made: words that nobody gives to a copy of their own. */
export const COMING = "(being made)";
/** Stood after the name of a tab while an older add-in replaced it. */
export const GOING = "(being replaced)";

/** Header of the settings tab. */
export const SETTINGS_HEADER = ["Setting", "Value", "What it is for"] as const;

/** Headers of the log, which is read as long as the workbook lasts. */
export const LOG_HEADER = [
  "Write",
  "When",
  "Who (as typed)",
  "Tab",
  "Cell",
  "Column",
  "Batch",
  "Task",
  "Before",
  "After",
  "State",
] as const;

/** Headers of what a plan of an order asks: in one row, for the person to change. */
export const PLAN_HEADER = [
  "Order",
  "By",
  "Wanted",
  "Method",
  "Variety",
  "Assurance",
  "Harvest months",
] as const;

/** Stands in a person's table where the day of a step would, that it is not to be done. */
export const NOT_NEEDED = "not needed";

/** Stands as the task in the log's line of a column that we added; in brackets, since no step is called so. */
export const NEW_COLUMN = "(new column)";

/** What the log's column *Column* holds where the table has no column for it. */
export const KEPT_HEADER = { count: "(count)", note: "(note)" } as const;

/**
 * What a row of the due tab says of itself begins with one of these, and a phone shows it beside the box.
 * What comes after it is for people.
 */
export const SIGNS = {
  written: "✓",
  asks: "?",
  refused: "!",
  waits: "…",
  takenBack: "↶",
  still: "!!",
} as const;

/** What the same began with in older workbooks, where it differs. */
export const OLDER_STILL = "! still";
