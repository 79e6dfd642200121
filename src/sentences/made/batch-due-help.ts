// Made by npm run sentences from the files of sentences; a test holds it equal.

export const answers = (): string => "One row per task, soonest first, looks last. Status is late, due or coming. Plants are those likely to be worked on: a job leaves out what is graded out first.";

export const daysAhead = (): string => "How many days to look ahead.";

export const sentence = (): string => "What is to be done, for which batch, where, between which days, and what is late.";
