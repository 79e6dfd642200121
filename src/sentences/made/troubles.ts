// Made by npm run sentences from the files of sentences; a test holds it equal.

import { count, list, plural, select } from "../runtime";

export const addDay = (): string => "Write the day";

export const afterAsOf = (d: { readonly asOf: string | number }): string => "After the as-of day, " + d.asOf;

export const asWritten = (): string => "Nothing if it is the same batch, else give it a name of its own";

export const batchNotInTable = (): string => "The table of batches has no such batch";

export const batchNotInTableHappens = (): string => "The log's lines make a batch of their own";

export const batchNotInTableToDo = (): string => "Add the batch to the table, or correct the name";

export const batchSpeltOtherwise = (d: { readonly name: string | number }): string => "Not written like \"" + d.name + "\"";

export const batchUnnamed = (): string => "The batch has no name";

export const batchUnnamedHappens = (d: { readonly called: string | number }): string => "It is called \"" + d.called + "\"";

export const batchUnnamedToDo = (): string => "Give the batch a name of its own";

export const beforeStep = (d: { readonly step: string | number; readonly day: string | number }): string => "Before " + d.step + " on " + d.day;

export const beforeStepRows = (d: { readonly step: string | number; readonly rows: number }): string => "Before " + d.step + " in " + count(d.rows) + " rows";

export const beforeStepRowsToDo = (d: { readonly rows: number }): string => "Check both days. If the column holds the days of another step, say so in Set up. That mends all " + count(d.rows) + " rows";

export const blankCells = (d: { readonly blanks: number }): string => plural(d.blanks, { one: count(d.blanks) + " blank cell", other: count(d.blanks) + " blank cells" });

export const blanksBelow = (): string => "Blank cells below a value";

export const blanksBelowHappens = (): string => "They stay blank";

export const blanksBelowToDo = (): string => "Fill them in where the value above is meant";

export const bothCounts = (): string => "Both counts are used as they are";

export const bothDays = (): string => "Both days are used as they are";

export const bothRows = (): string => "Both rows are used, each as a batch of its own";

export const cellUnreadHappens = (): string => "The cell is left out, the rest of the row is used";

export const cellUnreadToDo = (): string => "Correct the cell, or empty it";

export const checkCounts = (): string => "Check both counts";

export const checkDays = (): string => "Check both days";

export const closedHappens = (): string => "They count no more";

export const closedStanding = (d: { readonly plants: number }): string => "Closed, but " + count(d.plants) + " plants stand";

export const closedToDo = (): string => "Write where they went";

export const columnLeft = (d: { readonly column: string | number; readonly holds: "count" | "day" | "text" }): string => "\"" + d.column + "\" holds " + select(d.holds, { day: "days", count: "numbers", text: "text", other: "" }) + " of something we don't know";

export const columnLeftAlone = (): string => "The column is left alone";

export const columnLeftToDo = (): string => "Nothing if you don't need it here, else say in Set up what it is";

export const columnMayBe = (d: { readonly column: string | number; readonly holds: "count" | "day" | "text"; readonly best: string | number }): string => "\"" + d.column + "\" holds " + select(d.holds, { day: "days", count: "numbers", text: "text", other: "" }) + ". It may be " + d.best;

export const columnMayBeToDo = (): string => "Say in Set up what it is";

export const columnNoHeader = (d: { readonly found: string | number; readonly holds: "count" | "day" | "text" }): string => "Column " + d.found + " holds " + select(d.holds, { day: "days", count: "numbers", text: "text", other: "" }) + " and has no header";

export const columnNoHeaderToDo = (): string => "Give it a header";

export const columnOpen = (d: { readonly column: string | number; readonly readAs: string | number; readonly others: string | number }): string => "\"" + d.column + "\" could be " + d.readAs + " or " + d.others;

export const columnOpenToDo = (): string => "Nothing if that is right, else say in Set up what it is";

export const columnsAlike = (d: { readonly used: string | number; readonly column: string | number; readonly readAs: string | number }): string => "\"" + d.used + "\" and \"" + d.column + "\" both read as " + d.readAs;

export const columnsAlikeHappens = (d: { readonly used: string | number; readonly column: string | number }): string => "\"" + d.used + "\" is used, \"" + d.column + "\" is left alone";

export const columnsAlikeToDo = (): string => "Say in Set up which one is right, or give the other a header of its own";

