/* Longer than most: a list, an answer for each call of the sidebar. */
import type { Trouble } from "../../src/core";
import { correctTab, withoutWork } from "../../src/sentences/made/check";
import type { AheadAnswer } from "../../src/wire/ahead";
import type { TablesAnswer } from "../../src/wire/beside";
import type { CheckAnswer } from "../../src/wire/check";
import type { ColumnGuess } from "../../src/wire/columns";
import type { FaceAnswer, FaceName } from "../../src/wire/faces";
import type { OpenAnswer } from "../../src/wire/open";
import type { ColumnsAnswer } from "../../src/wire/set-up";
import type { DueTask, TodayAnswer } from "../../src/wire/today";
import type { WordsAsked } from "../../src/wire/words";
import { entryWords, tallySentence } from "../../src/wording/check";
import { workRemarks } from "../../src/wording/work-remarks";
import { orders, plan } from "./order-answers";
import { sampleAnswers } from "./sample-answers";
import type { Answers } from "./script-runner";
import { faceOf } from "./seed-face";
import { compared, losses, takes } from "./take-answers";
import { FIRST_RELEASE_CAUTION, work } from "./work-answers";

/** Answers of an invented nursery, always the same. */

export const noWords: WordsAsked = {
  ...{ methods: [], pairs: [], more: 0 },
  ...{ choices: ["Cocoa cleft graft"], columns: ["Variety", "Method", "Place", "Grafter"] },
};

export const opened: OpenAnswer = {
  workbook: "Hillside nursery (invented)",
  zones: null,
  inTheWay: [],
  setUp: {
    ...{ recordsTab: "Records", timetableTab: null },
    ...{ asOf: "2026-11-25", level: 0.8, daysAhead: 14, initials: false, looks: true },
  },
  candidates: [
    { tab: "Records", rows: 64 },
    { tab: "Old list", rows: 12 },
  ],
  timetables: [
    { tab: "Timetable", methods: ["Cocoa cleft graft"], trouble: null },
    { tab: "Old plan", methods: [], trouble: "timetable row 3, Step: the step has no name" },
  ],
  methods: ["Cocoa cleft graft"],
  moreTabs: [
    {
      key: "needs",
      tab: "Needs ahead",
      answers: "What to have ready for the coming month",
      isThere: true,
    },
    {
      key: "costs",
      tab: "Batch costs",
      answers: "What each batch has cost so far",
      isThere: false,
    },
  ],
};

const firstRelease: DueTask = {
  batch: "H26-039",
  place: "Bay 2 north",
  task: "First release",
  plants: 104,
  isEstimate: false,
  doOn: "2026-11-25",
  from: "2026-11-10",
  by: "2026-11-16",
  status: "late",
  daysLate: 9,
  hours: 1.3,
  caution: FIRST_RELEASE_CAUTION,
  isLook: false,
  canWait: false,
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
      isLook: true,
      canWait: false,
      plants: 1090,
      isEstimate: true,
      from: "2026-11-15",
      by: "2026-12-10",
      status: "due",
      daysLate: 0,
      hours: null,
      caution: "",
      dayHeader: null,
    },
    takeCount,
    { ...takeCount, batch: "H26-046", plants: 96, canWait: true },
    { ...takeCount, batch: "H26-047", plants: 88, canWait: true },
    { ...takeCount, batch: "H26-044", place: "Bay 1 south", plants: null },
    { ...takeCount, batch: "H26-045", place: "", plants: 1, from: "2026-12-30", by: "2027-01-02" },
  ],
  remarks: [{ code: "rows-left-out", rows: 3 }],
  takes: {
    ...{ period: "2026-10", isOpen: true, grafted: 333, rate: 228 / 333, usual: 0.73 },
    ...{ low: 0.31, high: 1, reading: "usual" },
  },
};

