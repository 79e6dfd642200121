// Made by npm run sentences from the files of sentences; a test holds it equal.

export const answers = (): string => "A share from 0 to 1, or one for each row of the two columns.";

export const grafted = (): string => "Grafts made: a cell, or the matching column.";

export const heading = (): string => "Take rate";

export const sentence = (): string => "The share of grafts that took; blank where they are not counted yet.";

export const taken = (): string => "Takes counted: a cell, or a column of cells.";
