// Made by npm run sentences from the files of sentences; a test holds it equal.

export const below = (d: { readonly row: string | number; readonly tab: string | number; readonly shown: string | number }): string => "Row " + d.row + " of " + d.tab + " (" + d.shown + ") is below the orders, but not an order we can read. Correct it or move it away, then try again";

export const farAway = (d: { readonly column: string | number; readonly day: string | number }): string => d.column + " is " + d.day + ". Give a day within a hundred years";

export const noColumn = (d: { readonly tab: string | number; readonly column: string | number; readonly row: string | number }): string => d.tab + " has no column " + d.column + ". Write that header into row " + d.row + ", then try again";

export const noTab = (): string => "There is no tab of orders yet. Make one first";

export const notRead = (d: { readonly row: string | number; readonly tab: string | number }): string => "We could not read an order in row " + d.row + " of " + d.tab + ". Write it there yourself";
