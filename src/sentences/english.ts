/**
 * All that a person reads, in English, as ICU messages. Change any text in quotation marks; what
 * stands in braces are facts, filled in later. How: README.md beside this file. Then npm run sentences.
 *
 * Groups stand in the order of letters, with a blank line between. It is long since a language is one file.
 */
export const english = {
  aheadPage: {
    all: "All varieties",
    asTable: "The same as a table",
    batches:
      "{batches, plural, one {# batch is likely in this month:} other {# batches are likely in this month:}}",
    batchesReady: "{batches, plural, one {# batch is ready:} other {# batches are ready:}}",
    byItsEnd: "By its end {numbers}",
    dayUnknown: "day not known",
    holds: "{level, share} of such ranges should come true.",
    likely: "{window}, likely {day}",
    loading: "Working out what will be ready",
    noBatch: "No batch is likely in this month. Those of other months may still fall into it.",
    noneComing:
      "{leftOut, select, yes {We could not read everything. Of the rest, no} no {No} other {}} open batch with counted plants is on its way to ready.",
    noneLikely: "none likely",
    notCounted: "plants not counted",
    plants: "{numbers} plants",
    readAgain: "Read again",
    reading:
      "The bar runs from fewest to most, and the tick is the likely number. Likely numbers add up. By its end: ready by then, plants ready now included.",
    ready: "ready",
    readyByMonth: "Plants ready by month: {variety}",
    readyOf: "Plants ready: {variety}",
    readySince: "ready since {day}",
    readySinceAbout: "ready since about {day}",
    showBatches: "Press a month to see its batches.",
    title: "Plants ready, by month",
    together: "Now and in all these months: {numbers} plants.",
    trackRange: "{fewest, count} to {most, count} plants, likely {likely, count}",
    upTo: "{most, count} plants",
    variety: "Variety",
  },

  argumentFaults: {
    aBlankCell: "a blank cell",
    belowOneDay: "{argument} must be a whole number of days, 1 or more. Found {found}",
    cellInColumn: "{argument} row {row}, column {column},",
    columnsUnreadable:
      "columns must be columns of text: our name, your word, and what it is. Found {name} beside {header}",
    dayBelowZero: "days must be 0 or more. Found {day}",
    daysNotRising: "days must rise. Found {day} after {before}",
    inspectionsDiffer:
      "days and counts must have the same number of rows. Found {days} and {counts}",
    isLoading: "{cell} is still loading",
    levelOutOfRange: "{argument} must lie between 0 and 1, such as 0.8 or 80%. Found {found}",
    methodsFit: '"{name}" fits more than one method. Name one: {methods}',
    missing:
      "{argument} is missing: give {needs, select, day {a day} name {a name} crew {a table with Person and Hours a day} places {a table with Place and Holds} table {the range of your table} other {}}",
    moreUpThanSown: "{up} came up of {sown} sown: more than all",
    noHeader:
      "records has no header row in its first ten rows that names a batch or a step. It starts with {begins}",
    noPlants: "a range needs plants. Found {successes} of {trials}",
    noSteps: "timetable has no steps",
    notACount: "{argument}: {why}",
    nothingSown: "sown must be 1 or more. Found {sown}",
    notWanted:
      "{argument} must be {wanted, select, day {a day} text {a text} number {a whole number, 0 or more} other {}}. Found {found}",
    shows: "{cell} shows {shown}",
    sizesDiffer: "taken and grafted must be of one size. Found {taken} and {grafted}",
    toldAsUnknown:
      'columns says "{found}" of "{word}". The third column says {kinds, list} or nothing',
    unknownMethod: 'There is no method "{name}". There are: {known}',
    wantedOutOfRange: "{argument} must be a whole number from 1 to {most}. Found {found}",
  },

  batchBalanceHelp: {
    answers:
      "One row per batch. Not come up, Graded out, Not taken and Lost later are what each count misses of the one before, without those culled or given away. Stage not known: a count was skipped between. Unexplained: plants of which no count tells; below 0 if there are more than can be.",
    sentence:
      "Where every plant of each batch went: lost at which stage, culled, given, dispatched, still there or unexplained.",
  },

  batchCheckHelp: {
    answers:
      "One row per trouble, most plants at stake first. Row counts from 1 at the top of the range. The last row counts the rows of the range.",
    asOf: "The day to look from. Leave it out to skip what needs a day.",
    sentence: "What in your table can't be read or looks wrong, what happens, and what to do.",
  },

  batchColumns: {
    batch: "Batch",
    batches: "Batches",
    between: "Stage not known",
    by: "By",
    caution: "Caution",
    countedOn: "Counted on",
    countHeld: "Count held",
    culled: "Culled",
    dayHeld: "Day held",
    daysLate: "Days late",
    dispatched: "Dispatched",
    doneOn: "Done on",
    doOn: "Do on",
    fewest: "Fewest",
    fewestByEnd: "Fewest by month end",
    fewestReady: "Fewest ready",
    from: "From",
    given: "Given to batches",
    gradedOut: "Graded out",
    hours: "Hours",
    lastCount: "Last counted",
    lastStep: "Last step",
    likely: "Likely",
    likelyByEnd: "Likely by month end",
    likelyCount: "Likely count",
    likelyReady: "Likely ready",
    lostLater: "Lost later",
    method: "Method",
    month: "Month",
    most: "Most",
    mostByEnd: "Most by month end",
    mostReady: "Most ready",
    nextBy: "Next by",
    nextFrom: "Next from",
    nextLikely: "Next likely",
    nextStep: "Next step",
    notComeUp: "Not come up",
    notTaken: "Not taken",
    place: "Place",
    plants: "Plants",
    plantsAre: "Plants are",
    readyBy: "Ready by",
    readyFrom: "Ready from",
    readyLikely: "Ready likely",
    recordedCount: "Recorded count",
    recordedOn: "Recorded on",
    remark: "Remark",
    remarks: "Remark",
    shouldStand: "Should stand",
    started: "Started with",
    status: "Status",
    step: "Step",
    task: "Task",
    unexplained: "Unexplained",
    variety: "Variety",
    wasReady: "Was ready",
    were: "Were",
  },

  batchCostHelp: {
    answers:
      "One row per begun batch: Materials from the timetable's Needs, Hours from its work rates, Cost of both, and Cost over the plants counted as ready or likely to be. A lot passes its cost on to the batches taken from it, by their plants. Below, for each method, all batches together, and what a started plant carries. What has no price is never 0: the last row names it.",
    prices:
      "Your table of prices: Item, Price, and Per, the unit it is for. The item hour is a person's work. Leave blank for hours alone.",
    sentence: "What each batch has cost so far in materials and hours, losses included.",
  },

  batchDueHelp: {
    answers:
      "One row per task, soonest first, looks last. Status is late, due or coming. Plants are those likely to be worked on: a job leaves out what is graded out first.",
    daysAhead: "How many days to look ahead.",
    sentence: "What is to be done, for which batch, where, between which days, and what is late.",
  },

  batches: {
    about: "about",
    all: "All",
    allMonths: "All together",
    closedUndated:
      "{batches, plural, one {# batch was closed on no written day and counts} other {# batches were closed on no written day and count}} as dead. Write the day when you close one.",
    closedWith:
      "{plants, plural, one {# plant was} other {# plants were}} still there when it was closed.",
    coming: "coming",
    counted: "counted",
    due: "due",
    held: "Held",
    heldOf: "{held, count} of {all, count}",
    late: "late",
    leftAfterCount:
      "{left, count} gone since the last count. {standing, plural, =0 {None are} one {# is} other {# are}} there now.",
    moreLeft: "More plants left than came in.",
    moreStand: "More plants than there should be.",
    nextLate: "{step} was due by {by}. Nothing recorded since {since}.",
    no: "no",
    noDates: "No day recorded, so we can't give dates.",
    noDayYet: "No day recorded yet.",
    noneHeld: "No batch forecast then can be judged yet",
    noPlantsCounted: "No plants counted yet.",
    noSuchMethod: "The timetable doesn't have this method.",
    notJudgedYet:
      "Not judged yet: {batches, plural, one {# batch} other {# batches}}. Some of their days are still to come.",
    plainRule:
      "{days, select, better {A plain rule would have done better on days.} alike {A plain rule would have done as well on days.} worse {A plain rule would have done worse on days.} none {Too few batches were finished then to try a plain rule on days.} other {}} {plants, select, better {It would have done better on plants.} alike {It would have done as well on plants.} worse {It would have done worse on plants.} none {Too few were finished to try it on plants.} other {}} The rule: what finished batches took, and kept, from the same last step.",
    planned: "Planned.",
    readyNow: "Ready now",
    setAside:
      "Nothing recorded since {since}: left out of forecasts. Close it, or record what happened.",
    severalMethods: "More than one method fits.",
    wentOn:
      "Not judged: {batches, plural, one {# lot whose plants} other {# lots whose plants}} went on as other batches.",
    yes: "yes",
  },

  batchLookbackHelp: {
    answers:
      "One row per batch under way then whose whole range of days is past, whatever became of it. One that died had no plants ready, on no day. Below: how many ranges held, how many batches can't be judged yet, and whether a plain rule would have done better.",
    daysBefore: "How many days back from the as-of day, such as 180.",
    sentence:
      "What the forecast would have said some days ago, from the records of that day, and whether it was right.",
  },

  batchLossesHelp: {
    answers:
      "For each group what it started with, and below it where those plants went. Each plant is in one row. Culled plants show the reason that the log gives. Cost is what the lost plants had used by then: needs and work of the steps behind them.",
    by: 'A header of your table, such as "Variety", "Place", "Batch" or "Season". "Reason" lists the reasons for culling. Leave blank for all together.',
    prices: "Your table of prices: Item, Price, and Per. Leave it out to see plants alone.",
    sentence: "Where plants are lost, stage by stage and why, and what that has cost.",
  },

  batchReadyHelp: {
    answers:
      "One row per month and variety, and All. Plants ready already have rows of their own, Ready now. All together at the end is these and all months. Likely adds up: each is a share of what is likely of all. Fewest and most don't, because all hardly ever do worst, or best, together. By month end: ready by the end of that month, plants ready now included. Batches: how many are likely ready then.",
    sentence: "How many plants will be ready, by month and variety and all together, as ranges.",
  },

  batchStagesHelp: {
    answers:
      "One row per open batch: the last step, the next with its days, and the days and plants when ready, each as a range.",
    sentence:
      "How far each open batch is, what comes next, and how many plants will be ready when.",
  },

  batchStepsHelp: {
    answers: "One row per batch and step. Steps of closed batches carry what was recorded only.",
    sentence: "Every step of every batch: what is recorded, and what is expected of steps to come.",
  },

  blockedTabs: {
    inTheWay:
      "{tab} shows no answer: {cell} {more, plural, =0 {is} one {and # more cell are} other {and # more cells are}} in its way. Choose Refresh the due list in the Nursery menu to move {more, plural, =0 {it} other {them}} aside",
    noRoom:
      "{tab} shows no answer: it has no room, or what it reads is gone. Make the tabs again in Set up",
  },

  check: {
    cells: "{cells, list}",
    correctTab: "Correct the tab {tab}",
    moreCells: "{more, count} more",
    nothingToDo: "Nothing",
    noTrouble: "No trouble found",
    onlyThisCheck: "Until it is corrected, only this check is answered",
    rows: "{rows, plural, one {# row} other {# rows}} in the range",
    rowsAllUsed: "Every row is used",
    rowsUsed:
      "{used, plural, one {# row is} other {# rows are}} used, {leftOut, plural, one {# is} other {# are}} left out{notBatches, plural, =0 {} one {, # is a sum, heading or note} other {, # are sums, headings or notes}}{heading, plural, =0 {} one {, # is the header} other {, # are the header and what stands above it}}{blank, plural, =0 {} one {, # is blank} other {, # are blank}}",
    untold:
      "{formulas, plural, one {# formula of yours reads} other {# formulas of yours read}} the records without what you told in Set up",
    untoldHappens: "Columns and names may be read otherwise than in the tabs that we make",
    untoldToDo: "Give the argument columns: {columns}",
    withoutGermination: "How seed comes up is answered without it",
    withoutOrders: "Orders are answered without it",
    withoutPlaces: "How full places get is answered without it",
    withoutPrices: "Costs are answered without it",
    withoutWork: "Work is planned without it",
  },

  checkColumns: {
    column: "Column",
    found: "Found",
    row: "Row",
    rows: "Rows",
    trouble: "Trouble",
    whatHappens: "What happens",
    whatToDo: "What to do",
  },

  checkPage: {
    answerInSetUp: "Answer it in Set up",
    checking: "Checking your tables",
    column: "Go to column {column}",
    found: "Found:",
    going: "Going to the cell",
    goToRow: "Go to row {row}",
    goToRows: "Go to a row:",
    goToRowsUnder: "Go to a row, under {column}:",
    howMany: "How many:",
    howTo: "Mend each in the sheet or in Set up, then check again.",
    leftOutRows:
      "{rows, plural, one {Go to the row that is left out} other {Go to the # rows that are left out}}",
    moreRows: "{rows, plural, one {# more row} other {# more rows}}",
    noTrouble: "No trouble found.",
    plants: "{plants, plural, one {# plant} other {# plants}}",
    pleaseCheck: "{number, plural, one {# trouble} other {# troubles, most plants first}}",
    readAgain: "Check again",
    readAsSaid:
      "{number, plural, one {# reading} other {# readings}} to look at: used as said here",
    row: "Row {row}",
    rowColumn: "Go to row {row}, {column}",
    selected: "Selected in the sheet: {cell}",
    severalRows: "{rows, count} rows{plants, plural, =0 {} one {, # plant} other {, # plants}}",
    tab: "Go to the tab {tab}",
    tally: "{tally}.",
    title: "Troubles in your tables",
    whatHappens: "What happens:",
    whatToDo: "What to do:",
    where: "Where:",
    wholeTable: "The whole table",
  },

  controls: {
    allOfIt: "All of it",
    away: "{days, plural, =0 {today} one {{when, select, ahead {tomorrow} ago {yesterday} other {}}} other {{when, select, ahead {in # days} ago {# days ago} other {}}}}",
    blank: "blank",
    cut: "{text}… ({length, count} characters in all)",
    dismiss: "Dismiss",
    doing: "{doing} …",
    hours: "{hours} {form, select, one {hour} many {hours} other {}}",
    hoursOf: "{asked} of {hours}",
    initials: "Initials instead of names",
    no: "no",
    number: "{number, count}",
    percent: "{part, share}",
    showMore: "Show {next, count} more of {left, count}",
    underTenth: "under 0.1",
    yes: "yes",
  },

  costColumns: {
    batch: "Batch",
    cost: "Cost",
    costOfReady: "Cost per ready plant",
    hours: "Hours",
    materials: "Materials",
  },

  costs: {
    allOf: "All: {method}",
    batchSteps: "{batch} ({steps, list})",
    hourUnused: "The price of an hour is not used.",
    itemIn: "{item} ({unit})",
    itemPricedBy: "{item} (needed in {unit}, priced by {units, list})",
    noHourPrice: "No price of an hour, so work is not in the cost.",
    noPlants: "Some steps have no count of plants and are left out: {batches, list}.",
    noPrice: "No price for {items, list}, so they are not in the cost.",
    noRate: "No work rate in the timetable for {steps, list}, so their hours are left out.",
    notBegun: "{batches, plural, one {# batch has} other {# batches have}} not begun.",
    notNeeded: "Priced, but not needed so far: {items, list}.",
    pieces: "pieces",
    startedPlant: "A started plant: {method}",
  },

  days: {
    day: "{day} {month} {year}",
    dayMonth: "{day} {month}",
    month: "{month} {year}",
    monthName:
      "{number, select, 1 {Jan} 2 {Feb} 3 {Mar} 4 {Apr} 5 {May} 6 {Jun} 7 {Jul} 8 {Aug} 9 {Sep} 10 {Oct} 11 {Nov} 12 {Dec} other {}}",
    weekdayDay: "{weekday} {day} {month}",
    weekdayName:
      "{number, select, 0 {Sun} 1 {Mon} 2 {Tue} 3 {Wed} 4 {Thu} 5 {Fri} 6 {Sat} other {}}",
    weekOf: "week of {day}",
    window: "{from} – {by}",
  },

  dueCalendar: {
    daysLate: "{days, plural, one {# day} other {# days}} late.",
    leftOut: "Not in the due list",
    summary: "{task}: {batch}",
    summaryPlants: "{task}: {batch}, {plants, plural, one {# plant} other {# plants}}",
    summaryPlantsAbout: "{task}: {batch}, about {plants, plural, one {# plant} other {# plants}}",
    window: "From {from} to {by}, usually {usual}.",
  },

  dueRows: {
    asks: 'not written yet: {asked} Tick "Yes, write it" to go on.',
    copy: 'this tab is a copy. Tick in the tab "{tab}"',
    countBlank: "Count is blank: fill it to add it",
    goneAlready: "taken back: it was gone already",
    inLogOnly: "In the write log only: {what, list}",
    nameCount: "count",
    nameNote: "note",
    notMadeAnew: "not refreshed. {why}",
    notTakenBack: "not taken back: {why}",
    notWritten: "not written: {why}",
    still: "still in the records: this list did not write it",
    takenBack: "taken back: {cells}",
    there: "already in the records: {cells}",
    waits: "not written yet: another edit is being written. The next tick writes this one too",
    written: "written: {cells}",
  },

  dueTab: {
    age: "Of {day}",
    ageChanged: "List of {day}. Records have changed since. Tick this row's box for a new one",
    ageOtherDay: "List of {day}, not today's. Tick this row's box for a new one",
    ageUnknown:
      "List of {day}. We can't tell what has changed since. Tick this row's box for a new one",
    batch: "Batch",
    by: "By",
    caution: "Caution",
    change: "±",
    counted: "Count",
    done: "Done",
    from: "From",
    hours: "Hours",
    justEntered: "Somebody has just entered something in the due list. Try again",
    lateBy: "late by {days, plural, one {# day} other {# days}}",
    lateMark: "LATE {days, plural, one {# day} other {# days}}",
    madeBy:
      'of {day}. Tick Done to record a task, and fill Count where plants are counted. Clear the box to take it back. If a task is not to be done, write "{word}" under Count and tick Done. Plants with {sign} are an estimate.',
    memory: "Write",
    note: "Note",
    offTheList: "not on the list any more. Clear the row to drop it",
    place: "Place",
    plants: "Plants",
    sign: "?",
    state: "Written",
    status: "Status",
    task: "Task",
    what: "What",
    who: "Who",
    writtenDaily: "Put in at each refresh: functions can't use TODAY() in this spreadsheet",
    yes: "Yes, write it",
  },

  facesPage: {
    fact: "{name}: {value}",
    fullest: "{plants}, {week}",
    index: "All answers",
    loading: "Reading the records",
    nothing: "Nothing to show.",
    ofHolds: "{plants, count} of {holds, count}",
    overBy: "{plants, count} of {holds, count}, {over, count} too many",
    reading:
      "{face, select, places {Plants likely to stand there, week by week. The frame is what the place holds} needs {For the tasks of the next 30 days} costs {Materials and hours so far, with what the lost plants took} balance {What should stand, and where the others went} lookback {What we forecast 180 days ago, and what came} germination {Each batch beside what the others had by the same day} other {}}.",
    title:
      "{face, select, places {How full places get} needs {What the coming work needs} costs {What batches have cost} balance {Where the plants of each batch went} lookback {Whether our forecast held} germination {How seed comes up} other {}}",
    tooFull: "Too full:",
  },

  fileFaults: {
    badWorkbook: "{file} is damaged. It can't be opened as an .xlsx workbook",
    empty: "{file} is empty",
    emptyTabs: "{file} is empty. No tab has a filled cell",
    hasPassword: "{file} has a password. Save it without one first",
    longText:
      "{file} has a text of more than {most, count} characters in row {row, count}{where, select, tab { of {tab}} file {} other {}}. Is a quotation mark left open there?",
    noFile: "There is no file {file}",
    notAFile: "{file} is not a file but a folder or the like",
    notATable: "{file} is not a table, whatever its name says",
    notAWorkbook: "{file} is not an .xlsx workbook, whatever its name says",
    oldOrLocked:
      "{file} is an old .xls workbook or has a password. Save it as a plain .xlsx workbook first",
    otherKind: "{file} is neither an .xlsx workbook nor a .csv table",
    tabDamaged: "{file} is damaged. One of its tabs can't be read",
    tabUnread: "{file} is damaged. Its tab {tab} can't be read",
    tooHungry: "{file} is too large or damaged. Reading it takes too much memory",
    tooLarge: "{file} is too large. We read files of at most {most, count} MB",
    tooLong:
      "{file} is too long. {where, select, tab {Tab {tab}} file {It} other {}} has a value in row {row, count}, and we read at most {most, count} rows",
    tooManyCells: "{file} is too large. It has more than {most, count} filled cells",
    tooManyCharacters: "{file} is too large. Its texts have more than {most, count} characters",
    tooManyMerges: "{file} is too large. {tab} has more than {most, count} merged areas",
    tooManyTabs:
      "{file} is too large. It has {tabs, count} tabs, and we read at most {most, count}",
    tooSlow: "{file} is too large or damaged. Reading it takes too long",
    tooWide:
      "{file} is too wide. {where, select, tab {Tab {tab}} file {It} other {}} has a value in column {column, count}, and we read at most {most, count} columns",
    unpackedTooLarge:
      "{file} is too large. Unpacked it has {size, count} MB, and we read at most {most, count}",
    unreadable: "{file} can't be read. It is damaged, or made in a way that we don't know",
  },

  functionFaults: {
    ownFault: "{name} failed by a fault of its own. Please report it: {why}",
  },

  germination: {
    batchMore:
      "More came up than was sown, so these are left out: {batches, list}. If you write how many are up in all, call that column Up so far.",
    batchPoor:
      "{batch} comes up poorly: {share, share} on day {day, count}, where the others had {others, share}. Sow again now if you need the plants.",
    batchSamples: "{batch}: {samples}",
    batchUnsaid: "Nothing says how many seeds were sown, so these are left out: {batches, list}.",
    cameUp: "Came up",
    days: "days",
    daysSquared: "days²",
    firstCameUp: "First came up",
    germination: "Germination",
    half: "Half came up, counting N/2",
    halfPlusOne: "Half came up, counting (N+1)/2",
    lastCameUp: "Last came up",
    meanTime: "Mean time",
    percent: "%",
    percentADay: "% a day",
    samplesAgree:
      "The {samples, select, 2 {two} 4 {four} other {}} samples differ by {range, count}. At a mean of {mean, count}\u00a0% they may differ by {allowed, count} (7 CFR 201.55).",
    samplesAgreeByChance:
      "The {samples, count} samples differ by {range, count}. Chance alone does that in {oneOf, plural, =1 {nearly every sowing} other {1 of {oneOf, count} sowings}}: they agree.",
    samplesDiffer:
      "The {samples, select, 2 {two} 4 {four} other {}} samples differ by {range, count}. At a mean of {mean, count}\u00a0% only {allowed, count} is allowed (7 CFR 201.55). Test again.",
    samplesDifferByChance:
      "The {samples, count} samples differ by {range, count}. Chance alone does that in 1 of {oneOf, count} sowings. Test again.",
    samplesUneven:
      "{sown, count} seeds don't part evenly into {samples, count} samples, so we can't tell if the samples agree.",
    seeds: "seeds",
    seedsADay: "seeds a day",
    sown: "Sown",
    speed: "Speed (Maguire)",
    standardError: "Standard error of the mean time",
    variance: "Variance of the time",
    velocity: "Velocity, 100 by mean time",
  },

  germinationColumns: {
    batch: "Batch",
    germination: "Germination",
    halfUp: "Half up after days",
    high: "High",
    lastInspection: "Last inspection, day",
    low: "Low",
    measure: "Measure",
    othersByThen: "Others by then",
    samples: "Samples",
    seedsSown: "Seeds sown",
    unit: "Unit",
    up: "Came up",
    value: "Value",
  },

  germinationSummaryHelp: {
    answers:
      "One row per figure, with its unit. With several samples the last row says if they agree. Of a table, one row per batch, beside what the others had by the same day.",
    counts:
      "Seeds newly come up at each inspection. One column for each sample, sown alike. Leave it out for a table.",
    days: "Days since sowing of each inspection, one column. Or a table with one row per inspection: Batch, Sample, Sown on, Seeds sown, Day, and Came up (since the last one) or Up so far.",
    sentence:
      "How well and how fast seed came up: share, days until half were up, mean time, speed.",
    sown: "Seeds sown in all. Leave it out for a table.",
  },

  localPage: {
    askOrLose: "{file} has changes here that are not saved.\n\nOpen {other} and lose them?",
    askYesNo: "{prompt}\n\n(OK for yes, Cancel for no)",
    askYesNoCancelFirst: "{prompt}\n\n(OK for yes, Cancel for the other answers)",
    askYesNoCancelThen: "{prompt}\n\n(OK for no, Cancel to do nothing)",
    beingBuilt: "The add-in is being updated. Try again in a minute.",
    cantStart: "The page can't start. {why}",
    cantWrite: "{name} can't be written beside {file} ({why}). Take Download as xlsx",
    close: "Close",
    copy: "A copy",
    download: "Download as xlsx",
    downloaded: "Given to the browser to download as {name}.",
    fromElsewhere:
      "Another page asked for this. Type or paste the address into the browser yourself.",
    grid: "Spreadsheet",
    isOpen: "{file} is open at {address}\nPress Ctrl+C to end.",
    isThere: "{name} is there already",
    letGo: "Let go to open the file. It is only read.",
    making: "Making the page ready (once) ...",
    menus: "Menus of the add-in",
    messages: "Messages",
    noAnswer: "The program that serves this page does not answer ({why}). Take Download as xlsx",
    notHere: "Not here.",
    nothingHere: "Nothing is here.",
    nothingOfThisKind: "Nothing of this kind.",
    nothingTaken: "Nothing is taken here.",
    notSaved:
      "Not saved. What you type here, and what the sidebar writes to the records, is in this page only until you save a copy. {file} itself is never changed.",
    noWorkbook: "This is no workbook.",
    onlyAt: "This page is at {address} and nowhere else.",
    openFile: "Open a file",
    page: "Local page",
    save: "Save",
    savedBeside: "Saved as {name}, beside {file}.",
    scriptFails: "Code.js does not load. {why}",
    scriptUnread: "Code.js can't be read",
    sidebar: "Sidebar",
    sidebarOf: "Sidebar of the add-in",
    starting: "Starting …",
    title: "{file} – local page",
    titleUnsaved: "● {file} – local page",
    tooMuch: "This is too much.",
    working: "Working …",
    wrongAddress: "Nothing is here. The page is at the address that the program printed.",
  },

  lossColumns: {
    cost: "Cost",
    ofStarted: "Of started",
    plants: "Plants",
    reason: "Reason",
    stage: "Stage",
  },

  losses: {
    culled: "culled",
    lostBy: "Lost by {step}",
    noReason: "no reason written",
    notCounted: "Left out, their plants were never counted: {batches, list}.",
    standing: "Standing",
    withoutMethod: "Stage and cost are rough, the method is not known: {batches, list}.",
  },

  lossesPage: {
    all: "All together",
    asTable: "As a table",
    by: "Show losses by",
    cost: "Cost {cost}",
    counting: "Counting losses",
    culledAt: "{stage}: {reason}",
    group: "Group",
    none: "No plants are counted yet.",
    noReason: "No reason written",
    plantsAndShare: "{plants, count} ({share, share})",
    reading: "Each bar starts where the one above ends.",
    readingReasons: "Why plants were culled, as the log says, and what the counts miss besides.",
    title: "Where plants are lost",
  },

  menu: {
    dueListRefreshed:
      "Due list refreshed{some, plural, =0 {} other {. Moved out of the way: {moved, list}}}",
    menu: "Nursery",
    moreMoved: "{more, count} more",
    moved: "{from} to {to}",
    open: "Open the sidebar",
    refresh: "Refresh the due list",
    title: "Nursery batches",
    writeTicked: "Write ticked tasks",
    written:
      "{recorded, plural, one {# task} other {# tasks}} written{takenBack, plural, =0 {} other {, # taken back}}{refused, plural, =0 {} other {, # not written. The due list says why}}",
  },

  names: {
    more: "{names, count} more",
  },

  orderColumns: {
    by: "By",
    chance: "Chance in full",
    doBy: "Do by",
    fullBy: "Full by",
    likely: "Likely set aside",
    needs: "Needs",
    order: "Order",
    plants: "Plants",
    remarks: "Remark",
    shortBy: "Short by",
    step: "Step",
    variety: "Variety",
    wanted: "Wanted",
    whatToDo: "What to do",
  },

  orderFaults: {
    blankCell: "a blank cell",
    noHarvest: 'harvest needs months such as "Oct-Mar, May-Aug", not "{found}"',
    noHeader:
      "orders has no header row with Wanted and By in its first ten rows. It starts with {start}",
    quoted: '"{start}"',
    severalHarvests: "harvest has {places} places or crops. Give only the rows of yours",
  },

  orderOutlookHelp: {
    answers:
      "One row per open order, earliest first. The earliest gets its plants first. Late plants fill an order if no other needs them in time. Short by and Full by are as sure as you asked. They and Likely set aside are about plants still to be delivered.",
    assurance: "Chance with which orders are to be met, as a share.",
    orders:
      'Your table of orders with its header: Order, Variety ("A or B" where either will do), Wanted, By, Delivered, Closed.',
    sentence:
      "What becomes of your orders: plants set aside, the chance to fill each by its day, and what to do.",
  },

  orderPlan: {
    askedPast: "The day asked for is past.",
    chances: "Enough plants in {plants}, ready by the day in {days}, both in {both}.",
    dayPast: "The day is past.",
    firstVariety: "Planned for {variety}, the first of those that will do.",
    generalShare:
      "Counts on {kept, share} kept up to here. That figure is of tree nurseries in general, not of this crop.{own, select, yes { Your own counts make it {mean, share}.} no {} other {}}",
    largerStart: "A larger start of {start, count} can still make all {wanted, count} by {by}.",
    need: "{item} {amount} {unit}",
    needPieces: "{item} {amount}",
    newStartNone: "A new start can't make {by}.",
    noStart: "No start is big enough to be that sure.",
    of100: "{chance} of 100",
    outsideHarvest:
      "Seed would be taken outside the harvest months ({months}). The last day inside is {last}.",
    plain: "Plain division by what is kept: {plants, count}.",
    plainAndMore:
      "By the usual losses alone: {plants, count}. {more, count} more make it enough in {chance}.",
    standingCan:
      "A new start can't make {by}. Plants you already have could fill {plants, count}, if not promised to others.",
    startedNow: "A start on {asOf} can make {wanted, count} by {earliest}.",
    startWasDue: "Too late: the start was due by {day}.",
    unknownVariety: "The records have no batch of {variety}, so it is planned as for any variety.",
    unknownVarietyMeant:
      "The records have no batch of {variety}. Is it {nearest, list}? It is planned as for any variety.",
  },

  orderPlanHelp: {
    answers:
      "One row per step, and All with the needs added up. Plants is never less than the plain division by what is kept. Remark says both, and when it is too late.",
    asOf: "The day you plan on. Left out, it is the latest day in the records, so give it if they have days to come.",
    assurance: "Chance with which the order is to be met, as a share.",
    harvest:
      'Months in which seed is harvested, such as "Oct-Mar, May-Aug", or a table of crops with such months.',
    method: "Name of the method. Leave blank for the first of the timetable.",
    readyBy: "The day by which they are to be ready.",
    records:
      "Your table of batches with its header, so the plan uses your own losses and growing times.",
    sentence:
      "An order planned backwards: by which day to do each step, from how many plants, with what needs.",
    variety:
      'The variety wanted. With "A or B" the first is planned. Left out, one like your others.',
    wanted: "Plants wanted, a whole number.",
  },

  orders: {
    all: "All",
    allDelivered: "fine, all delivered",
    cellBlank: "{column} is blank",
    cellShows: "{column} shows {shown}",
    cellTrouble: "{column}: {what}",
    cropUnknown: "Not counted where a crop is ordered, as theirs is not known: {batches, list}.",
    customersNear: "Perhaps one customer: {pairs, list}. If so, spell them alike.",
    deliverNow: "late, but all are ready: deliver now",
    fine: "fine",
    graft: "graft {plants, count} more by {by}",
    graftOf: "graft {plants, count} more of {variety} by {by}",
    moreOrders: "{orders, count} more",
    noName: "(no name)",
    noneWanted: "{column} is 0",
    noSuchVariety: "no batch is {variety}: check the name, or plan it as new",
    noted: "These orders are used, but not all of their cells: {rows}.",
    oneOrOther: "{one} or {other}",
    row: "row {row} ({reasons})",
    rowAlone: "row {row}",
    rowsLeftOut: "{number, plural, one {# order is} other {# orders are}} left out: {rows}.",
    start: "start {plants, count} more by {by}",
    startOf: "start {plants, count} more of {variety} by {by}",
    tooLate: "too late: tell the customer",
    tooLateToStart: "too late to start more: tell the customer",
    varietiesUnknown:
      "These orders name a variety that no batch has: {orders, list}. Their other varieties are counted.",
    varietyBlank:
      "Not counted for any order that names a variety, as theirs is blank: {batches, list}.",
    varietyMeant: "no batch is {variety}. Is it {nearest, list}? Correct the order",
    varietyNear:
      "Not counted for {ordered}, as they are written {variety}: {batches, list}. If it is one, spell them alike.",
    varietyOf: "{order} ({varieties, list})",
    whichCrop: "which crop, {crops, list}? Write it under Variety",
  },

  ordersPage: {
    added: "Added to the orders.",
    addedTitle: "Added to the orders",
    addOrder: "Add to the orders",
    allDelivered: "all delivered",
    allFine: "All {all, count} orders are fine.",
    almostSure: "almost sure",
    aNewOrder: "a new order",
    anyVariety: "Any variety",
    by: "by {by}",
    byAway: "by {by}, {away}",
    caution: "Caution",
    customer: "Customer",
    dayIncomplete: "Give day, month and year.",
    dayIsPast: "That day is past. Today counts as {asOf}.",
    dayUnknown: "day not known",
    delivered: "{wanted, count} delivered",
    evenChance: "even chance",
    fine: "Fine",
    fineWhen: "An order is fine when its chance to be full by its day is {chance} or more.",
    firstToDo: "First to do:",
    fromTab: "From the tab {tab}, as of {asOf}.",
    fullByThen: "Full by then",
    hardly: "hardly",
    harvest: "Harvest months",
    harvestHint: "Such as Oct-Mar, May-Aug. Blank when seed can be had all year",
    howSure: "How sure it has to be",
    howSureHint: "The surer, the more plants and the earlier the start",
    keepOrders:
      "To see what becomes of your orders, keep them in a tab: one row per order, with the columns {columns, list}.",
    keepPlan: "Keep this plan",
    lastTwoHold: "Last two: right in {cases} cases.",
    lateBy: "no, {days, plural, one {# day} other {# days}} late",
    leftUnwritten: "Nothing was written.",
    likely: "likely",
    likelyOf: "{likely, count} of {left, count}",
    madeOrders: "Made the tab {tab}. Write one row per order, or plan one here.",
    madeTab: "Made the tab {tab}.",
    madeTabTitle: "Made the tab:",
    makeOrders: "Make an Orders tab",
    makeTab: "Make a tab",
    makingTab: "Making the tab",
    method: "Method",
    neededInAll: "Needed in all",
    neverFull: "too few plants",
    noNumber: "no number is large enough",
    noOrders: "No open orders.",
    nothingWritten: "Nothing was written. Read again: the tab may have changed.",
    notReadAgain: "{done} But the outlook could not be read again: {why}",
    of100: "{word}: {chance, count} of 100",
    ofTen: "{tenths} of 10",
    oneFine: "One open order, and it is fine.",
    onePressing: "One open order, and it needs something done.",
    order: "Order",
    orderHint: "Blank: it is named after the others",
    over99: "{word}: over 99 of 100",
    over99Tenths: "over 9.9",
    past: "past",
    plan: "Plan",
    planNew: "Plan a new order",
    planning: "Planning the order",
    planOf: "Plan: {wanted, plural, one {# plant} other {# plants}} by {by}",
    planOfVariety: "Plan: {wanted, plural, one {# plant} other {# plants}} of {variety} by {by}",
    planOutdated: "The form has changed since. Plan again to keep it.",
    plants: "{plants, plural, one {# plant} other {# plants}}",
    plantsWanted: "Plants wanted",
    pressing:
      "{pressing, count} of {all, count} orders {pressing, plural, one {needs} other {need}} something done.",
    ratherLikely: "rather likely",
    ratherUnlikely: "rather unlikely",
    readAgain: "Read again",
    readyBy: "Ready by",
    sayBy: "Say by which day they have to be ready.",
    sayWanted: "Say how many plants are wanted.",
    shortBy: "Short by at most",
    shortPlants: "{plants, plural, =0 {none} one {# plant} other {# plants}}",
    somethingToDo: "Something to do",
    stillToDeliver: "{left, count} of {wanted, count} still to deliver",
    sureIn: "{method}, sure in {cases} cases.",
    sureInFrom: "{method}, enough in {cases} cases, seed in {harvest}.",
    tabMadeFirst: "There is no tab Orders yet. It is made first.",
    takenBack: "The order is taken back.",
    thePlan: "The plan",
    title: "Orders",
    toDeliver: "{wanted, plural, one {# plant} other {# plants}} to deliver",
    tooManyZeros: "More than {most, count}. One zero too many?",
    under1: "{word}: under 1 of 100",
    unlikely: "unlikely",
    variety: "Variety",
    varietyHint:
      "Blank for any. Where either will do: Amberlow or Brindlecap. Of one crop: any cocoa",
    wasDue: "was due {day}",
    wholeNumber: "A whole number, 1 or more.",
    workingOut: "Working out what becomes of the orders",
    writingOrder: "Writing to the orders",
    written: "The order is written.",
    yearRight: "Is the year right?",
  },

  orderTabs: {
    howOrders:
      'one row per order. {variety}: "A or B" where either will do, blank for any. {closed}: a day or yes.',
    noWorkPlan: "No work plan: {why}",
    orders: "orders",
    planLive: "live. Change row {row} and the plan follows.",
  },

  orderWrites: {
    below:
      "Row {row} of {tab} ({shown}) is below the orders, but not an order we can read. Correct it or move it away, then try again",
    farAway: "{column} is {day}. Give a day within a hundred years",
    noColumn: "{tab} has no column {column}. Write that header into row {row}, then try again",
    noTab: "There is no tab of orders yet. Make one first",
    notRead: "We could not read an order in row {row} of {tab}. Write it there yourself",
  },

  overview: {
    answer:
      "{tab, select, due {What to do today and in the days to come. Tick it off here} workPlan {Who does what on which day, and what does not fit} plan {When to sow and graft for an order} stages {Where each batch stands, and when it will be ready} ready {How many plants will be ready, by month and variety} lookback {What we forecast half a year ago, and whether it held} balance {Where the plants of each batch went} losses {At which stage plants are lost, and what they had cost} takes {Take rates} takesCompared {Take rates compared fairly} takesTrend {Whether takes are rising or falling} takeReasons {What good and bad takes go with} places {How full each place gets, week by week} needs {What to have ready for the coming month} costs {What each batch has cost so far} germination {How seed comes up, batch by batch} checks {What we can't read, and what looks wrong} settings {The day we look from, and the words you told us} timetable {The steps and their days. Change them as you work} log {Every cell we wrote, and what stood there before} other {}}",
    answers: "What it answers",
    group:
      "{group, select, daily {Every day} batches {Batches} takes {Takes} materials {Places, needs, costs} behind {Behind it} other {}}",
    kind: "About",
    made: "made {at}. Make the tabs again in Set up to renew it.",
    noGermination:
      "There are no samples of seed. Make a tab Germination with the columns Batch, Sample, Sown on, Seeds sown, Day and Came up, one row per inspection, then make the tabs again in Set up",
    noPlaces:
      "Nothing is known of your places. Make a tab Places with the columns Place and Holds, then make the tabs again in Set up",
    notMade: "{tab} (not made, choose it in Set up)",
    onPage: "On the page",
    tab: "Tab",
  },
  ownTabs: {
    howCrew:
      'one row per person. {tasks}: steps with ; between, such as grafting (mango), blank for all. {days}: "Mon–Fri", blank for every day. {from}, {to}: days away.',
    ifThisStays:
      "If this stays, {mendedBy, select, again {try again} refresh {choose Refresh the due list in the Nursery menu} setUp {make the tabs again in Set up} other {}}.",
    live: "live, {formula}",
    log: "every cell written, and what was in it before. Who is the name typed, not the one signed in",
    made: "made {at}. Refresh the due list in the menu updates it.",
    toFill: "{what}, made {at}: {how}",
  },

  page: {
    ahead: "Ahead",
    allFunctions: "Functions",
    caution:
      "Blades, strong alcohol, flame and sprays hurt people. Plants that move may carry pests. The labels of what you use, the rules of your place and licensed practice come before anything written here.",
    check: "Check",
    forCells: "for the cells of the workbook",
    goToSetUp: "Go to Set up",
    noAnswer:
      "The script gave no answer. Try again. If that does not help, close this page and open it again from the menu.",
    notInSpreadsheet:
      "Open this page from the Nursery menu of a spreadsheet. Alone it has nothing to show.",
    notSetUp: "The workbook is not set up yet. First say which tab has your records.",
    nursery: "Nursery batches",
    olderScript:
      "This page is version {page} and the script is older. Reload the workbook. If they still differ, put in all files of one release again.",
    orders: "Orders",
    otherScript:
      "This page is version {page} and the script is version {script}. Reload the workbook. If they still differ, put in all files of one release again.",
    reading: "Reading the workbook",
    scriptLacks:
      "The script has no {name}, so it is older than this page. Put in all files of one release, then reload the workbook.",
    sections: "Sections",
    setUp: "Set up",
    severalAccounts:
      "{message} If this browser is signed in with several accounts, sign out of all but the one that owns the workbook, then open this page again.",
    takes: "Takes",
    today: "Today",
    tryAgain: "Try again",
  },

  parameterHelp: {
    asOf: "The day to look from: a cell with a date.",
    columns: "Our name, your word, and what it is: header, value or not the same.",
    ifLeftOut: "{sentence} Left out, it is {usual}.",
    level: "How sure ranges should be: 0.8 means right in about 8 of 10.",
    looks: 'Write "hidden", and looks, such as bud break, are left out and only counted.',
    records: "Your table of batches with its header.",
    timetable: "Your table of steps, or blank for the built-in ones.",
  },

  placeColumns: {
    holds: "Holds",
    overBy: "Over by",
    place: "Place",
    plants: "Plants",
    week: "Week",
    weekFrom: "Week from",
  },

  placeLoadHelp: {
    answers:
      "One row per place and week in which something stands there, from the as-of day's week on: the likely plants of the open batches at the start of the week, up to the week of their likely ready day, fewer after each likely count. Plants that are ready already, and those with no day to count from, count in the first week alone. Places that are not in the table and batches without a place come below, without Holds. The last row names them, the places where nothing stands, and the batches that are left out.",
    places: "Your table of places: Place, and how many plants it Holds.",
    sentence: "How many plants stand in each place, week by week, and where they are too many.",
  },

  places: {
    empty: "Nothing stands in {places, list}.",
    forgotten: "Left out because nothing was recorded for long: {batches, list}.",
    noPlace: "(no place)",
    notCounted: "Left out because no plants are counted: {batches, list}.",
    notListed: "Not in the table of places: {places, list}.",
    oneWeek:
      "Shown in one week only, as they are ready or have no day to count from: {batches, list}.",
    plannedAfter:
      "Left out because they are planned for after these {weeks, count} weeks: {batches, list}.",
    standLonger:
      "{batches, plural, one {# batch stays} other {# batches stay}} longer than these {weeks, count} weeks.",
    withoutPlace: "Batches without a place are under (no place).",
  },

  programFaults: {
    cantWriteCopy: "{name} can't be written ({why}). Is it open in another program?",
    forReport: "{word} belongs to the report in the terminal: npm run report -- {words}",
    needsApart: '--apart needs "one name=another name". Found "{found}"',
    needsColumn: '--column needs "our name=their header". Found "{found}"',
    needsDay: '--as-of needs a day as YYYY-MM-DD. Found "{found}"',
    needsLocale: '--locale needs a code such as en_GB or fr_FR. Found "{found}"',
    needsNumber: '{option} needs a whole number from 0 to {most}. Found "{found}"',
    needsWord: '--word needs "our name=their word". Found "{found}"',
    needsZone: '--zone needs a name such as Asia/Kolkata. Found "{found}"',
    notBuilt: "The add-in is not built. {file} is missing (npm run build)",
    oneFile: "Name one file at a time. Found {files, list}",
    portTaken: "Port {port} can't be used. Leave out --port to get a free one",
    unknownWords: "{why} (--help lists the options)",
  },

  programHelp: {
    page: `Usage: npm start -- [FILE] [options]

Opens a workbook (.xlsx) or a table (.csv) in a page of your browser, with the add-in at work in
it: its sheet functions, its menu and its sidebar. Nothing leaves this computer. The file itself
is only read: Save in the page writes a copy beside it, under a new name each time. Without FILE
an invented nursery is opened.

  --no-open        print the address and leave the browser alone
  --port N         the port to use (else a free one)
  --locale CODE    how dates and decimals are written: en_GB (usual), en_US, fr_FR ...
  --zone NAME      the spreadsheet's time zone, such as Asia/Kolkata (else the browser's)
  --seed N         draw the order of answers to the sidebar from this number (else any order)
  --dist DIR       folder of the built add-in (dist)
  --help           this text

It runs until you press Ctrl+C.
`,
    report: `Usage: npm run report -- [FILE] [options]

Opens a workbook (.xlsx) or a table (.csv) with the records of batches, calculates the due
list, the stages, the take rates and the check of the records with the add-in's own sheet
functions, prints them, and writes the calculated workbook beside them. FILE itself is only
read. Without FILE an invented nursery is opened.

  --as-of YYYY-MM-DD   the day to look from (else the workbook's As-of day, else today)
  --sheet NAME         the tab with the records (else it is found by its header)
  --column "OUR NAME=THEIR HEADER"   how to read a column whose header can't be guessed, such as
                       "Takes=Living in May"; once for each such column
  --word "OUR NAME=THEIR WORD"   what a word in cells means, such as "Cocoa cleft graft=CG" or
                       "Amel 3=A3"; once for each such word
  --apart "NAME=OTHER NAME"   two names that look alike and are two; once for each such pair
  --days-ahead N       how far the due list looks ahead (else the workbook's Days ahead, else 7)
  --locale CODE        how dates and decimals are written: en_GB (usual), en_US, fr_FR ...
  --people             also the take rates of each grafter, by name
  --out DIR            folder for the calculated workbook (out)
  --help               this text
`,
  },

  records: {
    careToday: "Today: {tasks, list} ({batches, plural, one {# batch} other {# batches}}).",
    careTodayAt:
      "Today at {places, list}: {tasks, list} ({batches, plural, one {# batch} other {# batches}}).",
    columnsLeftAlone:
      "Columns of days left alone, because we can't tell of what: {columns, list}. Say it in the argument columns.",
    generalShare:
      "{step} {kept, share}{own, select, yes {, by your own counts {mean, share}} no {} other {}} ({methods, list})",
    generalShares:
      "These figures count on shares kept in tree nurseries in general, not of these crops: {shares, list}.",
    jobNeverRecorded:
      "{step} is not listed: nothing is written about it in any batch, and it is past in {batches, plural, one {# batch} other {# batches}}. Do you do it? Write its day for one batch, and it is asked for in all.",
    looksHidden:
      "{looks, plural, one {# look is} other {# looks are}} hidden: looks are switched off (in Set up, or by the argument looks).",
    methodsAsked: "Set up asks which method is meant.",
    moreColumns: "{more, count} more",
    moreOfCell: "{batches, count} more (see BATCH_CHECK)",
    moreOfPage: "{batches, count} more (see Check)",
    noSuchColumnsOfCell:
      "Not read, because no step or column has such a name: {told, list}. Correct the name, or give the timetable that has the step.",
    noSuchColumnsOfPage:
      "Not read, because no step or column has such a name: {told, list}. Choose again in Set up.",
    noSuchHeaders: "Not read, because the table has no such header: {told, list}.",
    noSuchMethod: "Left out because the timetable has no such method: {batches, list}.",
    rowsLeftOutOfCell:
      "{rows, plural, one {# row is} other {# rows are}} left out: see BATCH_CHECK.",
    rowsLeftOutOfPage: "{rows, plural, one {# row is} other {# rows are}} left out: see Check.",
    severalMethods: "Left out because more than one method fits: {batches, list}.",
    toldAs: '"{header}" as "{name}"',
  },

  report: {
    allRecords: "All records",
    asOf: "{file} as of {day}\nRecords: {tabs, plural, one {tab {names, list}} other {tabs {names, list}, under one another in tab {records}}}. Timetable: {own, select, yes {tab {timetable}} no {the built-in one} other {}}.\n",
    asOfTab: "As of",
    batches: "Batches",
    calculating: "Calculating {file} ...",
    cautions: "Cautions",
    check: "Check",
    checkHeading: "Check: what in the records could not be used or looks wrong",
    column: "Column",
    columnCompares: "used to compare takes",
    columnLeft: "left alone",
    columnLikely: "likely",
    columnNames: "Our names: {names}.",
    columnsHeading: "Columns: how each header of the records was read",
    columnSure: "sure",
    columnTold: "told",
    correctColumns:
      'To correct one, say so behind the command: --column "OUR NAME=HEADER", such as --column "{name}={header}".',
    correctWords:
      'To say what one means, write behind the command: --word "OUR NAME=WORD", such as --word "{name}={word}".',
    cost: "Cost",
    costHeading: "Cost: what each batch has cost so far, losses included",
    dueList: "Due list",
    dueListHeading: "Due list: what is late, due and coming",
    header: "Header",
    howSure: "How sure",
    made: "Calculated workbook: {file}\n",
    madeBy: "made by {formula}",
    mayBe: "May be",
    more: "… and {more, count} more",
    moreInTab: '… and {more, count} more in the tab "{tab}" of the calculated workbook',
    noBatchesYet: "The records have no batches yet. Write the first one below the header.\n",
    none: "(none)",
    noRecords:
      'No tab looks like batch records (headers such as Batch, Variety, Sown, Grafted on). Name your header with --column "Batch=YOUR HEADER", or the tab with --sheet NAME. The tabs are {tabs, list}',
    noTab: 'There is no tab "{tab}". The tabs are {tabs, list}',
    notCalculated: "not calculated",
    orderOutlook: "Order outlook",
    orderOutlookHeading: "Orders: how likely each is full by its day, and what to do",
    ourName: "OUR NAME",
    placeLoad: "Place load",
    placeLoadHeading:
      "Places: how many plants stand in each, week by week, those that are too full first",
    readAs: "Read as",
    remarks: "Remarks",
    stages: "Stages",
    stagesHeading: "Stages: how far every open batch is and when it is likely ready",
    suchAs: "Such as",
    tab: "Tab",
    takesByGrafter: "Takes by grafter",
    takesByGrafterHeading: "Take rates by grafter (batch spread: 1 is chance alone)",
    takesByVariety: "Takes by variety",
    takesByVarietyHeading: "Take rates by variety (batch spread: 1 is chance alone)",
    tellApart: 'Two names that are two: --apart "{name}={other}".',
    word: "Word",
    wordsHeading: "Words: what cells say that may be meant in more ways than one",
    workPlan: "Work plan",
    workPlanHeading: "Work plan: who does what on which day of the fortnight",
  },

  settingsTab: {
    asOf: "Every answer looks from this day. =TODAY() moves with the calendar",
    columns:
      'Your words: "header" names a column, "value" a word in a cell, "not the same" two names that look alike, "tab" the tab with your Orders, Crew, Closed days, Places or Prices. Of a column there write Orders: Wanted, Crew: Person, Places: Holds',
    compareBy: 'A header in your sheet, or "{noTab}". Used when Set up makes the tabs',
    daysAhead: "How far the due list looks ahead",
    level: "How sure ranges should be: 0.8 means right in about 8 of 10",
    line: "settings, last set up {at} by version {version}. Change the second column.",
    lineLost:
      '{settings} has lost its line "{label}". Make the tabs again in Set up to get it back',
    looks:
      'Steps at which you only look, such as bud break, on the due list and in Today: "{shown}" or "{hidden}"',
    people:
      'How to call grafters and crew: "{initials}" or "{names}". Customers, and Who in the write log, stay as written',
    recordsTab: "The tab with your table of batches",
    timetableTab: "Your own tab with steps and days. Blank for {timetable}",
  },
  setUp: {
    chooseOther: '"{name}" is not a column that we can read: choose another',
    compareOther: 'Takes can\'t be compared by "{header}": read the columns again',
    correctTimetable: "{why}. Correct the tab {tab}",
    headerGone: 'The table has no header "{header}": read the columns again',
    lostHeader:
      'In Set up you said that "{header}" is {name}, but the table has no such header any more. Open Set up and choose again',
    noMethod: 'There is no method "{name}"',
    noRecordsTab: "{settings} names no records tab: choose it in Set up",
    noSuchTimetable: 'There is no timetable of yours in a tab "{tab}": choose another in Set up',
    noTab: 'There is no tab "{tab}"',
    notSetUp: "The workbook is not set up yet: open Set up first",
    oursIsNone: '"{tab}" is a tab of the add-in: choose the one with your own table',
    tabGone:
      'There is no tab "{tab}" any more: give it its name back, or choose the records tab in Set up',
    timetableTab: "timetable, copied {madeAt} from the built-in steps. It is yours to change.",
    tooManyColumns: "You can tell of at most {most, count} words. Found {found, count}",
  },

  setUpPage: {
    askAgain: "Take it back",
    builtIn: "A tab made from the built-in steps",
    cantUse:
      "{tab} looks like a timetable of yours, but it can't be used: {why}. Correct it there, then read again.",
    columnAt: "{header} (column {letter})",
    compareBy: "Make a tab that compares takes by",
    compareNone: "Nothing, make no such tab",
    costOfNone:
      "{what, select, batch {Without it a batch is called by its row, such as Row 12.} start {Without it we can't tell when to graft.} graftDay {Without it we can't tell when to count takes, and when plants are ready.} grafts {Without it there are no take rates and no plants to come.} takes {Without it there are no take rates, and plants to come are a guess.} other {}}",
    couldBe: "It could also be {others, list}.",
    essentials: "What most answers need",
    essentialsFound: "Found: {names, list}.",
    essentialsGuessed: "A guess, asked below: {names, list}.",
    essentialsMissing:
      "Not found yet: {names, list}. Choose the column if you have one. If not, go on below.",
    everybodySees:
      "Everybody who can open this workbook will see that tab. Talk with your people first.",
    forgotten: "Not read as you chose any more, because the header or the step is gone:",
    giveHeader:
      "Do you need it? Write a header above it, in column {letter}, then read the table again.",
    goToRows: "Go to the rows, in Check",
    goToToday: "Go to Today",
    groupLeft: "Not used",
    groupSure: "Understood",
    inColumn: "{name} (column {letter})",
    inTabsToo: "The tabs will say it that way too, once they are made.",
    isIt: "Is it {name}?",
    itIs: "It is {header}",
    kept: "Kept as they were:",
    leaveAlone: "leave alone",
    leftHolds: "It holds {holds, select, day {days} count {numbers} text {text} other {}}.",
    likelyColumn: "{header} (likely)",
    lost: "You chose this before, but the header or the step is gone. Choose again:",
    lostColumn: "{header}: {readAs}",
    made: "Made:",
    makeAgain: "Make the tabs again",
    makeTabs: "Make the tabs",
    makeWithout: "Make the tabs without {names, list}",
    making: "Making the tabs",
    mayChange: "Nothing below needs an answer. You can change it.",
    methods: "Methods used here",
    methodsHint: "Your timetable gets the steps of those that are ticked.",
    moreChoices: "Methods, comparisons, names, looks, more tabs",
    moreTabs: "More tabs to make",
    moved: "Moved out of the way:",
    movedTo: "{from} to {to}",
    nameless: "column {letter}",
    nextQuestion: "Next question",
    noBatches:
      "No tab with batches was found. Give a tab a header row such as Batch, Variety, Method, Sown, Grafted on, with one batch in each row below, then read again. We know headers in {languages}. In another language, write Batch and one more header in English, read again, and choose here what the others are.",
    noHeader: "Column {letter} has no header",
    noLeaveIt: "No, leave it alone",
    noMethod: "Tick at least one method, under {group}.",
    noQuestion:
      "Set up asks nothing about {about} now. What you answered before stands in the settings tab, where you can change it.",
    noSuchColumn: "none of the columns",
    notSetUp:
      'Not set up yet. Press "{button}", and you get new tabs: a due list, plants ready by month, take rates, and checks. Your own table stays as it is.',
    notUsed: "Not used: {headers, list}.",
    notUsedYet: "Your answers count once the tabs are made.",
    noValues: "No values yet.",
    openQuestions:
      "{questions, plural, =0 {No question is open. Make the tabs when you have changed something here.} one {# question is open. Answer it if you can, then make the tabs.} other {# questions are open. Answer what you can, then make the tabs.}}",
    otherTabs:
      "Only the tab chosen above is read. Batches are also in {tabs, list}. If {number, plural, one {it has} other {they have}} other batches, such as another season's, copy {number, plural, one {that table} other {those tables}}, header and all, below the last row of the tab that is read, then read again.",
    partlyUsed: "{tab} looks like a timetable of yours. {why}",
    questions: "Questions",
    ranksPeople: "{header} (ranks people)",
    readAgain: "Read the table again",
    readAgainHint:
      "Press it when your table has changed. It makes no tabs. Your answers to the questions stay.",
    readAs: "Read as",
    readAsOf: "Read as: {header}",
    readingColumns: "Reading the columns",
    readTwice:
      "{number, count} columns are read as {readAs}: {headers, list}. Should one be left alone?",
    recordsTab: "Tab with your records",
    setUp:
      "Set up. Our tabs are made from {records}, for {asOf}. Make them again to have them follow your answers. Your own table stays as it is.",
    setUpTimetable:
      "Set up. Our tabs are made from {records} and the timetable {timetable}, for {asOf}. Make them again to have them follow your answers. Your own tables stay as they are.",
    showLooks: "List looks, such as bud break, among what is due",
    stepMake: "3. What to make",
    stepRead: "2. How we read it",
    stepTable: "1. Your table",
    sureLeft: "Left alone.",
    sureScions: "Takes are compared by it: how long scions lay.",
    sureSure: "Sure.",
    sureTold: "As you chose.",
    tabRows: "{tab} ({rows, plural, one {# row} other {# rows}})",
    tabsAreMade: "The tabs are made.",
    tabsMade: "Tabs made",
    timetable: "Timetable: the steps and their days",
    timetableHint: "Your own tab is only read, never changed.",
    understood:
      "We read {batches, plural, one {# batch} other {# batches}} and {left, plural, =0 {every column, {columns, count} in all.} other {{used, count} of {columns, count} columns.}}",
    untilAnswer:
      "If it is something else, choose that below. Until you answer, it counts as {name}.",
    untilAnswerNot: "If it is something else, choose that below. Until you answer, it is not used.",
    usualMethod:
      "{batches, plural, one {# batch names} other {# batches name}} no method and {batches, plural, one {counts} other {count}} as {method}. Where that is wrong, write the method in the row, or read the column that says it as Method.",
    values: "Values",
    whatIsMade:
      "The button at the top makes the due list, plants ready by month, take rates and checks. More is here:",
    whichIs: "Which column is {name}?",
    yesItIs: "Yes, it is {name}",
    yours: "{tab} (yours, {methods, plural, one {# method} other {# methods}})",
    youSaid: "You said: {name}.",
    zones:
      "The workbook's time zone is {workbook}, the script's is {script}. Days follow the workbook's.",
  },

  smallTables: {
    closedDays: "closed days",
    columnsDitto: "Ditto marks in the {table} mean the value above: {columns, list}.",
    columnsGuessed: "In the {table} we took {columns, list}.",
    columnsUnread: "Not read in the {table}: {columns, list}.",
    columnTaken: "{header} as {name}",
    columnUnread: "{header} (perhaps {name})",
    crew: "crew",
    endsBefore: "it ends before it begins",
    germination: "samples of seed",
    holdsUnknown: "it does not say how many the place holds",
    holdsUnread: "we can't read how many it holds, {why}",
    moreThanDay: '"{found}" is more hours than a day has',
    namedTwice: "{name} is there twice, the smaller number counts",
    noBatch: "it names no batch",
    noDay: '"{found}" is not a day we can read',
    noFirstDay: "it has no first day",
    noHours: "{name} is left out: no hours a day.",
    noInspectionDay: "it has no day of inspection",
    noItem: "it names no item",
    noName: "it names nobody",
    noPlace: "it names no place",
    noPrice: "{item} has no price",
    noSowing: "nothing says when it was sown",
    noStep: 'the timetable has no step "{found}"',
    notByTime: "{item} needs a price by the hour or minute",
    notHours: '"{found}" is not a number of hours',
    notPrice: '"{found}" is not a price we can read',
    notUnit: '"{found}" is not a unit we can read',
    notWeekdays: '"{found}" is not plainly weekdays, write "Mon–Fri; Sat half"',
    orders: "orders",
    places: "places",
    priceRange: "the price is out of range",
    prices: "prices",
    readAs: "read as {number, count}",
    rowLeftOut: "Row {row} of {table} is left out: {why}.",
    rowNoted: "Row {row} of {table}: {what}.",
    secondPrice: "a second price of {item}, the higher counts",
    upBlank: "it does not say how many are up",
    upFalls: "fewer are up than the {before, count} before",
    upUnread: "we can't read how many came up, {why}",
    weekdayEnd: "a weekday has no last day, so give each weekday a row",
  },

  tableFaults: {
    daysOutOfRange: "days is 1 to {most}, not {found}",
    noHeaderRow: "{argument} has no header row with {columns, list} in its first ten rows",
    rowLoading: "a cell of {argument} row {row} is still loading",
    rowShows: "a cell of {argument} row {row} shows {shown}",
  },

  tablesPage: {
    likelyTab: "{tab} (likely)",
    lostTab: "You chose {tab} for it, but there is no such tab any more. Choose again.",
    noTab: "no tab",
    notReadYet: "We can't read {name} there yet. Say below what its columns are.",
    tab: "Tab",
    tabOf: "Tab: {name}",
    title: "Orders, crew and other tables",
    whatFor:
      "{table, select, orders {Without it the section Orders stays empty.} crew {Without it no work is planned by person.} closed {Without it no day counts as closed.} places {PLACE_LOAD reads it: how much each place holds.} prices {BATCH_COST reads it: what hours and items cost.} germination {GERMINATION_SUMMARY reads it: what came up of each sample of seed.} other {}}",
    youMay:
      "Choose the tab where we took a wrong one. What you change counts once you have pressed the button above.",
  },

  takeColumns: {
    batches: "Batches",
    best: "Best",
    column: "Column",
    evenedRate: "Evened rate",
    expectedRate: "Expected rate",
    explained: "Spread explained",
    from: "From",
    grafted: "Grafted",
    groups: "Groups",
    high: "Upper limit",
    low: "Lower limit",
    period: "Period",
    reading: "Reading",
    remarks: "Remark",
    spread: "Batch spread",
    taken: "Taken",
    takeRate: "Take rate",
    to: "To",
    usualRate: "Usual rate",
    worst: "Worst",
  },

  takeComparedHelp: {
    answers:
      "One row per group: its rate, the rate anyone would have had with its batches, its rate evened for them (as if all had had the same) with a range, and one of four readings: above the rest, below the rest, no clear difference, too few to tell.",
    by: "The column whose groups you compare, such as Grafter.",
    evenFor:
      'What to even for: one column, or several joined with "+", such as Variety+Month. Month, Season, Rootstock age in weeks and Scion days stored are made from the days.',
    level: "How sure ranges should be: 0.8 means right in about 8 of 10.",
    sentence: "Take rates of grafters, scion sources or other groups, compared like for like.",
  },

  takeFaults: {
    comparedAndEvened:
      '{argument} names "{name}", which is what you compare. Nobody would be left to compare with',
    moreTakenThanGrafted: "{taken, count} taken of {grafted, count} grafted",
    moreTakenThanGraftedInList: "more taken than grafted",
    noGrafts: "records has no column for Grafts made",
    noSuchColumn:
      '{argument} names "{name}", which is not a column of the records. They have: {known}',
    noSuchPeriod: 'period is "week", "month" or "quarter", not "{found}"',
    noTakes: "records has no column for Takes",
  },

  takeRangeHelp: {
    answers:
      "Two columns, low and high, from 0 to 1 (Wilson's interval); blank where not counted yet.",
    grafted: "Grafts made: a cell, or the matching column.",
    high: "High",
    level: "How sure ranges should be: 0.8 means right in about 8 of 10.",
    low: "Low",
    sentence: "Between what shares the take rate lies, given how many were grafted: low and high.",
    taken: "Takes counted: a cell, or a column of cells.",
  },

  takeRateHelp: {
    answers: "A share from 0 to 1, or one for each row of the two columns.",
    grafted: "Grafts made: a cell, or the matching column.",
    heading: "Take rate",
    sentence: "The share of grafts that took; blank where they are not counted yet.",
    taken: "Takes counted: a cell, or a column of cells.",
  },

  takeReasonsHelp: {
    answers:
      "One row per column, most first: how much of the spread between batches it goes with, its best and worst group, and a reading. What goes with takes need not cause them.",
    level: "How sure a link must be to be named, as a share.",
    sentence: "Which recorded columns go with good and bad takes, alone and beside the others.",
  },

  takes: {
    blank: "(blank)",
    compareAbove: "above the rest",
    compareAlike: "no clear difference",
    compareBelow: "below the rest",
    compareTooFew: "too few to tell",
    groupAlone: "{group} in {stratum}",
    groupRated: "{name} ({takeRate, share})",
    groupsMore: "{groups, count} more",
    moreTakenThanGrafted:
      "{batches, plural, one {# batch is} other {# batches are}} left out: more taken than grafted.",
    nobodyToCompareWith:
      "Nobody to compare with: {groups, list}. {batches, plural, one {That # batch is} other {Those # batches are}} counted but not judged.",
    noGraftingDay:
      "{batches, plural, one {# batch is} other {# batches are}} left out: no day of grafting.",
    notCause: "What goes with takes may not be their cause. What else changed at the same time?",
    notCountedYet: "{batches, plural, one {# batch is} other {# batches are}} not counted yet.",
    oneBatchEach:
      "With one batch a group we can't tell how much batches vary. The range allows for what is usual.",
    peopleNotNamed: "People are not named here. To compare them fairly, use TAKE_COMPARED.",
    periodOpen: "{period}, still open",
    reasonAlone: "goes with takes",
    reasonNoClearLink: "no clear link",
    reasonNotToldApart: "goes with takes, but there are too few batches to tell it from the others",
    reasonOnlyBeside: "shows only where the other columns are alike",
    reasonOthers: "goes with takes, but what else differed may be behind it",
    reasonStays: "goes with takes, also where the other columns are alike",
    reasonTooFew: "too few to tell",
    trendDriftingDown: "drifting down",
    trendDriftingUp: "drifting up",
    trendHigh: "high",
    trendLow: "low",
    trendUsual: "usual",
    usualBatch: "A batch of {grafted, count} mostly takes {low, share} to {high, share}.",
  },

  takesPage: {
    allPeriods: "All periods as a table",
    asCounted:
      "As counted, {rate, share} of {grafted, count} took. For these batches we expected {expected, share}.",
    asTable: "The same as a table",
    bestAndWorst: "Best {best}, worst {worst}",
    by: "By",
    columnEvened: "Evened",
    columnExpected: "Expected",
    columnLower: "Lower",
    columnRate: "Rate",
    columnUpper: "Upper",
    columnUsual: "Usual",
    compare: "Compare",
    compared: "Take rates compared",
    comparedAsTable: "The comparison as a table",
    comparedTitle: "Compared fairly",
    comparing: "Comparing takes",
    counting: "Counting takes",
    counts:
      "{taken, count} taken of {grafted, count} grafted, {batches, plural, one {# batch} other {# batches}}",
    dotAndBar: "The dot is the take rate, the bar its range.",
    evenedDot:
      "The dot is the rate as if all had had the same {evenFor}. The bar is its range. The dashed line is everyone together, {overall, share}. With so many compared at once, the words are more cautious than the bars.",
    evenedFor: "Evened for",
    evenedRange:
      "Evened {evened, share}, range {from, share} to {to, share}, all together {overall, share}",
    fairCauses:
      "Look for what else was different first: scions, tape, weather, the place, how tired the hands were.",
    fairNames:
      "Keep names off walls and out of print. Follow the rules and the law of your place on records of people's work.",
    fairReading:
      "A reading is about batches, not about a person. It says that takes differ, never why.",
    fairSpeak: "Speak with the person before anybody else does, and show them the numbers.",
    fairTitle: "Fair use",
    fairWait: "Too few to tell means just that. Wait for more batches.",
    lastMonthSignal:
      "{rate, share} of {grafted, count} grafts made in {period} took{counted, select, open { so far} all {} other {}}. Usual is {usual, share}. This month is {reading}.",
    lastMonthUsual:
      "{rate, share} of {grafted, count} grafts made in {period} took{counted, select, open { so far} all {} other {}}. Usual is {usual, share}. Nothing out of the ordinary.",
    noBatch: "No batch in the records has grafts yet.",
    nobodyApart: "Nobody is clearly different: batches differ this much anyway.",
    noneCounted: "No takes are counted yet.",
    noReason: "No recorded column clearly goes with takes.",
    notCountedYet: "not counted yet",
    overTime: "Over time",
    period: "Period",
    periodMonth: "month",
    periodNamed: "{period} ({reading}, {rate, share})",
    periodQuarter: "quarter",
    periodsOut: "Out of the ordinary before: {periods, list}.",
    periodsOutLast: "Out of the ordinary before, last: {periods, list}.",
    periodWeek: "week",
    rate: "{rate, share}",
    rateAndRange: "{rate, share}, range {from, share} to {to, share}",
    ratesByPeriod: "Take rates by period",
    readAgain: "Read again",
    reasonsGo:
      "{columns, list} {linked, plural, one {goes} other {go}} with takes. The share is how much of the difference between batches goes with each alone.",
    reasonsTitle: "What goes with takes",
    spread:
      "Batches of one group differ more than by chance alone (batch spread {spread}, where 1 is chance alone), so the ranges are wider.",
    standApart: "{groups, list} {number, plural, one {is} other {are}} {reading}",
    standApartAll: "Evened, {parts, list}. All together took {overall, share}.",
    takeRatesBy: "Take rates by {by}",
    takeRatesByEvened: "Take rates by {by}, evened",
    title: "Grafts that took",
    together: "{columns, list}",
    tooFewAll: "There are too few batches yet to compare anybody.",
    tooFewSome:
      "For {groups, plural, one {# group} other {# groups}} there are too few batches to tell.",
    trend: "{period}: {rate, share} took, {usual, share} is usual. {judged}",
    trendOrdinary: "Nothing out of the ordinary.",
    trendReads: "This is {reading}.",
    trendSigns:
      "A dot is a period of grafting. The pale band is the usual up and down. A ring marks a period that is out of the ordinary, a hollow dot one whose takes are still being counted. The top is 100\u00a0%, the foot 0\u00a0%.",
    usualRate: "usual {rate, share}",
  },

  takeSummaryHelp: {
    answers:
      "One row per group: batches, grafted, taken, take rate with its range, how many times more than chance batches of its usual size vary, and what such a batch mostly takes.",
    by: 'A column of the table, or several joined with "+".',
    level: "How sure ranges should be: 0.8 means right in about 8 of 10.",
    sentence:
      "Take rates by variety, grafter or any other column, with the range that the counts allow.",
  },

  takeTabs: {
    columnGone:
      'Nothing is compared: the records have no column "{name}" any more. Choose another in Set up',
    noneChosen: "Nothing is compared. Choose in Set up what to compare",
    noTakeRates: "No take rates: {why}. Add it, then make the tabs again in Set up",
    nothingToEvenFor: "Nothing is compared: no column but {by} could explain a difference",
  },

  takeTrendHelp: {
    answers:
      "One row per period: its rate, the usual rate, the limits within which periods have always varied, and one of five readings: usual, low, high, drifting down, drifting up. A period whose takes are not all counted is marked as still open.",
    by: 'A column whose groups are each followed on their own, or several joined with "+".',
    period: 'Grafting by "week", "month" or "quarter"; month if left out.',
    sentence: "Take rates over time, and when one is out of the ordinary or drifting.",
  },

  timetable: {
    afterIsCircle: "After goes round in a circle: {steps}",
    afterLeftOut: "it is counted from {after}, which is left out",
    at: "timetable row {row}, {column}: {trouble}",
    beforeParent: "{step} can't come before {after}",
    careWithoutStart: "{step} must say in After from which step on it is done",
    cellLeftOut: "The cell is left out, the rest of the row is used",
    columnAt: "Timetable row {row}, {column}",
    countedFromBeside: "{after} is no step to count from: it comes before one, or again and again",
    daysMustRise: "the days of {step} must rise from From day to Usual day to By day",
    daysNotWhole: "the days of {step} must be whole days",
    keptOutOfRange: "Kept of 100 at {step} must be above 0 and at most 100",
    leftOutOfCell: "Left out of the timetable: {places, list}. See BATCH_CHECK.",
    leftOutOfPage: "Left out of the timetable: {places, list}. See Check.",
    methodLeftOut: "The method is left out, because it has lost the step that makes plants ready",
    moreOfCell: "{at}. There {more, plural, one {is # more} other {are # more}}: see BATCH_CHECK",
    moreOfPage: "{at}. There {more, plural, one {is # more} other {are # more}}: see Check",
    morePlaces: "{more, count} more",
    needsUnreadable: 'the needs of {step} must read like "wrap strip 38 cm; bag 1"',
    noNumber: '"{found}" is not a number',
    noSuchKind: 'the kind of {step} must be "job", "count" or "look"',
    noSuchStep: "After names {after}, which is not a step of {method}",
    noUsualDay: "{step} has no usual day",
    placeOf:
      "{leftOut, select, cell {{column} in row {row}} method {the method of row {row}} row {row {row}} other {}} ({trouble})",
    rateNotAbove0: "Per person-hour at {step} must be above 0",
    rowLeftOut: "The row is left out, with its step",
    sameStep: "{step} and {other} are the same step of {method}",
    stepAfter: "{step} after {after}",
    stepUnnamed: "the step has no name",
    tooManyDays: "{step} can't take longer than ten years, {most} days",
  },

  timetableHelp: {
    answers:
      "The timetable: one row per step, its days, the share kept, and where the figures come from.",
    method: "Name of a method. Leave it out for all.",
    sentence: "The built-in steps of a method with their days, to read, or to copy and edit.",
  },

  todayPage: {
    about: "about {plants, count}",
    ahead: "Days ahead",
    byPerson: "by person",
    byPlace: "by place",
    calendarFile: "Calendar file",
    calendarSaved: "The calendar file is in your downloads. Open it with your calendar.",
    cancel: "Cancel",
    canWait: "Can wait: {tasks, list}",
    caution: "Caution",
    coming: "Coming",
    countBlank: "Blank if nobody counted",
    counted: "Count",
    day: "Day",
    done: "Done",
    doneAndWritten: "Done and written",
    doneTask: "Done: {task}, {batch}",
    due: "Due",
    goesUnder: "Goes under {header}",
    hours: "{number} {rounded, plural, one {hour} other {hours}} of one person",
    lateBy: "Late by {days, plural, one {# day} other {# days}}",
    loading: "Reading the due list",
    lookFor: "Look for: {tasks, list}",
    makingCalendar: "Making the calendar file",
    makingSheet: "Making the round sheet",
    markDone: "Mark done",
    markDoneOf: "Mark done: {task}, {batch}",
    markedDone: "{tasks, plural, one {# task} other {# tasks}} marked done since this page opened",
    minutes: "a few minutes of one person",
    noPlace: "No place named",
    note: "Note",
    nothingDue:
      "{leftOut, select, yes {We could not read everything. Of the rest, nothing is} no {Nothing is} other {}} late, due or coming {days, plural, =0 {today} one {in the next # day} other {in the next # days}}.",
    nothingToPrint: "Nothing to print: the list is empty.",
    nothingWritten: "Nothing was written.",
    notToDo: "Not to be done",
    notToDoOf: "Not to be done: {task}, {batch}",
    notToDoWritten: "Written as not to be done",
    plants: "{plants, plural, one {# plant} other {# plants}}",
    plantsAbout: "about {plants, plural, one {# plant} other {# plants}}",
    plantsNotCounted: "plants not counted",
    print: "Print round sheet",
    readAgain: "Read again",
    reminder: "A reminder: the records have no column for this step.",
    roundSheet: "Round sheet",
    rowMayHaveChanged: "Nothing was written. Read the list again: the row may have changed.",
    save: "Save",
    tally: "{tasks, count} {status}",
    tallyAll: "{tally}.",
    taskOf: "{task} ({batches, list})",
    who: "Who",
    writing: "Writing to the records",
    written: "Written to the records.",
  },

  todaySheet: {
    batch: "Batch",
    byDay: "by {day}",
    cautions: "Cautions",
    counted: "Count",
    day: "Day",
    dayDone: "Day done",
    fileTitle: "Round sheet {day}",
    hours: "Hours",
    hoursUnknown: "hours not known",
    note: "Note",
    notPrinted:
      "This browser does not let the page print. Print the due tab of the workbook instead.",
    place: "Place",
    plants: "Plants",
    task: "Task",
    title: "Round sheet, {day}",
    unassigned: "Not given to anybody",
    who: "Who",
    window: "Window",
  },

  troubles: {
    addDay: "Write the day",
    afterAsOf: "After the as-of day, {asOf}",
    asWritten: "Nothing if it is the same batch, else give it a name of its own",
    batchNotInTable: "The table of batches has no such batch",
    batchNotInTableHappens: "The log's lines make a batch of their own",
    batchNotInTableToDo: "Add the batch to the table, or correct the name",
    batchSpeltOtherwise: 'Not written like "{name}"',
    batchUnnamed: "The batch has no name",
    batchUnnamedHappens: 'It is called "{called}"',
    batchUnnamedToDo: "Give the batch a name of its own",
    beforeStep: "Before {step} on {day}",
    beforeStepRows: "Before {step} in {rows, count} rows",
    beforeStepRowsToDo:
      "Check both days. If the column holds the days of another step, say so in Set up. That mends all {rows, count} rows",
    blankCells: "{blanks, plural, one {# blank cell} other {# blank cells}}",
    blanksBelow: "Blank cells below a value",
    blanksBelowHappens: "They stay blank",
    blanksBelowToDo: "Fill them in where the value above is meant",
    bothCounts: "Both counts are used as they are",
    bothDays: "Both days are used as they are",
    bothRows: "Both rows are used, each as a batch of its own",
    cellUnreadHappens: "The cell is left out, the rest of the row is used",
    cellUnreadToDo: "Correct the cell, or empty it",
    checkCounts: "Check both counts",
    checkDays: "Check both days",
    closedHappens: "They count no more",
    closedStanding: "Closed, but {plants, count} plants stand",
    closedToDo: "Write where they went",
    columnLeft:
      '"{column}" holds {holds, select, day {days} count {numbers} text {text} other {}} of something we don\'t know',
    columnLeftAlone: "The column is left alone",
    columnLeftToDo: "Nothing if you don't need it here, else say in Set up what it is",
    columnMayBe:
      '"{column}" holds {holds, select, day {days} count {numbers} text {text} other {}}. It may be {best}',
    columnMayBeToDo: "Say in Set up what it is",
    columnNoHeader:
      "Column {found} holds {holds, select, day {days} count {numbers} text {text} other {}} and has no header",
    columnNoHeaderToDo: "Give it a header",
    columnOpen: '"{column}" could be {readAs} or {others}',
    columnOpenToDo: "Nothing if that is right, else say in Set up what it is",
    columnsAlike: '"{used}" and "{column}" both read as {readAs}',
    columnsAlikeHappens: '"{used}" is used, "{column}" is left alone',
    columnsAlikeToDo: "Say in Set up which one is right, or give the other a header of its own",
    correctTimetable: "Correct the timetable",
    countMissing: "Done, but not counted",
    countMissingHappens: "The count before is used",
    countMissingToDo: "Write the count",
    countRises: "More plants than the {before} at {step}",
    dayOfStep: "the day of {step}",
    daySwapped: "Read as {day}, but {step} is on {stepDay}. {fits} fits",
    daySwappedRowsToDo:
      "If day and month were swapped in these {rows, count} rows, turn them round",
    daySwappedToDo: "If day and month were swapped, write {fits}",
    dayUsed: "The day is used as it is",
    dittoMarks: "A mark means the value above it",
    dittoMarksFound: "{marks, plural, one {# ditto mark} other {# ditto marks}}",
    dittoMarksHappens: "It is read as that value",
    filledFromAbove: "One value seems to count for the rows below it",
    filledFromAboveHappens: "Blank cells are read as the value above them",
    filledFromAboveToDo: "Nothing if that is right, else fill the cells in",
    freeWeekday:
      "A {weekday, select, 1 {Monday} 2 {Tuesday} 3 {Wednesday} 4 {Thursday} 5 {Friday} 6 {Saturday} 7 {Sunday} other {}}. None of {others, count} other days is one",
    heading: "A heading or a note",
    ifSlip: "Correct the day if it is a slip",
    inRow: "Row {row}: {said}",
    lineLeftOut: "The line is left out",
    lineWithoutBatch: "The line names no batch",
    lineWithoutBatchToDo: "Write which batch it was",
    lineWithoutDay: "The line has no day",
    lineWithoutDayHappens: "Its number is used without a day",
    lineWithoutStep: "Not a step of the timetable",
    lineWithoutStepToDo: "Use a step's name, or add the step",
    lotOverdrawn: "{taken} plants taken, but only {there} were there",
    lotOverdrawnBy: "{taken} plants taken, but only {there} were there ({batches})",
    lotOverdrawnHappens: "All counts are used as they are",
    lotOverdrawnToDo: "Check the counts of the lot and of the batches taken from it",
    lotsInACircle: "Lots come from each other",
    lotsInACircleHappens: "No plants are counted as given",
    lotsInACircleToDo: "Correct the lot",
    mendsAll: "{toDo}. That mends all {rows, count} rows",
    methodRowsToDo:
      "{toDo}. It counts for all {rows, count} rows. If one differs, write its method in full in its row",
    nearAlike: "Nearly the same as {name} ({others, plural, one {# batch} other {# batches}})",
    nearAlikeHappens:
      "Each counts as a name of its own, this one for {batches, plural, one {# batch} other {# batches}}",
    nearAlikeToDo: "If they are one, say so in Set up, or spell them alike",
    nearlySameName: 'Nearly the same name as "{name}" in row {firstRow}',
    noBatchColumn: "No column is read as Batch",
    noBatchColumnHappens: 'Batches are called by their rows, the first "{called}"',
    noLine: "A heading, a note or a row of sums",
    noSuchColumn: 'No step or column is called "{found}"',
    noSuchColumnToDo: "Correct the name, or add the step to the timetable",
    noSuchHeader: 'The table has no header "{column}"',
    noSuchHeaderHappens: "Nothing is read as what it was told to be",
    noSuchHeaderToDo: "Tell it anew if it was renamed",
    noSuchLot: "No batch of that name in the range",
    noSuchLotHappens: "The batch counts on its own",
    noSuchLotToDo: "Correct the lot's name, or take its table into the range",
    noSuchMethod: "The timetable has no such method",
    noSuchMethodHappens: "Such batches get no dates and no forecast",
    noSuchMethodNear: "The timetable has no such method. The nearest is {near}",
    noSuchMethodToDo: "Say in Set up what it means, or add it to the timetable",
    notABatchHappens: "The row is not read as a batch",
    notABatchToDo: "Nothing, unless it is a batch. Then name it like the others",
    note: "A note, without a day or plants",
    notPlain: "Not plainly written",
    notPlainToDo: "Nothing if that is right, else write it out",
    outsideTables: "Outside the tables",
    outsideTablesToDo: "Nothing, unless it belongs to a table. Then move it under a header",
    planned: "Read as planned, not as done",
    plantsAtStep: "the plants counted at {step}",
    readAs: "Read as {readAs}",
    readAsName: 'Read as "{name}"',
    readAsNobody: "Read as blank: it names none",
    readAsNotDone: "Read as: not to be done",
    readAsPlants: "Read as {count} plants",
    readAsShare: "Read as {count}, which is {percent}\u00a0% of {outOf}",
    releaseHappens: "A wrap left on cuts into the plant",
    releaseMissed: "{release} has no day, but {step} has one",
    releaseToDo: "See whether it is open, and write the day",
    rowNotRead: "The row is not read",
    sameName: "Row {firstRow} has the same name",
    sameNameToDo: "Give each batch a name that can't be mistaken",
    scionsCut: "Cut {days} days {when, select, after {after} before {before} other {}} grafting",
    severalMethods: '"{found}" fits more than one method: {methods, list}',
    severalMethodsToDo: "Say in Set up which is meant",
    sums: "A row of sums",
    sumsByNumbers: "A row of sums, by its numbers",
    tooSoon: "{days} days after {step}. The timetable says {fewest} at least",
    tooSoonRows: "{least} to {most} days after {step}. The timetable says {fewest} at least",
    tooSoonRowsToDo:
      "Check both days. If that is usual with you, write {least} as From day in the timetable. That mends all {rows, count} rows",
  },

  unread: {
    aPartOfAPlant: "a part of a plant",
    belowZero: "a number of plants can't be below 0",
    cellShows: "the cell shows {shown}",
    dateForCount: "a date, not a number of plants",
    dayOrMonthFirst: "day or month may come first",
    eitherDay: "either {one} or {other}",
    neitherDayNorYes: "neither a day nor yes or no",
    noSuchDay: "no such day in the calendar",
    notACount: "not a number of plants",
    notADay: "not a date",
    noYear: "a date without a year",
    numberForDay: "a number, not a date",
    over100Percent: "more than 100 per cent",
    percentOfNothing: "a per cent, but no count before it",
    tickBoxForCount: "a tick box, not a number of plants",
    tickBoxForDay: "a tick box, not a date",
    tooFarAway: "{day} is too far away to be right",
    tooManyPlants: "too large to be a number of plants",
  },

  wordsPage: {
    areTwo: "No, they are two",
    choose: "Choose",
    differ: "They differ from row to row",
    differToDo:
      "Write the full name of its method, such as {name}, into each row. They get no dates before. Then read the table again.",
    kept: "{more, plural, =0 {} other {# more to come once these are answered. }}Your answers are kept in the settings tab, where you can change them.",
    leaveOut: "None, leave them out",
    methodBorne:
      "{batches, plural, one {# batch} other {# batches}}, {plants, plural, one {# plant} other {# plants}}. {fits, plural, =0 {No method is called so.} one {# method fits.} other {# methods fit.}} Until you choose, {batches, plural, one {it gets} other {they get}} no dates and no forecast.{batches, plural, one {} other { Your choice counts for all of them.}}",
    namesBorne:
      "{of, select, orders {{batches, plural, one {# order has} other {# orders have}}} batches {{batches, plural, one {# batch has} other {# batches have}}} other {}} {rare}, {others, plural, one {# has} other {# have}} {common}. Until you choose, each counts as a name of its own.",
    theSame: "{column}: is {rare} the same as {common}?",
    whichMethod: "{word}: which method is it?",
    yesAs: "Yes, read both as {name}",
  },
  work: {
    dayRange: "{from} to {to}",
    daysLate: "{days, plural, one {# day} other {# days}} late",
    neededFor:
      "{step} ({batches, plural, one {# batch} other {# batches}}, {plants, plural, one {# plant} other {# plants}})",
    noFit: "doesn't fit",
    noPlants: "no plants",
    noRate: "hours unknown, no work rate in the timetable",
    notBefore: "not before {day}",
    notCounted: "hours unknown, plants not counted",
    partOf: "part of {plants, count}",
    plannedLater: "{tasks, plural, one {# task} other {# tasks}} won't be finished by {end}.",
    tasksNotCounted:
      "{tasks, plural, one {# task is} other {# tasks are}} left out: plants not counted.",
    tooMuch: "Too much work, {days}.",
    tooMuchNobody: "It takes {asked} hours, and nobody may do {tasks, list}.",
    tooMuchOnly:
      "It takes {asked} hours, and only {persons, list} may do {tasks, list}, with {there} hours. Others have hours left in these days.",
    tooMuchSum: "It takes {asked} hours and you have {there}. You need at least {short} more.",
  },

  workColumns: {
    amount: "Amount",
    batch: "Batch",
    by: "By",
    day: "Day",
    firstNeeded: "First needed",
    hours: "Hours",
    item: "Item",
    neededFor: "For",
    person: "Person",
    place: "Place",
    plants: "Plants",
    remarks: "Remark",
    task: "Task",
    unit: "Unit",
    variety: "Variety",
  },

  workNeedsHelp: {
    answers:
      "One row per item and unit, scion wood by variety: the needs per plant of the tasks that BATCH_DUE lists for as many days, times the plants likely to pass. Pieces are rounded up.",
    days: "How many days to look ahead.",
    sentence: "What the tasks of the coming days need, how much, and from when on.",
  },

  workPage: {
    allUnrated:
      "For all tasks no hours are known. They need a count of plants, and Per person-hour in the timetable.",
    awayHands: "Not there:",
    batches: "Batches",
    by: "by {day}",
    closed: "closed",
    fits: "There are enough hands: {hours} planned.",
    fitsRated: "There are enough hands where hours are known: {hours} planned.",
    fortnight: "The fortnight, day by day",
    freeHands: "No work yet:",
    hoursUnknown: "Hours not known",
    madeCrew: "Made the tab {tab}. Fill in who is there and how many hours a day.",
    makeCrew: "Make an empty Crew tab",
    making: "Making the tab",
    nobodyNamed:
      "The tab {tab} names nobody yet. Fill in one row per person under {columns, list}.",
    noCrew:
      "To see whether there are enough hands, make a tab called Crew: one row per person, with the columns {columns, list}.",
    nothingPlanned: "Nothing is planned.",
    personsFrom:
      "Crew is read from the tab {tab}. List closed days in a tab called Closed days (column Day).",
    personsFromClosed: "Crew is read from the tab {tab}, closed days from {closed}.",
    planning: "Planning the fortnight",
    plants: "{plants, plural, one {# plant} other {# plants}}",
    tasks: "Tasks",
    tooMuch: "too much",
    tooMuchHelp:
      "These days are marked “too much”. Hours left in them belong to people who can't do these tasks.",
    unplaced:
      "{tasks, plural, one {# task is} other {# tasks are}} not planned in these days, in part or whole",
    unrated:
      "We can't tell the hours of {tasks, plural, one {# task} other {# tasks}}. Count the plants, and fill in Per person-hour in the timetable.",
    unratedTasks: "+ {tasks, plural, one {# task} other {# tasks}}",
    whoCan: "Who can",
  },

  workPlanHelp: {
    answers:
      "First what doesn't fit, with the sum that proves it and the fewest hours more that would do. Then one row per person and part of a task, as near to the usual days as the hands allow. A task without known hours is a reminder on its usual day.",
    closedDays:
      "A table of days on which nobody works: Day, and To for several. A weekday's name closes every such day.",
    crew: "Your table of persons: Person, Tasks (blank for all), Hours a day, Days (Mon–Fri), Off from, Off to.",
    days: "How many days to plan, 1 to 366.",
    sentence: "Plans the tasks of the coming days by day and person, or says why they don't fit.",
  },

  writing: {
    before: "Before it is written",
    cutOff: "Cut off, look at the cells",
    inCell: "in {where}",
    inLogOnly: "in the write log only",
    leave: "Leave as it is",
    nothingWritten: "Nothing was written yet.",
    notTakenBack: "Not taken back",
    notTakenBackSee: "Not taken back. See why above.",
    notYet: "Nothing is written yet.",
    older: "Older ones are in the tab Write log.",
    readAgain: "Read again",
    reading: "Reading the write log",
    stands: "Now there",
    takeBack: "Take back",
    taken: "Taken back",
    takenDone: "Taken back.",
    taking: "Taking it back",
    title: "Last writes",
    what: "{task}, {about}",
    when: "{when}, {who}",
    would: "Would be",
    writeAnyway: "Write anyway",
    writing: "Writing to the records",
    written: "Written",
    writtenNamed: "Written: {what}",
  },

  writingAsked: {
    afterToday: "{day} is after today, {today}. Is that right?",
    beforeStep: "{step} on {day} would come before {earlier} on {earlierDay}. Is that right?",
    beforeToday: "{day} is before today, {today}. Is that right?",
    blankSince: "{header} ({cell}) is blank now, {wrote} was written. So nothing is taken back.",
    changedSince:
      "{header} ({cell}) now says {stands}. We wrote {wrote}. So nothing is taken back.",
    columnLacks:
      "Your table has no column for the {what, select, count {count} note {note} other {}} of {task}. Keep {value} in the write log only?",
    filledSince: "{header} ({cell}) was blank and now says {stands}. So the row stays as it is.",
    holdsAlready: "{header} ({cell}) already says {stands}. Write {would} over it?",
    holdsTooMuch:
      "{header} ({cell}) already says {stands}, too long to be put back whole. Write {would} over it?",
    lineAlready: "{step} of {batch} is already in row {row}, {day}. Write another line?",
    lineCounted:
      "{step} of {batch} is already in row {row}, {day}, {count, plural, one {# plant} other {# plants}}. Write another line?",
    lineUndated: "{step} of {batch} is already in row {row}, without a day. Write another line?",
    moreThanBefore:
      "{count, count} is more than the {before, count} at {step} of {batch}. Is that right?",
    nameAlready: 'Order "{order}" is already in row {row} of {tab}. Write another of that name?',
    newColumn:
      "Your table has no column for {step}. Add one, with its header in {cell}? It stays if the day is taken back. Make the tabs again in Set up afterwards, so that they read it too.",
    notCounted: "{step} of {batch} has no count. Enter it, or write the day alone?",
    tooLong:
      "The {what, select, customer {customer} note {note} order {order} variety {variety} who {name} other {}} has {length, count} characters, and a cell takes {most, count}. Cut it to fit?",
  },

  writingFaults: {
    busy: "Somebody else is writing just now. Try again in a moment",
    changed: "Somebody else has just changed {cell}. Look again",
    columnsGone:
      "The table no longer has just one column {headers, list}. Nothing is changed (it was {cells, list})",
    doneAnyway: "All of it is written, but then the spreadsheet failed. Look again ({because})",
    filled: "The formula in {filler} fills {cell}, so it can't be written over",
    holdsFormula: "{cell} has a formula, so it can't be written over",
    lineNotRead:
      "A line in row {row} would not be read as part of your log. Write it there yourself, or move the log to a tab of its own",
    linesAbove:
      "{tab} has lines of yours above its header. Move them away, then {mendedBy, select, again {try again} refresh {choose Refresh the due list in the Nursery menu} setUp {make the tabs again in Set up} other {}}",
    moved: "Somebody has just moved rows or columns of the table. Look again",
    noBatch: 'The records no longer have a batch "{batch}". Look again',
    noBox: 'Done says "{found}". Tick the box instead',
    noCells: '"{tab}" is a chart or a linked sheet. Rename it, then try again',
    noColumn: "Your table has no column for {task}. Add one",
    noOrders: 'There is no longer a tab "{tab}" with orders. Nothing is changed',
    noStep: 'The timetable no longer has a step "{task}". Look again',
    notACount: '"{found}" is not a count. Enter a whole number of plants, 0 or more',
    notInLog: "The write log does not have this, or it is already taken back",
    notOurs: 'You have a tab "{tab}" of your own. Rename it, then try again',
    notPutBack: "{because}. Part of it may be written ({cells, list}). The write log will say",
    noWorkbook: "Nothing can be written from here. Open the workbook and use its menu",
    orderGone: 'There is no longer an order "{order}". Nothing is changed (it was {cells, list})',
    rowsAlike: "Rows {rows, list} could each be {about}, {task}. Nothing is changed",
    swallowed:
      "{cell} did not take what was written. It may be part of a merged cell, or hidden by a filter",
    tabMissing: "The tab {tab} is missing. Run Set up again",
    tabThere:
      'You already have a tab "{tab}". Give it the columns {columns, list}, or rename it, then try again',
    taskGone:
      'The records no longer have {task} of batch "{batch}". Nothing is changed (it was {cells, list})',
    thereAlready: "Nothing to write. {task} of {batch} is already there: {cells, list}",
    twoBatches:
      'Two batches are called "{batch}" (rows {rows, list}). Give them names of their own first',
    unreadable: "{name} can't be read. Enter it again",
  },
} as const;
