// Made by npm run sentences from the files of sentences; a test holds it equal.

export const answers = (): string => "One row per batch and step. Steps of closed batches carry what was recorded only.";

export const sentence = (): string => "Every step of every batch: what is recorded, and what is expected of steps to come.";
