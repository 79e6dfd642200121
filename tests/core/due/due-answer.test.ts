import { describe, expect, it } from "vitest";
import type { Cell } from "../../../src/core/cells/cell";
import { type DueQuestion, dueAnswer } from "../../../src/core/due/due-answer";
import { rowsByName } from "../../support/answers";
import { day } from "../../support/days";
import { reading } from "../records/reading";
import { timetableOf } from "../timetable/timetable-rows";

// Release 10/14/18 after grafting, count 28/30/35 after grafting, ready 20/30/45 after release.
const { timetable } = timetableOf(`
  Method | Step          | After         | From day | Usual day | By day | Counted | Kept of 100 | Per person-hour | Caution
  Plum   | Grafting      |               |          |           |        | yes     |             | 30 |
  Plum   | First release | Grafting      | 10       | 14        | 18     |         |             | 80 | Blades
  Plum   | Take count    | Grafting      | 28       | 30        | 35     | yes     | 80          |    |
  Plum   | Ready         | First release | 20       | 30        | 45     | yes     | 90          | 40 |`);
const HEADER = [
  ...["Batch", "Place", "Grafted on", "Grafts made", "First release", "Take count day", "Takes"],
  ...["Ready on", "Ready plants", "Closed"],
];

function due(rows: Record<string, Cell>[], asOf: string, daysAhead = 7) {
  const table = rows.map((facts) => HEADER.map((name) => facts[name] ?? ""));
  const question: DueQuestion = {
    records: reading([HEADER, ...table], {
      stepNames: timetable.methods.flatMap(({ steps }) => steps.map(({ name }) => name)),
      asOf: day(asOf),
    }),
    timetable,
    asOf: day(asOf),
    daysAhead,
  };
  return dueAnswer(question);
}
const grafted = { Batch: "B1", Place: "Bay 2", "Grafted on": "2026-03-01", "Grafts made": 120 };
const short = (rows: Record<string, Cell>[], asOf: string, daysAhead?: number) =>
  rowsByName(due(rows, asOf, daysAhead)).map(
    ({ Task, Status, "Days late": late, "Do on": doOn }) => `${Task} ${Status} ${late} ${doOn}`,
  );

describe("a task's window", () => {
  it.each([
    // From 11 March, usual 15, by 19; seven days ahead.
    ["2026-03-03", []],
    ["2026-03-04", ["First release coming 0 2026-03-15"]],
    ["2026-03-10", ["First release coming 0 2026-03-15"]],
    ["2026-03-11", ["First release due 0 2026-03-15"]],
    ["2026-03-15", ["First release due 0 2026-03-15"]],
    ["2026-03-17", ["First release due 0 2026-03-17"]],
    ["2026-03-19", ["First release due 0 2026-03-19"]],
    ["2026-03-20", ["First release late 1 2026-03-20"]],
  ])("on %s gives %j", (asOf, expected) => {
    expect(short([grafted], asOf).filter((line) => line.startsWith("First release"))).toEqual(
      expected,
    );
  });

  it("is told with the batch, its place, its plants, hours and caution", () => {
    const [first] = rowsByName(due([grafted], "2026-03-12"));
    expect(first).toEqual({
      ...{ "Do on": "2026-03-15", Task: "First release", Batch: "B1", Place: "Bay 2" },
      ...{ Plants: 120, From: "2026-03-11", By: "2026-03-19", Status: "due", "Days late": 0 },
      // 120 plants at 80 an hour.
      ...{ Hours: 1.5, Caution: "Blades" },
    });
  });

  it("has no hours where the plants or the rate are not known, and never 0 for them", () => {
    const uncounted = { ...grafted, "Grafts made": "" };
    expect(rowsByName(due([uncounted], "2026-03-12"))[0]).toMatchObject({
      ...{ Task: "First release", Plants: null, Hours: null },
    });
    const [, count] = rowsByName(due([grafted], "2026-03-25"));
    expect(count).toMatchObject({ Task: "Take count", Plants: 120, Hours: null, Caution: null });
  });

  it("looks as far ahead as it is asked to, from the as-of day on with 0", () => {
    expect(short([grafted], "2026-03-04", 6)).toEqual([]);
    expect(short([grafted], "2026-03-11", 0)).toEqual(["First release due 0 2026-03-15"]);
    // Take count from 29 March: 28 days ahead of 1 March.
    expect(short([grafted], "2026-03-01", 27)).toHaveLength(1);
    expect(short([grafted], "2026-03-01", 28)).toHaveLength(2);
  });

  it("is the planned day where a day is written down that is still to come", () => {
    const planned = { ...grafted, "First release": "2026-03-16" };
    const [first] = rowsByName(due([planned], "2026-03-12"));
    expect(first).toMatchObject({
      ...{ Task: "First release", "Do on": "2026-03-16", From: "2026-03-16", By: "2026-03-16" },
      Status: "coming",
    });
  });

  it("counts a later step from the day it can usually be reached, so nothing is late twice", () => {
    // Release was due by 19 March; ready is counted from today, 20 to 45 days on.
    const rows = rowsByName(due([grafted], "2026-05-01", 60));
    const ready = rows.find(({ Task }) => Task === "Ready");
    expect(ready).toMatchObject({ Status: "coming", From: "2026-05-21", By: "2026-06-15" });
    expect(rows.find(({ Task }) => Task === "First release")).toMatchObject({
      ...{ Status: "late", "Days late": 43 },
    });
  });

  it("counts from the recorded day once it is recorded", () => {
    const released = { ...grafted, "First release": "2026-03-20" };
    const ready = rowsByName(due([released], "2026-04-20", 60)).find(
      ({ Task }) => Task === "Ready",
    );
    expect(ready).toMatchObject({ From: "2026-04-09", By: "2026-05-04", Status: "due" });
  });
});

