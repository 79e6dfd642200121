// Made by npm run sentences from the files of sentences; a test holds it equal.

import { count, list, plural } from "../runtime";

export const cells = (d: { readonly cells: readonly string[] }): string => list(d.cells);

export const correctTab = (d: { readonly tab: string | number }): string => "Correct the tab " + d.tab;

export const crewHappens = (): string => "Work is planned without it";

export const moreCells = (d: { readonly more: number }): string => count(d.more) + " more";

export const nothingToDo = (): string => "Nothing";

export const noTrouble = (): string => "No trouble found";

export const onlyThisCheck = (): string => "Until it is corrected, only this check is answered";

export const rows = (d: { readonly rows: number }): string => plural(d.rows, { one: count(d.rows) + " row", other: count(d.rows) + " rows" }) + " in the range";

export const rowsAllUsed = (): string => "Every row is used";

export const rowsUsed = (d: { readonly used: number; readonly leftOut: number; readonly notBatches: number; readonly heading: number; readonly blank: number }): string => count(d.used) + " used, " + count(d.leftOut) + " left out, " + count(d.notBatches) + " skipped (sums, headings, notes), " + count(d.heading) + " header or above it, " + count(d.blank) + " blank";

export const untold = (d: { readonly formulas: number }): string => plural(d.formulas, { one: count(d.formulas) + " formula of yours reads", other: count(d.formulas) + " formulas of yours read" }) + " the records without what you told in Set up";

export const untoldHappens = (): string => "Columns and names may be read otherwise than in the tabs that we make";

export const untoldToDo = (d: { readonly columns: string | number }): string => "Give the argument columns: " + d.columns;
