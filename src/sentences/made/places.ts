// Made by npm run sentences from the files of sentences; a test holds it equal.

import { count, list, plural } from "../runtime";

export const empty = (d: { readonly places: readonly string[] }): string => "Nothing stands in " + list(d.places) + ".";

export const forgotten = (d: { readonly batches: readonly string[] }): string => "Left out because nothing was recorded for long: " + list(d.batches) + ".";

export const noPlace = (): string => "(no place)";

export const notCounted = (d: { readonly batches: readonly string[] }): string => "Left out because no plants are counted: " + list(d.batches) + ".";

export const notListed = (d: { readonly places: readonly string[] }): string => "Not in the table of places: " + list(d.places) + ".";

export const oneWeek = (d: { readonly batches: readonly string[] }): string => "Shown in one week only, as they are ready or have no day to count from: " + list(d.batches) + ".";

export const plannedAfter = (d: { readonly weeks: number; readonly batches: readonly string[] }): string => "Left out because they are planned for after these " + count(d.weeks) + " weeks: " + list(d.batches) + ".";

export const standLonger = (d: { readonly batches: number; readonly weeks: number }): string => plural(d.batches, { one: count(d.batches) + " batch stays", other: count(d.batches) + " batches stay" }) + " longer than these " + count(d.weeks) + " weeks.";

export const withoutPlace = (): string => "Batches without a place are under (no place).";
