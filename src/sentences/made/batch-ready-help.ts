// Made by npm run sentences from the files of sentences; a test holds it equal.

export const answers = (): string => "One row per month and variety, and All. Plants ready already have rows of their own, Ready now. All together at the end is these and all months. Likely adds up: each is a share of what is likely of all. Fewest and most don't, because all hardly ever do worst, or best, together. By month end: ready by the end of that month, plants ready now included. Batches: how many are likely ready then.";

export const sentence = (): string => "How many plants will be ready, by month and variety and all together, as ranges.";
