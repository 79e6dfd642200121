// Made by npm run sentences from the files of sentences; a test holds it equal.

export const answers = (): string => "One row per column, most first: how much of the spread between batches it goes with, its best and worst group, and a reading. What goes with takes need not cause them.";

export const level = (): string => "How sure a link must be to be named, as a share.";

export const sentence = (): string => "Which recorded columns go with good and bad takes, alone and beside the others.";
