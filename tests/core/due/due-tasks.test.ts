import { describe, expect, it } from "vitest";
import type { Cell } from "../../../src/core/cells/cell";
import { DUE_COLUMNS, type DueQuestion, dueTasks } from "../../../src/core/due/due-tasks";
import { withIsoDays } from "../../support/answers";
import { day } from "../../support/days";
import { reading } from "../records/reading";
import { timetableOf } from "../timetable/typed-timetable";

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

function dueAll(rows: Record<string, Cell>[], asOf: string, daysAhead = 7) {
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
  return dueTasks(question);
}
function due(rows: Record<string, Cell>[], asOf: string, daysAhead = 7) {
  return withIsoDays(DUE_COLUMNS, dueAll(rows, asOf, daysAhead).rows).map(
    ({ step, way: _, ...task }) => ({
      ...task,
      task: step.name,
      caution: step.caution,
    }),
  );
}
const grafted = { Batch: "B1", Place: "Bay 2", "Grafted on": "2026-03-01", "Grafts made": 120 };
const short = (rows: Record<string, Cell>[], asOf: string, daysAhead?: number) =>
  due(rows, asOf, daysAhead).map(
    ({ task, status, daysLate, doOn }) => `${task} ${status} ${daysLate} ${doOn}`,
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
    const [first] = due([grafted], "2026-03-12");
    expect(first).toEqual({
      ...{ doOn: "2026-03-15", task: "First release", batch: "B1", place: "Bay 2", method: "Plum" },
      ...{
        variety: "",
        plants: 120,
        isEstimate: false,
        passing: 120,
        from: "2026-03-11",
        by: "2026-03-19",
        status: "due",
        daysLate: 0,
      },
      // 120 plants at 80 an hour.
      ...{ hours: 1.5, caution: "Blades" },
    });
  });

  it("has no hours where the plants or the rate are not known, and never 0 for them", () => {
    const uncounted = { ...grafted, "Grafts made": "" };
    expect(due([uncounted], "2026-03-12")[0]).toMatchObject({
      ...{ task: "First release", plants: null, hours: null },
    });
    const [, count] = due([grafted], "2026-03-25");
    expect(count).toMatchObject({ task: "Take count", plants: 120, hours: null, caution: "" });
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
    const [first] = due([planned], "2026-03-12");
    expect(first).toMatchObject({
      ...{ task: "First release", doOn: "2026-03-16", from: "2026-03-16", by: "2026-03-16" },
      status: "coming",
    });
  });

  it("counts a later step from the day it can usually be reached, so nothing is late twice", () => {
    // Release was due by 19 March; ready is counted from today, 20 to 45 days on.
    const rows = due([grafted], "2026-05-01", 60);
    const ready = rows.find(({ task }) => task === "Ready");
    expect(ready).toMatchObject({ status: "coming", from: "2026-05-21", by: "2026-06-15" });
    expect(rows.find(({ task }) => task === "First release")).toMatchObject({
      ...{ status: "late", daysLate: 43 },
    });
  });

  it("counts from the recorded day once it is recorded", () => {
    const released = { ...grafted, "First release": "2026-03-20" };
    const ready = due([released], "2026-04-20", 60).find(({ task }) => task === "Ready");
    expect(ready).toMatchObject({ from: "2026-04-09", by: "2026-05-04", status: "due" });
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
    const rows = due(
      [
        batch("coming", "2026-03-10"),
        batch("late 2", "2026-02-24"),
        batch("due b", "2026-03-02", "Bay 2"),
        batch("late 9", "2026-02-17"),
        batch("due a", "2026-03-02", "Bay 1"),
      ],
      "2026-03-16",
    );
    const order = rows
      .filter(({ task }) => task === "First release")
      .map(({ batch: name }) => name);
    expect(order).toEqual(["late 9", "late 2", "due a", "due b", "coming"]);
  });
});
