// Made by npm run sentences from the files of sentences; a test holds it equal.

export const answers = (): string =>
  "One row a batch that was under way then and whose outcome is known now; the last row counts how many ranges held.";

export const daysBefore = (): string =>
  "How many days before the as-of day to stand, such as 180.";

export const sentence = (): string =>
  "What the forecast would have said some days ago, knowing only what was recorded then, and how it held.";
