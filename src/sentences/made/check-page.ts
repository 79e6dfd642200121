// Made by npm run sentences from the files of sentences; a test holds it equal.

import { count, plural } from "../runtime";

export const checking = (): string => "Checking your tables";

export const column = (d: { readonly column: string | number }): string => "Column " + d.column;

export const found = (): string => "Found:";

export const going = (): string => "Going to the cell";

export const moreRows = (d: { readonly rows: number }): string => plural(d.rows, { one: count(d.rows) + " more row", other: count(d.rows) + " more rows" });

export const noTrouble = (): string => "No trouble found.";

export const plants = (d: { readonly plants: number }): string => plural(d.plants, { one: count(d.plants) + " plant", other: count(d.plants) + " plants" });

export const pleaseCheck = (): string => "Please check";

export const press = (): string => "Press a row or column to go to it in the sheet.";

export const readAgain = (): string => "Read again";

export const readAsSaid = (): string => "Used, read as said here";

export const row = (d: { readonly row: string | number }): string => "Row " + d.row;

export const rowColumn = (d: { readonly row: string | number; readonly column: string | number }): string => "Row " + d.row + ", " + d.column;

export const selected = (d: { readonly cell: string | number }): string => "Selected in the sheet: " + d.cell;

export const severalRows = (d: { readonly rows: number; readonly plants: number }): string => count(d.rows) + " rows" + plural(d.plants, { "0": "", one: ", " + count(d.plants) + " plant", other: ", " + count(d.plants) + " plants" });

export const tab = (d: { readonly tab: string | number }): string => "Tab " + d.tab;

export const title = (): string => "Troubles in your tables";

export const whatHappens = (): string => "What happens:";

export const whatToDo = (): string => "What to do:";

export const wholeTable = (): string => "The whole table";
