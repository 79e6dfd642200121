// Made by npm run sentences from the files of sentences; a test holds it equal.

import { count, list, plural } from "../runtime";

export const all = (): string => "All";

export const allDelivered = (): string => "fine, all delivered";

export const cellBlank = (d: { readonly column: string | number }): string => d.column + " is blank";

export const cellShows = (d: { readonly column: string | number; readonly shown: string | number }): string => d.column + " shows " + d.shown;

export const cellTrouble = (d: { readonly column: string | number; readonly what: string | number }): string => d.column + ": " + d.what;

export const cropUnknown = (d: { readonly batches: readonly string[] }): string => "Not counted where a crop is ordered, as theirs is not known: " + list(d.batches) + ".";

export const customersNear = (d: { readonly pairs: readonly string[] }): string => "Perhaps one customer: " + list(d.pairs) + ". If so, spell them alike.";

export const deliverNow = (): string => "late, but all are ready: deliver now";

export const fine = (): string => "fine";

export const graft = (d: { readonly plants: number; readonly by: string | number }): string => "graft " + count(d.plants) + " more by " + d.by;

export const graftOf = (d: { readonly plants: number; readonly variety: string | number; readonly by: string | number }): string => "graft " + count(d.plants) + " more of " + d.variety + " by " + d.by;

export const moreOrders = (d: { readonly orders: number }): string => count(d.orders) + " more";

export const noName = (): string => "(no name)";

export const noneWanted = (d: { readonly column: string | number }): string => d.column + " is 0";

export const noSuchVariety = (d: { readonly variety: string | number }): string => "no batch is " + d.variety + ": check the name, or plan it as new";

export const noted = (d: { readonly rows: string | number }): string => "These orders are used, but not all of their cells: " + d.rows + ".";

export const oneOrOther = (d: { readonly one: string | number; readonly other: string | number }): string => d.one + " or " + d.other;

export const row = (d: { readonly row: string | number; readonly reasons: string | number }): string => "row " + d.row + " (" + d.reasons + ")";

export const rowAlone = (d: { readonly row: string | number }): string => "row " + d.row;

export const rowsLeftOut = (d: { readonly number: number; readonly rows: string | number }): string => plural(d.number, { one: count(d.number) + " order is", other: count(d.number) + " orders are" }) + " left out: " + d.rows + ".";

export const start = (d: { readonly plants: number; readonly by: string | number }): string => "start " + count(d.plants) + " more by " + d.by;

export const startOf = (d: { readonly plants: number; readonly variety: string | number; readonly by: string | number }): string => "start " + count(d.plants) + " more of " + d.variety + " by " + d.by;

export const tooLate = (): string => "too late: tell the customer";

export const tooLateToStart = (): string => "too late to start more: tell the customer";

export const varietiesUnknown = (d: { readonly orders: readonly string[] }): string => "These orders name a variety that no batch has: " + list(d.orders) + ". Their other varieties are counted.";

export const varietyBlank = (d: { readonly batches: readonly string[] }): string => "Not counted for any order that names a variety, as theirs is blank: " + list(d.batches) + ".";

export const varietyMeant = (d: { readonly variety: string | number; readonly nearest: readonly string[] }): string => "no batch is " + d.variety + ". Is it " + list(d.nearest) + "? Correct the order";

export const varietyNear = (d: { readonly ordered: string | number; readonly variety: string | number; readonly batches: readonly string[] }): string => "Not counted for " + d.ordered + ", as they are written " + d.variety + ": " + list(d.batches) + ". If it is one, spell them alike.";

export const varietyOf = (d: { readonly order: string | number; readonly varieties: readonly string[] }): string => d.order + " (" + list(d.varieties) + ")";

export const whichCrop = (d: { readonly crops: readonly string[] }): string => "which crop, " + list(d.crops) + "? Write it under Variety";
