import { describe, expect, it } from "vitest";
import { InputError } from "../../src/core/input-error";
import {
  dayArgument,
  foundText,
  isMissing,
  levelArgument,
  textArgument,
  wholeNumberArgument,
} from "../../src/door/arguments";
import { openDoor } from "../../src/door/door";
import { day, iso } from "../support/days";
import { dateCell, hostIn } from "../support/host";

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
    expect(iso(dayArgument("asOf", cell, null))).toBe(expected);
  });

  it("follows the locale's order", () => {
    expect(iso(dayArgument("asOf", "3/9/2026", "day-first"))).toBe("2026-09-03");
    expect(iso(dayArgument("asOf", "3/9/2026", "month-first"))).toBe("2026-03-09");
  });

  it.each([
    ["", "argument-missing", "asOf is missing: give a day"],
    ["  ", "argument-missing", "asOf is missing: give a day"],
    ["soon", "argument-unreadable", 'asOf must be a day; found "soon"'],
    ["3/9/2026", "argument-unreadable", 'asOf must be a day; found "3/9/2026"'],
    ["3 Sep", "argument-unreadable", 'asOf must be a day; found "3 Sep"'],
    [7, "argument-unreadable", "asOf must be a day; found 7"],
    [true, "argument-unreadable", "asOf must be a day; found true"],
    ["#REF!", "not-ready-yet", "asOf shows #REF!"],
    ["Loading...", "not-ready-yet", "asOf is still loading"],
  ] as const)("can't be %j", (cell, code, message) => {
    expect(() => dayArgument("asOf", cell, null)).toThrow(new InputError(code, message));
  });
});

describe("a level asked for", () => {
  it("is the usual one where it is left out", () => {
    expect(levelArgument("level", "", 0.8)).toBe(0.8);
    expect(levelArgument("level", 0.95, 0.8)).toBe(0.95);
  });

  it.each([0, 1, 3, -0.2, 80, "high", true, { day: day("2026-09-03") }])("can't be %j", (cell) => {
    expect(() => levelArgument("level", cell, 0.8)).toThrow(
      `level must lie between 0 and 1, such as 0.8 or 80%; found ${foundText(cell)}`,
    );
  });

  // The sentence offers "80%", so the text must do where a cell is formatted as text.
  it("may be a text of per cent", () => {
    expect(levelArgument("level", "80%", 0.95)).toBe(0.8);
  });

  it("is not ready while its cell is not", () => {
    expect(() => levelArgument("level", "Loading...", 0.8)).toThrow("level is still loading");
    expect(() => levelArgument("level", "#N/A", 0.8)).toThrow("level shows #N/A");
  });
});

describe("a whole number asked for", () => {
  it("is the usual one where it is left out", () => {
    expect(wholeNumberArgument("daysAhead", "", 7)).toBe(7);
    expect(wholeNumberArgument("daysAhead", 0, 7)).toBe(0);
  });

  it.each([-1, 2.5, "many", false])("can't be %j", (cell) => {
    expect(() => wholeNumberArgument("daysAhead", cell, 7)).toThrow(
      `daysAhead must be a whole number, 0 or more; found ${foundText(cell)}`,
    );
  });
});

describe("a text asked for", () => {
  it("is the text without its ends", () => {
    expect(textArgument("by", " Variety ")).toBe("Variety");
  });

  it.each([
    ["", "by is missing: give a name"],
    [3, "by must be a text; found 3"],
    ["#N/A", "by shows #N/A"],
  ])("can't be %j", (cell, message) => {
    expect(() => textArgument("by", cell)).toThrow(message);
  });

  it("is cut short in a sentence", () => {
    expect(foundText("x".repeat(61))).toBe(`"${"x".repeat(59)}…"`);
    expect(foundText({ day: day("2026-09-03") })).toBe("2026-09-03");
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

  it("refuses a timetable with a fault, in one sentence", () => {
    const door = openDoor(hostIn("Etc/UTC"));
    const broken = [
      ["Step", "After", "Usual day"],
      ["Ready", "Sowing", 3],
    ];
    expect(() => door.timetable(broken)).toThrow(
      new InputError(
        "timetable-unusable",
        "timetable row 2, After: After names Sowing, which is no step of This nursery's method",
      ),
    );
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
      expect(() => read(undefined, nothing)).toThrow(
        "records is missing: give the range of your table",
      );
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
    [[["Batch"]], 'found "Batch" beside ""'],
    [[["Batch", 3]], 'found "Batch" beside 3'],
    [[[3, "Ref"]], 'found 3 beside "Ref"'],
    ["Loading...", "Loading..."],
  ])("refuses the columns %j", (columns, found) => {
    expect(() => read(columns, RECORDS)).toThrow(InputError);
    expect(() => read(columns, RECORDS)).toThrow(found);
  });
});
