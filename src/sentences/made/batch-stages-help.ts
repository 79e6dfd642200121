// Made by npm run sentences from the files of sentences; a test holds it equal.

export const answers = (): string =>
  "One row an open batch: the last step, the next with its days, and the days and plants when ready, each as a range.";

export const sentence = (): string =>
  "Where each open batch stands, what comes next, and when how many plants will be ready.";
