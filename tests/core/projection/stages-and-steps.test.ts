import { describe, expect, it } from "vitest";
import type { Cell } from "../../../src/core/cells/cell";
import {
  type BatchStages,
  STAGE_COLUMNS,
  stagesOf,
} from "../../../src/core/projection/batch-stages";
import {
  type BatchSteps,
  STEP_COLUMNS as STEP_KINDS,
  stepsOf,
} from "../../../src/core/projection/batch-steps";
import { builtInTimetable } from "../../../src/core/timetable/read-timetable";
import { withIsoDays } from "../../support/answers";
import { day } from "../../support/days";
import { reading } from "../records/reading";
import { STEP_COLUMNS } from "./states";

const AS_OF = day("2026-11-25");
const HEADER = ["Batch", "Variety", "Method", "Place", ...STEP_COLUMNS, "Dispatched", "Closed"];

function row(facts: Record<string, Cell>): Cell[] {
  return HEADER.map((name) => facts[name] ?? "");
}

function question(rows: readonly (readonly Cell[])[], level = 0.8) {
  return {
    records: reading([HEADER, ...rows]),
    timetable: builtInTimetable(),
    asOf: AS_OF,
    level,
  };
}

const stageRows = ({ rows }: BatchStages) => withIsoDays(STAGE_COLUMNS, rows);
const stepRows = ({ rows }: BatchSteps) => withIsoDays(STEP_KINDS, rows);

const LOG_WITH_A_LOST_LINE = [
  ["Day", "Batch", "Step", "Count"],
  ["2026-11-18", "B1", "Grafting", 100],
  ["2026-11-19", "B1", "Sweeping", ""],
];

const stages = (...rows: Record<string, Cell>[]) => stagesOf(question(rows.map(row)));

describe("stagesOf", () => {
  it("tells a batch's last step, its next, and when how many are ready", () => {
    const [only, ...more] = stageRows(
      stages({
        ...{ Batch: "B1", Variety: "Alba", Place: "Bay 2" },
        ...{ "Grafted on": "2026-11-18", "Grafts made": 100 },
      }),
    );
    expect(more).toEqual([]);
    expect(only).toMatchObject({
      ...{ batch: "B1", variety: "Alba", method: "Cocoa cleft graft", place: "Bay 2" },
      ...{ lastStep: "Grafting", doneOn: "2026-11-18", plants: 100, remark: null },
      nextStep: "First release",
    });
    // First release 12 to 18 days after grafting, ready 105 to 122: within the timetable's windows.
    type Day = "nextFrom" | "nextLikely" | "nextBy" | "readyFrom" | "readyLikely" | "readyBy";
    const between = (name: Day, from: string, by: string) => {
      expect(String(only?.[name]) >= from && String(only?.[name]) <= by).toBe(true);
    };
    for (const name of ["nextFrom", "nextLikely", "nextBy"] as const) {
      between(name, "2026-11-30", "2026-12-06");
    }
    for (const name of ["readyFrom", "readyLikely", "readyBy"] as const) {
      between(name, "2027-03-03", "2027-03-20");
    }
    expect(only?.fewestReady).toBeLessThan(only?.likelyReady as number);
    expect(only?.likelyReady).toBeLessThan(only?.mostReady as number);
  });

  it("leaves out batches that are closed, empty or all dispatched", () => {
    const answer = stages(
      { Batch: "open", "Grafts made": 10 },
      { Batch: "closed", "Grafts made": 10, Closed: "yes" },
      { Batch: "failed", "Grafts made": 10, Takes: 0 },
      { Batch: "gone", "Ready plants": 10, Dispatched: 10 },
      { Batch: "closed, of no method", Method: "Kiwi", Closed: "yes" },
    );
    expect(stageRows(answer).map(({ batch }) => batch)).toEqual(["open"]);
  });

  it("remarks on what keeps it from telling more", () => {
    const answer = stages(
      { Batch: "nothing" },
      // Not shown; a name alone is a batch's where fuller rows are named alike.
      { Batch: "gone", Variety: "Alba", Place: "Bay 1", "Grafts made": 10, Closed: "yes" },
      { Batch: "planned", "Grafted on": "2026-12-10" },
      { Batch: "no day", "Grafts made": 10 },
      { Batch: "not counted", "Grafted on": "2026-11-18" },
      { Batch: "late", "Grafted on": "2026-10-01", "Grafts made": 10 },
      { Batch: "stranger", Method: "Kiwi", Variety: "Alba", Place: "Bay 1" },
      { Batch: "done", "Ready on": "2026-11-01", "Ready plants": 10 },
    );
    expect(answer.rows.map(({ batch, remark }) => [batch, remark])).toEqual([
      ["nothing", { code: "no-day-yet" }],
      ["planned", { code: "planned" }],
      ["no day", { code: "no-dates" }],
      ["not counted", { code: "no-plants-counted" }],
      [
        "late",
        // At the latest 18 days after 1 October.
        {
          ...{ code: "next-late", step: "First release" },
          ...{ by: day("2026-10-19"), since: day("2026-10-01") },
        },
      ],
      ["stranger", { code: "no-such-method" }],
      ["done", null],
    ]);
  });

  it("tells what is not known by blanks", () => {
    const [planned, ready, stranger] = stageRows(
      stages(
        { Batch: "planned", "Grafted on": "2026-12-10" },
        { Batch: "ready", "Ready on": "2026-11-01", "Ready plants": 10 },
        { Batch: "stranger", Method: "Kiwi", Variety: "Alba", Place: "Bay 1" },
      ),
    );
    expect(planned).toMatchObject({ lastStep: null, doneOn: null, plants: null });
    expect(planned?.readyFrom).not.toBeNull();
    expect(planned?.fewestReady).toBeNull();
    expect(ready).toMatchObject({
      ...{ nextStep: null, nextFrom: null, nextLikely: null, nextBy: null },
      ...{ readyFrom: "2026-11-01", readyLikely: "2026-11-01", readyBy: "2026-11-01" },
      ...{ fewestReady: 10, likelyReady: 10, mostReady: 10 },
    });
    const { batch, variety, method, place, remark, ...rest } = stranger ?? {};
    expect([batch, variety, method, place]).toEqual(["stranger", "Alba", "Kiwi", "Bay 1"]);
    expect(remark).not.toBeNull();
    expect(new Set(Object.values(rest))).toEqual(new Set([null]));
  });

  it("ends with a remark when rows could not be used, and only then", () => {
    expect(stages({ Batch: "B1", "Grafts made": 10 }).remarks).toEqual([]);
    // Sums are no batches, so nothing is missing without them.
    expect(
      stages({ Batch: "B1", "Grafts made": 10 }, { Batch: "Total", "Grafts made": 10 }).remarks,
    ).toEqual([]);
    const records = reading(LOG_WITH_A_LOST_LINE);
    for (const answer of [stagesOf, stepsOf]) {
      const { rows, remarks } = answer({ ...question([]), records });
      expect(rows.length).toBeGreaterThan(0);
      expect(remarks).toEqual([{ code: "rows-left-out", rows: 1 }]);
    }
  });

  it("gives wider ranges for a higher level", () => {
    const rows = [row({ Batch: "B1", "Grafted on": "2026-11-18", "Grafts made": 100 })];
    const width = (level: number) => {
      const [only] = stageRows(stagesOf(question(rows, level)));
      return [
        day(String(only?.readyBy)) - day(String(only?.readyFrom)),
        (only?.mostReady as number) - (only?.fewestReady as number),
      ] as const;
    };
    expect(width(0.95)[0]).toBeGreaterThan(width(0.5)[0]);
    expect(width(0.95)[1]).toBeGreaterThan(width(0.5)[1]);
  });
});

