// Made by npm run sentences from the files of sentences; a test holds it equal.

import { count, list, plural, share } from "../runtime";

export const blank = (): string => "(blank)";

export const compareAbove = (): string => "above the rest";

export const compareAlike = (): string => "no clear difference";

export const compareBelow = (): string => "below the rest";

export const compareTooFew = (): string => "too few to tell";

export const groupAlone = (d: { readonly group: string | number; readonly stratum: string | number }): string => d.group + " in " + d.stratum;

export const groupRated = (d: { readonly name: string | number; readonly takeRate: number }): string => d.name + " (" + share(d.takeRate) + ")";

export const groupsMore = (d: { readonly groups: number }): string => count(d.groups) + " more";

export const moreTakenThanGrafted = (d: { readonly batches: number }): string => plural(d.batches, { one: count(d.batches) + " batch is", other: count(d.batches) + " batches are" }) + " left out: more taken than grafted.";

export const nobodyToCompareWith = (d: { readonly groups: readonly string[]; readonly batches: number }): string => "Nobody to compare with: " + list(d.groups) + ". " + plural(d.batches, { one: "That " + count(d.batches) + " batch is", other: "Those " + count(d.batches) + " batches are" }) + " counted but not judged.";

export const noGraftingDay = (d: { readonly batches: number }): string => plural(d.batches, { one: count(d.batches) + " batch is", other: count(d.batches) + " batches are" }) + " left out: no day of grafting.";

export const notCause = (): string => "What goes with takes may not be their cause. What else changed at the same time?";

export const notCountedYet = (d: { readonly batches: number }): string => plural(d.batches, { one: count(d.batches) + " batch is", other: count(d.batches) + " batches are" }) + " not counted yet.";

export const oneBatchEach = (): string => "With one batch a group we can't tell how much batches vary. The range allows for what is usual.";

export const peopleNotNamed = (): string => "People are not named here. To compare them fairly, use TAKE_COMPARED.";

export const periodOpen = (d: { readonly period: string | number }): string => d.period + ", still open";

export const reasonAlone = (): string => "goes with takes";

export const reasonNoClearLink = (): string => "no clear link";

export const reasonNotToldApart = (): string => "goes with takes, but there are too few batches to tell it from the others";

export const reasonOnlyBeside = (): string => "shows only where the other columns are alike";

export const reasonOthers = (): string => "goes with takes, but what else differed may be behind it";

export const reasonStays = (): string => "goes with takes, also where the other columns are alike";

export const reasonTooFew = (): string => "too few to tell";

export const trendDriftingDown = (): string => "drifting down";

export const trendDriftingUp = (): string => "drifting up";

export const trendHigh = (): string => "high";

export const trendLow = (): string => "low";

export const trendUsual = (): string => "usual";

export const usualBatch = (d: { readonly grafted: number; readonly low: number; readonly high: number }): string => "A batch of " + count(d.grafted) + " mostly takes " + share(d.low) + " to " + share(d.high) + ".";
