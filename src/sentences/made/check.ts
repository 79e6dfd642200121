// Made by npm run sentences from the files of sentences; a test holds it equal.

import { count, plural } from "../runtime";

export const correctTab = (d: { readonly tab: string | number }): string => "Correct the tab " + d.tab;

export const nothingToDo = (): string => "Nothing";

export const noTrouble = (): string => "No trouble found";

export const onlyThisCheck = (): string => "Until it is corrected, only this check is answered";

export const rows = (d: { readonly rows: number }): string => plural(d.rows, { one: count(d.rows) + " row", other: count(d.rows) + " rows" }) + " in the range";

export const rowsAllUsed = (): string => "Every row is used";

export const rowsUsed = (d: { readonly used: number; readonly leftOut: number; readonly notBatches: number; readonly heading: number; readonly blank: number }): string => count(d.used) + " used, " + count(d.leftOut) + " left out, " + count(d.notBatches) + " skipped (sums, headings, notes), " + count(d.heading) + " header or above it, " + count(d.blank) + " blank";
