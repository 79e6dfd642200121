// Made by npm run sentences from the files of sentences; a test holds it equal.

import { count, list, plural, select } from "../runtime";

export const askAgain = (): string => "Take it back";

export const builtIn = (): string => "A tab made from the built-in steps";

export const cantUse = (d: { readonly tab: string | number; readonly why: string | number }): string => d.tab + " looks like a timetable of yours, but it can't be used: " + d.why + ". Correct it there, then read again.";

export const columnAt = (d: { readonly header: string | number; readonly letter: string | number }): string => d.header + " (column " + d.letter + ")";

export const compareBy = (): string => "Make a tab that compares takes by";

export const compareNone = (): string => "Nothing, make no such tab";

export const costOfNone = (d: { readonly what: "batch" | "graftDay" | "grafts" | "start" | "takes" }): string => select(d.what, { batch: "Without it a batch is called by its row, such as Row 12.", start: "Without it we can't tell when to graft.", graftDay: "Without it we can't tell when to count takes, and when plants are ready.", grafts: "Without it there are no take rates and no plants to come.", takes: "Without it there are no take rates, and plants to come are a guess.", other: "" });

export const couldBe = (d: { readonly others: readonly string[] }): string => "It could also be " + list(d.others) + ".";

export const essentials = (): string => "What most answers need";

export const essentialsFound = (d: { readonly names: readonly string[] }): string => "Found: " + list(d.names) + ".";

export const essentialsGuessed = (d: { readonly names: readonly string[] }): string => "A guess, asked below: " + list(d.names) + ".";

export const essentialsMissing = (d: { readonly names: readonly string[] }): string => "Not found yet: " + list(d.names) + ". Choose the column if you have one. If not, go on below.";

export const everybodySees = (): string => "Everybody who can open this workbook will see that tab. Talk with your people first.";

export const forgotten = (): string => "Not read as you chose any more, because the header or the step is gone:";

export const giveHeader = (d: { readonly letter: string | number }): string => "Do you need it? Write a header above it, in column " + d.letter + ", then read the table again.";

export const goToRows = (): string => "Go to the rows, in Check";

export const goToToday = (): string => "Go to Today";

export const groupLeft = (): string => "Not used";

export const groupSure = (): string => "Understood";

export const inColumn = (d: { readonly name: string | number; readonly letter: string | number }): string => d.name + " (column " + d.letter + ")";

export const inTabsToo = (): string => "The tabs will say it that way too, once they are made.";

export const isIt = (d: { readonly name: string | number }): string => "Is it " + d.name + "?";

export const itIs = (d: { readonly header: string | number }): string => "It is " + d.header;

export const kept = (): string => "Kept as they were:";

export const leaveAlone = (): string => "leave alone";

export const leftHolds = (d: { readonly holds: "count" | "day" | "text" }): string => "It holds " + select(d.holds, { day: "days", count: "numbers", text: "text", other: "" }) + ".";

export const likelyColumn = (d: { readonly header: string | number }): string => d.header + " (likely)";

export const lost = (): string => "You chose this before, but the header or the step is gone. Choose again:";

export const lostColumn = (d: { readonly header: string | number; readonly readAs: string | number }): string => d.header + ": " + d.readAs;

export const made = (): string => "Made:";

export const makeAgain = (): string => "Make the tabs again";

export const makeTabs = (): string => "Make the tabs";

export const makeWithout = (d: { readonly names: readonly string[] }): string => "Make the tabs without " + list(d.names);

export const making = (): string => "Making the tabs";

export const mayChange = (): string => "Nothing below needs an answer. You can change it.";

export const methods = (): string => "Methods used here";

export const methodsHint = (): string => "Your timetable gets the steps of those that are ticked.";

export const moreChoices = (): string => "Methods, comparisons, names, looks, more tabs";

export const moreTabs = (): string => "More tabs to make";

export const moved = (): string => "Moved out of the way:";

export const movedTo = (d: { readonly from: string | number; readonly to: string | number }): string => d.from + " to " + d.to;

export const nameless = (d: { readonly letter: string | number }): string => "column " + d.letter;

export const nextQuestion = (): string => "Next question";

export const noBatches = (d: { readonly languages: string | number }): string => "No tab with batches was found. Give a tab a header row such as Batch, Variety, Method, Sown, Grafted on, with one batch in each row below, then read again. We know headers in " + d.languages + ". In another language, write Batch and one more header in English, read again, and choose here what the others are.";

export const noHeader = (d: { readonly letter: string | number }): string => "Column " + d.letter + " has no header";

export const noLeaveIt = (): string => "No, leave it alone";

export const noMethod = (d: { readonly group: string | number }): string => "Tick at least one method, under " + d.group + ".";

export const noQuestion = (d: { readonly about: string | number }): string => "Set up asks nothing about " + d.about + " now. What you answered before stands in the settings tab, where you can change it.";

export const noSuchColumn = (): string => "none of the columns";

export const notSetUp = (d: { readonly button: string | number }): string => "Not set up yet. Press \"" + d.button + "\", and you get new tabs: a due list, plants ready by month, take rates, and checks. Your own table stays as it is.";

