// Made by npm run sentences from the files of sentences; a test holds it equal.

export const answers = (): string => "One row per trouble, most plants at stake first. Row counts from 1 at the top of the range. The last row counts the rows of the range.";

export const asOf = (): string => "The day to look from. Leave it out to skip what needs a day.";

export const sentence = (): string => "What in your table can't be read or looks wrong, what happens, and what to do.";
