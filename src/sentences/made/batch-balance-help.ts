// Made by npm run sentences from the files of sentences; a test holds it equal.

export const answers = (): string => "One row per batch. Unexplained: plants that should be there, less the last count; below 0 if there are more.";

export const sentence = (): string => "Where every plant of each batch went: culled, given, dispatched, still there or unexplained.";
