// Made by npm run sentences from the files of sentences; a test holds it equal.

import { count, list, plural, select, share } from "../runtime";

export const batchMore = (d: { readonly batches: readonly string[] }): string => "More came up than was sown, so these are left out: " + list(d.batches) + ". If you write how many are up in all, call that column Up so far.";

export const batchPoor = (d: { readonly batch: string | number; readonly share: number; readonly day: number; readonly others: number }): string => d.batch + " comes up poorly: " + share(d.share) + " on day " + count(d.day) + ", where the others had " + share(d.others) + ". Sow again now if you need the plants.";

export const batchSamples = (d: { readonly batch: string | number; readonly samples: string | number }): string => d.batch + ": " + d.samples;

export const batchUnsaid = (d: { readonly batches: readonly string[] }): string => "Nothing says how many seeds were sown, so these are left out: " + list(d.batches) + ".";

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

export const samplesAgree = (d: { readonly samples: "2" | "4"; readonly range: number; readonly mean: number; readonly allowed: number }): string => "The " + select(d.samples, { "2": "two", "4": "four", other: "" }) + " samples differ by " + count(d.range) + ". At a mean of " + count(d.mean) + " % they may differ by " + count(d.allowed) + " (7 CFR 201.55).";

export const samplesAgreeByChance = (d: { readonly samples: number; readonly range: number; readonly oneOf: number }): string => "The " + count(d.samples) + " samples differ by " + count(d.range) + ". Chance alone does that in " + plural(d.oneOf, { "1": "nearly every sowing", other: "1 of " + count(d.oneOf) + " sowings" }) + ": they agree.";

export const samplesDiffer = (d: { readonly samples: "2" | "4"; readonly range: number; readonly mean: number; readonly allowed: number }): string => "The " + select(d.samples, { "2": "two", "4": "four", other: "" }) + " samples differ by " + count(d.range) + ". At a mean of " + count(d.mean) + " % only " + count(d.allowed) + " is allowed (7 CFR 201.55). Test again.";

export const samplesDifferByChance = (d: { readonly samples: number; readonly range: number; readonly oneOf: number }): string => "The " + count(d.samples) + " samples differ by " + count(d.range) + ". Chance alone does that in 1 of " + count(d.oneOf) + " sowings. Test again.";

export const samplesUneven = (d: { readonly sown: number; readonly samples: number }): string => count(d.sown) + " seeds don't part evenly into " + count(d.samples) + " samples, so we can't tell if the samples agree.";

export const seeds = (): string => "seeds";

export const seedsADay = (): string => "seeds a day";

export const sown = (): string => "Sown";

export const speed = (): string => "Speed (Maguire)";

export const standardError = (): string => "Standard error of the mean time";

export const variance = (): string => "Variance of the time";

export const velocity = (): string => "Velocity, 100 by mean time";
