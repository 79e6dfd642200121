// Made by npm run sentences from the files of sentences; a test holds it equal.

export const answers = (): string => "One row per group: batches, grafted, taken, take rate with its range, how many times more than chance batches of its usual size vary, and what such a batch mostly takes.";

export const by = (): string => "A column of the table, or several joined with \"+\".";

export const level = (): string => "How sure ranges should be: 0.8 means right in about 8 of 10.";

export const sentence = (): string => "Take rates by variety, grafter or any other column, with the range that the counts allow.";