export const ahead: AheadAnswer = {
  rows: [
    ...[row("now", "Brindlecap", 1, 166, 166, 166), row("now", null, 1, 166, 166, 166)],
    row("2026-11", "Amberlow", 0, 0, 0, 100, [0, 0, 100]),
    row("2026-11", null, 0, 0, 0, 100, [166, 166, 266]),
    row("2026-12", "Amberlow", 1, 0, 103, 109, [84, 103, 110]),
    row("2026-12", "Brindlecap", 1, 0, 94, 104, [166, 260, 270]),
    row("2026-12", null, 2, 84, 197, 207, [260, 363, 374]),
    ...[row("all", "Amberlow", 1, 84, 103, 110), row("all", "Brindlecap", 2, 246, 260, 270)],
    row("all", null, 3, 338, 363, 378),
  ],
  batches: [
    {
      batch: "R-01",
      variety: "Brindlecap",
      place: "Bay 2",
      month: "now",
      isReady: true,
      readyFrom: "2026-11-02",
      readyLikely: "2026-11-02",
      readyBy: "2026-11-02",
      fewest: 166,
      likely: 166,
      most: 166,
    },
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
  remarks: [],
};

function row(
  ...[month, variety, batches, fewest, likely, most, byEnd]: [
    string,
    string | null,
    number,
    number,
    number,
    number,
    (readonly [number, number, number])?,
  ]
): AheadAnswer["rows"][number] {
  const [fewestByEnd, likelyByEnd, mostByEnd] = byEnd ?? [null, null, null];
  const own = { month, variety, batches, fewest, likely, most };
  return { ...own, fewestByEnd, likelyByEnd, mostByEnd };
}

/** An entry of Check in the words of the script. */
function entry(troubles: readonly Trouble[], plants: number | null): CheckAnswer["rows"][number] {
  const { column, found, ...said } = entryWords({ troubles, plants });
  const rows = troubles.flatMap(({ row: at }) => at ?? []);
  const code = troubles[0]?.code ?? null;
  return { code, rows, tab: null, plants, column, found, ...said, isReading: false };
}

const PHONE = {
  ...({ code: "columns-unread", table: "crew" } as const),
  columns: [{ header: "Phone", field: null }],
};
/** Of a log that stands below the batches. */
const LINE = { column: "Batch", found: "", code: "line-without-batch" } as const;
const CLEFT = [7, 9, 10, 14, 21, 22, 23, 30, 31, 40, 52, 53];
export const check: CheckAnswer = {
  rows: [
    entry(
      CLEFT.map((at) => ({
        ...{ row: at, column: "Method", found: "Cleft", code: "several-methods" },
        methods: ["Cocoa cleft graft", "Mango cleft graft"],
      })),
      1240,
    ),
    entry([{ row: 12, column: "", found: "", code: "batch-unnamed", called: "Row 12" }], 104),
    entry(
      [
        {
          ...{ row: null, column: "Take 2", found: "Take 2", code: "columns-alike" },
          ...{ used: "Takes", readAs: { kind: "step", key: "take count", what: "count" } },
        },
      ],
      96,
    ),
    entry(
      [
        {
          ...{ row: 47, column: "Ready plants", found: "soon", code: "cell-unread" },
          why: { code: "not-a-count" },
        },
      ],
      88,
    ),
    entry(
      [71, 72, 75].map((at) => ({ ...LINE, row: at })),
      null,
    ),
    {
      ...{ code: null, rows: [], tab: "Crew", plants: null, column: "", found: "" },
      isReading: false,
      trouble: `${workRemarks([PHONE], "page")}`,
      whatHappens: withoutWork(),
      whatToDo: correctTab({ tab: "Crew" }),
    },
    {
      ...entry(
        [
          {
            ...{ row: 9, column: "Takes", found: "about 80", code: "cell-read-as" },
            readAs: { code: "count", count: 80 },
          },
        ],
        null,
      ),
      isReading: true,
    },
  ],
  tally: tallySentence({ used: 64, leftOut: 3, notBatches: 0, heading: 3, blank: 0 }),
};

function guess(
  column: number,
  header: string,
  {
    samples = [],
    ...more
  }: Partial<Omit<ColumnGuess, "samples">> & { samples?: readonly string[] },
): ColumnGuess {
  return {
    ...{ column, header, readAs: null, sure: "not used", others: [], holds: null, ...more },
    samples: samples.map((text) => ({ text, initials: null })),
  };
}

export const columns: ColumnsAnswer = {
  tab: "Records",
  batches: 64,
  columns: [
    guess(0, "Batch", { readAs: "Batch", sure: "sure", samples: ["H26-001", "H26-002"] }),
    guess(1, "Var.", {
      readAs: "Variety",
      sure: "likely",
      others: ["Rootstock"],
      samples: ["Amberlow", "Corvane", "Amberlo"],
    }),
    guess(2, "Grafted", {
      readAs: "Grafted on",
      sure: "guessed",
      others: ["Grafts made"],
      samples: ["2026-07-26", "2026-08-20", "about 24 Aug"],
    }),
    guess(3, "Weather", { holds: "text", samples: ["rain", "sun", "rain"] }),
    guess(4, "", { holds: "text", samples: ["tall", "split bag"] }),
    guess(5, "Takes", { readAs: "Takes", sure: "told", samples: ["88", "68", "75"] }),
    guess(6, "Method", { readAs: "Method", sure: "sure", samples: ["Cleft"] }),
  ],
  essentials: [
    { what: "batch", readAs: ["Batch"] },
    { what: "graftDay", readAs: ["Grafted on"] },
    { what: "takes", readAs: ["Takes"] },
  ],
  choices: [
    "Batch",
    "Variety",
    "Method",
    "Rootstock",
    "Grafted on",
    "Grafts made",
    "Take count day",
    "Takes",
  ],
  lost: [],
  comparable: [
    { header: "Var.", people: false },
    { header: "Done by", people: true },
  ],
  compareBy: "Var.",
  withoutMethod: 3,
  words: {
    ...noWords,
    choices: ["Cocoa cleft graft", "Mango cleft graft"],
    methods: [
      {
        word: "Cleft",
        fits: ["Cocoa cleft graft", "Mango cleft graft"],
        ...{ batches: 12, plants: 1240 },
      },
    ],
    pairs: [
      {
        column: "Variety",
        ...{ rare: { text: "Amberlo", initials: null }, batches: 1, of: "batches" },
        ...{ common: { text: "Amberlow", initials: null }, others: 23 },
      },
    ],
    more: 1,
  },
};

const tables: TablesAnswer = {
  tabs: ["Orders", "Team"],
  tables: [
    {
      ...{ table: "orders", name: "Orders", tab: "Orders", likely: null, lostTab: null },
      ...{ isRead: true, choices: ["Order", "Customer", "Wanted"] },
      columns: [guess(0, "Order", { readAs: "Order", sure: "sure", samples: ["O-1"] })],
    },
    {
      ...{ table: "crew", name: "Crew", tab: null, likely: "Team", lostTab: "Staff" },
      ...{ isRead: true, choices: ["Person", "Hours a day"], columns: [] },
    },
  ],
};

/** The sample's answers that are tables run to hundreds of rows: their last ones are enough to look at. */
function shortFace(face: FaceName): FaceAnswer {
  const { rows, ...answer } = faceOf(face);
  return { ...answer, rows: rows.slice(-4) };
}

/**
 * What stands here for a call, else what the script answers it of the sample nursery: a call that is answered
 * nowhere does not compile.
 */
export const fixedAnswers: Required<Answers> = {
  ...sampleAnswers,
  sidebarFace: ({ face }) => shortFace(face),
  sidebarOpen: () => opened,
  sidebarToday: () => today,
  sidebarAhead: () => ahead,
  sidebarTakes: ({ by }) => ({ ...takes, by: by === "" ? takes.by : by }),
  sidebarLosses: ({ by }) => ({ ...losses, by }),
  sidebarCompareTakes: (request) => ({
    ...compared,
    by: request.by || compared.by,
    evenFor: request.evenFor || compared.evenFor,
    period: request.period,
  }),
  sidebarCheck: () => check,
  sidebarColumns: ({ tab }) => ({ ...columns, tab }),
  sidebarTables: () => tables,
  sidebarSetUp: () => ({
    made: ["Due", "Ready", "Takes"],
    kept: ["Timetable"],
    forgotten: [],
    words: noWords,
    moved: [],
  }),
  sidebarSelect: ({ row: at, column, tab }) => ({ selected: tab ?? `Records!${column}${at}` }),
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
  sidebarLastWrites: () => ({
    writes: [
      {
        ...{ logId: "log-9", task: "Grafting", about: "H26-044", when: "2026-11-24 16:20" },
        ...{ who: "Orrin", state: "written" },
        cells: [
          { where: "Records!N45", header: "Grafted on", value: "2026-11-24" },
          { where: "Records!O45", header: "Grafts made", value: "92" },
        ],
      },
      {
        ...{ logId: "log-8", task: "Take count", about: "H26-031", when: "2026-11-23 08:05" },
        ...{ who: "", state: "taken back" },
        cells: [{ where: "Records!Q32", header: "Take count day", value: "2026-11-23" }],
      },
    ],
    isMore: true,
  }),
  sidebarTakeBack: () => ({
    restored: [{ where: "Records!Q40", header: "Take count day", value: null }],
    asked: [],
  }),
};
