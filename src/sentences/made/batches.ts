// Made by npm run sentences from the files of sentences; a test holds it equal.

import { count, plural, select } from "../runtime";

export const about = (): string => "about";

export const all = (): string => "All";

export const allMonths = (): string => "All together";

export const closedUndated = (d: { readonly batches: number }): string => plural(d.batches, { one: count(d.batches) + " batch was closed on no written day and counts", other: count(d.batches) + " batches were closed on no written day and count" }) + " as dead. Write the day when you close one.";

export const closedWith = (d: { readonly plants: number }): string => plural(d.plants, { one: count(d.plants) + " plant was", other: count(d.plants) + " plants were" }) + " still there when it was closed.";

export const coming = (): string => "coming";

export const counted = (): string => "counted";

export const due = (): string => "due";

export const held = (): string => "Held";

export const heldOf = (d: { readonly held: number; readonly all: number }): string => count(d.held) + " of " + count(d.all);

export const late = (): string => "late";

export const leftAfterCount = (d: { readonly left: number; readonly standing: number }): string => count(d.left) + " gone since the last count. " + plural(d.standing, { "0": "None are", one: count(d.standing) + " is", other: count(d.standing) + " are" }) + " there now.";

export const moreLeft = (): string => "More plants left than came in.";

export const moreStand = (): string => "More plants than there should be.";

export const nextLate = (d: { readonly step: string | number; readonly by: string | number; readonly since: string | number }): string => d.step + " was due by " + d.by + ". Nothing recorded since " + d.since + ".";

export const no = (): string => "no";

export const noDates = (): string => "No day recorded, so we can't give dates.";

export const noDayYet = (): string => "No day recorded yet.";

export const noneHeld = (): string => "No batch forecast then can be judged yet";

export const noPlantsCounted = (): string => "No plants counted yet.";

export const noSuchMethod = (): string => "The timetable doesn't have this method.";

export const notJudgedYet = (d: { readonly batches: number }): string => "Not judged yet: " + plural(d.batches, { one: count(d.batches) + " batch", other: count(d.batches) + " batches" }) + ". Some of their days are still to come.";

export const plainRule = (d: { readonly days: "alike" | "better" | "none" | "worse"; readonly plants: "alike" | "better" | "none" | "worse" }): string => select(d.days, { better: "A plain rule would have done better on days.", alike: "A plain rule would have done as well on days.", worse: "A plain rule would have done worse on days.", none: "Too few batches were finished then to try a plain rule on days.", other: "" }) + " " + select(d.plants, { better: "It would have done better on plants.", alike: "It would have done as well on plants.", worse: "It would have done worse on plants.", none: "Too few were finished to try it on plants.", other: "" }) + " The rule: what finished batches took, and kept, from the same last step.";

export const planned = (): string => "Planned.";

export const readyNow = (): string => "Ready now";

export const setAside = (d: { readonly since: string | number }): string => "Nothing recorded since " + d.since + ": left out of forecasts. Close it, or record what happened.";

export const severalMethods = (): string => "More than one method fits.";

export const wentOn = (d: { readonly batches: number }): string => "Not judged: " + plural(d.batches, { one: count(d.batches) + " lot whose plants", other: count(d.batches) + " lots whose plants" }) + " went on as other batches.";

export const yes = (): string => "yes";
