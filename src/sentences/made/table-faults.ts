// Made by npm run sentences from the files of sentences; a test holds it equal.

import { list } from "../runtime";

export const daysOutOfRange = (d: { readonly most: string | number; readonly found: string | number }): string => "days is 1 to " + d.most + ", not " + d.found;

export const noHeaderRow = (d: { readonly argument: string | number; readonly columns: readonly string[] }): string => d.argument + " has no header row with " + list(d.columns) + " in its first ten rows";

export const rowLoading = (d: { readonly argument: string | number; readonly row: string | number }): string => "a cell of " + d.argument + " row " + d.row + " is still loading";

export const rowShows = (d: { readonly argument: string | number; readonly row: string | number; readonly shown: string | number }): string => "a cell of " + d.argument + " row " + d.row + " shows " + d.shown;
