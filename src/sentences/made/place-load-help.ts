// Made by npm run sentences from the files of sentences; a test holds it equal.

export const answers = (): string => "One row per place and week in which something stands there, from the as-of day's week on: the likely plants of the open batches at the start of the week, up to the week of their likely ready day, fewer after each likely count. Plants that are ready already, and those with no day to count from, count in the first week alone. Places that are not in the table and batches without a place come below, without Holds. The last row names them, the places where nothing stands, and the batches that are left out.";

export const places = (): string => "Your table of places: Place, and how many plants it Holds.";

export const sentence = (): string => "How many plants stand in each place, week by week, and where they are too many.";
