// Made by npm run sentences from the files of sentences; a test holds it equal.

import { count, list, plural, select, share } from "../runtime";

export const careToday = (d: { readonly tasks: readonly string[]; readonly batches: number }): string => "Today: " + list(d.tasks) + " (" + plural(d.batches, { one: count(d.batches) + " batch", other: count(d.batches) + " batches" }) + ").";

export const careTodayAt = (d: { readonly places: readonly string[]; readonly tasks: readonly string[]; readonly batches: number }): string => "Today at " + list(d.places) + ": " + list(d.tasks) + " (" + plural(d.batches, { one: count(d.batches) + " batch", other: count(d.batches) + " batches" }) + ").";

export const columnsLeftAlone = (d: { readonly columns: readonly string[] }): string => "Columns of days left alone, because we can't tell of what: " + list(d.columns) + ". Say it in the argument columns.";

export const generalShare = (d: { readonly step: string | number; readonly kept: number; readonly own: "no" | "yes"; readonly mean: number; readonly methods: readonly string[] }): string => d.step + " " + share(d.kept) + select(d.own, { yes: ", by your own counts " + share(d.mean), no: "", other: "" }) + " (" + list(d.methods) + ")";

export const generalShares = (d: { readonly shares: readonly string[] }): string => "These figures count on shares kept in tree nurseries in general, not of these crops: " + list(d.shares) + ".";

export const jobNeverRecorded = (d: { readonly step: string | number; readonly batches: number }): string => d.step + " is not listed: nothing is written about it in any batch, and it is past in " + plural(d.batches, { one: count(d.batches) + " batch", other: count(d.batches) + " batches" }) + ". Do you do it? Write its day for one batch, and it is asked for in all.";

export const looksHidden = (d: { readonly looks: number }): string => plural(d.looks, { one: count(d.looks) + " look is", other: count(d.looks) + " looks are" }) + " hidden: looks are switched off (in Set up, or by the argument looks).";

export const methodsAsked = (): string => "Set up asks which method is meant.";

export const moreColumns = (d: { readonly more: number }): string => count(d.more) + " more";

export const moreOfCell = (d: { readonly batches: number }): string => count(d.batches) + " more (see BATCH_CHECK)";

export const moreOfPage = (d: { readonly batches: number }): string => count(d.batches) + " more (see Check)";

export const noSuchColumnsOfCell = (d: { readonly told: readonly string[] }): string => "Not read, because no step or column has such a name: " + list(d.told) + ". Correct the name, or give the timetable that has the step.";

export const noSuchColumnsOfPage = (d: { readonly told: readonly string[] }): string => "Not read, because no step or column has such a name: " + list(d.told) + ". Choose again in Set up.";

export const noSuchHeaders = (d: { readonly told: readonly string[] }): string => "Not read, because the table has no such header: " + list(d.told) + ".";

export const noSuchMethod = (d: { readonly batches: readonly string[] }): string => "Left out because the timetable has no such method: " + list(d.batches) + ".";

export const rowsLeftOutOfCell = (d: { readonly rows: number }): string => plural(d.rows, { one: count(d.rows) + " row is", other: count(d.rows) + " rows are" }) + " left out: see BATCH_CHECK.";

export const rowsLeftOutOfPage = (d: { readonly rows: number }): string => plural(d.rows, { one: count(d.rows) + " row is", other: count(d.rows) + " rows are" }) + " left out: see Check.";

export const severalMethods = (d: { readonly batches: readonly string[] }): string => "Left out because more than one method fits: " + list(d.batches) + ".";

export const toldAs = (d: { readonly header: string | number; readonly name: string | number }): string => "\"" + d.header + "\" as \"" + d.name + "\"";
