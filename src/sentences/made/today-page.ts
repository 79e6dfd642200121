// Made by npm run sentences from the files of sentences; a test holds it equal.

import { count, list, plural, select } from "../runtime";

export const about = (d: { readonly plants: number }): string => "about " + count(d.plants);

export const ahead = (): string => "Days ahead";

export const byPerson = (): string => "by person";

export const byPlace = (): string => "by place";

export const calendarFile = (): string => "Calendar file";

export const calendarSaved = (): string => "The calendar file is in your downloads. Open it with your calendar.";

export const cancel = (): string => "Cancel";

export const canWait = (d: { readonly tasks: readonly string[] }): string => "Can wait: " + list(d.tasks);

export const caution = (): string => "Caution";

export const coming = (): string => "Coming";

export const countBlank = (): string => "Blank if nobody counted";

export const counted = (): string => "Count";

export const day = (): string => "Day";

export const done = (): string => "Done";

export const doneAndWritten = (): string => "Done and written";

export const doneTask = (d: { readonly task: string | number; readonly batch: string | number }): string => "Done: " + d.task + ", " + d.batch;

export const due = (): string => "Due";

export const goesUnder = (d: { readonly header: string | number }): string => "Goes under " + d.header;

export const hours = (d: { readonly number: string | number; readonly rounded: number }): string => d.number + " " + plural(d.rounded, { one: "hour", other: "hours" }) + " of one person";

export const lateBy = (d: { readonly days: number }): string => "Late by " + plural(d.days, { one: count(d.days) + " day", other: count(d.days) + " days" });

export const loading = (): string => "Reading the due list";

export const lookFor = (d: { readonly tasks: readonly string[] }): string => "Look for: " + list(d.tasks);

export const makingCalendar = (): string => "Making the calendar file";

export const makingSheet = (): string => "Making the round sheet";

export const markDone = (): string => "Mark done";

export const markDoneOf = (d: { readonly task: string | number; readonly batch: string | number }): string => "Mark done: " + d.task + ", " + d.batch;

export const markedDone = (d: { readonly tasks: number }): string => plural(d.tasks, { one: count(d.tasks) + " task", other: count(d.tasks) + " tasks" }) + " marked done since this page opened";

export const minutes = (): string => "a few minutes of one person";

export const noPlace = (): string => "No place named";

export const note = (): string => "Note";

export const nothingDue = (d: { readonly leftOut: "no" | "yes"; readonly days: number }): string => select(d.leftOut, { yes: "We could not read everything. Of the rest, nothing is", no: "Nothing is", other: "" }) + " late, due or coming " + plural(d.days, { "0": "today", one: "in the next " + count(d.days) + " day", other: "in the next " + count(d.days) + " days" }) + ".";

export const nothingToPrint = (): string => "Nothing to print: the list is empty.";

export const nothingWritten = (): string => "Nothing was written.";

export const notToDo = (): string => "Not to be done";

export const notToDoOf = (d: { readonly task: string | number; readonly batch: string | number }): string => "Not to be done: " + d.task + ", " + d.batch;

export const notToDoWritten = (): string => "Written as not to be done";

export const plants = (d: { readonly plants: number }): string => plural(d.plants, { one: count(d.plants) + " plant", other: count(d.plants) + " plants" });

export const plantsAbout = (d: { readonly plants: number }): string => "about " + plural(d.plants, { one: count(d.plants) + " plant", other: count(d.plants) + " plants" });

export const plantsNotCounted = (): string => "plants not counted";

export const print = (): string => "Print round sheet";

export const readAgain = (): string => "Read again";

export const reminder = (): string => "A reminder: the records have no column for this step.";

export const roundSheet = (): string => "Round sheet";

export const rowMayHaveChanged = (): string => "Nothing was written. Read the list again: the row may have changed.";

export const save = (): string => "Save";

export const tally = (d: { readonly tasks: number; readonly status: string | number }): string => count(d.tasks) + " " + d.status;

export const tallyAll = (d: { readonly tally: string | number }): string => d.tally + ".";

export const taskOf = (d: { readonly task: string | number; readonly batches: readonly string[] }): string => d.task + " (" + list(d.batches) + ")";

export const who = (): string => "Who";

export const writing = (): string => "Writing to the records";

export const written = (): string => "Written to the records.";
