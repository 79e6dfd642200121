// Made by npm run sentences from the files of sentences; a test holds it equal.

import { count, plural } from "../runtime";

export const age = (d: { readonly day: string | number }): string => "Of " + d.day;

export const ageChanged = (d: { readonly day: string | number }): string => "List of " + d.day + ". Records have changed since. Tick this row's box for a new one";

export const ageOtherDay = (d: { readonly day: string | number }): string => "List of " + d.day + ", not today's. Tick this row's box for a new one";

export const ageUnknown = (d: { readonly day: string | number }): string => "List of " + d.day + ". We can't tell what has changed since. Tick this row's box for a new one";

export const batch = (): string => "Batch";

export const by = (): string => "By";

export const caution = (): string => "Caution";

export const change = (): string => "±";

export const counted = (): string => "Count";

export const done = (): string => "Done";

export const from = (): string => "From";

export const hours = (): string => "Hours";

export const justEntered = (): string => "Somebody has just entered something in the due list. Try again";

export const lateBy = (d: { readonly days: number }): string => "late by " + plural(d.days, { one: count(d.days) + " day", other: count(d.days) + " days" });

export const lateMark = (d: { readonly days: number }): string => "LATE " + plural(d.days, { one: count(d.days) + " day", other: count(d.days) + " days" });

export const madeBy = (d: { readonly day: string | number; readonly word: string | number; readonly sign: string | number }): string => "of " + d.day + ". Tick Done to record a task, and fill Count where plants are counted. Clear the box to take it back. If a task is not to be done, write \"" + d.word + "\" under Count and tick Done. Plants with " + d.sign + " are an estimate.";

export const memory = (): string => "Write";

export const note = (): string => "Note";

export const offTheList = (): string => "not on the list any more. Clear the row to drop it";

export const place = (): string => "Place";

export const plants = (): string => "Plants";

export const sign = (): string => "?";

export const state = (): string => "Written";

export const status = (): string => "Status";

export const task = (): string => "Task";

export const what = (): string => "What";

export const who = (): string => "Who";

export const writtenDaily = (): string => "Put in at each refresh: functions can't use TODAY() in this spreadsheet";

export const yes = (): string => "Yes, write it";
