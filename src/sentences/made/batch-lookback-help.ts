// Made by npm run sentences from the files of sentences; a test holds it equal.

export const answers = (): string => "One row per batch under way then whose whole range of days is past, whatever became of it. One that died had no plants ready, on no day. Below: how many ranges held, how many batches can't be judged yet, and whether a plain rule would have done better.";

export const daysBefore = (): string => "How many days back from the as-of day, such as 180.";

export const sentence = (): string => "What the forecast would have said some days ago, from the records of that day, and whether it was right.";
