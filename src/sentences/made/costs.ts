// Made by npm run sentences from the files of sentences; a test holds it equal.

import { count, list, plural } from "../runtime";

export const allOf = (d: { readonly method: string | number }): string => "All: " + d.method;

export const batchSteps = (d: { readonly batch: string | number; readonly steps: readonly string[] }): string => d.batch + " (" + list(d.steps) + ")";

export const hourUnused = (): string => "The price of an hour is not used.";

export const itemIn = (d: { readonly item: string | number; readonly unit: string | number }): string => d.item + " (" + d.unit + ")";

export const itemPricedBy = (d: { readonly item: string | number; readonly unit: string | number; readonly units: readonly string[] }): string => d.item + " (needed in " + d.unit + ", priced by " + list(d.units) + ")";

export const noHourPrice = (): string => "No price of an hour, so work is not in the cost.";

export const noPlants = (d: { readonly batches: readonly string[] }): string => "Some steps have no count of plants and are left out: " + list(d.batches) + ".";

export const noPrice = (d: { readonly items: readonly string[] }): string => "No price for " + list(d.items) + ", so they are not in the cost.";

export const noRate = (d: { readonly steps: readonly string[] }): string => "No work rate in the timetable for " + list(d.steps) + ", so their hours are left out.";

export const notBegun = (d: { readonly batches: number }): string => plural(d.batches, { one: count(d.batches) + " batch has", other: count(d.batches) + " batches have" }) + " not begun.";

export const notNeeded = (d: { readonly items: readonly string[] }): string => "Priced, but not needed so far: " + list(d.items) + ".";

export const pieces = (): string => "pieces";

export const startedPlant = (d: { readonly method: string | number }): string => "A started plant: " + d.method;
