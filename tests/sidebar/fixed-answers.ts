import type {
  AheadAnswer,
  CheckAnswer,
  ColumnGuess,
  ColumnsAnswer,
  CompareAnswer,
  DueTask,
  OpenAnswer,
  PlannedPart,
  TakesAnswer,
  TodayAnswer,
  WorkAnswer,
} from "../../src/workbook/sidebar-calls";
import { orders, plan } from "./order-answers";
import type { Answers } from "./script-runner";

/** Answers of an invented nursery, always the same. */

export const opened: OpenAnswer = {
  workbook: "Hillside nursery (invented)",
  zoneWarning: null,
  setUp: {
    ...{ recordsTab: "Records", timetableTab: null },
    ...{ asOf: "2026-11-25", level: 0.8, daysAhead: 14 },
  },
  candidates: [
    { tab: "Records", batches: 64 },
    { tab: "Old list", batches: 12 },
  ],
  timetables: [
    { tab: "Timetable", methods: ["Cocoa cleft graft"], trouble: null },
    { tab: "Old plan", methods: [], trouble: "timetable row 3, Step: the step has no name" },
  ],
  methods: ["Cocoa cleft graft"],
};

const firstRelease: DueTask = {
  batch: "H26-039",
  place: "Bay 2 north",
  task: "First release",
  plants: 104,
  doOn: "2026-11-25",
  from: "2026-11-10",
  by: "2026-11-16",
  status: "late",
  daysLate: 9,
  hours: 1.3,
  caution: "Blades: slit the wrap on the side away from the union and away from the hand.",
  counted: false,
  countHeader: null,
  dayHeader: "First release",
};

export const takeCount: DueTask = {
  ...firstRelease,
  task: "Take count",
  doOn: "2026-11-28",
  from: "2026-11-26",
  by: "2026-12-03",
  status: "coming",
  daysLate: 0,
  hours: null,
  caution: "",
  counted: true,
  countHeader: "Takes",
  dayHeader: "Take count day",
};

export const today: TodayAnswer = {
  asOf: "2026-11-25",
  tasks: [
    firstRelease,
    {
      ...firstRelease,
      batch: "H26-028",
      task: "Union closed",
      plants: 1090,
      from: "2026-11-15",
      by: "2026-12-10",
      status: "due",
      daysLate: 0,
      hours: null,
      caution: "",
      dayHeader: null,
    },
    takeCount,
    { ...takeCount, batch: "H26-044", place: "Bay 1 south", plants: null },
    { ...takeCount, batch: "H26-045", place: "", plants: 1, from: "2026-12-30", by: "2027-01-02" },
  ],
  remark: "3 rows left out: see Check",
  takes:
    "Takes of grafts made in 2026-10 so far: 68 % of 333; usual is 73 %: nothing out of the ordinary.",
};

export const ahead: AheadAnswer = {
  rows: [
    ...[row("2026-11", "Amberlow", 0, 0, 0, 100), row("2026-11", "All", 0, 0, 0, 100)],
    ...[row("2026-12", "Amberlow", 1, 0, 71, 109), row("2026-12", "Brindlecap", 1, 0, 94, 104)],
    row("2026-12", "All", 2, 64, 104, 207),
  ],
  batches: [
    {
      batch: "A-02",
      variety: "Amberlow",
      place: "Bay 1",
      month: "2026-12",
      isReady: false,
      readyFrom: "2026-11-29",
      readyLikely: "2026-12-17",
      readyBy: "2027-02-05",
      fewest: 84,
      likely: 103,
      most: 110,
    },
    {
      batch: "B-01",
      variety: "Brindlecap",
      place: "",
      month: "2026-12",
      isReady: false,
      readyFrom: "2026-12-05",
      readyLikely: "2026-12-11",
      readyBy: "2026-12-19",
      fewest: null,
      likely: null,
      most: null,
    },
  ],
  remark: null,
};

function row(
  ...[month, variety, batches, fewest, likely, most]: [
    string,
    string,
    number,
    number,
    number,
    number,
  ]
): AheadAnswer["rows"][number] {
  return { month, variety, batches, fewest, likely, most };
}

export const takes: TakesAnswer = {
  by: "Variety",
  columns: ["Variety", "Grafter", "Place"],
  rows: [
    {
      group: "Amberlow",
      batches: 2,
      grafted: 320,
      taken: 251,
      rate: 0.784,
      from: 0.694,
      to: 0.854,
      spread: 3.287,
      remark: null,
    },
    {
      group: "Brindlecap",
      batches: 0,
      grafted: 0,
      taken: 0,
      rate: null,
      from: null,
      to: null,
      spread: 3.287,
      remark: "1 batch not counted yet",
    },
  ],
};

const LIMITS = { low: 0.48, high: 0.98, usual: 0.73 };

