import vm from "node:vm";
import { describe, expect, it } from "vitest";
import { cellIn, gridIn, rowsOf } from "../../src/door/cells-in";
import { daysOfInstants } from "../../src/door/days-of-instants";
import { day } from "../support/days";
import { dateCell, hostIn } from "../support/host";

const days = daysOfInstants(hostIn("Etc/UTC"));
const cells = (value: unknown) => {
  const grid = gridIn(value, days);
  return Array.from({ length: grid.rowCount }, (_, row) =>
    Array.from({ length: grid.columnCount }, (__, column) => grid.at(row, column)),
  );
};

describe("a range as it reaches a function", () => {
  it.each([
    ["a scalar", "a", [["a"]]],
    ["0", 0, [[0]]],
    ["a tick box", false, [[false]]],
    ["one cell as a range", [["a"]], [["a"]]],
    ["a row", [["a", 1, true]], [["a", 1, true]]],
    ["a column", [["a"], [1], [true]], [["a"], [1], [true]]],
    [
      "a grid",
      [
        ["a", 1],
        ["b", 2],
      ],
      [
        ["a", 1],
        ["b", 2],
      ],
    ],
    ["nothing", undefined, [[""]]],
    ["null", null, [[""]]],
    ["a blank cell", "", [[""]]],
    [
      "blanks of every kind",
      [
        ["", null],
        [undefined, " "],
      ],
      [
        ["", ""],
        ["", " "],
      ],
    ],
    [
      "short rows",
      [["a", "b", "c"], [], ["d"]],
      [
        ["a", "b", "c"],
        ["", "", ""],
        ["d", "", ""],
      ],
    ],
    ["a list", ["a", 1], [["a"], [1]]],
    ["errors and loading", [["#N/A", "Loading..."]], [["#N/A", "Loading..."]]],
    ["text of code", [["=A1", "+1", "-1", "@x"]], [["=A1", "+1", "-1", "@x"]]],
  ])("is read as cells: %s", (_, value, expected) => {
    expect(cells(value)).toEqual(expected);
  });

  it("shows an error for a number that no sheet can show", () => {
    expect(cells([[Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY]])).toEqual([
      ["#NUM!", "#NUM!", "#NUM!"],
    ]);
  });

  it("takes what is no cell's value for a blank", () => {
    const odd = [{}, [1], () => 1, Symbol("x"), 10n, new Map(), /x/, new Date(Number.NaN)];
    expect(cells([odd])).toEqual([odd.map(() => "")]);
  });

  it("reads dates as days, those of another realm too", () => {
    const foreign = vm.runInNewContext("[[new Date(Date.UTC(2026, 8, 3)), 'x']]");
    expect(foreign[0][0] instanceof Date).toBe(false);
    expect(Array.isArray(foreign)).toBe(true);
    expect(cells(foreign)).toEqual([[{ day: day("2026-09-03") }, "x"]]);
    expect(cellIn(new Date(Date.UTC(2026, 8, 3)), days)).toEqual({ day: day("2026-09-03") });
  });

  it("is passed whole: hundreds of blank rows cost nothing and are read as blanks", () => {
    const range = [["Batch"], ...Array.from({ length: 998 }, () => [""]), ["B1"]];
    const grid = gridIn(range, days);
    expect([grid.rowCount, grid.columnCount]).toEqual([1000, 1]);
    expect([grid.at(0, 0), grid.at(500, 0), grid.at(999, 0), grid.at(1000, 0)]).toEqual([
      ...["Batch", "", "B1", ""],
    ]);
  });

  it("is one cell where one is asked for: the first", () => {
    expect(cellIn([["a", "b"], ["c"]], days)).toBe("a");
    expect(cellIn([], days)).toBe("");
    expect(cellIn([[]], days)).toBe("");
    expect(rowsOf([])).toEqual([]);
  });

  it("asks the clock of a week once at each end, however many days of it stand in the range", () => {
    let asked = 0;
    const host = hostIn("America/New_York");
    const counting = daysOfInstants({
      ...host,
      wallTime: (milliseconds) => {
        asked += 1;
        return host.wallTime(milliseconds);
      },
    });
    const week = ["2026-09-03", "2026-09-04", "2026-09-05", "2026-09-08"];
    const dates = week.map((one) => [dateCell("America/New_York", one)]);
    const grid = gridIn(
      Array.from({ length: 500 }, (_, row) => dates[row % week.length]),
      counting,
    );
    for (let row = 0; row < 500; row += 1) {
      expect(grid.at(row, 0)).toEqual({ day: day(week[row % week.length] as string) });
    }
    expect(asked).toBe(2);
  });
});