export const correctTimetable = (): string => "Correct the timetable";

export const countMissing = (): string => "Done, but not counted";

export const countMissingHappens = (): string => "The count before is used";

export const countMissingToDo = (): string => "Write the count";

export const countRises = (d: { readonly before: string | number; readonly step: string | number }): string => "More plants than the " + d.before + " at " + d.step;

export const dayOfStep = (d: { readonly step: string | number }): string => "the day of " + d.step;

export const daySwapped = (d: { readonly day: string | number; readonly step: string | number; readonly stepDay: string | number; readonly fits: string | number }): string => "Read as " + d.day + ", but " + d.step + " is on " + d.stepDay + ". " + d.fits + " fits";

export const daySwappedRowsToDo = (d: { readonly rows: number }): string => "If day and month were swapped in these " + count(d.rows) + " rows, turn them round";

export const daySwappedToDo = (d: { readonly fits: string | number }): string => "If day and month were swapped, write " + d.fits;

export const dayUsed = (): string => "The day is used as it is";

export const dittoMarks = (): string => "A mark means the value above it";

export const dittoMarksFound = (d: { readonly marks: number }): string => plural(d.marks, { one: count(d.marks) + " ditto mark", other: count(d.marks) + " ditto marks" });

export const dittoMarksHappens = (): string => "It is read as that value";

export const filledFromAbove = (): string => "One value seems to count for the rows below it";

export const filledFromAboveHappens = (): string => "Blank cells are read as the value above them";

export const filledFromAboveToDo = (): string => "Nothing if that is right, else fill the cells in";

export const freeWeekday = (d: { readonly weekday: "1" | "2" | "3" | "4" | "5" | "6" | "7"; readonly others: number }): string => "A " + select(d.weekday, { "1": "Monday", "2": "Tuesday", "3": "Wednesday", "4": "Thursday", "5": "Friday", "6": "Saturday", "7": "Sunday", other: "" }) + ". None of " + count(d.others) + " other days is one";

export const heading = (): string => "A heading or a note";

export const ifSlip = (): string => "Correct the day if it is a slip";

export const inRow = (d: { readonly row: string | number; readonly said: string | number }): string => "Row " + d.row + ": " + d.said;

export const lineLeftOut = (): string => "The line is left out";

export const lineWithoutBatch = (): string => "The line names no batch";

export const lineWithoutBatchToDo = (): string => "Write which batch it was";

export const lineWithoutDay = (): string => "The line has no day";

export const lineWithoutDayHappens = (): string => "Its number is used without a day";

export const lineWithoutStep = (): string => "Not a step of the timetable";

export const lineWithoutStepToDo = (): string => "Use a step's name, or add the step";

export const lotOverdrawn = (d: { readonly taken: string | number; readonly there: string | number }): string => d.taken + " plants taken, but only " + d.there + " were there";

export const lotOverdrawnBy = (d: { readonly taken: string | number; readonly there: string | number; readonly batches: string | number }): string => d.taken + " plants taken, but only " + d.there + " were there (" + d.batches + ")";

export const lotOverdrawnHappens = (): string => "All counts are used as they are";

export const lotOverdrawnToDo = (): string => "Check the counts of the lot and of the batches taken from it";

export const lotsInACircle = (): string => "Lots come from each other";

export const lotsInACircleHappens = (): string => "No plants are counted as given";

export const lotsInACircleToDo = (): string => "Correct the lot";

export const mendsAll = (d: { readonly toDo: string | number; readonly rows: number }): string => d.toDo + ". That mends all " + count(d.rows) + " rows";

export const methodRowsToDo = (d: { readonly toDo: string | number; readonly rows: number }): string => d.toDo + ". It counts for all " + count(d.rows) + " rows. If one differs, write its method in full in its row";

export const nearAlike = (d: { readonly name: string | number; readonly others: number }): string => "Nearly the same as " + d.name + " (" + plural(d.others, { one: count(d.others) + " batch", other: count(d.others) + " batches" }) + ")";

export const nearAlikeHappens = (d: { readonly batches: number }): string => "Each counts as a name of its own, this one for " + plural(d.batches, { one: count(d.batches) + " batch", other: count(d.batches) + " batches" });

export const nearAlikeToDo = (): string => "If they are one, say so in Set up, or spell them alike";

export const nearlySameName = (d: { readonly name: string | number; readonly firstRow: string | number }): string => "Nearly the same name as \"" + d.name + "\" in row " + d.firstRow;

