// Made by npm run sentences from the files of sentences; a test holds it equal.

import { count, plural } from "../runtime";

export const daysLate = (d: { readonly days: number }): string => plural(d.days, { one: count(d.days) + " day", other: count(d.days) + " days" }) + " late.";

export const leftOut = (): string => "Not in the due list";

export const summary = (d: { readonly task: string | number; readonly batch: string | number }): string => d.task + ": " + d.batch;

export const summaryPlants = (d: { readonly task: string | number; readonly batch: string | number; readonly plants: number }): string => d.task + ": " + d.batch + ", " + plural(d.plants, { one: count(d.plants) + " plant", other: count(d.plants) + " plants" });

export const summaryPlantsAbout = (d: { readonly task: string | number; readonly batch: string | number; readonly plants: number }): string => d.task + ": " + d.batch + ", about " + plural(d.plants, { one: count(d.plants) + " plant", other: count(d.plants) + " plants" });

export const window = (d: { readonly from: string | number; readonly by: string | number; readonly usual: string | number }): string => "From " + d.from + " to " + d.by + ", usually " + d.usual + ".";
