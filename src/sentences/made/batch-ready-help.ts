// Made by npm run sentences from the files of sentences; a test holds it equal.

export const answers = (): string => "One row per month and variety, and All. Plants ready already are in the month of the as-of day. Batches: how many are likely ready in that month. All is not the sum of the rows above: all varieties hardly ever do worst, or all best, in one month.";

export const sentence = (): string => "How many plants will be ready, by month and variety and all together, as ranges.";
