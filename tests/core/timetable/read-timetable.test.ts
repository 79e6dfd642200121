import { describe, expect, it } from "vitest";
import { gridOf } from "../../../src/core/cells/cell";
import { methodFinder } from "../../../src/core/timetable/method-of-batch";
import { readTimetable } from "../../../src/core/timetable/read-timetable";
import { faultOf } from "../../support/fault-of";
import { sheetValues } from "../../support/sheet-values";
import { SMALL, timetableOf } from "./typed-timetable";

describe("readTimetable", () => {
  it("reads every column", () => {
    const { timetable, faults } = timetableOf(SMALL);
    expect(faults).toEqual([]);
    expect(timetable.methods).toEqual([
      {
        name: "Plum budding",
        ahead: [],
        rounds: [],
        ready: 2,
        steps: [
          {
            name: "Sowing",
            key: "sowing",
            after: null,
            from: 0,
            usual: 0,
            by: 0,
            counted: true,
            kept: null,
            perPersonHour: 200,
            caution: "Wash hands after handling treated seed; read the label.",
            source: "made up",
            kind: "job",
            needs: [
              { item: "bag", amount: 1, unit: "" },
              { item: "potting mix", amount: 1.4, unit: "l" },
            ],
          },
          {
            name: "Budding",
            key: "grafting",
            after: 0,
            from: 80,
            usual: 90,
            by: 100,
            counted: true,
            kept: 0.8,
            perPersonHour: 25,
            caution: "Blades",
            source: "made up",
            kind: "job",
            needs: [{ item: "strip", amount: 38.1, unit: "cm" }],
          },
          {
            name: "Ready",
            key: "ready",
            after: 1,
            from: 20,
            usual: 30,
            by: 45,
            counted: true,
            kept: 0.9,
            perPersonHour: null,
            caution:
              "Moving plants may spread pests and need a plant-health certificate: follow the rules of the place they leave and the place they go to.",
            kind: "count",
            source: "made up",
            needs: [],
          },
        ],
      },
    ]);
  });

  it("gives the same method from its rows in every order", () => {
    const [header, ...rows] = sheetValues(SMALL) as [string[], ...string[][]];
    const orders = [
      [0, 1, 2],
      [0, 2, 1],
      [1, 0, 2],
      [1, 2, 0],
      [2, 0, 1],
      [2, 1, 0],
    ];
    for (const order of orders) {
      const shuffled = readTimetable(gridOf([header, ...order.map((at) => rows[at] as string[])]));
      expect(shuffled).toEqual(timetableOf(SMALL));
    }
  });

  it("takes its columns in any order below title lines", () => {
    const turned = sheetValues(SMALL).map((row) => [...row].reverse());
    expect(readTimetable(gridOf([["Our steps"], [], ["2026"], ...turned])).timetable).toEqual(
      timetableOf(SMALL).timetable,
    );
  });

  it("takes a method's name from its first row, whatever its capitals below", () => {
    const text = `
      Method | Step   | After  | Usual day
      Plum   | Sowing |        |
             | Budding | Sowing | 90
      PLUM   | Ready  | Budding | 30
      Pear   | Sowing |        |
             | Ready  | Sowing | 200`;
    const { timetable, faults } = timetableOf(text);
    expect(faults).toEqual([]);
    expect(timetable.methods.map(({ name, steps }) => [name, steps.length])).toEqual([
      ["Plum", 3],
      ["Pear", 2],
    ]);
  });

  it("does without a Method column", () => {
    const { timetable } = timetableOf("Step|After|Usual day\nSowing||\nReady|Sowing|200");
    expect(timetable.methods.map(({ name }) => name)).toEqual(["This nursery's method"]);
  });

  it.each([
    ["7||14", [7, 11, 14]],
    ["|10|", [10, 10, 10]],
    ["7|10|", [7, 10, 10]],
    ["|10|14", [10, 10, 14]],
    ["7||", [7, 7, 7]],
    ["||14", [14, 14, 14]],
    ["0|0|0", [0, 0, 0]],
  ])("fills the days %s", (days, expected) => {
    const text = `Step|After|From day|Usual day|By day\nSowing||||\nReady|Sowing|${days}`;
    const { timetable, faults } = timetableOf(text);
    expect(faults).toEqual([]);
    const ready = timetable.methods[0]?.steps[1];
    expect([ready?.from, ready?.usual, ready?.by]).toEqual(expected);
  });

  it.each([
    ["yes", true],
    ["x", true],
    ["1", true],
    ["no", false],
    ["", false],
    ["0", false],
  ])("reads %j under Counted as %s", (cell, counted) => {
    const { timetable } = timetableOf(`Step|After|Counted\nSowing||${cell}`);
    expect(timetable.methods[0]?.steps[0]?.counted).toBe(counted);
  });

  it("reads a tick box under Counted", () => {
    const { timetable } = readTimetable(
      gridOf([
        ["Step", "After", "Counted", "Usual day"],
        ["Sowing", "", true, ""],
        ["Ready", "Sowing", false, 9],
      ]),
    );
    expect(timetable.methods[0]?.steps.map(({ counted }) => counted)).toEqual([true, false]);
  });

  it("keeps no share at a step that is not counted", () => {
    const { timetable } = timetableOf(
      "Step|After|Usual day|Counted|Kept of 100\nSowing|||yes|\nReady|Sowing|9||80",
    );
    expect(timetable.methods[0]?.steps[1]?.kept).toBeNull();
  });

  it("takes the step known as ready for the last word, or else the last step", () => {
    const named = timetableOf(
      "Step|After|Usual day\nSowing||\nFit for sale|Sowing|9\nSweeping|Fit for sale|9",
    );
    expect(named.timetable.methods[0]?.ready).toBe(1);
    const unnamed = timetableOf("Step|After|Usual day\nSowing||\nPotting|Sowing|9");
    expect(unnamed.timetable.methods[0]?.ready).toBe(1);
  });

  it("puts steps of one day in the order of After, then of the table", () => {
    const { timetable } = timetableOf(
      "Step|After|Usual day\nZinc|Wash|0\nWash|Sowing|0\nAsh|Sowing|0\nSowing||",
    );
    const [method] = timetable.methods;
    expect(method?.steps.map(({ name }) => name)).toEqual(["Sowing", "Wash", "Ash", "Zinc"]);
  });

  it("may hold nothing below its header", () => {
    expect(timetableOf("Step|After")).toEqual({ timetable: { methods: [] }, faults: [] });
  });

  it.each(["Bay|Plants", "#REF!|", "|", "Step|Usual day"])("finds no header in %s", (text) => {
    expect(faultOf(() => timetableOf(text))).toMatchObject({ code: "no-header-row" });
  });

  it("does not change the cells it is given", () => {
    const rows = sheetValues(SMALL);
    readTimetable(gridOf(Object.freeze(rows.map((row) => Object.freeze(row))) as string[][]));
    expect(rows).toEqual(sheetValues(SMALL));
  });
});

describe("the method of a name", () => {
  const { timetable } = timetableOf(`${SMALL}\nPêche | Sowing`);

  it("is found whatever the capitals, spaces and accents", () => {
    const named = (method: string) => methodFinder(timetable)({ method })?.name;
    expect(named(" plum  BUDDING")).toBe("Plum budding");
    expect(named("peche")).toBe("Pêche");
    expect(named("Plum grafting 3")).toBeUndefined();
  });

  it("is the first where a batch names none", () => {
    const methodOf = methodFinder(timetable);
    expect(methodOf({ method: "" })?.name).toBe("Plum budding");
    expect(methodOf({ method: "pêche" })?.name).toBe("Pêche");
    expect(methodOf({ method: "Pear" })).toBeNull();
    expect(methodFinder({ methods: [] })({ method: "" })).toBeNull();
  });
});
