// Made by npm run sentences from the files of sentences; a test holds it equal.

export const answers = (): string => "One row per group: its rate, the rate anyone would have had with its batches, its rate evened for them (as if all had had the same) with a range, and one of four readings: above the rest, below the rest, no clear difference, too few to tell.";

export const by = (): string => "The column whose groups you compare, such as Grafter.";

export const evenFor = (): string => "What to even for: one column, or several joined with \"+\", such as Variety+Month. Month, Season, Rootstock age in weeks and Scion days stored are made from the days.";

export const level = (): string => "How sure ranges should be: 0.8 means right in about 8 of 10.";

export const sentence = (): string => "Take rates of grafters, scion sources or other groups, compared like for like.";
