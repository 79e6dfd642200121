import { describe, expect, it } from "vitest";
import type { Unread } from "../../src/core/cells/unread";
import * as takeColumns from "../../src/sentences/made/take-columns";
import * as takeFaults from "../../src/sentences/made/take-faults";
import * as unread from "../../src/sentences/made/unread";
import { ask, askRows } from "../support/ask";
import { refusal } from "../support/refusal";

const printed = (rows: unknown[][]) =>
  rows.map((row) => row.map((cell) => (typeof cell === "number" ? cell.toFixed(4) : cell)));

const notACount = (argument: string, why: Unread) =>
  refusal("TAKE_RATE", { code: "not-a-count", argument, why });
const loading = (name: string, argument: string) =>
  refusal(name, { code: "not-ready-yet", argument, row: null, column: null, shown: null });

describe("published values: Newcombe (1998), Statist. Med. 17:857-872, Table I, method 3", () => {
  const CASES = [
    [81, 263, "0.2553", "0.3662"],
    [15, 148, "0.0624", "0.1605"],
    [0, 20, "0.0000", "0.1611"],
    [1, 29, "0.0061", "0.1718"],
  ] as const;

  it.each(CASES)("TAKE_RANGE(%i, %i) is %s to %s", (taken, grafted, low, high) => {
    expect(printed(askRows("TAKE_RANGE", [taken, grafted]))).toEqual([[low, high]]);
  });

  it("TAKE_RANGE answers two columns of counts at once", () => {
    const taken = CASES.map(([count]) => [count]);
    const grafted = CASES.map(([, count]) => [count]);
    expect(printed(askRows("TAKE_RANGE", [taken, grafted]))).toEqual(
      CASES.map(([, , low, high]) => [low, high]),
    );
  });
});

describe("TAKE_RATE", () => {
  it("answers one pair with one value, and blank where it is not counted yet", () => {
    expect(ask("TAKE_RATE", [81, 263])).toBe(81 / 263);
    expect(ask("TAKE_RATE", [[[81]], [[263]]])).toBe(81 / 263);
    expect(ask("TAKE_RATE", ["", 263])).toBe("");
    expect(ask("TAKE_RATE", [81, ""])).toBe("");
    expect(ask("TAKE_RATE", [0, 0])).toBe("");
    expect(ask("TAKE_RATE", [0, 20])).toBe(0);
  });

  it("answers each pair of two ranges in its own place, in a column, a row or a grid", () => {
    expect(
      ask("TAKE_RATE", [
        [[8], [""], [0]],
        [[10], [10], [10]],
      ]),
    ).toEqual([[0.8], [""], [0]]);
    expect(ask("TAKE_RATE", [[[8, 5]], [[10, 10]]])).toEqual([[0.8, 0.5]]);
    const grid = [
      [1, 2],
      [3, 4],
    ];
    expect(ask("TAKE_RATE", [grid, grid])).toEqual([
      [1, 1],
      [1, 1],
    ]);
  });

  it("says in the list which pair can't be right, and goes on", () => {
    expect(
      ask("TAKE_RATE", [
        [[11], ["many"], [5]],
        [[10], [10], [10]],
      ]),
    ).toEqual([[takeFaults.moreTakenThanGraftedInList()], [unread.notACount()], [0.5]]);
  });

  it("leaves the row of two headers blank", () => {
    expect(
      ask("TAKE_RATE", [
        [["Takes"], [5]],
        [["Grafts made"], [10]],
      ]),
    ).toEqual([[""], [0.5]]);
  });

  // Blank would say "not counted yet" of a pair whose cells can't be read at all.
  it("does not show a blank for a pair of cells that show errors", () => {
    expect(
      ask("TAKE_RATE", [
        [["#N/A"], [5]],
        [["#N/A"], [10]],
      ]),
    ).toEqual([[unread.cellShows({ shown: "#N/A" })], [0.5]]);
  });

  it("says which cell shows an error, and refuses to answer while one is loading", () => {
    expect(
      ask("TAKE_RATE", [
        [["#REF!"], [5]],
        [[10], [10]],
      ]),
    ).toEqual([[unread.cellShows({ shown: "#REF!" })], [0.5]]);
    expect(
      ask("TAKE_RATE", [
        [[10], [5]],
        [["#DIV/0! (of 10)"], [10]],
      ]),
    ).toEqual([[unread.cellShows({ shown: "#DIV/0!" })], [0.5]]);
    expect(() => ask("TAKE_RATE", ["#REF!", 10])).toThrow(
      notACount("taken", { code: "cell-shows", shown: "#REF!" }),
    );
    expect(() => ask("TAKE_RATE", ["Loading...", 10])).toThrow(
      notACount("taken", { code: "not-a-count" }),
    );
    expect(() =>
      ask("TAKE_RATE", [
        [["Loading..."], [5]],
        [[10], [10]],
      ]),
    ).toThrow(loading("TAKE_RATE", "taken"));
    expect(() =>
      ask("TAKE_RANGE", [
        [[5], [5]],
        [[10], ["Loading..."]],
      ]),
    ).toThrow(loading("TAKE_RANGE", "grafted"));
  });

  it.each([
    [[[1, 2]], [[1], [2]], [1, 2], [2, 1]],
    [
      [[1], [2]],
      [[1], [2], [3]],
      [2, 1],
      [3, 1],
    ],
    [1, [[1], [2]], [1, 1], [2, 1]],
  ] as const)("refuses ranges of two sizes: %j and %j", (taken, grafted, one, other) => {
    expect(() => ask("TAKE_RATE", [taken, grafted])).toThrow(
      refusal("TAKE_RATE", { code: "sizes-differ", taken: one, grafted: other }),
    );
  });

  it.each([
    [5, 4, refusal("TAKE_RATE", { code: "more-taken-than-grafted", taken: 5, grafted: 4 })],
    ["many", 4, notACount("taken", { code: "not-a-count" })],
    [1, -4, notACount("grafted", { code: "below-zero" })],
    [1, true, notACount("grafted", { code: "tick-box-for-count" })],
  ])("refuses the single pair %j and %j", (taken, grafted, error) => {
    expect(() => ask("TAKE_RATE", [taken, grafted])).toThrow(error);
  });
});

