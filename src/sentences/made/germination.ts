// Made by npm run sentences from the files of sentences; a test holds it equal.

import { count, plural, select } from "../runtime";

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

export const samplesAgreeByChance = (d: { readonly samples: number; readonly range: number; readonly oneOf: number }): string => "The " + count(d.samples) + " samples differ by " + count(d.range) + ". Chance alone does that in " + plural(d.oneOf, { "1": "nearly every sowing", other: "1 of " + count(d.oneOf) + " sowings" }) + ": they agree.";

export const samplesDiffer = (d: { readonly samples: "2" | "4"; readonly range: number; readonly mean: number; readonly allowed: number }): string => "The " + select(d.samples, { "2": "two", "4": "four", other: "" }) + " samples differ by " + count(d.range) + ". At a mean of " + count(d.mean) + " % only " + count(d.allowed) + " is allowed (7 CFR 201.55). Test again.";

export const samplesDifferByChance = (d: { readonly samples: number; readonly range: number; readonly oneOf: number }): string => "The " + count(d.samples) + " samples differ by " + count(d.range) + ". Chance alone does that in 1 of " + count(d.oneOf) + " sowings. Test again.";

export const samplesUneven = (d: { readonly sown: number; readonly samples: number }): string => count(d.sown) + " seeds don't part evenly into " + count(d.samples) + " samples, so we can't tell if the samples agree.";

export const seeds = (): string => "seeds";

export const seedsADay = (): string => "seeds a day";

export const sown = (): string => "Sown";

export const speed = (): string => "Speed (Maguire)";

export const standardError = (): string => "Standard error of the mean time";

export const variance = (): string => "Variance of the time";

export const velocity = (): string => "Velocity, 100 by mean time";
