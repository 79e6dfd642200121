// Made by npm run sentences from the files of sentences; a test holds it equal.

import { count, select } from "../runtime";

export const cameUp = (): string => "Came up";

export const days = (): string => "days";

export const daysSquared = (): string => "days²";

export const firstCameUp = (): string => "First came up";

export const germination = (): string => "Germination";

export const half = (): string => "Half came up, counting N/2";

export const halfPlusOne = (): string => "Half came up, counting (N+1)/2";

export const lastCameUp = (): string => "Last came up";

export const meanTime = (): string => "Mean time";

export const percent = (): string => "%";

export const percentADay = (): string => "% a day";

export const samplesAgree = (d: { readonly samples: "2" | "4"; readonly range: number; readonly mean: number; readonly allowed: number }): string => "The " + select(d.samples, { "2": "two", "4": "four", other: "" }) + " samples differ by " + count(d.range) + ". At a mean of " + count(d.mean) + " % they may differ by " + count(d.allowed) + " (7 CFR 201.55).";

export const samplesDiffer = (d: { readonly samples: "2" | "4"; readonly range: number; readonly mean: number; readonly allowed: number }): string => "The " + select(d.samples, { "2": "two", "4": "four", other: "" }) + " samples differ by " + count(d.range) + ". At a mean of " + count(d.mean) + " % only " + count(d.allowed) + " is allowed (7 CFR 201.55). Test again.";

export const samplesNoRange = (d: { readonly samples: "2" | "4"; readonly range: number; readonly mean: number }): string => "The " + select(d.samples, { "2": "two", "4": "four", other: "" }) + " samples differ by " + count(d.range) + ". We have no published range for a mean of " + count(d.mean) + " %.";

export const samplesOtherSize = (d: { readonly samples: "2" | "4"; readonly seeds: number }): string => "The published ranges for " + select(d.samples, { "2": "two", "4": "four", other: "" }) + " samples are for 100 seeds each. These have " + count(d.seeds) + ".";

export const seeds = (): string => "seeds";

export const seedsADay = (): string => "seeds a day";

export const sown = (): string => "Sown";

export const speed = (): string => "Speed (Maguire)";

export const standardError = (): string => "Standard error of the mean time";

export const variance = (): string => "Variance of the time";

export const velocity = (): string => "Velocity, 100 by mean time";