describe("the due list", () => {
  it("leaves out steps that are done or passed, closed batches, and those with no day", () => {
    const done = { ...grafted, "Take count day": "2026-03-29", Takes: 90 };
    // Release usually lies on 15 March, ready 30 days after it.
    expect(short([done], "2026-03-30", 60)).toEqual(["Ready coming 0 2026-04-14"]);
    expect(short([{ ...grafted, Closed: "yes" }], "2026-03-30", 60)).toEqual([]);
    expect(short([{ ...grafted, Takes: 0 }], "2026-03-30", 60)).toEqual([]);
    expect(short([{ Batch: "B1", "Grafts made": 10 }], "2026-03-30", 60)).toEqual([]);
    expect(short([{ ...grafted, "Ready on": "2026-03-29" }], "2026-03-30", 60)).toEqual([]);
  });

  it("is soonest first, late before due before coming on one day, the latest first", () => {
    const batch = (name: string, day_: string, place = "") => ({
      ...{ Batch: name, Place: place, "Grafted on": day_, "Grafts made": 10 },
    });
    const rows = rowsByName(
      due(
        [
          batch("coming", "2026-03-10"),
          batch("late 2", "2026-02-24"),
          batch("due b", "2026-03-02", "Bay 2"),
          batch("late 9", "2026-02-17"),
          batch("due a", "2026-03-02", "Bay 1"),
        ],
        "2026-03-16",
      ),
    );
    const order = rows.filter(({ Task }) => Task === "First release").map(({ Batch }) => Batch);
    expect(order).toEqual(["late 9", "late 2", "due a", "due b", "coming"]);
  });

  it("ends with a remark when rows of the records could not be used", () => {
    expect(due([grafted], "2026-03-12").remark).toBeNull();
    // Sums are no batches, so nothing is missing without them.
    expect(due([grafted, { Batch: "Total", Takes: 5 }], "2026-03-12").remark).toBeNull();
    const log = [
      ["Day", "Batch", "Step", "Count"],
      ["2026-03-01", "B1", "Grafting", 120],
      ["2026-03-02", "", "Grafting", 30],
      ["2026-03-03", "B1", "Sweeping", ""],
    ];
    const { rows, remark } = dueAnswer({
      ...{ timetable, asOf: day("2026-03-12"), daysAhead: 7 },
      records: reading(log, { stepNames: [], asOf: day("2026-03-12") }),
    });
    expect([rows.length > 0, remark]).toEqual([true, "2 rows left out: see BATCH_CHECK"]);
  });
});
