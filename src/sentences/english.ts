/**
 * All that a person reads, in English, as ICU messages. Change any text in quotation marks; what
 * stands in braces are facts, filled in later. How: README.md beside this file. Then npm run sentences.
 *
 * Groups stand in the order of letters, with a blank line between.
 */
export const english = {
  aheadPage: {
    all: "All varieties",
    asTable: "The same as a table",
    batches:
      "{batches, plural, one {# batch is likely in this month:} other {# batches are likely in this month:}}",
    dayUnknown: "day not known",
    holds: "{level, share} of such ranges should hold.",
    likely: "{window}, likely {day}",
    loading: "Working out what will be ready",
    noBatch: "No batch is likely in this month. Those of other months may still fall into it.",
    noneComing: "No open batch with counted plants is on its way to ready.",
    noneLikely: "none likely",
    notCounted: "plants not counted",
    plants: "{numbers} plants",
    readAgain: "Read again",
    reading: "The bar runs from fewest to most, and the tick is the likely number.",
    ready: "ready",
    readyByMonth: "Plants ready by month: {variety}",
    readyOf: "Plants ready: {variety}",
    readySince: "ready since {day}",
    readySinceAbout: "ready since about {day}",
    showBatches: "Press a month to see its batches.",
    title: "Plants ready, by month",
    trackRange: "{fewest, count} to {most, count} plants, likely {likely, count}",
    upTo: "{most, count} plants",
    variety: "Variety",
  },

  batchBalanceHelp: {
    answers:
      "One row a batch. Unexplained is what should stand less what stands by the last count; below 0 when more stand than can.",
    sentence:
      "Where every plant of each batch went: culled, given, dispatched, standing or unexplained.",
  },

  batchColumns: {
    batch: "Batch",
    batches: "Batches",
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
    fewestReady: "Fewest ready",
    from: "From",
    given: "Given to batches",
    hours: "Hours",
    lastCount: "Last counted",
    lastStep: "Last step",
    likely: "Likely",
    likelyCount: "Likely count",
    likelyReady: "Likely ready",
    method: "Method",
    month: "Month",
    most: "Most",
    mostReady: "Most ready",
    nextBy: "Next by",
    nextFrom: "Next from",
    nextLikely: "Next likely",
    nextStep: "Next step",
    place: "Place",
    plants: "Plants",
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
      "One row a begun batch: Materials from the timetable's Needs, Hours from its work rates, Cost of both, and Cost over the plants counted as ready or likely to be. A lot passes its cost on to the batches taken from it, by their plants. Below, for each method, all batches together, and what a started plant carries. What has no price is never 0: the last row names it.",
    prices:
      "Your table of prices: Item, Price, and Per, the unit it is for. The item hour is a person's work. Leave blank for hours alone.",
    sentence: "What each batch has cost so far in materials and hours, losses included.",
  },

  batchDueHelp: {
    answers: "One row a task, soonest first. Status is late, due or coming.",
    daysAhead: "How many days to look ahead.",
    sentence: "What is to be done, for which batch, where, between which days, and what is late.",
  },

  batches: {
    all: "All",
    closedWith:
      "{plants, plural, one {# plant was} other {# plants were}} still there when it was closed.",
    coming: "coming",
    due: "due",
    held: "Held",
    heldOf: "{held, count} of {all, count}",
    late: "late",
    leftAfterCount:
      "{left, count} left after the last count. {standing, plural, =0 {None stands} one {# stands} other {# stand}} now.",
    moreLeft: "More plants left than came in.",
    moreStand: "More plants stand than should.",
    nextLate: "{step} was due by {by}. Nothing recorded since {since}.",
    no: "no",
    noDates: "No day recorded, so we can't give dates.",
    noDayYet: "No day recorded yet.",
    noneHeld: "No batch that was forecast then has an outcome yet",
    noPlantsCounted: "No plants counted yet.",
    noSuchMethod: "The timetable doesn't have this method.",
    planned: "Planned.",
    setAside:
      "Nothing recorded since {since}, so no forecast counts it. Close it, or record what happened.",
    yes: "yes",
  },

  batchLookbackHelp: {
    answers:
      "One row a batch that was under way then and whose outcome is known now; the last row counts how many ranges held.",
    daysBefore: "How many days before the as-of day to stand, such as 180.",
    sentence:
      "What the forecast would have said some days ago, knowing only what was recorded then, and how it held.",
  },

  batchReadyHelp: {
    answers:
      "One row a month and variety, and All. Plants ready already stand in the month of the as-of day. Batches counts those whose likely day lies in the month. All is not the sum of the rows above it: ranges don't add, since hardly ever do all varieties have their fewest, or all their most, in the same month.",
    sentence: "How many plants will be ready, by month and variety and all together, as ranges.",
  },

  batchStagesHelp: {
    answers:
      "One row an open batch: the last step, the next with its days, and the days and plants when ready, each as a range.",
    sentence:
      "Where each open batch stands, what comes next, and when how many plants will be ready.",
  },

  batchStepsHelp: {
    answers: "One row a batch and step. Steps of closed batches carry what was recorded only.",
    sentence: "Every step of every batch: what is recorded, and what is expected of steps to come.",
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
    noMethod: "Left out because the timetable has no such method: {batches, list}.",
    noPlants: "Some steps have no count of plants and are left out: {batches, list}.",
    noPrice: "No price for {items, list}, so they are not in the cost.",
    noRate: "No work rate in the timetable for {steps, list}, so their hours are left out.",
    notBegun: "{batches, plural, one {# batch has} other {# batches have}} not begun.",
    notNeeded: "Priced, but not needed so far: {items, list}.",
    pieces: "pieces",
    startedPlant: "A started plant: {method}",
  },

  dueCalendar: {
    daysLate: "{days, plural, one {# day} other {# days}} late.",
    summary: "{task}: {batch}",
    summaryPlants: "{task}: {batch}, {plants, plural, one {# plant} other {# plants}}",
    window: "From {from} to {by}, usually {usual}.",
  },

  dueTab: {
    age: "Of {day}",
    ageChanged: "Of {day}: records have changed since. Tick the box beside for a new list",
    ageOtherDay: "Of {day}: not today's list. Tick the box beside for a new one",
    ageUnknown:
      "Of {day}. We can't tell what has changed since. Tick the box beside for a new list",
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
      "due list of {day}. Tick Done to record a task, and fill Count where plants are counted. Clear the box to take it back.",
    memory: "Write",
    mendedBy: "choose Refresh the due list in the Nursery menu",
    note: "Note",
    offTheList: "not on the list any more. Clear the row to drop it",
    place: "Place",
    plants: "Plants",
    sign: "?",
    state: "Written",
    status: "Status",
    task: "Task",
    title: "due list",
    what: "What",
    who: "Who",
    writtenDaily:
      "Written by each refresh, because functions can't read TODAY() in this spreadsheet",
    yes: "Yes, write it",
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
    severalHarvests: "harvest holds {places} places or crops. Give only the rows of yours",
  },

  orderFieldColumns: {
    by: "By",
    closed: "Closed",
    customer: "Customer",
    delivered: "Delivered",
    order: "Order",
    variety: "Variety",
    wanted: "Wanted",
  },

  orderOutlookHelp: {
    answers:
      "One row an open order, the earliest day first. Plants are set aside for the earliest day first; late ones fill an order where no other needs them in time. Short by and Full by hold with the assurance. Likely set aside, Short by and Full by are about plants still to be delivered.",
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
    largerStart: "A larger start of {start, count} can still make all {wanted, count} by {by}.",
    need: "{item} {amount} {unit}",
    needPieces: "{item} {amount}",
    newStartNone: "A new start can't make {by}.",
    noStart: "No start is large enough to be that sure.",
    of100: "{chance} of 100",
    outsideHarvest:
      "Seed would be taken outside the harvest months ({months}). The last day inside is {last}.",
    plain: "Plain division by what is kept: {plants, count}.",
    plainAndMore:
      "Plain division by what is kept: {plants, count}. {more, count} more make it enough in {chance}.",
    standingCan:
      "A new start can't make {by}. Plants you already have could fill {plants, count}, if not promised to others.",
    startedNow: "A start on {asOf} can make {wanted, count} by {earliest}.",
    startWasDue: "Too late: the start was due by {day}.",
    unknownVariety: "The records have no batch of {variety}, so it is planned as for any variety.",
  },

  orderPlanHelp: {
    answers:
      "One row a step, and All with the needs added up. Plants is never less than the plain division by what is kept. Remark says both, and when it is too late.",
    asOf: "The day you plan on. Left out, it is the latest day in the records, so give it where they hold days to come.",
    assurance: "Chance with which the order is to be met, as a share.",
    harvest:
      'Months in which seed is harvested, such as "Oct-Mar, May-Aug", or a table of crops with such months.',
    method: "Name of the method. Leave blank for the first of the timetable.",
    readyBy: "The day by which they are to be ready.",
    records:
      "Your table of batches with its header, to plan by what your nursery keeps and how long it takes.",
    sentence:
      "An order planned backwards: by which day to do each step, from how many plants, with what needs.",
    variety: 'The variety wanted. Of "A or B" the first is planned. Left out, one like the others.',
    wanted: "Plants wanted, a whole number.",
  },

  orders: {
    all: "All",
    allDelivered: "fine, all delivered",
    cellBlank: "{column} is blank",
    cellShows: "{column} shows {shown}",
    cellTrouble: "{column}: {what}",
    deliverNow: "late, but all are ready: deliver now",
    fine: "fine",
    graft: "graft {plants, count} more by {by}",
    graftOf: "graft {plants, count} more of {variety} by {by}",
    noName: "(no name)",
    noneWanted: "{column} is 0",
    noted: "These orders are used, but not all of their cells: {rows}.",
    row: "row {row} ({reasons})",
    rowAlone: "row {row}",
    rowsLeftOut: "{number, plural, one {# order is} other {# orders are}} left out: {rows}.",
    start: "start {plants, count} more by {by}",
    startOf: "start {plants, count} more of {variety} by {by}",
    tooLate: "too late: tell the customer",
    tooLateToStart: "too late to start more: tell the customer",
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
      "To see what becomes of your orders, keep them in a tab: a row an order, with the columns {columns, list}.",
    keepPlan: "Keep this plan",
    lastTwoHold: "The last two hold in {cases} cases.",
    lateBy: "no, {days, plural, one {# day} other {# days}} late",
    leftUnwritten: "Nothing was written.",
    likely: "likely",
    likelyOf: "{likely, count} of {left, count}",
    madeOrders: "Made the tab {tab}. Write a row an order, or plan one here.",
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
    sureInFrom: "{method}, sure in {cases} cases, seed from {harvest}.",
    tabMadeFirst: "There is no tab Orders yet. It is made first.",
    takenBack: "The order is taken back.",
    thePlan: "The plan",
    title: "Orders",
    toDeliver: "{wanted, plural, one {# plant} other {# plants}} to deliver",
    tooManyZeros: "More than {most, count}. One zero too many?",
    under1: "{word}: under 1 of 100",
    unlikely: "unlikely",
    variety: "Variety",
    varietyHint: "Blank for any. Where either will do: Amberlow or Brindlecap",
    wasDue: "was due {day}",
    wholeNumber: "A whole number, 1 or more.",
    workingOut: "Working out what becomes of the orders",
    writingOrder: "Writing to the orders",
    written: "The order is written.",
    yearRight: "Is the year right?",
  },

  orderTabs: {
    howOrders:
      'a row an order. {variety}: "A or B" where either will do, blank for any. {closed}: a day or yes.',
    orders: "orders",
  },

  parameterHelp: {
    asOf: "The day to look from: a cell with a date.",
    asOfOrNone: "The day to look from. Leave it out to skip what needs a day.",
    columns:
      "Two columns, our name and the header in your sheet, for headers that we can't guess. Blank rows are skipped.",
    ifLeftOut: "{sentence} Left out, it is {usual}.",
    level: "How many of 100 ranges should hold, as a share.",
    records: "Your table of batches with its header.",
    timetable: "Your table of steps with its header. Leave it blank for the built-in steps.",
  },

  placeColumns: {
    holds: "Holds",
    overBy: "Over by",
    place: "Place",
    plants: "Plants",
    week: "Week",
  },

  placeLoadHelp: {
    answers:
      "One row a place and week, from the as-of day's week on: the likely plants of the open batches at the start of the week, up to the week of their likely ready day, fewer after each likely count. Plants that are ready already, and those with no day to count from, stand in the first week alone. Places that are not in the table and batches without a place stand below, without Holds. The last row names them, and the batches that are left out.",
    places: "Your table of places: Place, and how many plants it Holds.",
    sentence: "How many plants stand in each place, week by week, and where they are too many.",
  },

  places: {
    forgotten: "Left out because nothing was recorded for long: {batches, list}.",
    noMethod: "Left out because the timetable has no such method: {batches, list}.",
    noPlace: "(no place)",
    notCounted: "Left out because no plants are counted: {batches, list}.",
    notListed: "Not in the table of places: {places, list}.",
    oneWeek:
      "Shown in one week only, as they are ready or have no day to count from: {batches, list}.",
    plannedAfter:
      "Left out because they are planned for after these {weeks, count} weeks: {batches, list}.",
    standLonger:
      "{batches, plural, one {# batch stands} other {# batches stand}} longer than these {weeks, count} weeks.",
    withoutPlace: "Batches without a place stand under (no place).",
  },

  records: {
    rowsLeftOutOfCell:
      "{rows, plural, one {# row is} other {# rows are}} left out: see BATCH_CHECK.",
    rowsLeftOutOfPage: "{rows, plural, one {# row is} other {# rows are}} left out: see Check.",
  },

  smallTables: {
    closedDays: "closed days",
    crew: "crew",
    endsBefore: "it ends before it begins",
    holdsUnknown: "it does not say how many the place holds",
    holdsUnread: "we can't read how many it holds, {why}",
    moreThanDay: '"{found}" is more hours than a day has',
    namedTwice: "{name} is there twice, the smaller number counts",
    noDay: '"{found}" is not a day we can read',
    noFirstDay: "it has no first day",
    noHours: "{name} is left out: no hours a day.",
    noItem: "it names no item",
    noName: "it names nobody",
    noPlace: "it names no place",
    noPrice: "{item} has no price",
    noStep: 'the timetable has no step "{found}"',
    notByTime: "{item} needs a price by the hour or minute",
    notHours: '"{found}" is not a number of hours',
    notPrice: '"{found}" is not a price we can read',
    notUnit: '"{found}" is not a unit we can read',
    places: "places",
    priceRange: "the price is out of range",
    prices: "prices",
    readAs: "read as {number, count}",
    rowLeftOut: "Row {row} of {table} is left out: {why}.",
    rowNoted: "Row {row} of {table}: {what}.",
    secondPrice: "a second price of {item}, the higher counts",
    weekdayEnd: "a weekday has no last day, so give each weekday a row",
  },

  tableFaults: {
    daysOutOfRange: "days is 1 to {most}, not {found}",
    noHeaderRow: "{argument} has no header row with {columns, list} in its first ten rows",
    rowLoading: "a cell of {argument} row {row} is still loading",
    rowShows: "a cell of {argument} row {row} shows {shown}",
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
      "One row a group: its rate, the rate anyone would have had with its batches, its rate evened for them with a range, and one of four readings: above the rest, below the rest, no clear difference, too few to tell.",
    by: "The column whose groups you compare, such as Grafter.",
    evenFor:
      'What to even for: one column, or several joined with "+", such as Variety+Month. Month, Season, Rootstock age in weeks and Scion days stored are made from the days.',
    level: "How many of 100 ranges should hold, as a share.",
    sentence:
      "Take rates of grafters, scion sources or any other groups, evened for what they could not choose.",
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
    grafted: "Grafts made: a cell, or a column as long.",
    high: "High",
    level: "How many of 100 such ranges should hold, as a share.",
    low: "Low",
    sentence: "Between what shares the take rate lies, given how many were grafted: low and high.",
    taken: "Takes counted: a cell, or a column of cells.",
  },

  takeRateHelp: {
    answers: "A share from 0 to 1, or one for each row of the two columns.",
    grafted: "Grafts made: a cell, or a column as long.",
    heading: "Take rate",
    sentence: "The share of grafts that took; blank where they are not counted yet.",
    taken: "Takes counted: a cell, or a column of cells.",
  },

  takeReasonsHelp: {
    answers:
      "One row a column, most first: how much of the spread between batches it goes with, its best and worst group, and a reading. What goes with takes need not cause them.",
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
    notCause: "What goes with takes need not cause them. What else changed at the same time?",
    notCountedYet: "{batches, plural, one {# batch is} other {# batches are}} not counted yet.",
    oneBatchEach:
      "With one batch a group we can't tell how much batches vary. The real range may be wider.",
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
  },

  takesPage: {
    allPeriods: "All periods as a table",
    asCounted:
      "As counted, {rate, share} of {grafted, count} took. Of these batches {expected, share} were expected.",
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
      "The dot is the rate as if everyone had had the same {evenFor}; the bar is its range. The dashed line is the rate of all together, {overall, share}. The words are stricter than the bars, because many are compared at once.",
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
    nobodyApart: "Nobody stands clearly apart: batches differ this much anyway.",
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
      "{columns, list} {linked, plural, one {goes} other {go}} with takes. The share is how much of the difference between batches each goes with, taken on its own.",
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
      "A dot is a period of grafting. The pale band is the usual up and down. A ring marks a period that is out of the ordinary, a hollow dot one whose takes are still being counted. The top is 100 %, the foot 0 %.",
    usualRate: "usual {rate, share}",
  },

  takeSummaryHelp: {
    answers:
      "One row a group: batches, grafted, taken, take rate with its range, and how much more batches differ than chance makes them.",
    by: 'A column of the table, or several joined with "+".',
    level: "How many of 100 such ranges should hold, as a share.",
    sentence:
      "Take rates by variety, grafter or any other column, with the range that the counts allow.",
  },

  takeTabs: {
    columnGone:
      'Nothing is compared: the records have no column "{name}" any more. Choose another in Set up',
    noneChosen: "Nothing is compared. Choose in Set up what to compare",
    noTakeRates: "No take rates: {why}. Add it, then make the tabs again in Set up",
    nothingToEvenFor: "Nothing is compared: beside {by} there is no column to even takes for",
  },

  takeTrendHelp: {
    answers:
      "One row a period: its rate, the usual rate, the limits within which periods have always varied, and one of five readings: usual, low, high, drifting down, drifting up. A period whose takes are not all counted is marked as still open.",
    by: 'A column whose groups are each followed on their own, or several joined with "+".',
    period: 'Of grafting: "week", "month" or "quarter"; month if left out.',
    sentence: "Take rates over time, and when one is out of the ordinary or drifting.",
  },

  todayPage: {
    ahead: "Days ahead",
    byPerson: "by person",
    byPlace: "by place",
    calendarFile: "Calendar file",
    calendarSaved: "The calendar file is in your downloads. Open it with your calendar.",
    cancel: "Cancel",
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
    makingCalendar: "Making the calendar file",
    makingSheet: "Making the round sheet",
    markDone: "Mark done",
    markDoneOf: "Mark done: {task}, {batch}",
    markedDone: "{tasks, plural, one {# task} other {# tasks}} marked done since this page opened",
    minutes: "a few minutes of one person",
    noPlace: "No place named",
    note: "Note",
    nothingDue:
      "Nothing is late, due or coming {days, plural, =0 {today} one {in the next # day} other {in the next # days}}.",
    nothingToPrint: "Nothing to print: the list is empty.",
    nothingWritten: "Nothing was written.",
    plants: "{plants, plural, one {# plant} other {# plants}}",
    plantsNotCounted: "plants not counted",
    print: "Print round sheet",
    readAgain: "Read again",
    reminder: "A reminder: the records have no column for this step.",
    roundSheet: "Round sheet",
    rowMayHaveChanged: "Nothing was written. Read the list again: the row may have changed.",
    save: "Save",
    tally: "{tasks, count} {status}",
    tallyAll: "{tally}.",
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
    plannedLater:
      "{tasks, plural, one {# task waits} other {# tasks wait}} in part or whole until after {end}.",
    tasksNotCounted:
      "{tasks, plural, one {# task is} other {# tasks are}} left out: plants not counted.",
    tooMuch: "Too much work, {days}.",
    tooMuchNobody: "It takes {asked} hours, and nobody can do it.",
    tooMuchSum: "It takes {asked} hours, and {there} are there. At least {short} more are needed.",
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
  },

  workNeedsHelp: {
    answers:
      "One row an item and unit: the needs per plant of the tasks that BATCH_DUE lists for as many days, times their plants. Pieces are rounded up.",
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
    fits: "Nothing asks for too much: {hours} are taken.",
    fitsRated: "Nothing with known hours asks for too much: {hours} are taken.",
    fortnight: "The fortnight, day by day",
    freeHands: "Nothing yet:",
    hoursUnknown: "Hours not known",
    madeCrew: "Made the tab {tab}. Fill in who is there and how many hours a day.",
    makeCrew: "Make an empty Crew tab",
    making: "Making the tab",
    nobodyNamed: "The tab {tab} names nobody yet. Fill in a row a person under {columns, list}.",
    noCrew:
      "To see whether there are enough hands, make a tab called Crew: a row a person, with the columns {columns, list}.",
    nothingPlanned: "Nothing is planned.",
    personsFrom:
      "Persons stand in the tab {tab}. Days in a tab called Closed days (column Day) would count as closed.",
    personsFromClosed: "Persons stand in the tab {tab}, closed days in {closed}.",
    planning: "Planning the fortnight",
    plants: "{plants, plural, one {# plant} other {# plants}}",
    tasks: "Tasks",
    tooMuch: "too much",
    tooMuchHelp:
      "These days are marked “too much”. Hours left in them belong to people who can't do these tasks.",
    unplaced:
      "{tasks, plural, one {# task is} other {# tasks are}} not planned in these days, in part or whole",
    unrated:
      "For {tasks, plural, one {# task} other {# tasks}} no hours are known. They need a count of plants, and Per person-hour in the timetable.",
    unratedTasks: "+ {tasks, plural, one {# task} other {# tasks}}",
    whoCan: "Who can",
  },

  workPlanHelp: {
    answers:
      "First what doesn't fit, with the sum that proves it and the fewest hours more that would do. Then one row a person and part of a task, as near to the usual days as the hands allow. A task without known hours is a reminder on its usual day.",
    closedDays:
      "A table of days on which nobody works: Day, and To for several. A weekday's name closes every such day.",
    crew: "Your table of persons: Person, Tasks (blank for all), Hours a day, Off from, Off to.",
    days: "How many days to plan, 1 to 366.",
    sentence: "Plans the tasks of the coming days by day and person, or says why they don't fit.",
  },
} as const;
