// Made by npm run sentences from the files of sentences; a test holds it equal.

export const answers = (): string => "Two columns, low and high, from 0 to 1 (Wilson's interval); blank where not counted yet.";

export const grafted = (): string => "Grafts made: a cell, or the matching column.";

export const high = (): string => "High";

export const level = (): string => "How sure ranges should be: 0.8 means right in about 8 of 10.";

export const low = (): string => "Low";

export const sentence = (): string => "Between what shares the take rate lies, given how many were grafted: low and high.";

export const taken = (): string => "Takes counted: a cell, or a column of cells.";
