// Made by npm run sentences from the files of sentences; a test holds it equal.

export const asOf = (): string => "The day to look from: a cell with a date.";

export const columns = (): string => "Our name, your word, and what it is: header, value or not the same.";

export const ifLeftOut = (d: { readonly sentence: string | number; readonly usual: string | number }): string => d.sentence + " Left out, it is " + d.usual + ".";

export const level = (): string => "How sure ranges should be: 0.8 means right in about 8 of 10.";

export const looks = (): string => "Write \"hidden\", and looks, such as bud break, are left out and only counted.";

export const records = (): string => "Your table of batches with its header.";

export const timetable = (): string => "Your table of steps, or blank for the built-in ones.";
