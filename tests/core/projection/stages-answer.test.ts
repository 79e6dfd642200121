import { describe, expect, it } from "vitest";
import type { Cell } from "../../../src/core/cells/cell";
import { stagesAnswer } from "../../../src/core/projection/stages-answer";
import { stepsAnswer } from "../../../src/core/projection/steps-answer";
import { builtInTimetable } from "../../../src/core/timetable/read-timetable";
import { rowsByName } from "../../support/answers";
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

const LOG_WITH_A_LOST_LINE = [
  ["Day", "Batch", "Step", "Count"],
  ["2026-11-18", "B1", "Grafting", 100],
  ["2026-11-19", "B1", "Sweeping", ""],
];

const stages = (...rows: Record<string, Cell>[]) => stagesAnswer(question(rows.map(row)));

describe("stagesAnswer", () => {
  it("tells a batch's last step, its next, and when how many are ready", () => {
    const [only, ...more] = rowsByName(
      stages({
        ...{ Batch: "B1", Variety: "Alba", Place: "Bay 2" },
        ...{ "Grafted on": "2026-11-18", "Grafts made": 100 },
      }),
    );
    expect(more).toEqual([]);
    expect(only).toMatchObject({
      ...{ Batch: "B1", Variety: "Alba", Method: "Cocoa cleft graft", Place: "Bay 2" },
      ...{ "Last step": "Grafting", "Done on": "2026-11-18", Plants: 100, Remark: null },
      "Next step": "First release",
    });
    // First release 12 to 18 days after grafting, ready 105 to 122: within the timetable's windows.
    const between = (name: string, from: string, by: string) => {
      expect(String(only?.[name]) >= from && String(only?.[name]) <= by).toBe(true);
    };
    for (const name of ["Next from", "Next likely", "Next by"]) {
      between(name, "2026-11-30", "2026-12-06");
    }
    for (const name of ["Ready from", "Ready likely", "Ready by"]) {
      between(name, "2027-03-03", "2027-03-20");
    }
    expect(only?.["Fewest ready"]).toBeLessThan(only?.["Likely ready"] as number);
    expect(only?.["Likely ready"]).toBeLessThan(only?.["Most ready"] as number);
  });

  it("leaves out batches that are closed, empty or all dispatched", () => {
    const answer = stages(
      { Batch: "open", "Grafts made": 10 },
      { Batch: "closed", "Grafts made": 10, Closed: "yes" },
      { Batch: "failed", "Grafts made": 10, Takes: 0 },
      { Batch: "gone", "Ready plants": 10, Dispatched: 10 },
      { Batch: "closed, of no method", Method: "Kiwi", Closed: "yes" },
    );
    expect(rowsByName(answer).map(({ Batch }) => Batch)).toEqual(["open"]);
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
    expect(rowsByName(answer).map(({ Batch, Remark }) => [Batch, Remark])).toEqual([
      ["nothing", "No day recorded yet"],
      ["planned", "Planned"],
      ["no day", "No day recorded: no dates can be told"],
      ["not counted", "No plants counted yet"],
      // First release at the latest 18 days after 1 October.
      ["late", "First release was due by 19 Oct 2026; nothing recorded since 1 Oct 2026"],
      ["stranger", "The timetable has no such method"],
      ["done", null],
    ]);
  });

  it("tells what is not known by blanks", () => {
    const [planned, ready, stranger] = rowsByName(
      stages(
        { Batch: "planned", "Grafted on": "2026-12-10" },
        { Batch: "ready", "Ready on": "2026-11-01", "Ready plants": 10 },
        { Batch: "stranger", Method: "Kiwi", Variety: "Alba", Place: "Bay 1" },
      ),
    );
    expect(planned).toMatchObject({ "Last step": null, "Done on": null, Plants: null });
    expect(planned?.["Ready from"]).not.toBeNull();
    expect(planned?.["Fewest ready"]).toBeNull();
    expect(ready).toMatchObject({
      ...{ "Next step": null, "Next from": null, "Next likely": null, "Next by": null },
      ...{ "Ready from": "2026-11-01", "Ready likely": "2026-11-01", "Ready by": "2026-11-01" },
      ...{ "Fewest ready": 10, "Likely ready": 10, "Most ready": 10 },
    });
    const { Batch, Variety, Method, Place, Remark, ...rest } = stranger ?? {};
    expect([Batch, Variety, Method, Place]).toEqual(["stranger", "Alba", "Kiwi", "Bay 1"]);
    expect(Remark).not.toBeNull();
    expect(new Set(Object.values(rest))).toEqual(new Set([null]));
  });

  it("ends with a remark when rows could not be used, and only then", () => {
    expect(stages({ Batch: "B1", "Grafts made": 10 }).remark).toBeNull();
    // Sums are no batches, so nothing is missing without them.
    expect(
      stages({ Batch: "B1", "Grafts made": 10 }, { Batch: "Total", "Grafts made": 10 }).remark,
    ).toBeNull();
    const records = reading(LOG_WITH_A_LOST_LINE);
    for (const answer of [stagesAnswer, stepsAnswer]) {
      const { rows, remark } = answer({ ...question([]), records });
      expect(rows.length).toBeGreaterThan(0);
      expect(remark).toBe("1 row left out: see BATCH_CHECK");
    }
  });

  it("gives wider ranges for a higher level", () => {
    const rows = [row({ Batch: "B1", "Grafted on": "2026-11-18", "Grafts made": 100 })];
    const width = (level: number) => {
      const [only] = rowsByName(stagesAnswer(question(rows, level)));
      return [
        day(String(only?.["Ready by"])) - day(String(only?.["Ready from"])),
        (only?.["Most ready"] as number) - (only?.["Fewest ready"] as number),
      ] as const;
    };
    expect(width(0.95)[0]).toBeGreaterThan(width(0.5)[0]);
    expect(width(0.95)[1]).toBeGreaterThan(width(0.5)[1]);
  });
});

