import { describe, expect, it } from "vitest";
import type { Cell } from "../../src/core/cells/cell";
import { InputError } from "../../src/core/faults/input-error";
import {
  dayArgument,
  isMissing,
  levelArgument,
  textArgument,
  wholeNumberArgument,
} from "../../src/door/arguments";
import { openDoor } from "../../src/door/door";
import { day, iso } from "../support/days";
import { faultOf } from "../support/fault-of";
import { dateCell, hostIn } from "../support/host";

const notReady = (shown: string | null) => ({
  code: "not-ready-yet",
  row: null,
  column: null,
  shown,
});

describe("a missing argument", () => {
  it.each([[undefined], [null], [""], [[[""]]], [[["", null], [undefined]]], [[]]])(
    "is %j",
    (value) => {
      expect(isMissing(value)).toBe(true);
    },
  );

  it.each([[0], [false], [" "], [[["", 0]]], ["#N/A"]])("is not %j", (value) => {
    expect(isMissing(value)).toBe(false);
  });
});

describe("a day asked for", () => {
  it.each([
    [{ day: day("2026-09-03") }, "2026-09-03"],
    ["2026-09-03", "2026-09-03"],
    ["3 Sep 2026", "2026-09-03"],
    ["13/9/2026", "2026-09-13"],
    [46268, "2026-09-03"],
  ])("may be %j", (cell, expected) => {
    expect(iso(dayArgument("asOf", cell, () => null))).toBe(expected);
  });

  it("follows the locale's order", () => {
    expect(iso(dayArgument("asOf", "3/9/2026", () => "day-first"))).toBe("2026-09-03");
    expect(iso(dayArgument("asOf", "3/9/2026", () => "month-first"))).toBe("2026-03-09");
  });

  it.each([
    ["", { code: "argument-missing", needs: "day" }],
    ["  ", { code: "argument-missing", needs: "day" }],
    ...["soon", "3/9/2026", "3 Sep", 7, true].map(
      (found) => [found, { code: "argument-unreadable", wanted: "day", found }] as const,
    ),
    ["#REF!", notReady("#REF!")],
    ["Loading...", notReady(null)],
  ] as readonly (readonly [Cell, object])[])("can't be %j", (cell, fault) => {
    expect(faultOf(() => dayArgument("asOf", cell, () => null))).toEqual({
      argument: "asOf",
      ...fault,
    });
  });
});

describe("a level asked for", () => {
  it("is the usual one where it is left out", () => {
    expect(levelArgument("level", "", 0.8)).toBe(0.8);
    expect(levelArgument("level", 0.95, 0.8)).toBe(0.95);
  });

  it.each([0, 1, 3, -0.2, 80, "high", true, { day: day("2026-09-03") }])("can't be %j", (cell) => {
    expect(faultOf(() => levelArgument("level", cell, 0.8))).toEqual({
      code: "level-out-of-range",
      argument: "level",
      found: cell,
    });
  });

  // The sentence offers "80%", so the text must do where a cell is formatted as text.
  it("may be a text of per cent", () => {
    expect(levelArgument("level", "80%", 0.95)).toBe(0.8);
  });

  it("is not ready while its cell is not", () => {
    for (const [cell, shown] of [
      ["Loading...", null],
      ["#N/A", "#N/A"],
    ] as const) {
      expect(faultOf(() => levelArgument("level", cell, 0.8))).toEqual({
        argument: "level",
        ...notReady(shown),
      });
    }
  });
});

describe("a whole number asked for", () => {
  it("is the usual one where it is left out", () => {
    expect(wholeNumberArgument("daysAhead", "", 7)).toBe(7);
    expect(wholeNumberArgument("daysAhead", 0, 7)).toBe(0);
  });

  it.each([-1, 2.5, "many", false])("can't be %j", (cell) => {
    expect(faultOf(() => wholeNumberArgument("daysAhead", cell, 7))).toEqual({
      code: "argument-unreadable",
      argument: "daysAhead",
      wanted: "number",
      found: cell,
    });
  });
});

describe("a text asked for", () => {
  it("is the text without its ends", () => {
    expect(textArgument("by", " Variety ")).toBe("Variety");
  });

  it.each([
    ["", { code: "argument-missing", needs: "name" }],
    [3, { code: "argument-unreadable", wanted: "text", found: 3 }],
    ["#N/A", notReady("#N/A")],
  ])("can't be %j", (cell, fault) => {
    expect(faultOf(() => textArgument("by", cell))).toEqual({ argument: "by", ...fault });
  });
});

describe("the door", () => {
  const RECORDS = [
    ["Batch", "Grafted on"],
    ["B1", dateCell("Etc/UTC", "2026-09-03")],
  ];
  const read = (columns: unknown, records: unknown) => {
    const door = openDoor(hostIn("Etc/UTC"));
    const timetable = door.timetable(undefined);
    return door.records(records, { timetable, asOf: null, columns });
  };

  it("takes the built-in timetable where none is given", () => {
    const door = openDoor(hostIn("Etc/UTC"));
    for (const nothing of [
      undefined,
      "",
      [[""]],
      [
        ["", ""],
        ["", ""],
      ],
    ]) {
      expect(door.timetable(nothing).methods[0]?.name).toBe("Cocoa cleft graft");
    }
  });

  it("refuses a timetable with a fault, by the first one", () => {
    const door = openDoor(hostIn("Etc/UTC"));
    const broken = [
      ["Step", "After", "Usual day"],
      ["Ready", "Sowing", 3],
    ];
    expect(faultOf(() => door.timetable(broken))).toMatchObject({
      code: "timetable-unusable",
      more: 0,
      fault: { code: "no-such-step", row: 2, column: "after", after: "Sowing" },
    });
  });

  it.each(["Loading...", "#REF!"])("refuses a timetable in which a cell reads %s", (shown) => {
    const door = openDoor(hostIn("Etc/UTC"));
    const header = ["Method", "Step", "After", "Usual day", "Counted"];
    const steps = (rows: string[][]) => [header, ["Plum", "Sowing", "", "", ""], ...rows];
    for (const rows of [
      [["Plum", shown, "Sowing", "30", ""]],
      [[shown, "Ready", "", "", ""]],
      [["Plum", "Ready", "Sowing", shown, ""]],
      [["Plum", "Ready", "Sowing", "30", shown]],
    ]) {
      expect(() => door.timetable(steps(rows))).toThrow(InputError);
    }
  });

  it("needs records", () => {
    for (const nothing of [undefined, "", [[""]]]) {
      expect(faultOf(() => read(undefined, nothing))).toEqual({
        code: "argument-missing",
        argument: "records",
        needs: "table",
      });
    }
  });

  it("takes the columns argument in rows of our name and the sheet's header, blanks between", () => {
    const table = [
      ["Ref", "Batch", "Grafted on"],
      ["B1", "wrong", ""],
    ];
    const told = [
      ["", ""],
      ["Batch", "Ref"],
      ["", null],
    ];
    expect(read(told, table).batches[0]?.name).toBe("B1");
  });

  it.each([
    [[["Batch"]], "Batch", ""],
    [[["Batch", 3]], "Batch", 3],
    [[[3, "Ref"]], 3, "Ref"],
    ["Loading...", "Loading...", ""],
  ])("refuses the columns %j", (columns, name, header) => {
    expect(faultOf(() => read(columns, RECORDS))).toEqual({
      code: "columns-unreadable",
      name,
      header,
    });
  });
});
