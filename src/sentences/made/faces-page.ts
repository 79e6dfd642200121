// Made by npm run sentences from the files of sentences; a test holds it equal.

import { count, select } from "../runtime";

export const fact = (d: { readonly name: string | number; readonly value: string | number }): string => d.name + ": " + d.value;

export const fullest = (d: { readonly plants: string | number; readonly week: string | number }): string => d.plants + ", " + d.week;

export const index = (): string => "All answers";

export const loading = (): string => "Reading the records";

export const nothing = (): string => "Nothing to show.";

export const ofHolds = (d: { readonly plants: number; readonly holds: number }): string => count(d.plants) + " of " + count(d.holds);

export const overBy = (d: { readonly plants: number; readonly holds: number; readonly over: number }): string => count(d.plants) + " of " + count(d.holds) + ", " + count(d.over) + " too many";

export const reading = (d: { readonly face: "balance" | "costs" | "germination" | "lookback" | "needs" | "places" }): string => select(d.face, { places: "Plants likely to stand there, week by week. The frame is what the place holds", needs: "For the tasks of the next 30 days", costs: "Materials and hours so far, with what the lost plants took", balance: "What should stand, and where the others went", lookback: "What we forecast 180 days ago, and what came", germination: "Each batch beside what the others had by the same day", other: "" }) + ".";

export const title = (d: { readonly face: "balance" | "costs" | "germination" | "lookback" | "needs" | "places" }): string => select(d.face, { places: "How full places get", needs: "What the coming work needs", costs: "What batches have cost", balance: "Where the plants of each batch went", lookback: "Whether our forecast held", germination: "How seed comes up", other: "" });

export const tooFull = (): string => "Too full:";
