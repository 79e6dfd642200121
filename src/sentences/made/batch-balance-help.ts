// Made by npm run sentences from the files of sentences; a test holds it equal.

export const answers = (): string =>
  "One row a batch. Unexplained is what should stand less what stands by the last count; below 0 when more stand than can.";

export const sentence = (): string =>
  "Where every plant of each batch went: culled, given, dispatched, standing or unexplained.";
