import { describe, expect, it } from "vitest";
import type { Cell } from "../../../src/core/cells/cell";
import { careByPlace } from "../../../src/core/due/care-by-place";
import { dueTasks } from "../../../src/core/due/due-tasks";
import type { BatchState } from "../../../src/core/projection";
import { recordedSteps } from "../../../src/core/timetable";
import { day } from "../../support/days";
import { reading } from "../records/reading";
import { timetableOf } from "../timetable/typed-timetable";

const { timetable } = timetableOf(`
  Method | Step         | After    | From day | Usual day | By day | Counted | Every days | Until
  Plum   | Sowing       |          |          |           |        | yes     |            |
  Plum   | Grafting     | Sowing   | 80       | 90        | 100    | yes     |            |
  Plum   | Ready        | Grafting | 100      | 110       | 120    | yes     |            |
  Plum   | Defoliating  | Grafting | -10      | -9        | -8     |         |            |
  Plum   | Weeding      | Sowing   |          |           |        |         | 14         | Ready
  Plum   | Stock shoots | Grafting | 14       |           | 90     |         | 7          |`);
const SOWN = { Batch: "B1", Place: "Shed A", "Sown on": "2026-01-01", "Seeds sown": 100 };

function due(rows: Record<string, Cell>[], asOf: string, header: readonly string[] = []) {
  const columns = [
    ...["Batch", "Place", "Sown on", "Seeds sown", "Grafted on", "Grafts made", "Ready on"],
    ...["Ready plants", ...header],
  ];
  const table = rows.map((facts) => columns.map((name) => facts[name] ?? ""));
  const records = reading([columns, ...table], {
    stepNames: timetable.methods.flatMap((method) => recordedSteps(method).map(({ name }) => name)),
    asOf: day(asOf),
  });
  return dueTasks({ records, timetable, asOf: day(asOf), daysAhead: 0 });
}
const lines = (...asked: Parameters<typeof due>) =>
  due(...asked).rows.map(
    ({ batch, step, status, daysLate }) => `${batch} ${step.name} ${status} ${daysLate}`,
  );
const care = (...asked: Parameters<typeof due>) =>
  due(...asked).remarks.flatMap((one) =>
    one.code === "care-today"
      ? `${one.places.join(", ")}: ${one.tasks.join(", ")} (${one.batches})`
      : [],
  );

// Grafting is usual on 1 April 2026, 90 days after sowing: Defoliating from 22 to 24 March.
describe("work ahead of a step", () => {
  it.each([
    ["2026-03-21", []],
    ["2026-03-22", ["B1 Grafting due 0", "B1 Defoliating due 0"]],
    ["2026-03-24", ["B1 Defoliating due 0", "B1 Grafting due 0"]],
    ["2026-03-25", ["B1 Grafting due 0"]],
  ])("is counted back from the step's usual day: on %s", (asOf, expected) => {
    const found = lines([SOWN], asOf).filter(
      (line) => asOf !== "2026-03-21" || !/Grafting/.test(line),
    );
    expect([...found].sort()).toEqual([...expected].sort());
  });

  it("is counted back from the day that is planned, and is late before it where it is recorded", () => {
    const planned = { ...SOWN, "Grafted on": "2026-04-10" };
    expect(lines([planned], "2026-04-01")).toContain("B1 Defoliating due 0");
    expect(lines([planned], "2026-03-22")).toEqual([]);
    const other = { ...SOWN, Batch: "B2", "Grafted on": "2026-03-30", Defoliating: "2026-03-20" };
    expect(lines([planned, other], "2026-04-05", ["Defoliating"])).toContain(
      "B1 Defoliating late 3",
    );
  });

  it("is over once it is done, or not to be done, or the step is", () => {
    const column = ["Defoliating"];
    expect(lines([SOWN], "2026-03-22", column)).toContain("B1 Defoliating due 0");
    // The graft can come no sooner: still due, not late.
    expect(lines([SOWN], "2026-04-05", column)).toContain("B1 Defoliating due 0");
    for (const done of ["2026-03-22", "not needed"]) {
      expect(lines([{ ...SOWN, Defoliating: done }], "2026-03-23", column)).toEqual([
        "B1 Grafting due 0",
      ]);
    }
    const grafted = { ...SOWN, "Grafted on": "2026-03-23", "Grafts made": 90 };
    expect(lines([grafted], "2026-03-24", column)).toEqual([]);
  });
});

