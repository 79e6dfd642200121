/* Longer than most: a list of every function with its parameters, its columns and a call. */
import { describe, expect, it } from "vitest";
import { registry } from "../../src/functions/registry";
import * as batch from "../../src/sentences/made/batch-columns";
import * as check from "../../src/sentences/made/check-columns";
import * as germination from "../../src/sentences/made/germination-columns";
import * as take from "../../src/sentences/made/take-columns";
import { ask, askRows } from "../support/ask";
import { plainHeader } from "../support/plain-header";

const RECORDS = [
  ["Batch", "Variety", "Grafted on", "Grafts made", "Takes"],
  ["B1", "Alba", "2026-11-01", 100, 80],
];
const AS_OF = "2026-11-25";

const BATCH_HEADERS = { ...batch };
const ofBatches = (...keys: readonly (keyof typeof batch)[]) =>
  keys.map((key) => BATCH_HEADERS[key]()).join(" · ");

/** The functions of this stage as the contract writes them: arguments, then the answer's columns. */
const CONTRACT = {
  TIMETABLE: {
    parameters: "[method]",
    ask: [],
    columns:
      "Method · Step · After · From day · Usual day · By day · Counted · Kept of 100 · Per person-hour · Needs · Caution · Source · Kind",
  },
  BATCH_STAGES: {
    parameters: "records, timetable, asOf, [level], [columns]",
    ask: [RECORDS, "", AS_OF],
    columns: ofBatches(
      "batch",
      "variety",
      "method",
      "place",
      "lastStep",
      "doneOn",
      "plants",
      "nextStep",
      "nextFrom",
      "nextLikely",
      "nextBy",
      "readyFrom",
      "readyLikely",
      "readyBy",
      "fewestReady",
      "likelyReady",
      "mostReady",
      "remark",
    ),
  },
  BATCH_STEPS: {
    parameters: "records, timetable, asOf, [level], [columns]",
    ask: [RECORDS, "", AS_OF],
    columns: ofBatches(
      "batch",
      "step",
      "recordedOn",
      "recordedCount",
      "from",
      "likely",
      "by",
      "fewest",
      "likelyCount",
      "most",
    ),
  },
  BATCH_DUE: {
    parameters: "records, timetable, asOf, [daysAhead], [columns]",
    ask: [RECORDS, "", AS_OF, 60],
    columns: ofBatches(
      "doOn",
      "task",
      "batch",
      "place",
      "plants",
      "from",
      "by",
      "status",
      "daysLate",
      "hours",
      "caution",
    ),
  },
  BATCH_READY: {
    parameters: "records, timetable, asOf, [level], [columns]",
    ask: [RECORDS, "", AS_OF],
    columns: ofBatches("month", "variety", "batches", "fewest", "likely", "most"),
  },
  BATCH_LOOKBACK: {
    parameters: "records, timetable, asOf, daysBefore, [level], [columns]",
    ask: [RECORDS, "", AS_OF, 10],
    columns: ofBatches(
      "batch",
      "readyFrom",
      "readyBy",
      "wasReady",
      "fewest",
      "most",
      "were",
      "dayHeld",
      "countHeld",
    ),
  },
  BATCH_BALANCE: {
    parameters: "records, [columns], [timetable]",
    ask: [RECORDS],
    columns: ofBatches(
      "batch",
      "started",
      "culled",
      "given",
      "dispatched",
      "shouldStand",
      "lastCount",
      "countedOn",
      "unexplained",
      "remarks",
    ),
  },
  GERMINATION_SUMMARY: {
    parameters: "days, counts, sown",
    ask: [[[4], [7]], [[10], [30]], 50],
    columns: [germination.measure(), germination.value(), germination.unit()].join(" · "),
  },
  WORK_NEEDS: {
    parameters: "records, timetable, asOf, [days], [columns]",
    ask: [
      [
        ["Batch", "Sown", "Germinated"],
        ["B1", "2026-09-01", 80],
      ],
      "",
      AS_OF,
    ],
    columns: "Item · Amount · Unit · First needed · For",
  },
  WORK_PLAN: {
    parameters: "records, timetable, crew, asOf, [days], [closedDays], [columns]",
    ask: [
      RECORDS,
      "",
      [
        ["Person", "Hours a day"],
        ["Ana", 6],
      ],
      AS_OF,
      60,
    ],
    columns: "Day · Task · Batch · Place · Plants · Hours · Person · By · Remark",
  },
  PLACE_LOAD: {
    parameters: "records, timetable, places, asOf, [columns]",
    ask: [
      RECORDS,
      "",
      [
        ["Place", "Holds"],
        ["Bay 1", 60],
      ],
      AS_OF,
    ],
    columns: "Place · Week · Plants · Holds · Over by",
  },
  BATCH_COST: {
    parameters: "records, timetable, prices, asOf, [columns]",
    ask: [
      RECORDS,
      "",
      [
        ["Item", "Price"],
        ["scion", 0.5],
      ],
      AS_OF,
    ],
    columns: "Batch · Materials · Hours · Cost · Cost per ready plant",
  },
  BATCH_CHECK: {
    parameters: "records, [timetable], [asOf], [columns]",
    ask: [RECORDS],
    columns: [
      check.row(),
      check.column(),
      check.found(),
      check.trouble(),
      check.whatHappens(),
      check.whatToDo(),
      check.rows(),
    ].join(" · "),
  },
  // The contract's arguments with columns behind them, and then three of our own.
  ORDER_PLAN: {
    parameters:
      "wanted, readyBy, timetable, method, [assurance], [records], [columns], [asOf], [variety], [harvest]",
    ask: [100, "2027-09-01", "", "Cocoa cleft graft", 0.8, RECORDS],
    columns: "Step · Do by · Plants · Needs · Remark",
  },
  ORDER_OUTLOOK: {
    parameters: "orders, records, timetable, asOf, [assurance], [columns]",
    ask: [
      [
        ["Order", "Variety", "Wanted", "By"],
        ["O1", "Alba", 50, "2027-06-01"],
      ],
      RECORDS,
      "",
      AS_OF,
    ],
    columns:
      "Order · Variety · Wanted · By · Likely set aside · Chance in full · Short by · Full by · What to do",
  },
  TAKE_SUMMARY: {
    parameters: "records, by, [level], [columns], [timetable]",
    ask: [RECORDS, "Variety"],
    columns: [
      "Variety",
      take.batches(),
      take.grafted(),
      take.taken(),
      take.takeRate(),
      take.from(),
      take.to(),
      take.spread(),
      take.remarks(),
    ].join(" · "),
  },
  TAKE_COMPARED: {
    parameters: "records, by, evenFor, [level], [columns], [timetable]",
    ask: [RECORDS, "Batch", "Variety"],
    columns: [
      "Batch",
      take.grafted(),
      take.taken(),
      take.takeRate(),
      take.expectedRate(),
      take.evenedRate(),
      take.from(),
      take.to(),
      take.reading(),
    ].join(" · "),
  },
  TAKE_TREND: {
    parameters: "records, [period], [by], [columns], [timetable]",
    ask: [RECORDS, "month", "Variety"],
    columns: [
      take.period(),
      "Variety",
      take.grafted(),
      take.taken(),
      take.takeRate(),
      take.usualRate(),
      take.low(),
      take.high(),
      take.reading(),
    ].join(" · "),
  },
  TAKE_REASONS: {
    parameters: "records, [level], [columns], [timetable]",
    ask: [RECORDS],
    columns: [
      take.column(),
      take.groups(),
      take.explained(),
      take.best(),
      take.worst(),
      take.reading(),
    ].join(" · "),
  },
} as const;

