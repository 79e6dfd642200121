// Made by npm run sentences from the files of sentences; a test holds it equal.

import { count, plural } from "../runtime";

export const answerInSetUp = (): string => "Answer it in Set up";

export const checking = (): string => "Checking your tables";

export const column = (d: { readonly column: string | number }): string => "Go to column " + d.column;

export const found = (): string => "Found:";

export const going = (): string => "Going to the cell";

export const goToRow = (d: { readonly row: string | number }): string => "Go to row " + d.row;

export const goToRows = (): string => "Go to a row:";

export const goToRowsUnder = (d: { readonly column: string | number }): string => "Go to a row, under " + d.column + ":";

export const howMany = (): string => "How many:";

export const howTo = (): string => "Mend each in the sheet or in Set up, then check again.";

export const leftOutRows = (d: { readonly rows: number }): string => plural(d.rows, { one: "Go to the row that is left out", other: "Go to the " + count(d.rows) + " rows that are left out" });

export const moreRows = (d: { readonly rows: number }): string => plural(d.rows, { one: count(d.rows) + " more row", other: count(d.rows) + " more rows" });

export const noTrouble = (): string => "No trouble found.";

export const plants = (d: { readonly plants: number }): string => plural(d.plants, { one: count(d.plants) + " plant", other: count(d.plants) + " plants" });

export const pleaseCheck = (d: { readonly number: number }): string => plural(d.number, { one: count(d.number) + " trouble", other: count(d.number) + " troubles, most plants first" });

export const readAgain = (): string => "Check again";

export const readAsSaid = (d: { readonly number: number }): string => plural(d.number, { one: count(d.number) + " reading", other: count(d.number) + " readings" }) + " to look at: used as said here";

export const row = (d: { readonly row: string | number }): string => "Row " + d.row;

export const rowColumn = (d: { readonly row: string | number; readonly column: string | number }): string => "Go to row " + d.row + ", " + d.column;

export const selected = (d: { readonly cell: string | number }): string => "Selected in the sheet: " + d.cell;

export const severalRows = (d: { readonly rows: number; readonly plants: number }): string => count(d.rows) + " rows" + plural(d.plants, { "0": "", one: ", " + count(d.plants) + " plant", other: ", " + count(d.plants) + " plants" });

export const tab = (d: { readonly tab: string | number }): string => "Go to the tab " + d.tab;

export const tally = (d: { readonly tally: string | number }): string => d.tally + ".";

export const title = (): string => "Troubles in your tables";

export const whatHappens = (): string => "What happens:";

export const whatToDo = (): string => "What to do:";

export const where = (): string => "Where:";

export const wholeTable = (): string => "The whole table";
