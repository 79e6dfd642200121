// Made by npm run sentences from the files of sentences; a test holds it equal.

import { count } from "../runtime";

export const chooseOther = (d: { readonly name: string | number }): string => "\"" + d.name + "\" is not a column that we can read: choose another";

export const compareOther = (d: { readonly header: string | number }): string => "Takes can't be compared by \"" + d.header + "\": read the columns again";

export const correctTimetable = (d: { readonly why: string | number; readonly tab: string | number }): string => d.why + ". Correct the tab " + d.tab;

export const headerGone = (d: { readonly header: string | number }): string => "The table has no header \"" + d.header + "\": read the columns again";

export const lostHeader = (d: { readonly header: string | number; readonly name: string | number }): string => "In Set up you said that \"" + d.header + "\" is " + d.name + ", but the table has no such header any more. Open Set up and choose again";

export const noMethod = (d: { readonly name: string | number }): string => "There is no method \"" + d.name + "\"";

export const noRecordsTab = (d: { readonly settings: string | number }): string => d.settings + " names no records tab: choose it in Set up";

export const noSuchTimetable = (d: { readonly tab: string | number }): string => "There is no timetable of yours in a tab \"" + d.tab + "\": choose another in Set up";

export const noTab = (d: { readonly tab: string | number }): string => "There is no tab \"" + d.tab + "\"";

export const notSetUp = (): string => "The workbook is not set up yet: open Set up first";

export const oursIsNone = (d: { readonly tab: string | number }): string => "\"" + d.tab + "\" is a tab of the add-in: choose the one with your own table";

export const tabGone = (d: { readonly tab: string | number }): string => "There is no tab \"" + d.tab + "\" any more: give it its name back, or choose the records tab in Set up";

export const timetableTab = (d: { readonly madeAt: string | number }): string => "timetable, copied " + d.madeAt + " from the built-in steps. It is yours to change.";

export const tooManyColumns = (d: { readonly most: number; readonly found: number }): string => "You can tell of at most " + count(d.most) + " words. Found " + count(d.found);