describe("repeated care", () => {
  it("goes by the last time in any batch of a place, of however many", () => {
    const asOf = day("2026-03-31");
    const [method] = timetable.methods;
    const state = (weeded: string) =>
      ({
        ...{ asOf, method, reached: 0, doneOn: [day("2026-01-01"), null, null] },
        batch: { place: "Shed A", notDone: [], days: [day(weeded)] },
      }) as unknown as BatchState;
    const often = state("2026-03-04");
    // More than a function takes as arguments.
    const states = [...Array<BatchState>(130_000).fill(often), state("2026-03-18")];
    const weeding = (of: readonly BatchState[]) => careByPlace(of, asOf, () => 0);
    expect(weeding([often])).toHaveLength(1);
    expect(weeding(states)).toEqual([]);
  });

  // 16 March 2026 is a Monday, 20528 days after 1 January 1970: (20528 - 4) / 14 = 1466.
  it("is a line a place on its day, and over with it where nobody writes it down", () => {
    const other = { ...SOWN, Batch: "B2" };
    const far = { ...SOWN, Batch: "B3", Place: "Field" };
    const all = [SOWN, other, far];
    expect(care(all, "2026-03-16")).toEqual(["Field, Shed A: Weeding (3)"]);
    for (const asOf of ["2026-03-15", "2026-03-17", "2026-03-23"])
      expect(care(all, asOf)).toEqual([]);
    expect(care(all, "2026-03-30")).toHaveLength(1);
  });

  it("says a caution once on a day, however many lines have such work", () => {
    const asOf = day("2026-03-16");
    const round = { ...{ after: 0, until: null, from: 0, by: 99, every: 14 }, caution: "Label!" };
    const at = (place: string, ...names: string[]) =>
      ({
        ...{ asOf, reached: 0, doneOn: [day("2026-01-01")] },
        batch: { place, notDone: [], days: [] },
        method: { rounds: names.map((name) => ({ ...round, key: name, name })) },
      }) as unknown as BatchState;
    const lines = careByPlace(
      [at("Field", "Spraying", "Feeding"), at("Shed", "Feeding")],
      asOf,
      () => null,
    );
    expect(lines.map(({ places, tasks, cautions }) => [places, tasks, cautions])).toEqual([
      [["Field"], ["Spraying", "Feeding"], ["Label!"]],
      [["Shed"], ["Feeding"], []],
    ]);
  });

  it("begins and ends with its days and steps, and with the plants", () => {
    const grafted = { ...SOWN, "Grafted on": "2026-03-02", "Grafts made": 90 };
    expect(care([grafted], "2026-03-09")).toEqual([]);
    expect(care([grafted], "2026-03-16")).toEqual(["Shed A: Weeding, Stock shoots (1)"]);
    expect(care([grafted], "2026-03-23")).toEqual(["Shed A: Stock shoots (1)"]);
    // 31 May is the 90th day; 1 June is a Monday.
    expect(care([grafted], "2026-06-01")).toEqual([]);
    const ready = { ...grafted, "Ready on": "2026-06-05", "Ready plants": 80 };
    expect(care([ready], "2026-06-08")).toEqual([]);
    expect(care([{ ...grafted, "Grafts made": 0 }], "2026-03-16")).toEqual([]);
  });

  it("is counted from the last time where it is written down, and asked for till the next", () => {
    const weeded = { ...SOWN, Weeding: "2026-03-18" };
    const on = (asOf: string) => care([weeded, { ...SOWN, Batch: "B2" }], asOf, ["Weeding"]);
    expect(on("2026-03-30")).toEqual([]);
    expect(on("2026-03-31")).toEqual([]);
    expect(on("2026-04-01")).toEqual(["Shed A: Weeding (2)"]);
    expect(on("2026-04-14")).toEqual(["Shed A: Weeding (2)"]);
    // Given up writing: its Mondays, 13 and 27 April.
    expect(on("2026-04-15")).toEqual([]);
    expect(on("2026-04-27")).toEqual(["Shed A: Weeding (2)"]);
  });
});
