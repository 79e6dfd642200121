// Made by npm run sentences from the files of sentences; a test holds it equal.

export const answers = (): string => "One row per batch under way then whose result is known now. The last row says how many ranges came true.";

export const daysBefore = (): string => "How many days back from the as-of day, such as 180.";

export const sentence = (): string => "What the forecast would have said some days ago, from the records of that day, and whether it was right.";
