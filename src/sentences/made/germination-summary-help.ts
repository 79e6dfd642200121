// Made by npm run sentences from the files of sentences; a test holds it equal.

export const answers = (): string => "One row per figure, with its unit. With several samples the last row says if they agree. Of a table, one row per batch, beside what the others had by the same day.";

export const counts = (): string => "Seeds newly come up at each inspection. One column for each sample, sown alike. Leave it out for a table.";

export const days = (): string => "Days since sowing of each inspection, one column. Or a table with one row per inspection: Batch, Sample, Sown on, Seeds sown, Day, and Came up (since the last one) or Up so far.";

export const sentence = (): string => "How well and how fast seed came up: share, days until half were up, mean time, speed.";

export const sown = (): string => "Seeds sown in all. Leave it out for a table.";