describe.each(Object.entries(CONTRACT))("%s", (name, { parameters, ask: args, columns }) => {
  it("takes the arguments of the contract, the columns argument last where it reads records", () => {
    const entry = registry.find((one) => one.name === name);
    const said = entry?.parameters.map((one) => (one.optional ? `[${one.name}]` : one.name));
    expect(said?.join(", ")).toBe(parameters);
  });

  it("answers with exactly the columns of the contract, as the first row", () => {
    const [header, ...rows] = askRows(name, args);
    expect(header?.map(String).map(plainHeader)).toEqual(columns.split(" · ").map(plainHeader));
    expect(rows.length).toBeGreaterThan(0);
    for (const row of rows) {
      expect(row).toHaveLength(columns.split(" · ").length);
      expect(row.some((cell) => cell !== "")).toBe(true);
    }
  });
});

describe("TAKE_RATE and TAKE_RANGE", () => {
  it("take the arguments of the contract and answer without a header", () => {
    const said = (name: string) =>
      registry
        .find((one) => one.name === name)
        ?.parameters.map((one) => (one.optional ? `[${one.name}]` : one.name))
        .join(", ");
    expect(said("TAKE_RATE")).toBe("taken, grafted");
    expect(said("TAKE_RANGE")).toBe("taken, grafted, [level]");
    expect(ask("TAKE_RATE", [80, 100])).toBe(0.8);
    expect(askRows("TAKE_RANGE", [80, 100])).toEqual([[expect.any(Number), expect.any(Number)]]);
  });
});

describe("the registry", () => {
  it("holds the functions of the contract above and no other", () => {
    const inContract = [...Object.keys(CONTRACT), "TAKE_RATE", "TAKE_RANGE"];
    expect(registry.map(({ name }) => name).sort()).toEqual(inContract.sort());
  });

  it.each(registry)("says what $name does, in the words of one sentence", (entry) => {
    // A name like a cell's (three letters and digits) or one that ends in "_" can't be called.
    expect(entry.name).toMatch(/^[A-Z]+(_[A-Z]+)*$/);
    for (const sentence of [entry.sentence, ...entry.parameters.map((one) => one.sentence)]) {
      // In mode nonsense there are no words to look at.
      expect(sentence).toMatch(/^([A-Z].*\.|⟦.*)$/);
      // The formula helper drops line breaks and tags, and "*/" would end the comment.
      expect(sentence).not.toMatch(/[\n<>]|\*\//);
    }
    expect(entry.example.startsWith(`=${entry.name}(`)).toBe(true);
    const order = entry.parameters.map((one) => one.optional);
    expect(order).toEqual([...order].sort());
  });
});
