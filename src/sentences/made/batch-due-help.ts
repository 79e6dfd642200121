// Made by npm run sentences from the files of sentences; a test holds it equal.

export const answers = (): string => "One row per task, soonest first, looks last. Status is late, due or coming.";

export const daysAhead = (): string => "How many days to look ahead.";

export const sentence = (): string => "What is to be done, for which batch, where, between which days, and what is late.";
