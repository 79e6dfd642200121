// Made by npm run sentences from the files of sentences; a test holds it equal.

import { count, plural, select } from "../runtime";

export const afterToday = (d: { readonly day: string | number; readonly today: string | number }): string => d.day + " is after today, " + d.today + ". Is that right?";

export const beforeStep = (d: { readonly step: string | number; readonly day: string | number; readonly earlier: string | number; readonly earlierDay: string | number }): string => d.step + " on " + d.day + " would come before " + d.earlier + " on " + d.earlierDay + ". Is that right?";

export const beforeToday = (d: { readonly day: string | number; readonly today: string | number }): string => d.day + " is before today, " + d.today + ". Is that right?";

export const blankSince = (d: { readonly header: string | number; readonly cell: string | number; readonly wrote: string | number }): string => d.header + " (" + d.cell + ") is blank now, " + d.wrote + " was written. So nothing is taken back.";

export const changedSince = (d: { readonly header: string | number; readonly cell: string | number; readonly stands: string | number; readonly wrote: string | number }): string => d.header + " (" + d.cell + ") now says " + d.stands + ". We wrote " + d.wrote + ". So nothing is taken back.";

export const columnLacks = (d: { readonly what: "count" | "note"; readonly task: string | number; readonly value: string | number }): string => "Your table has no column for the " + select(d.what, { count: "count", note: "note", other: "" }) + " of " + d.task + ". Keep " + d.value + " in the write log only?";

export const filledSince = (d: { readonly header: string | number; readonly cell: string | number; readonly stands: string | number }): string => d.header + " (" + d.cell + ") was blank and now says " + d.stands + ". So the row stays as it is.";

export const holdsAlready = (d: { readonly header: string | number; readonly cell: string | number; readonly stands: string | number; readonly would: string | number }): string => d.header + " (" + d.cell + ") already says " + d.stands + ". Write " + d.would + " over it?";

export const holdsTooMuch = (d: { readonly header: string | number; readonly cell: string | number; readonly stands: string | number; readonly would: string | number }): string => d.header + " (" + d.cell + ") already says " + d.stands + ", too long to be put back whole. Write " + d.would + " over it?";

export const lineAlready = (d: { readonly step: string | number; readonly batch: string | number; readonly row: string | number; readonly day: string | number }): string => d.step + " of " + d.batch + " is already in row " + d.row + ", " + d.day + ". Write another line?";

export const lineCounted = (d: { readonly step: string | number; readonly batch: string | number; readonly row: string | number; readonly day: string | number; readonly count: number }): string => d.step + " of " + d.batch + " is already in row " + d.row + ", " + d.day + ", " + plural(d.count, { one: count(d.count) + " plant", other: count(d.count) + " plants" }) + ". Write another line?";

export const lineUndated = (d: { readonly step: string | number; readonly batch: string | number; readonly row: string | number }): string => d.step + " of " + d.batch + " is already in row " + d.row + ", without a day. Write another line?";

export const moreThanBefore = (d: { readonly count: number; readonly before: number; readonly step: string | number; readonly batch: string | number }): string => count(d.count) + " is more than the " + count(d.before) + " at " + d.step + " of " + d.batch + ". Is that right?";

export const nameAlready = (d: { readonly order: string | number; readonly row: string | number; readonly tab: string | number }): string => "Order \"" + d.order + "\" is already in row " + d.row + " of " + d.tab + ". Write another of that name?";

export const newColumn = (d: { readonly step: string | number; readonly cell: string | number }): string => "Your table has no column for " + d.step + ". Add one, with its header in " + d.cell + "? It stays if the day is taken back. Make the tabs again in Set up afterwards, so that they read it too.";

export const notCounted = (d: { readonly step: string | number; readonly batch: string | number }): string => d.step + " of " + d.batch + " has no count. Enter it, or write the day alone?";

export const tooLong = (d: { readonly what: "customer" | "note" | "order" | "variety" | "who"; readonly length: number; readonly most: number }): string => "The " + select(d.what, { customer: "customer", note: "note", order: "order", variety: "variety", who: "name", other: "" }) + " has " + count(d.length) + " characters, and a cell takes " + count(d.most) + ". Cut it to fit?";
