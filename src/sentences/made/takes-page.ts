// Made by npm run sentences from the files of sentences; a test holds it equal.

import { count, list, plural, select, share } from "../runtime";

export const allPeriods = (): string => "All periods as a table";

export const asCounted = (d: { readonly rate: number; readonly grafted: number; readonly expected: number }): string => "As counted, " + share(d.rate) + " of " + count(d.grafted) + " took. For these batches we expected " + share(d.expected) + ".";

export const asTable = (): string => "The same as a table";

export const bestAndWorst = (d: { readonly best: string | number; readonly worst: string | number }): string => "Best " + d.best + ", worst " + d.worst;

export const by = (): string => "By";

export const columnEvened = (): string => "Evened";

export const columnExpected = (): string => "Expected";

export const columnLower = (): string => "Lower";

export const columnRate = (): string => "Rate";

export const columnUpper = (): string => "Upper";

export const columnUsual = (): string => "Usual";

export const compare = (): string => "Compare";

export const compared = (): string => "Take rates compared";

export const comparedAsTable = (): string => "The comparison as a table";

export const comparedTitle = (): string => "Compared fairly";

export const comparing = (): string => "Comparing takes";

export const counting = (): string => "Counting takes";

export const counts = (d: { readonly taken: number; readonly grafted: number; readonly batches: number }): string => count(d.taken) + " taken of " + count(d.grafted) + " grafted, " + plural(d.batches, { one: count(d.batches) + " batch", other: count(d.batches) + " batches" });

export const dotAndBar = (): string => "The dot is the take rate, the bar its range.";

export const evenedDot = (d: { readonly evenFor: string | number; readonly overall: number }): string => "The dot is the rate as if all had had the same " + d.evenFor + ". The bar is its range. The dashed line is everyone together, " + share(d.overall) + ". With so many compared at once, the words are more cautious than the bars.";

export const evenedFor = (): string => "Evened for";

export const evenedRange = (d: { readonly evened: number; readonly from: number; readonly to: number; readonly overall: number }): string => "Evened " + share(d.evened) + ", range " + share(d.from) + " to " + share(d.to) + ", all together " + share(d.overall);

export const fairCauses = (): string => "Look for what else was different first: scions, tape, weather, the place, how tired the hands were.";

export const fairNames = (): string => "Keep names off walls and out of print. Follow the rules and the law of your place on records of people's work.";

export const fairReading = (): string => "A reading is about batches, not about a person. It says that takes differ, never why.";

export const fairSpeak = (): string => "Speak with the person before anybody else does, and show them the numbers.";

export const fairTitle = (): string => "Fair use";

export const fairWait = (): string => "Too few to tell means just that. Wait for more batches.";

export const lastMonthSignal = (d: { readonly rate: number; readonly grafted: number; readonly period: string | number; readonly counted: "all" | "open"; readonly usual: number; readonly reading: string | number }): string => share(d.rate) + " of " + count(d.grafted) + " grafts made in " + d.period + " took" + select(d.counted, { open: " so far", all: "", other: "" }) + ". Usual is " + share(d.usual) + ". This month is " + d.reading + ".";

export const lastMonthUsual = (d: { readonly rate: number; readonly grafted: number; readonly period: string | number; readonly counted: "all" | "open"; readonly usual: number }): string => share(d.rate) + " of " + count(d.grafted) + " grafts made in " + d.period + " took" + select(d.counted, { open: " so far", all: "", other: "" }) + ". Usual is " + share(d.usual) + ". Nothing out of the ordinary.";

export const noBatch = (): string => "No batch in the records has grafts yet.";

export const nobodyApart = (): string => "Nobody is clearly different: batches differ this much anyway.";

export const noneCounted = (): string => "No takes are counted yet.";

export const noReason = (): string => "No recorded column clearly goes with takes.";

export const notCountedYet = (): string => "not counted yet";

export const overTime = (): string => "Over time";

export const period = (): string => "Period";

export const periodMonth = (): string => "month";

export const periodNamed = (d: { readonly period: string | number; readonly reading: string | number; readonly rate: number }): string => d.period + " (" + d.reading + ", " + share(d.rate) + ")";

export const periodQuarter = (): string => "quarter";

export const periodsOut = (d: { readonly periods: readonly string[] }): string => "Out of the ordinary before: " + list(d.periods) + ".";

export const periodsOutLast = (d: { readonly periods: readonly string[] }): string => "Out of the ordinary before, last: " + list(d.periods) + ".";

export const periodWeek = (): string => "week";

export const rate = (d: { readonly rate: number }): string => share(d.rate);

export const rateAndRange = (d: { readonly rate: number; readonly from: number; readonly to: number }): string => share(d.rate) + ", range " + share(d.from) + " to " + share(d.to);

export const ratesByPeriod = (): string => "Take rates by period";

export const readAgain = (): string => "Read again";

export const reasonsGo = (d: { readonly columns: readonly string[]; readonly linked: number }): string => list(d.columns) + " " + plural(d.linked, { one: "goes", other: "go" }) + " with takes. The share is how much of the difference between batches goes with each alone.";

export const reasonsTitle = (): string => "What goes with takes";

export const spread = (d: { readonly spread: string | number }): string => "Batches of one group differ more than by chance alone (batch spread " + d.spread + ", where 1 is chance alone), so the ranges are wider.";

export const standApart = (d: { readonly groups: readonly string[]; readonly number: number; readonly reading: string | number }): string => list(d.groups) + " " + plural(d.number, { one: "is", other: "are" }) + " " + d.reading;

export const standApartAll = (d: { readonly parts: readonly string[]; readonly overall: number }): string => "Evened, " + list(d.parts) + ". All together took " + share(d.overall) + ".";

export const takeRatesBy = (d: { readonly by: string | number }): string => "Take rates by " + d.by;

export const takeRatesByEvened = (d: { readonly by: string | number }): string => "Take rates by " + d.by + ", evened";

export const title = (): string => "Grafts that took";

export const together = (d: { readonly columns: readonly string[] }): string => list(d.columns);

export const tooFewAll = (): string => "There are too few batches yet to compare anybody.";

export const tooFewSome = (d: { readonly groups: number }): string => "For " + plural(d.groups, { one: count(d.groups) + " group", other: count(d.groups) + " groups" }) + " there are too few batches to tell.";

export const trend = (d: { readonly period: string | number; readonly rate: number; readonly usual: number; readonly judged: string | number }): string => d.period + ": " + share(d.rate) + " took, " + share(d.usual) + " is usual. " + d.judged;

export const trendOrdinary = (): string => "Nothing out of the ordinary.";

export const trendReads = (d: { readonly reading: string | number }): string => "This is " + d.reading + ".";

export const trendSigns = (): string => "A dot is a period of grafting. The pale band is the usual up and down. A ring marks a period that is out of the ordinary, a hollow dot one whose takes are still being counted. The top is 100 %, the foot 0 %.";

export const usualRate = (d: { readonly rate: number }): string => "usual " + share(d.rate);
