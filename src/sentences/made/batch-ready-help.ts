// Made by npm run sentences from the files of sentences; a test holds it equal.

export const answers = (): string =>
  "One row a month and variety, and All. Plants ready already stand in the month of the as-of day. Batches counts those whose likely day lies in the month. All is not the sum of the rows above it: ranges don't add, since hardly ever do all varieties have their fewest, or all their most, in the same month.";

export const sentence = (): string =>
  "How many plants will be ready, by month and variety and all together, as ranges.";
