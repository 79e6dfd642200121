// Made by npm run sentences from the files of sentences; a test holds it equal.

export const aPartOfAPlant = (): string => "a part of a plant";

export const belowZero = (): string => "a number of plants can't be below 0";

export const cellShows = (d: { readonly shown: string | number }): string => "the cell shows " + d.shown;

export const dateForCount = (): string => "a date, not a number of plants";

export const dayOrMonthFirst = (): string => "day or month may come first";

export const eitherDay = (d: { readonly one: string | number; readonly other: string | number }): string => "either " + d.one + " or " + d.other;

export const neitherDayNorYes = (): string => "neither a day nor yes or no";

export const noSuchDay = (): string => "no such day in the calendar";

export const notACount = (): string => "not a number of plants";

export const notADay = (): string => "not a date";

export const noYear = (): string => "a date without a year";

export const numberForDay = (): string => "a number, not a date";

export const over100Percent = (): string => "more than 100 per cent";

export const percentOfNothing = (): string => "a per cent, but no count before it";

export const tickBoxForCount = (): string => "a tick box, not a number of plants";

export const tickBoxForDay = (): string => "a tick box, not a date";

export const tooFarAway = (d: { readonly day: string | number }): string => d.day + " is too far away to be right";

export const tooManyPlants = (): string => "too large to be a number of plants";
