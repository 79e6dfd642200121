// Made by npm run sentences from the files of sentences; a test holds it equal.

export const answers = (): string => "One row per item and unit, scion wood by variety: the needs per plant of the tasks that BATCH_DUE lists for as many days, times the plants likely to pass. Pieces are rounded up.";

export const days = (): string => "How many days to look ahead.";

export const sentence = (): string => "What the tasks of the coming days need, how much, and from when on.";
