// Made by npm run sentences from the files of sentences; a test holds it equal.

export const blankCell = (): string => "a blank cell";

export const noHarvest = (d: { readonly found: string | number }): string => "harvest needs months such as \"Oct-Mar, May-Aug\", not \"" + d.found + "\"";

export const noHeader = (d: { readonly start: string | number }): string => "orders has no header row with Wanted and By in its first ten rows. It starts with " + d.start;

export const quoted = (d: { readonly start: string | number }): string => "\"" + d.start + "\"";

export const severalHarvests = (d: { readonly places: string | number }): string => "harvest has " + d.places + " places or crops. Give only the rows of yours";