export const noBatchColumn = (): string => "No column is read as Batch";

export const noBatchColumnHappens = (d: { readonly called: string | number }): string => "Batches are called by their rows, the first \"" + d.called + "\"";

export const noLine = (): string => "A heading, a note or a row of sums";

export const noSuchColumn = (d: { readonly found: string | number }): string => "No step or column is called \"" + d.found + "\"";

export const noSuchColumnToDo = (): string => "Correct the name, or add the step to the timetable";

export const noSuchHeader = (d: { readonly column: string | number }): string => "The table has no header \"" + d.column + "\"";

export const noSuchHeaderHappens = (): string => "Nothing is read as what it was told to be";

export const noSuchHeaderToDo = (): string => "Tell it anew if it was renamed";

export const noSuchLot = (): string => "No batch of that name in the range";

export const noSuchLotHappens = (): string => "The batch counts on its own";

export const noSuchLotToDo = (): string => "Correct the lot's name, or take its table into the range";

export const noSuchMethod = (): string => "The timetable has no such method";

export const noSuchMethodHappens = (): string => "Such batches get no dates and no forecast";

export const noSuchMethodNear = (d: { readonly near: string | number }): string => "The timetable has no such method. The nearest is " + d.near;

export const noSuchMethodToDo = (): string => "Say in Set up what it means, or add it to the timetable";

export const notABatchHappens = (): string => "The row is not read as a batch";

export const notABatchToDo = (): string => "Nothing, unless it is a batch. Then name it like the others";

export const note = (): string => "A note, without a day or plants";

export const notPlain = (): string => "Not plainly written";

export const notPlainToDo = (): string => "Nothing if that is right, else write it out";

export const outsideTables = (): string => "Outside the tables";

export const outsideTablesToDo = (): string => "Nothing, unless it belongs to a table. Then move it under a header";

export const planned = (): string => "Read as planned, not as done";

export const plantsAtStep = (d: { readonly step: string | number }): string => "the plants counted at " + d.step;

export const readAs = (d: { readonly readAs: string | number }): string => "Read as " + d.readAs;

export const readAsName = (d: { readonly name: string | number }): string => "Read as \"" + d.name + "\"";

export const readAsNobody = (): string => "Read as blank: it names none";

export const readAsNotDone = (): string => "Read as: not to be done";

export const readAsPlants = (d: { readonly count: string | number }): string => "Read as " + d.count + " plants";

export const readAsShare = (d: { readonly count: string | number; readonly percent: string | number; readonly outOf: string | number }): string => "Read as " + d.count + ", which is " + d.percent + " % of " + d.outOf;

export const releaseHappens = (): string => "A wrap left on cuts into the plant";

export const releaseMissed = (d: { readonly release: string | number; readonly step: string | number }): string => d.release + " has no day, but " + d.step + " has one";

export const releaseToDo = (): string => "See whether it is open, and write the day";

export const rowNotRead = (): string => "The row is not read";

export const sameName = (d: { readonly firstRow: string | number }): string => "Row " + d.firstRow + " has the same name";

export const sameNameToDo = (): string => "Give each batch a name that can't be mistaken";

export const scionsCut = (d: { readonly days: string | number; readonly when: "after" | "before" }): string => "Cut " + d.days + " days " + select(d.when, { after: "after", before: "before", other: "" }) + " grafting";

export const severalMethods = (d: { readonly found: string | number; readonly methods: readonly string[] }): string => "\"" + d.found + "\" fits more than one method: " + list(d.methods);

export const severalMethodsToDo = (): string => "Say in Set up which is meant";

export const sums = (): string => "A row of sums";

export const sumsByNumbers = (): string => "A row of sums, by its numbers";

export const tooSoon = (d: { readonly days: string | number; readonly step: string | number; readonly fewest: string | number }): string => d.days + " days after " + d.step + ". The timetable says " + d.fewest + " at least";

export const tooSoonRows = (d: { readonly least: string | number; readonly most: string | number; readonly step: string | number; readonly fewest: string | number }): string => d.least + " to " + d.most + " days after " + d.step + ". The timetable says " + d.fewest + " at least";

export const tooSoonRowsToDo = (d: { readonly least: string | number; readonly rows: number }): string => "Check both days. If that is usual with you, write " + d.least + " as From day in the timetable. That mends all " + count(d.rows) + " rows";
