// Made by npm run sentences from the files of sentences; a test holds it equal.

import { count, list, plural, select } from "../runtime";

export const allRecords = (): string => "All records";

export const asOf = (d: { readonly file: string | number; readonly day: string | number; readonly tabs: number; readonly names: readonly string[]; readonly records: string | number; readonly own: "no" | "yes"; readonly timetable: string | number }): string => d.file + " as of " + d.day + "\nRecords: " + plural(d.tabs, { one: "tab " + list(d.names), other: "tabs " + list(d.names) + ", under one another in tab " + d.records }) + ". Timetable: " + select(d.own, { yes: "tab " + d.timetable, no: "the built-in one", other: "" }) + ".\n";

export const asOfTab = (): string => "As of";

export const batches = (): string => "Batches";

export const calculating = (d: { readonly file: string | number }): string => "Calculating " + d.file + " ...";

export const cautions = (): string => "Cautions";

export const check = (): string => "Check";

export const checkHeading = (): string => "Check: what in the records could not be used or looks wrong";

export const column = (): string => "Column";

export const columnCompares = (): string => "used to compare takes";

export const columnLeft = (): string => "left alone";

export const columnLikely = (): string => "likely";

export const columnNames = (d: { readonly names: string | number }): string => "Our names: " + d.names + ".";

export const columnsHeading = (): string => "Columns: how each header of the records was read";

export const columnSure = (): string => "sure";

export const columnTold = (): string => "told";

export const correctColumns = (d: { readonly name: string | number; readonly header: string | number }): string => "To correct one, say so behind the command: --column \"OUR NAME=HEADER\", such as --column \"" + d.name + "=" + d.header + "\".";

export const correctWords = (d: { readonly name: string | number; readonly word: string | number }): string => "To say what one means, write behind the command: --word \"OUR NAME=WORD\", such as --word \"" + d.name + "=" + d.word + "\".";

export const cost = (): string => "Cost";

export const costHeading = (): string => "Cost: what each batch has cost so far, losses included";

export const dueList = (): string => "Due list";

export const dueListHeading = (): string => "Due list: what is late, due and coming";

export const header = (): string => "Header";

export const howSure = (): string => "How sure";

export const made = (d: { readonly file: string | number }): string => "Calculated workbook: " + d.file + "\n";

export const madeBy = (d: { readonly formula: string | number }): string => "made by " + d.formula;

export const mayBe = (): string => "May be";

export const more = (d: { readonly more: number }): string => "… and " + count(d.more) + " more";

export const moreInTab = (d: { readonly more: number; readonly tab: string | number }): string => "… and " + count(d.more) + " more in the tab \"" + d.tab + "\" of the calculated workbook";

export const noBatchesYet = (): string => "The records have no batches yet. Write the first one below the header.\n";

export const none = (): string => "(none)";

export const noRecords = (d: { readonly tabs: readonly string[] }): string => "No tab looks like batch records (headers such as Batch, Variety, Sown, Grafted on). Name your header with --column \"Batch=YOUR HEADER\", or the tab with --sheet NAME. The tabs are " + list(d.tabs);

export const noTab = (d: { readonly tab: string | number; readonly tabs: readonly string[] }): string => "There is no tab \"" + d.tab + "\". The tabs are " + list(d.tabs);

export const notCalculated = (): string => "not calculated";

export const orderOutlook = (): string => "Order outlook";

export const orderOutlookHeading = (): string => "Orders: how likely each is full by its day, and what to do";

export const ourName = (): string => "OUR NAME";

export const placeLoad = (): string => "Place load";

export const placeLoadHeading = (): string => "Places: how many plants stand in each, week by week, those that are too full first";

export const readAs = (): string => "Read as";

export const remarks = (): string => "Remarks";

export const stages = (): string => "Stages";

export const stagesHeading = (): string => "Stages: how far every open batch is and when it is likely ready";

export const suchAs = (): string => "Such as";

export const tab = (): string => "Tab";

export const takesByGrafter = (): string => "Takes by grafter";

export const takesByGrafterHeading = (): string => "Take rates by grafter (batch spread: 1 is chance alone)";

export const takesByVariety = (): string => "Takes by variety";

export const takesByVarietyHeading = (): string => "Take rates by variety (batch spread: 1 is chance alone)";

export const tellApart = (d: { readonly name: string | number; readonly other: string | number }): string => "Two names that are two: --apart \"" + d.name + "=" + d.other + "\".";

export const word = (): string => "Word";

export const wordsHeading = (): string => "Words: what cells say that may be meant in more ways than one";

export const workPlan = (): string => "Work plan";

export const workPlanHeading = (): string => "Work plan: who does what on which day of the fortnight";