describe("TAKE_RANGE", () => {
  it("is two blanks where it is not counted yet, and as wide in every row", () => {
    expect(ask("TAKE_RANGE", ["", 20])).toEqual([["", ""]]);
    const rows = askRows("TAKE_RANGE", [
      [[5], [""], [11], ["x"]],
      [[10], [10], [10], [10]],
    ]);
    expect(rows.map((row) => row.length)).toEqual([2, 2, 2, 2]);
    expect(rows.slice(1)).toEqual([
      ["", ""],
      [takeFaults.moreTakenThanGraftedInList(), ""],
      [unread.notACount(), ""],
    ]);
  });

  it("takes a level", () => {
    const [[low, high]] = askRows("TAKE_RANGE", [50, 100, 0.5]) as [[number, number]];
    const [[lower, higher]] = askRows("TAKE_RANGE", [50, 100]) as [[number, number]];
    expect(lower < low && low < 0.5 && 0.5 < high && high < higher).toBe(true);
    expect(() => ask("TAKE_RANGE", [50, 100, 3])).toThrow(
      refusal("TAKE_RANGE", { code: "level-out-of-range", argument: "level", found: 3 }),
    );
  });
});

describe("takes of a log", () => {
  it("can be grouped by what its lines tell, though no column bears that name", () => {
    const log = [
      ["Date", "Batch", "What was done", "How many", "Who"],
      ["2026-02-01", "L-1", "Grafted", 100, "Ada"],
      ["2026-03-01", "L-1", "Take count", 80, "Bo"],
      ["2026-02-02", "L-2", "Grafted", 50, "Bo"],
      ["2026-03-02", "L-2", "Take count", 20, "Ada"],
    ];
    expect(askRows("TAKE_SUMMARY", [log, "Grafter"]).map((row) => row.slice(0, 4))).toEqual([
      ["Grafter", takeColumns.batches(), takeColumns.grafted(), takeColumns.taken()],
      ["Ada", 1, 100, 80],
      ["Bo", 1, 50, 20],
    ]);
    expect(() => ask("TAKE_SUMMARY", [log, "Scion source"])).toThrow(
      takeFaults.noSuchColumn({
        argument: "by",
        name: "Scion source",
        known: (log[0] as string[]).join(", "),
      }),
    );
  });
});