describe("stepsOf", () => {
  const STEP_NAMES = builtInTimetable().methods[0]?.steps.map(({ name }) => name);

  it("has one row for each batch and step, closed or not, in the method's order", () => {
    const answer = stepsOf(
      question([
        row({ Batch: "B1", "Grafts made": 10 }),
        row({ Batch: "B2", Closed: "yes", "Grafts made": 10 }),
        row({ Batch: "B3", Sown: "2026-10-01" }),
      ]),
    );
    const rows = stepRows(answer);
    for (const batch of ["B1", "B2", "B3"]) {
      expect(rows.filter((row) => row.batch === batch).map(({ step }) => step)).toEqual(STEP_NAMES);
    }
  });

  it("shows what is recorded, and a range only for what is still to come", () => {
    const rows = stepRows(
      stepsOf(
        question([
          row({
            ...{ Batch: "B1", "Grafted on": "2026-10-20", "Grafts made": 100 },
            ...{ "Take count day": "2026-11-20", Takes: 80 },
          }),
        ]),
      ),
    );
    const at = (name: string) => rows.find(({ step }) => step === name);
    expect(at("Grafting")).toEqual({
      ...{ batch: "B1", step: "Grafting", recordedOn: "2026-10-20", recordedCount: 100 },
      ...{ from: null, likely: null, by: null, fewest: null, likelyCount: null, most: null },
    });
    // Passed without a record: nothing recorded, and not to come.
    expect(at("First release")).toMatchObject({ recordedOn: null, from: null });
    expect(at("First flush")).toMatchObject({ fewest: null, likelyCount: null, most: null });
    expect(at("First flush")?.from).not.toBeNull();
    expect(at("Ready")?.likely).not.toBeNull();
    expect(at("Ready")?.likelyCount).toBeGreaterThan(0);
    expect(at("Ready")?.most).toBeLessThanOrEqual(80);
  });

  it("agrees with the stages on the days and plants when ready", () => {
    const asked = question([row({ Batch: "B1", Sown: "2026-09-01", "Seeds sown": 300 })]);
    const [stage] = stageRows(stagesOf(asked));
    const ready = stepRows(stepsOf(asked)).find(({ step }) => step === "Ready");
    expect([ready?.from, ready?.likely, ready?.by]).toEqual([
      ...[stage?.readyFrom, stage?.readyLikely, stage?.readyBy],
    ]);
    expect([ready?.fewest, ready?.likelyCount, ready?.most]).toEqual([
      ...[stage?.fewestReady, stage?.likelyReady, stage?.mostReady],
    ]);
  });

  it("tells of closed batches what was recorded only", () => {
    const rows = stepRows(
      stepsOf(question([row({ Batch: "B1", "Grafted on": "2026-10-20", Closed: "yes" })])),
    );
    expect(rows.find(({ step }) => step === "Grafting")?.recordedOn).toBe("2026-10-20");
    expect(rows.every(({ from, fewest }) => from === null && fewest === null)).toBe(true);
  });
});

describe("a table without columns for some steps", () => {
  const records = reading([
    ["Batch", "Grafted on", "Grafts made"],
    ["B1", "2026-10-20", 100],
  ]);
  const asked = { records, timetable: builtInTimetable(), asOf: AS_OF, level: 0.8 };

  it("is not told that a step is late that it could never record", () => {
    // 36 days after grafting the release (by 18), buds (14 + 21) and takes (by 35) are past, and the
    // flush (14 + 21 to 14 + 35) has begun.
    const [only] = stageRows(stagesOf(asked));
    expect(only?.remark?.code).not.toBe("next-late");
    expect(only?.nextStep).toBe("First flush");
  });
});
