// Made by npm run sentences from the files of sentences; a test holds it equal.

import { list, select } from "../runtime";

export const aBlankCell = (): string => "a blank cell";

export const belowOneDay = (d: { readonly argument: string | number; readonly found: string | number }): string => d.argument + " must be a whole number of days, 1 or more. Found " + d.found;

export const cellInColumn = (d: { readonly argument: string | number; readonly row: string | number; readonly column: string | number }): string => d.argument + " row " + d.row + ", column " + d.column + ",";

export const columnsUnreadable = (d: { readonly name: string | number; readonly header: string | number }): string => "columns must be columns of text: our name, your word, and what it is. Found " + d.name + " beside " + d.header;

export const dayBelowZero = (d: { readonly day: string | number }): string => "days must be 0 or more. Found " + d.day;

export const daysNotRising = (d: { readonly day: string | number; readonly before: string | number }): string => "days must rise. Found " + d.day + " after " + d.before;

export const inspectionsDiffer = (d: { readonly days: string | number; readonly counts: string | number }): string => "days and counts must have the same number of rows. Found " + d.days + " and " + d.counts;

export const isLoading = (d: { readonly cell: string | number }): string => d.cell + " is still loading";

export const levelOutOfRange = (d: { readonly argument: string | number; readonly found: string | number }): string => d.argument + " must lie between 0 and 1, such as 0.8 or 80%. Found " + d.found;

export const methodsFit = (d: { readonly name: string | number; readonly methods: string | number }): string => "\"" + d.name + "\" fits more than one method. Name one: " + d.methods;

export const missing = (d: { readonly argument: string | number; readonly needs: "crew" | "day" | "name" | "places" | "table" }): string => d.argument + " is missing: give " + select(d.needs, { day: "a day", name: "a name", crew: "a table with Person and Hours a day", places: "a table with Place and Holds", table: "the range of your table", other: "" });

export const moreUpThanSown = (d: { readonly up: string | number; readonly sown: string | number }): string => d.up + " came up of " + d.sown + " sown: more than all";

export const noHeader = (d: { readonly begins: string | number }): string => "records has no header row in its first ten rows that names a batch or a step. It starts with " + d.begins;

export const noPlants = (d: { readonly successes: string | number; readonly trials: string | number }): string => "a range needs plants. Found " + d.successes + " of " + d.trials;

export const noSteps = (): string => "timetable has no steps";

export const notACount = (d: { readonly argument: string | number; readonly why: string | number }): string => d.argument + ": " + d.why;

export const nothingSown = (d: { readonly sown: string | number }): string => "sown must be 1 or more. Found " + d.sown;

export const notWanted = (d: { readonly argument: string | number; readonly wanted: "day" | "number" | "text"; readonly found: string | number }): string => d.argument + " must be " + select(d.wanted, { day: "a day", text: "a text", number: "a whole number, 0 or more", other: "" }) + ". Found " + d.found;

export const shows = (d: { readonly cell: string | number; readonly shown: string | number }): string => d.cell + " shows " + d.shown;

export const sizesDiffer = (d: { readonly taken: string | number; readonly grafted: string | number }): string => "taken and grafted must be of one size. Found " + d.taken + " and " + d.grafted;

export const toldAsUnknown = (d: { readonly found: string | number; readonly word: string | number; readonly kinds: readonly string[] }): string => "columns says \"" + d.found + "\" of \"" + d.word + "\". The third column says " + list(d.kinds) + " or nothing";

export const unknownMethod = (d: { readonly name: string | number; readonly known: string | number }): string => "There is no method \"" + d.name + "\". There are: " + d.known;

export const wantedOutOfRange = (d: { readonly argument: string | number; readonly most: string | number; readonly found: string | number }): string => d.argument + " must be a whole number from 1 to " + d.most + ". Found " + d.found;