describe("stepsAnswer", () => {
  const STEP_NAMES = builtInTimetable().methods[0]?.steps.map(({ name }) => name);

  it("has one row for each batch and step, closed or not, in the method's order", () => {
    const answer = stepsAnswer(
      question([
        row({ Batch: "B1", "Grafts made": 10 }),
        row({ Batch: "B2", Closed: "yes", "Grafts made": 10 }),
        row({ Batch: "B3", Sown: "2026-10-01" }),
      ]),
    );
    const rows = rowsByName(answer);
    for (const batch of ["B1", "B2", "B3"]) {
      expect(rows.filter(({ Batch }) => Batch === batch).map(({ Step }) => Step)).toEqual(
        STEP_NAMES,
      );
    }
  });

  it("shows what is recorded, and a range only for what is still to come", () => {
    const rows = rowsByName(
      stepsAnswer(
        question([
          row({
            ...{ Batch: "B1", "Grafted on": "2026-10-20", "Grafts made": 100 },
            ...{ "Take count day": "2026-11-20", Takes: 80 },
          }),
        ]),
      ),
    );
    const at = (step: string) => rows.find(({ Step }) => Step === step);
    expect(at("Grafting")).toEqual({
      ...{ Batch: "B1", Step: "Grafting", "Recorded on": "2026-10-20", "Recorded count": 100 },
      ...{ From: null, Likely: null, By: null, Fewest: null, "Likely count": null, Most: null },
    });
    // Passed without a record: nothing recorded, and not to come.
    expect(at("First release")).toMatchObject({ "Recorded on": null, From: null });
    expect(at("First flush")).toMatchObject({ Fewest: null, "Likely count": null, Most: null });
    expect(at("First flush")?.From).not.toBeNull();
    expect(at("Ready")?.Likely).not.toBeNull();
    expect(at("Ready")?.["Likely count"]).toBeGreaterThan(0);
    expect(at("Ready")?.Most).toBeLessThanOrEqual(80);
  });

  it("agrees with the stages on the days and plants when ready", () => {
    const asked = question([row({ Batch: "B1", Sown: "2026-09-01", "Seeds sown": 300 })]);
    const [stage] = rowsByName(stagesAnswer(asked));
    const ready = rowsByName(stepsAnswer(asked)).find(({ Step }) => Step === "Ready");
    expect([ready?.From, ready?.Likely, ready?.By]).toEqual([
      ...[stage?.["Ready from"], stage?.["Ready likely"], stage?.["Ready by"]],
    ]);
    expect([ready?.Fewest, ready?.["Likely count"], ready?.Most]).toEqual([
      ...[stage?.["Fewest ready"], stage?.["Likely ready"], stage?.["Most ready"]],
    ]);
  });

  it("tells of closed batches what was recorded only", () => {
    const rows = rowsByName(
      stepsAnswer(question([row({ Batch: "B1", "Grafted on": "2026-10-20", Closed: "yes" })])),
    );
    expect(rows.find(({ Step }) => Step === "Grafting")?.["Recorded on"]).toBe("2026-10-20");
    expect(rows.every(({ From, Fewest }) => From === null && Fewest === null)).toBe(true);
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
    const [only] = rowsByName(stagesAnswer(asked));
    expect(only?.Remark ?? "").not.toMatch(/was due/);
    expect(only?.["Next step"]).toBe("First flush");
  });
});
