// Made by npm run sentences from the files of sentences; a test holds it equal.

export const answers = (): string => "One row per period: its rate, the usual rate, the limits within which periods have always varied, and one of five readings: usual, low, high, drifting down, drifting up. A period whose takes are not all counted is marked as still open.";

export const by = (): string => "A column whose groups are each followed on their own, or several joined with \"+\".";

export const period = (): string => "Grafting by \"week\", \"month\" or \"quarter\"; month if left out.";

export const sentence = (): string => "Take rates over time, and when one is out of the ordinary or drifting.";
