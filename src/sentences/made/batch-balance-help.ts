// Made by npm run sentences from the files of sentences; a test holds it equal.

export const answers = (): string => "One row per batch. Not come up, Graded out, Not taken and Lost later are what each count misses of the one before, without those culled or given away. Stage not known: a count was skipped between. Unexplained: plants of which no count tells; below 0 if there are more than can be.";

export const sentence = (): string => "Where every plant of each batch went: lost at which stage, culled, given, dispatched, still there or unexplained.";
