// Made by npm run sentences from the files of sentences; a test holds it equal.

import { count, list, plural } from "../runtime";

export const cells = (d: { readonly cells: readonly string[] }): string => list(d.cells);

export const correctTab = (d: { readonly tab: string | number }): string => "Correct the tab " + d.tab;

export const moreCells = (d: { readonly more: number }): string => count(d.more) + " more";

export const nothingToDo = (): string => "Nothing";

export const noTrouble = (): string => "No trouble found";

export const onlyThisCheck = (): string => "Until it is corrected, only this check is answered";

export const rows = (d: { readonly rows: number }): string => plural(d.rows, { one: count(d.rows) + " row", other: count(d.rows) + " rows" }) + " in the range";

export const rowsAllUsed = (): string => "Every row is used";

export const rowsUsed = (d: { readonly used: number; readonly leftOut: number; readonly notBatches: number; readonly heading: number; readonly blank: number }): string => plural(d.used, { one: count(d.used) + " row is", other: count(d.used) + " rows are" }) + " used, " + plural(d.leftOut, { one: count(d.leftOut) + " is", other: count(d.leftOut) + " are" }) + " left out" + plural(d.notBatches, { "0": "", one: ", " + count(d.notBatches) + " is a sum, heading or note", other: ", " + count(d.notBatches) + " are sums, headings or notes" }) + plural(d.heading, { "0": "", one: ", " + count(d.heading) + " is the header", other: ", " + count(d.heading) + " are the header and what stands above it" }) + plural(d.blank, { "0": "", one: ", " + count(d.blank) + " is blank", other: ", " + count(d.blank) + " are blank" });

export const untold = (d: { readonly formulas: number }): string => plural(d.formulas, { one: count(d.formulas) + " formula of yours reads", other: count(d.formulas) + " formulas of yours read" }) + " the records without what you told in Set up";

export const untoldHappens = (): string => "Columns and names may be read otherwise than in the tabs that we make";

export const untoldToDo = (d: { readonly columns: string | number }): string => "Give the argument columns: " + d.columns;

export const withoutGermination = (): string => "How seed comes up is answered without it";

export const withoutOrders = (): string => "Orders are answered without it";

export const withoutPlaces = (): string => "How full places get is answered without it";

export const withoutPrices = (): string => "Costs are answered without it";

export const withoutWork = (): string => "Work is planned without it";
