// Made by npm run sentences from the files of sentences; a test holds it equal.

import { count, list, plural, select } from "../runtime";

export const afterIsCircle = (d: { readonly steps: string | number }): string => "After goes round in a circle: " + d.steps;

export const afterLeftOut = (d: { readonly after: string | number }): string => "it is counted from " + d.after + ", which is left out";

export const at = (d: { readonly row: string | number; readonly column: string | number; readonly trouble: string | number }): string => "timetable row " + d.row + ", " + d.column + ": " + d.trouble;

export const beforeParent = (d: { readonly step: string | number; readonly after: string | number }): string => d.step + " can't come before " + d.after;

export const careWithoutStart = (d: { readonly step: string | number }): string => d.step + " must say in After from which step on it is done";

export const cellLeftOut = (): string => "The cell is left out, the rest of the row is used";

export const columnAt = (d: { readonly row: string | number; readonly column: string | number }): string => "Timetable row " + d.row + ", " + d.column;

export const countedFromBeside = (d: { readonly after: string | number }): string => d.after + " is no step to count from: it comes before one, or again and again";

export const daysMustRise = (d: { readonly step: string | number }): string => "the days of " + d.step + " must rise from From day to Usual day to By day";

export const daysNotWhole = (d: { readonly step: string | number }): string => "the days of " + d.step + " must be whole days";

export const keptOutOfRange = (d: { readonly step: string | number }): string => "Kept of 100 at " + d.step + " must be above 0 and at most 100";

export const leftOutOfCell = (d: { readonly places: readonly string[] }): string => "Left out of the timetable: " + list(d.places) + ". See BATCH_CHECK.";

export const leftOutOfPage = (d: { readonly places: readonly string[] }): string => "Left out of the timetable: " + list(d.places) + ". See Check.";

export const methodLeftOut = (): string => "The method is left out, because it has lost the step that makes plants ready";

export const moreOfCell = (d: { readonly at: string | number; readonly more: number }): string => d.at + ". There " + plural(d.more, { one: "is " + count(d.more) + " more", other: "are " + count(d.more) + " more" }) + ": see BATCH_CHECK";

export const moreOfPage = (d: { readonly at: string | number; readonly more: number }): string => d.at + ". There " + plural(d.more, { one: "is " + count(d.more) + " more", other: "are " + count(d.more) + " more" }) + ": see Check";

export const morePlaces = (d: { readonly more: number }): string => count(d.more) + " more";

export const needsUnreadable = (d: { readonly step: string | number }): string => "the needs of " + d.step + " must read like \"wrap strip 38 cm; bag 1\"";

export const noNumber = (d: { readonly found: string | number }): string => "\"" + d.found + "\" is not a number";

export const noSuchKind = (d: { readonly step: string | number }): string => "the kind of " + d.step + " must be \"job\", \"count\" or \"look\"";

export const noSuchStep = (d: { readonly after: string | number; readonly method: string | number }): string => "After names " + d.after + ", which is not a step of " + d.method;

export const noUsualDay = (d: { readonly step: string | number }): string => d.step + " has no usual day";

export const placeOf = (d: { readonly leftOut: "cell" | "method" | "row"; readonly column: string | number; readonly row: string | number; readonly trouble: string | number }): string => select(d.leftOut, { cell: d.column + " in row " + d.row, method: "the method of row " + d.row, row: "row " + d.row, other: "" }) + " (" + d.trouble + ")";

export const rateNotAbove0 = (d: { readonly step: string | number }): string => "Per person-hour at " + d.step + " must be above 0";

export const rowLeftOut = (): string => "The row is left out, with its step";

export const sameStep = (d: { readonly step: string | number; readonly other: string | number; readonly method: string | number }): string => d.step + " and " + d.other + " are the same step of " + d.method;

export const stepAfter = (d: { readonly step: string | number; readonly after: string | number }): string => d.step + " after " + d.after;

export const stepUnnamed = (): string => "the step has no name";

export const tooManyDays = (d: { readonly step: string | number; readonly most: string | number }): string => d.step + " can't take longer than ten years, " + d.most + " days";
