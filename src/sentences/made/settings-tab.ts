// Made by npm run sentences from the files of sentences; a test holds it equal.

export const asOf = (): string => "Every answer looks from this day. =TODAY() moves with the calendar";

export const columns = (): string => "Your words: \"header\" names a column, \"value\" a word in a cell, \"not the same\" two names that look alike, \"tab\" the tab with your Orders, Crew, Closed days, Places or Prices. Of a column there write Orders: Wanted, Crew: Person, Places: Holds";

export const compareBy = (d: { readonly noTab: string | number }): string => "A header in your sheet, or \"" + d.noTab + "\". Used when Set up makes the tabs";

export const daysAhead = (): string => "How far the due list looks ahead";

export const level = (): string => "How sure ranges should be: 0.8 means right in about 8 of 10";

export const line = (d: { readonly at: string | number; readonly version: string | number }): string => "settings, last set up " + d.at + " by version " + d.version + ". Change the second column.";

export const lineLost = (d: { readonly settings: string | number; readonly label: string | number }): string => d.settings + " has lost its line \"" + d.label + "\". Make the tabs again in Set up to get it back";

export const looks = (d: { readonly shown: string | number; readonly hidden: string | number }): string => "Steps at which you only look, such as bud break, on the due list and in Today: \"" + d.shown + "\" or \"" + d.hidden + "\"";

export const people = (d: { readonly initials: string | number; readonly names: string | number }): string => "How to call grafters and crew: \"" + d.initials + "\" or \"" + d.names + "\". Customers, and Who in the write log, stay as written";

export const recordsTab = (): string => "The tab with your table of batches";

export const timetableTab = (d: { readonly timetable: string | number }): string => "Your own tab with steps and days. Blank for " + d.timetable;
