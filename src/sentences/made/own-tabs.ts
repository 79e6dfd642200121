// Made by npm run sentences from the files of sentences; a test holds it equal.

import { select } from "../runtime";

export const howCrew = (d: { readonly tasks: string | number; readonly days: string | number; readonly from: string | number; readonly to: string | number }): string => "one row per person. " + d.tasks + ": steps with ; between, such as grafting (mango), blank for all. " + d.days + ": \"Mon–Fri\", blank for every day. " + d.from + ", " + d.to + ": days away.";

export const ifThisStays = (d: { readonly mendedBy: "again" | "refresh" | "setUp" }): string => "If this stays, " + select(d.mendedBy, { again: "try again", refresh: "choose Refresh the due list in the Nursery menu", setUp: "make the tabs again in Set up", other: "" }) + ".";

export const live = (d: { readonly formula: string | number }): string => "live, " + d.formula;

export const log = (): string => "every cell written, and what was in it before. Who is the name typed, not the one signed in";

export const made = (d: { readonly at: string | number }): string => "made " + d.at + ". Refresh the due list in the menu updates it.";

export const toFill = (d: { readonly what: string | number; readonly at: string | number; readonly how: string | number }): string => d.what + ", made " + d.at + ": " + d.how;