export const compared: CompareAnswer = {
  by: "Grafter",
  evenFor: "Variety",
  columns: ["Variety", "Grafter", "Place"],
  evenFors: ["Variety", "Place", "Month", "Season", "Variety+Season", "Variety+Month"],
  people: "Grafter",
  compared: [
    {
      ...{ group: "Kesto", grafted: 3934, taken: 2749, rate: 0.699, expected: 0.764 },
      ...{ evened: 0.668, from: 0.624, to: 0.709, reading: "below the rest" },
    },
    {
      ...{ group: "Mirel", grafted: 3942, taken: 2556, rate: 0.648, expected: 0.646 },
      ...{ evened: 0.733, from: 0.685, to: 0.776, reading: "no clear difference" },
    },
    {
      ...{ group: "Kay Orrin", grafted: 4802, taken: 3805, rate: 0.792, expected: 0.751 },
      ...{ evened: 0.771, from: 0.732, to: 0.805, reading: "no clear difference" },
    },
    {
      ...{ group: "Kito", grafted: 104, taken: 80, rate: 0.769, expected: 0.769 },
      ...{ evened: null, from: null, to: null, reading: "too few to tell" },
    },
  ],
  remark:
    "Nobody to compare with: Kito in Rare (1 batch, counted but not judged). 5 batches not counted yet",
  period: "month",
  trend: [
    { period: "2026-06", grafted: 504, rate: 0.786, ...LIMITS, reading: "usual" },
    { period: "2026-07", grafted: 787, rate: 0.368, ...LIMITS, reading: "low" },
    { period: "2026-08", grafted: 438, rate: 0.719, ...LIMITS, reading: "usual" },
    { period: "2026-09", grafted: 721, rate: 0.846, ...LIMITS, reading: "usual" },
    {
      ...{ period: "2026-10, still open", grafted: 333, rate: 0.685 },
      ...{ usual: 0.73, low: 0.31, high: 1, reading: "usual" },
    },
    {
      ...{ period: "2026-11, still open", grafted: null, rate: null },
      ...{ usual: 0.73, low: null, high: null, reading: "" },
    },
  ],
  reasons: [
    {
      ...{ column: "Variety", groups: 5, explained: 0.211 },
      ...{ best: "Brindlecap (82 %)", worst: "Duskpod (55 %)" },
      reading: "goes with takes, also where the other columns are alike",
    },
    {
      ...{ column: "Grafter", groups: 4, explained: 0.072, best: "Kay Orrin (77 %)" },
      ...{
        worst: "Kesto (64 %)",
        reading: "goes with takes, but what else differed may be behind it",
      },
    },
    { column: "Place", groups: 4, explained: 0, best: "", worst: "", reading: "no clear link" },
    {
      ...{ column: "Method", groups: 1, explained: null, best: "", worst: "" },
      reading: "too few to tell",
    },
  ],
  reasonsRemark:
    "Going with takes is not causing them: what else changed at the same time? 5 batches not counted yet",
};

export const check: CheckAnswer = {
  rows: [
    {
      row: 12,
      column: "",
      found: "",
      trouble: "No batch name",
      whatHappens: "The row is left out",
      whatToDo: "Write the batch's name into the row",
      cost: 1,
    },
    {
      row: 1407,
      column: "Ready plants",
      found: "soon",
      trouble: "Not a number of plants",
      whatHappens: "The cell is left out, the rest of the row is used",
      whatToDo: "Correct the cell, or empty it",
      cost: 3,
    },
    {
      row: null,
      column: "Takes",
      found: "Takes, Take 2",
      trouble: "Two columns for one",
      whatHappens: "The first is used",
      whatToDo: "Rename the other",
      cost: 2,
    },
    {
      row: null,
      column: "",
      found: "",
      trouble: "Days are read with the day first",
      whatHappens: "3/9/2026 is 3 September",
      whatToDo: "Nothing, if that is right",
      cost: 5,
    },
  ],
  tally: "70 rows in the range: 64 used, 3 left out, 3 header and above.",
};

function guess(column: number, header: string, more: Partial<ColumnGuess>): ColumnGuess {
  return { column, header, readAs: null, sure: "not used", others: [], samples: [], ...more };
}

export const columns: ColumnsAnswer = {
  tab: "Records",
  batches: 64,
  columns: [
    guess(0, "Batch", { readAs: "Batch", sure: "sure", samples: ["H26-001", "H26-002"] }),
    guess(1, "Var.", { readAs: "Variety", sure: "likely", others: ["Rootstock"] }),
    guess(2, "Grafted", {
      readAs: "Grafted on",
      sure: "guessed",
      others: ["Grafts made"],
      samples: ["2026-07-26", "2026-08-20", "about 24 Aug"],
    }),
    guess(3, "Weather", { samples: ["rain", "sun", "rain"] }),
    guess(4, "", { samples: ["x"] }),
    guess(5, "Takes", { readAs: "Takes", sure: "told", samples: ["88", "68", "75"] }),
  ],
  choices: [
    "Batch",
    "Variety",
    "Rootstock",
    "Grafted on",
    "Grafts made",
    "Take count day",
    "Takes",
  ],
  lost: [],
};

