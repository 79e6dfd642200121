// Made by npm run sentences from the files of sentences; a test holds it equal.

import { count, list, plural } from "../runtime";

export const added = (): string => "Added to the orders.";

export const addedTitle = (): string => "Added to the orders";

export const addOrder = (): string => "Add to the orders";

export const allDelivered = (): string => "all delivered";

export const allFine = (d: { readonly all: number }): string => "All " + count(d.all) + " orders are fine.";

export const almostSure = (): string => "almost sure";

export const aNewOrder = (): string => "a new order";

export const anyVariety = (): string => "Any variety";

export const by = (d: { readonly by: string | number }): string => "by " + d.by;

export const byAway = (d: { readonly by: string | number; readonly away: string | number }): string => "by " + d.by + ", " + d.away;

export const caution = (): string => "Caution";

export const customer = (): string => "Customer";

export const dayIncomplete = (): string => "Give day, month and year.";

export const dayIsPast = (d: { readonly asOf: string | number }): string => "That day is past. Today counts as " + d.asOf + ".";

export const dayUnknown = (): string => "day not known";

export const delivered = (d: { readonly wanted: number }): string => count(d.wanted) + " delivered";

export const evenChance = (): string => "even chance";

export const fine = (): string => "Fine";

export const fineWhen = (d: { readonly chance: string | number }): string => "An order is fine when its chance to be full by its day is " + d.chance + " or more.";

export const firstToDo = (): string => "First to do:";

export const fromTab = (d: { readonly tab: string | number; readonly asOf: string | number }): string => "From the tab " + d.tab + ", as of " + d.asOf + ".";

export const fullByThen = (): string => "Full by then";

export const hardly = (): string => "hardly";

export const harvest = (): string => "Harvest months";

export const harvestHint = (): string => "Such as Oct-Mar, May-Aug. Blank when seed can be had all year";

export const howSure = (): string => "How sure it has to be";

export const howSureHint = (): string => "The surer, the more plants and the earlier the start";

export const keepOrders = (d: { readonly columns: readonly string[] }): string => "To see what becomes of your orders, keep them in a tab: one row per order, with the columns " + list(d.columns) + ".";

export const keepPlan = (): string => "Keep this plan";

export const lastTwoHold = (d: { readonly cases: string | number }): string => "Last two: right in " + d.cases + " cases.";

export const lateBy = (d: { readonly days: number }): string => "no, " + plural(d.days, { one: count(d.days) + " day", other: count(d.days) + " days" }) + " late";

export const leftUnwritten = (): string => "Nothing was written.";

export const likely = (): string => "likely";

export const likelyOf = (d: { readonly likely: number; readonly left: number }): string => count(d.likely) + " of " + count(d.left);

export const madeOrders = (d: { readonly tab: string | number }): string => "Made the tab " + d.tab + ". Write one row per order, or plan one here.";

export const madeTab = (d: { readonly tab: string | number }): string => "Made the tab " + d.tab + ".";

export const madeTabTitle = (): string => "Made the tab:";

export const makeOrders = (): string => "Make an Orders tab";

export const makeTab = (): string => "Make a tab";

export const makingTab = (): string => "Making the tab";

export const method = (): string => "Method";

export const neededInAll = (): string => "Needed in all";

export const neverFull = (): string => "too few plants";

export const noNumber = (): string => "no number is large enough";

export const noOrders = (): string => "No open orders.";

export const nothingWritten = (): string => "Nothing was written. Read again: the tab may have changed.";

export const notReadAgain = (d: { readonly done: string | number; readonly why: string | number }): string => d.done + " But the outlook could not be read again: " + d.why;

export const of100 = (d: { readonly word: string | number; readonly chance: number }): string => d.word + ": " + count(d.chance) + " of 100";

export const ofTen = (d: { readonly tenths: string | number }): string => d.tenths + " of 10";

export const oneFine = (): string => "One open order, and it is fine.";

export const onePressing = (): string => "One open order, and it needs something done.";

export const order = (): string => "Order";

export const orderHint = (): string => "Blank: it is named after the others";

export const over99 = (d: { readonly word: string | number }): string => d.word + ": over 99 of 100";

export const over99Tenths = (): string => "over 9.9";

export const past = (): string => "past";

export const plan = (): string => "Plan";

export const planNew = (): string => "Plan a new order";

export const planning = (): string => "Planning the order";

export const planOf = (d: { readonly wanted: number; readonly by: string | number }): string => "Plan: " + plural(d.wanted, { one: count(d.wanted) + " plant", other: count(d.wanted) + " plants" }) + " by " + d.by;

export const planOfVariety = (d: { readonly wanted: number; readonly variety: string | number; readonly by: string | number }): string => "Plan: " + plural(d.wanted, { one: count(d.wanted) + " plant", other: count(d.wanted) + " plants" }) + " of " + d.variety + " by " + d.by;

export const planOutdated = (): string => "The form has changed since. Plan again to keep it.";

export const plants = (d: { readonly plants: number }): string => plural(d.plants, { one: count(d.plants) + " plant", other: count(d.plants) + " plants" });

export const plantsWanted = (): string => "Plants wanted";

export const pressing = (d: { readonly pressing: number; readonly all: number }): string => count(d.pressing) + " of " + count(d.all) + " orders " + plural(d.pressing, { one: "needs", other: "need" }) + " something done.";

export const ratherLikely = (): string => "rather likely";

export const ratherUnlikely = (): string => "rather unlikely";

export const readAgain = (): string => "Read again";

export const readyBy = (): string => "Ready by";

export const sayBy = (): string => "Say by which day they have to be ready.";

export const sayWanted = (): string => "Say how many plants are wanted.";

export const shortBy = (): string => "Short by at most";

export const shortPlants = (d: { readonly plants: number }): string => plural(d.plants, { "0": "none", one: count(d.plants) + " plant", other: count(d.plants) + " plants" });

export const somethingToDo = (): string => "Something to do";

export const stillToDeliver = (d: { readonly left: number; readonly wanted: number }): string => count(d.left) + " of " + count(d.wanted) + " still to deliver";

export const sureIn = (d: { readonly method: string | number; readonly cases: string | number }): string => d.method + ", sure in " + d.cases + " cases.";

export const sureInFrom = (d: { readonly method: string | number; readonly cases: string | number; readonly harvest: string | number }): string => d.method + ", enough in " + d.cases + " cases, seed in " + d.harvest + ".";

export const tabMadeFirst = (): string => "There is no tab Orders yet. It is made first.";

export const takenBack = (): string => "The order is taken back.";

export const thePlan = (): string => "The plan";

export const title = (): string => "Orders";

export const toDeliver = (d: { readonly wanted: number }): string => plural(d.wanted, { one: count(d.wanted) + " plant", other: count(d.wanted) + " plants" }) + " to deliver";

export const tooManyZeros = (d: { readonly most: number }): string => "More than " + count(d.most) + ". One zero too many?";

export const under1 = (d: { readonly word: string | number }): string => d.word + ": under 1 of 100";

export const unlikely = (): string => "unlikely";

export const variety = (): string => "Variety";

export const varietyHint = (): string => "Blank for any. Where either will do: Amberlow or Brindlecap. Of one crop: any cocoa";

export const wasDue = (d: { readonly day: string | number }): string => "was due " + d.day;

export const wholeNumber = (): string => "A whole number, 1 or more.";

export const workingOut = (): string => "Working out what becomes of the orders";

export const writingOrder = (): string => "Writing to the orders";

export const written = (): string => "The order is written.";

export const yearRight = (): string => "Is the year right?";
