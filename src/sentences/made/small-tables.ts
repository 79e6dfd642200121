// Made by npm run sentences from the files of sentences; a test holds it equal.

import { count, list } from "../runtime";

export const closedDays = (): string => "closed days";

export const columnsDitto = (d: { readonly table: string | number; readonly columns: readonly string[] }): string => "Ditto marks in the " + d.table + " mean the value above: " + list(d.columns) + ".";

export const columnsGuessed = (d: { readonly table: string | number; readonly columns: readonly string[] }): string => "In the " + d.table + " we took " + list(d.columns) + ".";

export const columnsUnread = (d: { readonly table: string | number; readonly columns: readonly string[] }): string => "Not read in the " + d.table + ": " + list(d.columns) + ".";

export const columnTaken = (d: { readonly header: string | number; readonly name: string | number }): string => d.header + " as " + d.name;

export const columnUnread = (d: { readonly header: string | number; readonly name: string | number }): string => d.header + " (perhaps " + d.name + ")";

export const crew = (): string => "crew";

export const endsBefore = (): string => "it ends before it begins";

export const germination = (): string => "samples of seed";

export const holdsUnknown = (): string => "it does not say how many the place holds";

export const holdsUnread = (d: { readonly why: string | number }): string => "we can't read how many it holds, " + d.why;

export const moreThanDay = (d: { readonly found: string | number }): string => "\"" + d.found + "\" is more hours than a day has";

export const namedTwice = (d: { readonly name: string | number }): string => d.name + " is there twice, the smaller number counts";

export const noBatch = (): string => "it names no batch";

export const noDay = (d: { readonly found: string | number }): string => "\"" + d.found + "\" is not a day we can read";

export const noFirstDay = (): string => "it has no first day";

export const noHours = (d: { readonly name: string | number }): string => d.name + " is left out: no hours a day.";

export const noInspectionDay = (): string => "it has no day of inspection";

export const noItem = (): string => "it names no item";

export const noName = (): string => "it names nobody";

export const noPlace = (): string => "it names no place";

export const noPrice = (d: { readonly item: string | number }): string => d.item + " has no price";

export const noSowing = (): string => "nothing says when it was sown";

export const noStep = (d: { readonly found: string | number }): string => "the timetable has no step \"" + d.found + "\"";

export const notByTime = (d: { readonly item: string | number }): string => d.item + " needs a price by the hour or minute";

export const notHours = (d: { readonly found: string | number }): string => "\"" + d.found + "\" is not a number of hours";

export const notPrice = (d: { readonly found: string | number }): string => "\"" + d.found + "\" is not a price we can read";

export const notUnit = (d: { readonly found: string | number }): string => "\"" + d.found + "\" is not a unit we can read";

export const notWeekdays = (d: { readonly found: string | number }): string => "\"" + d.found + "\" is not plainly weekdays, write \"Mon–Fri; Sat half\"";

export const orders = (): string => "orders";

export const places = (): string => "places";

export const priceRange = (): string => "the price is out of range";

export const prices = (): string => "prices";

export const readAs = (d: { readonly number: number }): string => "read as " + count(d.number);

export const rowLeftOut = (d: { readonly row: string | number; readonly table: string | number; readonly why: string | number }): string => "Row " + d.row + " of " + d.table + " is left out: " + d.why + ".";

export const rowNoted = (d: { readonly row: string | number; readonly table: string | number; readonly what: string | number }): string => "Row " + d.row + " of " + d.table + ": " + d.what + ".";

export const secondPrice = (d: { readonly item: string | number }): string => "a second price of " + d.item + ", the higher counts";

export const upBlank = (): string => "it does not say how many are up";

export const upFalls = (d: { readonly before: number }): string => "fewer are up than the " + count(d.before) + " before";

export const upUnread = (d: { readonly why: string | number }): string => "we can't read how many came up, " + d.why;

export const weekdayEnd = (): string => "a weekday has no last day, so give each weekday a row";
