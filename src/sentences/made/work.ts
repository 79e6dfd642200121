// Made by npm run sentences from the files of sentences; a test holds it equal.

import { count, list, plural } from "../runtime";

export const dayRange = (d: { readonly from: string | number; readonly to: string | number }): string => d.from + " to " + d.to;

export const daysLate = (d: { readonly days: number }): string => plural(d.days, { one: count(d.days) + " day", other: count(d.days) + " days" }) + " late";

export const neededFor = (d: { readonly step: string | number; readonly batches: number; readonly plants: number }): string => d.step + " (" + plural(d.batches, { one: count(d.batches) + " batch", other: count(d.batches) + " batches" }) + ", " + plural(d.plants, { one: count(d.plants) + " plant", other: count(d.plants) + " plants" }) + ")";

export const noFit = (): string => "doesn't fit";

export const noPlants = (): string => "no plants";

export const noRate = (): string => "hours unknown, no work rate in the timetable";

export const notBefore = (d: { readonly day: string | number }): string => "not before " + d.day;

export const notCounted = (): string => "hours unknown, plants not counted";

export const partOf = (d: { readonly plants: number }): string => "part of " + count(d.plants);

export const plannedLater = (d: { readonly tasks: number; readonly end: string | number }): string => plural(d.tasks, { one: count(d.tasks) + " task", other: count(d.tasks) + " tasks" }) + " won't be finished by " + d.end + ".";

export const tasksNotCounted = (d: { readonly tasks: number }): string => plural(d.tasks, { one: count(d.tasks) + " task is", other: count(d.tasks) + " tasks are" }) + " left out: plants not counted.";

export const tooMuch = (d: { readonly days: string | number }): string => "Too much work, " + d.days + ".";

export const tooMuchNobody = (d: { readonly asked: string | number; readonly tasks: readonly string[] }): string => "It takes " + d.asked + " hours, and nobody may do " + list(d.tasks) + ".";

export const tooMuchOnly = (d: { readonly asked: string | number; readonly persons: readonly string[]; readonly tasks: readonly string[]; readonly there: string | number }): string => "It takes " + d.asked + " hours, and only " + list(d.persons) + " may do " + list(d.tasks) + ", with " + d.there + " hours. Others have hours left in these days.";

export const tooMuchSum = (d: { readonly asked: string | number; readonly there: string | number; readonly short: string | number }): string => "It takes " + d.asked + " hours and you have " + d.there + ". You need at least " + d.short + " more.";
