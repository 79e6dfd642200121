import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cellText, gridOf, isBlank, isDayCell } from "../../../src/core/cells/cell";
import { errorShown, isLoading } from "../../../src/core/cells/upstream";
import { day } from "../../support/days";

describe("gridOf", () => {
  it("is as wide as its widest row; short rows and cells outside read as blank", () => {
    const grid = gridOf([["a"], ["b", 2, true], []]);
    expect([grid.rowCount, grid.columnCount]).toEqual([3, 3]);
    expect([grid.at(0, 2), grid.at(2, 0), grid.at(9, 0), grid.at(0, 9)]).toEqual(["", "", "", ""]);
    expect(grid.at(1, 2)).toBe(true);
  });

  it("may be empty", () => {
    const grid = gridOf([]);
    expect([grid.rowCount, grid.columnCount, grid.at(0, 0)]).toEqual([0, 0, ""]);
  });
});

describe("isBlank", () => {
  it.each(["", " ", "\t\n", "\u00a0"])("takes %j for blank", (cell) => {
    expect(isBlank(cell)).toBe(true);
  });

  it.each([0, false, "0", "-", { day: day("1970-01-01") }])(
    "does not take %j for blank",
    (cell) => {
      expect(isBlank(cell)).toBe(false);
    },
  );
});

describe("cellText", () => {
  it.each([
    ["  Bay\n 3 ", "Bay 3"],
    ["a\u00a0b", "a b"],
    ["plain", "plain"],
    ["", ""],
    [0, "0"],
    [0.5, "0.5"],
    [true, "TRUE"],
    [false, "FALSE"],
    [{ day: day("2026-09-03") }, "2026-09-03"],
  ])("shows %j as %j", (cell, text) => {
    expect(cellText(cell)).toBe(text);
  });

  it("knows a day cell from the rest", () => {
    expect([
      isDayCell({ day: day("2026-09-03") }),
      isDayCell("2026-09-03"),
      isDayCell(46268),
    ]).toEqual([true, false, false]);
  });
});

describe("what other cells hand on", () => {
  it.each([
    ...["#N/A", "#REF!", "#VALUE!", "#DIV/0!", "#NUM!", "#NAME?", "#NULL!", "#ERROR!"],
    "#SPILL!",
  ])("is an error where it reads %s", (text) => {
    expect(errorShown(text)).toBe(text);
    expect(errorShown(`${text} more words`)).toBe(text);
  });

  it.each(["# 12", "#12", "#tag", "N/A", "no #REF!", 12, true, "", { day: day("2026-09-03") }])(
    "is no error where it reads %j",
    (cell) => {
      expect(errorShown(cell)).toBeNull();
    },
  );

  it("is not there yet where it reads Loading...", () => {
    expect([
      isLoading("Loading..."),
      isLoading("Loading"),
      isLoading("loading bay"),
      isLoading(0),
    ]).toEqual([true, false, false, false]);
  });
});

describe("the text of a cell", () => {
  it("leaves single spaces inside alone, in short texts as in long ones", () => {
    const sign = fc.constantFrom(..."ab \t\n\u00a0\u2009\u3000\ufeffé-");
    fc.assert(
      fc.property(fc.string({ unit: sign, maxLength: 90, size: "max" }), (text) => {
        expect(cellText(text)).toBe(text.replace(/\s+/g, " ").trim());
      }),
      { numRuns: 2000 },
    );
  });
});