export const notUsed = (d: { readonly headers: readonly string[] }): string => "Not used: " + list(d.headers) + ".";

export const notUsedYet = (): string => "Your answers count once the tabs are made.";

export const noValues = (): string => "No values yet.";

export const openQuestions = (d: { readonly questions: number }): string => plural(d.questions, { "0": "No question is open. Make the tabs when you have changed something here.", one: count(d.questions) + " question is open. Answer it if you can, then make the tabs.", other: count(d.questions) + " questions are open. Answer what you can, then make the tabs." });

export const otherTabs = (d: { readonly tabs: readonly string[]; readonly number: number }): string => "Only the tab chosen above is read. Batches are also in " + list(d.tabs) + ". If " + plural(d.number, { one: "it has", other: "they have" }) + " other batches, such as another season's, copy " + plural(d.number, { one: "that table", other: "those tables" }) + ", header and all, below the last row of the tab that is read, then read again.";

export const partlyUsed = (d: { readonly tab: string | number; readonly why: string | number }): string => d.tab + " looks like a timetable of yours. " + d.why;

export const questions = (): string => "Questions";

export const ranksPeople = (d: { readonly header: string | number }): string => d.header + " (ranks people)";

export const readAgain = (): string => "Read the table again";

export const readAgainHint = (): string => "Press it when your table has changed. It makes no tabs. Your answers to the questions stay.";

export const readAs = (): string => "Read as";

export const readAsOf = (d: { readonly header: string | number }): string => "Read as: " + d.header;

export const readingColumns = (): string => "Reading the columns";

export const readTwice = (d: { readonly number: number; readonly readAs: string | number; readonly headers: readonly string[] }): string => count(d.number) + " columns are read as " + d.readAs + ": " + list(d.headers) + ". Should one be left alone?";

export const recordsTab = (): string => "Tab with your records";

export const setUp = (d: { readonly records: string | number; readonly asOf: string | number }): string => "Set up. Our tabs are made from " + d.records + ", for " + d.asOf + ". Make them again to have them follow your answers. Your own table stays as it is.";

export const setUpTimetable = (d: { readonly records: string | number; readonly timetable: string | number; readonly asOf: string | number }): string => "Set up. Our tabs are made from " + d.records + " and the timetable " + d.timetable + ", for " + d.asOf + ". Make them again to have them follow your answers. Your own tables stay as they are.";

export const showLooks = (): string => "List looks, such as bud break, among what is due";

export const stepMake = (): string => "3. What to make";

export const stepRead = (): string => "2. How we read it";

export const stepTable = (): string => "1. Your table";

export const sureLeft = (): string => "Left alone.";

export const sureScions = (): string => "Takes are compared by it: how long scions lay.";

export const sureSure = (): string => "Sure.";

export const sureTold = (): string => "As you chose.";

export const tabRows = (d: { readonly tab: string | number; readonly rows: number }): string => d.tab + " (" + plural(d.rows, { one: count(d.rows) + " row", other: count(d.rows) + " rows" }) + ")";

export const tabsAreMade = (): string => "The tabs are made.";

export const tabsMade = (): string => "Tabs made";

export const timetable = (): string => "Timetable: the steps and their days";

export const timetableHint = (): string => "Your own tab is only read, never changed.";

export const understood = (d: { readonly batches: number; readonly left: number; readonly columns: number; readonly used: number }): string => "We read " + plural(d.batches, { one: count(d.batches) + " batch", other: count(d.batches) + " batches" }) + " and " + plural(d.left, { "0": "every column, " + count(d.columns) + " in all.", other: count(d.used) + " of " + count(d.columns) + " columns." });

export const untilAnswer = (d: { readonly name: string | number }): string => "If it is something else, choose that below. Until you answer, it counts as " + d.name + ".";

export const untilAnswerNot = (): string => "If it is something else, choose that below. Until you answer, it is not used.";

export const usualMethod = (d: { readonly batches: number; readonly method: string | number }): string => plural(d.batches, { one: count(d.batches) + " batch names", other: count(d.batches) + " batches name" }) + " no method and " + plural(d.batches, { one: "counts", other: "count" }) + " as " + d.method + ". Where that is wrong, write the method in the row, or read the column that says it as Method.";

export const values = (): string => "Values";

export const whatIsMade = (): string => "The button at the top makes the due list, plants ready by month, take rates and checks. More is here:";

export const whichIs = (d: { readonly name: string | number }): string => "Which column is " + d.name + "?";

export const yesItIs = (d: { readonly name: string | number }): string => "Yes, it is " + d.name;

export const yours = (d: { readonly tab: string | number; readonly methods: number }): string => d.tab + " (yours, " + plural(d.methods, { one: count(d.methods) + " method", other: count(d.methods) + " methods" }) + ")";

export const youSaid = (d: { readonly name: string | number }): string => "You said: " + d.name + ".";

export const zones = (d: { readonly workbook: string | number; readonly script: string | number }): string => "The workbook's time zone is " + d.workbook + ", the script's is " + d.script + ". Days follow the workbook's.";
