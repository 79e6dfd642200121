// Made by npm run sentences from the files of sentences; a test holds it equal.

import { count, list, select, share } from "../runtime";

export const askedPast = (): string => "The day asked for is past.";

export const chances = (d: { readonly plants: string | number; readonly days: string | number; readonly both: string | number }): string => "Enough plants in " + d.plants + ", ready by the day in " + d.days + ", both in " + d.both + ".";

export const dayPast = (): string => "The day is past.";

export const firstVariety = (d: { readonly variety: string | number }): string => "Planned for " + d.variety + ", the first of those that will do.";

export const generalShare = (d: { readonly kept: number; readonly own: "no" | "yes"; readonly mean: number }): string => "Counts on " + share(d.kept) + " kept up to here. That figure is of tree nurseries in general, not of this crop." + select(d.own, { yes: " Your own counts make it " + share(d.mean) + ".", no: "", other: "" });

export const largerStart = (d: { readonly start: number; readonly wanted: number; readonly by: string | number }): string => "A larger start of " + count(d.start) + " can still make all " + count(d.wanted) + " by " + d.by + ".";

export const need = (d: { readonly item: string | number; readonly amount: string | number; readonly unit: string | number }): string => d.item + " " + d.amount + " " + d.unit;

export const needPieces = (d: { readonly item: string | number; readonly amount: string | number }): string => d.item + " " + d.amount;

export const newStartNone = (d: { readonly by: string | number }): string => "A new start can't make " + d.by + ".";

export const noStart = (): string => "No start is big enough to be that sure.";

export const of100 = (d: { readonly chance: string | number }): string => d.chance + " of 100";

export const outsideHarvest = (d: { readonly months: string | number; readonly last: string | number }): string => "Seed would be taken outside the harvest months (" + d.months + "). The last day inside is " + d.last + ".";

export const plain = (d: { readonly plants: number }): string => "Plain division by what is kept: " + count(d.plants) + ".";

export const plainAndMore = (d: { readonly plants: number; readonly more: number; readonly chance: string | number }): string => "By the usual losses alone: " + count(d.plants) + ". " + count(d.more) + " more make it enough in " + d.chance + ".";

export const standingCan = (d: { readonly by: string | number; readonly plants: number }): string => "A new start can't make " + d.by + ". Plants you already have could fill " + count(d.plants) + ", if not promised to others.";

export const startedNow = (d: { readonly asOf: string | number; readonly wanted: number; readonly earliest: string | number }): string => "A start on " + d.asOf + " can make " + count(d.wanted) + " by " + d.earliest + ".";

export const startWasDue = (d: { readonly day: string | number }): string => "Too late: the start was due by " + d.day + ".";

export const unknownVariety = (d: { readonly variety: string | number }): string => "The records have no batch of " + d.variety + ", so it is planned as for any variety.";

export const unknownVarietyMeant = (d: { readonly variety: string | number; readonly nearest: readonly string[] }): string => "The records have no batch of " + d.variety + ". Is it " + list(d.nearest) + "? It is planned as for any variety.";
