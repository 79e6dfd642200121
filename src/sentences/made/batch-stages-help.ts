// Made by npm run sentences from the files of sentences; a test holds it equal.

export const answers = (): string => "One row per open batch: the last step, the next with its days, and the days and plants when ready, each as a range.";

export const sentence = (): string => "How far each open batch is, what comes next, and how many plants will be ready when.";
