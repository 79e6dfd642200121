// Made by npm run sentences from the files of sentences; a test holds it equal.

import { count, list, plural } from "../runtime";

export const allUnrated = (): string => "For all tasks no hours are known. They need a count of plants, and Per person-hour in the timetable.";

export const awayHands = (): string => "Not there:";

export const batches = (): string => "Batches";

export const by = (d: { readonly day: string | number }): string => "by " + d.day;

export const closed = (): string => "closed";

export const fits = (d: { readonly hours: string | number }): string => "There are enough hands: " + d.hours + " planned.";

export const fitsRated = (d: { readonly hours: string | number }): string => "There are enough hands where hours are known: " + d.hours + " planned.";

export const fortnight = (): string => "The fortnight, day by day";

export const freeHands = (): string => "No work yet:";

export const hoursUnknown = (): string => "Hours not known";

export const madeCrew = (d: { readonly tab: string | number }): string => "Made the tab " + d.tab + ". Fill in who is there and how many hours a day.";

export const makeCrew = (): string => "Make an empty Crew tab";

export const making = (): string => "Making the tab";

export const nobodyNamed = (d: { readonly tab: string | number; readonly columns: readonly string[] }): string => "The tab " + d.tab + " names nobody yet. Fill in one row per person under " + list(d.columns) + ".";

export const noCrew = (d: { readonly columns: readonly string[] }): string => "To see whether there are enough hands, make a tab called Crew: one row per person, with the columns " + list(d.columns) + ".";

export const nothingPlanned = (): string => "Nothing is planned.";

export const personsFrom = (d: { readonly tab: string | number }): string => "Crew is read from the tab " + d.tab + ". List closed days in a tab called Closed days (column Day).";

export const personsFromClosed = (d: { readonly tab: string | number; readonly closed: string | number }): string => "Crew is read from the tab " + d.tab + ", closed days from " + d.closed + ".";

export const planning = (): string => "Planning the fortnight";

export const plants = (d: { readonly plants: number }): string => plural(d.plants, { one: count(d.plants) + " plant", other: count(d.plants) + " plants" });

export const tasks = (): string => "Tasks";

export const tooMuch = (): string => "too much";

export const tooMuchHelp = (): string => "These days are marked “too much”. Hours left in them belong to people who can't do these tasks.";

export const unplaced = (d: { readonly tasks: number }): string => plural(d.tasks, { one: count(d.tasks) + " task is", other: count(d.tasks) + " tasks are" }) + " not planned in these days, in part or whole";

export const unrated = (d: { readonly tasks: number }): string => "We can't tell the hours of " + plural(d.tasks, { one: count(d.tasks) + " task", other: count(d.tasks) + " tasks" }) + ". Count the plants, and fill in Per person-hour in the timetable.";

export const unratedTasks = (d: { readonly tasks: number }): string => "+ " + plural(d.tasks, { one: count(d.tasks) + " task", other: count(d.tasks) + " tasks" });

export const whoCan = (): string => "Who can";
