// Made by npm run sentences from the files of sentences; a test holds it equal.

import { select } from "../runtime";

export const answer = (d: { readonly tab: "balance" | "checks" | "costs" | "due" | "germination" | "log" | "lookback" | "losses" | "needs" | "places" | "plan" | "ready" | "settings" | "stages" | "takeReasons" | "takes" | "takesCompared" | "takesTrend" | "timetable" | "workPlan" }): string => select(d.tab, { due: "What to do today and in the days to come. Tick it off here", workPlan: "Who does what on which day, and what does not fit", plan: "When to sow and graft for an order", stages: "Where each batch stands, and when it will be ready", ready: "How many plants will be ready, by month and variety", lookback: "What we forecast half a year ago, and whether it held", balance: "Where the plants of each batch went", losses: "At which stage plants are lost, and what they had cost", takes: "Take rates", takesCompared: "Take rates compared fairly", takesTrend: "Whether takes are rising or falling", takeReasons: "What good and bad takes go with", places: "How full each place gets, week by week", needs: "What to have ready for the coming month", costs: "What each batch has cost so far", germination: "How seed comes up, batch by batch", checks: "What we can't read, and what looks wrong", settings: "The day we look from, and the words you told us", timetable: "The steps and their days. Change them as you work", log: "Every cell we wrote, and what stood there before", other: "" });

export const answers = (): string => "What it answers";

export const group = (d: { readonly group: "batches" | "behind" | "daily" | "materials" | "takes" }): string => select(d.group, { daily: "Every day", batches: "Batches", takes: "Takes", materials: "Places, needs, costs", behind: "Behind it", other: "" });

export const kind = (): string => "About";

export const made = (d: { readonly at: string | number }): string => "made " + d.at + ". Make the tabs again in Set up to renew it.";

export const noGermination = (): string => "There are no samples of seed. Make a tab Germination with the columns Batch, Sample, Sown on, Seeds sown, Day and Came up, one row per inspection, then make the tabs again in Set up";

export const noPlaces = (): string => "Nothing is known of your places. Make a tab Places with the columns Place and Holds, then make the tabs again in Set up";

export const notMade = (d: { readonly tab: string | number }): string => d.tab + " (not made, choose it in Set up)";

export const onPage = (): string => "On the page";

export const tab = (): string => "Tab";
