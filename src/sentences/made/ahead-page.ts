// Made by npm run sentences from the files of sentences; a test holds it equal.

import { count, plural, select, share } from "../runtime";

export const all = (): string => "All varieties";

export const asTable = (): string => "The same as a table";

export const batches = (d: { readonly batches: number }): string => plural(d.batches, { one: count(d.batches) + " batch is likely in this month:", other: count(d.batches) + " batches are likely in this month:" });

export const batchesReady = (d: { readonly batches: number }): string => plural(d.batches, { one: count(d.batches) + " batch is ready:", other: count(d.batches) + " batches are ready:" });

export const byItsEnd = (d: { readonly numbers: string | number }): string => "By its end " + d.numbers;

export const dayUnknown = (): string => "day not known";

export const holds = (d: { readonly level: number }): string => share(d.level) + " of such ranges should come true.";

export const likely = (d: { readonly window: string | number; readonly day: string | number }): string => d.window + ", likely " + d.day;

export const loading = (): string => "Working out what will be ready";

export const noBatch = (): string => "No batch is likely in this month. Those of other months may still fall into it.";

export const noneComing = (d: { readonly leftOut: "no" | "yes" }): string => select(d.leftOut, { yes: "We could not read everything. Of the rest, no", no: "No", other: "" }) + " open batch with counted plants is on its way to ready.";

export const noneLikely = (): string => "none likely";

export const notCounted = (): string => "plants not counted";

export const plants = (d: { readonly numbers: string | number }): string => d.numbers + " plants";

export const readAgain = (): string => "Read again";

export const reading = (): string => "The bar runs from fewest to most, and the tick is the likely number. Likely numbers add up. By its end: ready by then, plants ready now included.";

export const ready = (): string => "ready";

export const readyByMonth = (d: { readonly variety: string | number }): string => "Plants ready by month: " + d.variety;

export const readyOf = (d: { readonly variety: string | number }): string => "Plants ready: " + d.variety;

export const readySince = (d: { readonly day: string | number }): string => "ready since " + d.day;

export const readySinceAbout = (d: { readonly day: string | number }): string => "ready since about " + d.day;

export const showBatches = (): string => "Press a month to see its batches.";

export const title = (): string => "Plants ready, by month";

export const together = (d: { readonly numbers: string | number }): string => "Now and in all these months: " + d.numbers + " plants.";

export const trackRange = (d: { readonly fewest: number; readonly most: number; readonly likely: number }): string => count(d.fewest) + " to " + count(d.most) + " plants, likely " + count(d.likely);

export const upTo = (d: { readonly most: number }): string => count(d.most) + " plants";

export const variety = (): string => "Variety";