const part: PlannedPart = {
  ...{ day: "2026-11-25", task: "First release", batch: "H26-039", place: "Bay 2 north" },
  ...{ plants: 104, hours: 2.6, person: "Kesto", by: "2026-11-16", remark: "9 days late" },
  ...{ counted: false, caution: firstRelease.caution },
};
const grafting: PlannedPart = {
  ...{ ...part, task: "Grafting", batch: "H26-051", place: "Bay 1 south", plants: 200 },
  ...{ hours: 6, by: "2026-12-01", remark: "part of 420", counted: true },
  caution: "Blades cut: cut away from the hand.",
};

/** Fourteen days from a Wednesday: two Sundays closed, Kesto off on the 30th. */
const plannedDays: WorkAnswer["days"] = Array.from({ length: 14 }, (_, at) => {
  const day = new Date(Date.UTC(2026, 10, 25 + at)).toISOString().slice(0, 10);
  const isClosed = at === 4 || at === 11;
  const hands = isClosed ? [0, 0] : [at === 5 ? 0 : 6, 8];
  const asked = [8.6, 14, 14, 14, 0, 8, 3.25][at] ?? 0;
  const there = hands.reduce((sum, one) => sum + one, 0);
  return { day, isClosed, asked, there, hands, isOverloaded: at >= 1 && at <= 5 };
});

export const work: WorkAnswer = {
  asOf: "2026-11-25",
  crewTab: "Crew",
  closedTab: "Closed days",
  crewHeader: ["Person", "Tasks", "Hours a day", "Off from", "Off to"],
  persons: ["Kesto", "Mirel"],
  days: plannedDays,
  overloads: [
    {
      ...{ from: "2026-11-26", to: "2026-11-30", tasks: "Grafting, First release" },
      ...{ batches: "H26-051, H26-052", persons: "Kesto, Mirel" },
      sentence:
        "Too much for these days: 26 Nov 2026 to 30 Nov 2026: 58.5 hours are asked, 50 hours are there; 8.5 hours more in these days are the fewest that mend it",
    },
  ],
  parts: [
    part,
    { ...grafting, person: "Mirel" },
    {
      ...{ ...part, task: "Union closed", batch: "H26-028", plants: 1090, hours: null },
      ...{ person: null, by: "2026-12-10", caution: "" },
      remark: "hours not known: no work rate in the timetable",
    },
    { ...grafting, day: "2026-11-26", plants: 210 },
  ],
  unassigned: [
    {
      ...{ ...grafting, day: null, batch: "H26-052", plants: 283, hours: 8.5, person: null },
      remark: "doesn't fit; part of 400",
    },
  ],
  remark: 'crew row 4 left out: "many" is no number of hours a day',
};

/** Everything that the page may ask, answered. */
export const fixedAnswers: Answers = {
  sidebarOpen: () => opened,
  sidebarToday: () => today,
  sidebarAhead: () => ahead,
  sidebarTakes: ({ by }) => ({ ...takes, by: by === "" ? takes.by : by }),
  sidebarCompareTakes: (request) => ({
    ...compared,
    by: request.by || compared.by,
    evenFor: request.evenFor || compared.evenFor,
    period: request.period,
  }),
  sidebarCheck: () => check,
  sidebarColumns: ({ tab }) => ({ ...columns, tab }),
  sidebarSetUp: () => ({ made: ["Due", "Ready", "Takes"], kept: ["Timetable"], forgotten: [] }),
  sidebarSelect: ({ row: at, column }) => ({ selected: `Records!${column}${at}` }),
  sidebarCalendar: () => ({ fileName: "due-list-2026-11-25.ics", text: "BEGIN:VCALENDAR\r\n" }),
  sidebarRecord: ({ day, count }) => ({
    written: [
      { where: "Records!Q40", header: "Take count day", value: day },
      ...(count === null ? [] : [{ where: "Records!R40", header: "Takes", value: count }]),
    ],
    asked: [],
    logId: "log-1",
  }),
  sidebarWork: () => work,
  sidebarMakeCrew: () => ({ tab: "Crew" }),
  sidebarOrders: () => orders,
  sidebarPlanOrder: () => plan,
  sidebarAddOrder: ({ order, customer, variety, wanted, by }) => ({
    written: [order || "O-12", customer, variety, wanted, by].flatMap((value, column) =>
      value === ""
        ? []
        : [
            {
              where: `Orders!${"ABCDE"[column]}13`,
              header: orders.orderHeader[column] ?? "",
              value,
            },
          ],
    ),
    asked: [],
    logId: "log-2",
  }),
  sidebarOrderTab: ({ order }) => ({ tab: `Plan ${order || "of 150"}` }),
  sidebarMakeOrders: () => ({ tab: "Orders" }),
  sidebarTakeBack: () => ({
    restored: [{ where: "Records!Q40", header: "Take count day", value: null }],
    asked: [],
  }),
};
