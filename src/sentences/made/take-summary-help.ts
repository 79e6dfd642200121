// Made by npm run sentences from the files of sentences; a test holds it equal.

export const answers = (): string =>
  "One row a group: batches, grafted, taken, take rate with its range, and how much more batches differ than chance makes them.";

export const by = (): string =>
  "A column of the table, or several joined with \"+\".";

export const level = (): string =>
  "How many of 100 such ranges should hold, as a share.";

export const sentence = (): string =>
  "Take rates by variety, grafter or any other column, with the range that the counts allow.";
