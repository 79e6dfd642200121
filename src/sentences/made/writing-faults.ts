// Made by npm run sentences from the files of sentences; a test holds it equal.

import { list, select } from "../runtime";

export const busy = (): string => "Somebody else is writing just now. Try again in a moment";

export const changed = (d: { readonly cell: string | number }): string => "Somebody else has just changed " + d.cell + ". Look again";

export const columnsGone = (d: { readonly headers: readonly string[]; readonly cells: readonly string[] }): string => "The table no longer has just one column " + list(d.headers) + ". Nothing is changed (it was " + list(d.cells) + ")";

export const doneAnyway = (d: { readonly because: string | number }): string => "All of it is written, but then the spreadsheet failed. Look again (" + d.because + ")";

export const filled = (d: { readonly filler: string | number; readonly cell: string | number }): string => "The formula in " + d.filler + " fills " + d.cell + ", so it can't be written over";

export const holdsFormula = (d: { readonly cell: string | number }): string => d.cell + " has a formula, so it can't be written over";

export const lineNotRead = (d: { readonly row: string | number }): string => "A line in row " + d.row + " would not be read as part of your log. Write it there yourself, or move the log to a tab of its own";

export const linesAbove = (d: { readonly tab: string | number; readonly mendedBy: "again" | "refresh" | "setUp" }): string => d.tab + " has lines of yours above its header. Move them away, then " + select(d.mendedBy, { again: "try again", refresh: "choose Refresh the due list in the Nursery menu", setUp: "make the tabs again in Set up", other: "" });

export const moved = (): string => "Somebody has just moved rows or columns of the table. Look again";

export const noBatch = (d: { readonly batch: string | number }): string => "The records no longer have a batch \"" + d.batch + "\". Look again";

export const noBox = (d: { readonly found: string | number }): string => "Done says \"" + d.found + "\". Tick the box instead";

export const noCells = (d: { readonly tab: string | number }): string => "\"" + d.tab + "\" is a chart or a linked sheet. Rename it, then try again";

export const noColumn = (d: { readonly task: string | number }): string => "Your table has no column for " + d.task + ". Add one";

export const noOrders = (d: { readonly tab: string | number }): string => "There is no longer a tab \"" + d.tab + "\" with orders. Nothing is changed";

export const noStep = (d: { readonly task: string | number }): string => "The timetable no longer has a step \"" + d.task + "\". Look again";

export const notACount = (d: { readonly found: string | number }): string => "\"" + d.found + "\" is not a count. Enter a whole number of plants, 0 or more";

export const notInLog = (): string => "The write log does not have this, or it is already taken back";

export const notOurs = (d: { readonly tab: string | number }): string => "You have a tab \"" + d.tab + "\" of your own. Rename it, then try again";

export const notPutBack = (d: { readonly because: string | number; readonly cells: readonly string[] }): string => d.because + ". Part of it may be written (" + list(d.cells) + "). The write log will say";

export const noWorkbook = (): string => "Nothing can be written from here. Open the workbook and use its menu";

export const orderGone = (d: { readonly order: string | number; readonly cells: readonly string[] }): string => "There is no longer an order \"" + d.order + "\". Nothing is changed (it was " + list(d.cells) + ")";

export const rowsAlike = (d: { readonly rows: readonly string[]; readonly about: string | number; readonly task: string | number }): string => "Rows " + list(d.rows) + " could each be " + d.about + ", " + d.task + ". Nothing is changed";

export const swallowed = (d: { readonly cell: string | number }): string => d.cell + " did not take what was written. It may be part of a merged cell, or hidden by a filter";

export const tabMissing = (d: { readonly tab: string | number }): string => "The tab " + d.tab + " is missing. Run Set up again";

export const tabThere = (d: { readonly tab: string | number; readonly columns: readonly string[] }): string => "You already have a tab \"" + d.tab + "\". Give it the columns " + list(d.columns) + ", or rename it, then try again";

export const taskGone = (d: { readonly task: string | number; readonly batch: string | number; readonly cells: readonly string[] }): string => "The records no longer have " + d.task + " of batch \"" + d.batch + "\". Nothing is changed (it was " + list(d.cells) + ")";

export const thereAlready = (d: { readonly task: string | number; readonly batch: string | number; readonly cells: readonly string[] }): string => "Nothing to write. " + d.task + " of " + d.batch + " is already there: " + list(d.cells);

export const twoBatches = (d: { readonly batch: string | number; readonly rows: readonly string[] }): string => "Two batches are called \"" + d.batch + "\" (rows " + list(d.rows) + "). Give them names of their own first";

export const unreadable = (d: { readonly name: string | number }): string => d.name + " can't be read. Enter it again";
