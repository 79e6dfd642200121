// Made by npm run sentences from the files of sentences; a test holds it equal.

import { select } from "../runtime";

export const likelyTab = (d: { readonly tab: string | number }): string => d.tab + " (likely)";

export const lostTab = (d: { readonly tab: string | number }): string => "You chose " + d.tab + " for it, but there is no such tab any more. Choose again.";

export const noTab = (): string => "no tab";

export const notReadYet = (d: { readonly name: string | number }): string => "We can't read " + d.name + " there yet. Say below what its columns are.";

export const tab = (): string => "Tab";

export const tabOf = (d: { readonly name: string | number }): string => "Tab: " + d.name;

export const title = (): string => "Orders, crew and other tables";

export const whatFor = (d: { readonly table: "closed" | "crew" | "germination" | "orders" | "places" | "prices" }): string => select(d.table, { orders: "Without it the section Orders stays empty.", crew: "Without it no work is planned by person.", closed: "Without it no day counts as closed.", places: "PLACE_LOAD reads it: how much each place holds.", prices: "BATCH_COST reads it: what hours and items cost.", germination: "GERMINATION_SUMMARY reads it: what came up of each sample of seed.", other: "" });

export const youMay = (): string => "Choose the tab where we took a wrong one. What you change counts once you have pressed the button above.";
