import { describe, expect, it } from "vitest";
import { readCount } from "../../../src/core/cells/read-count";
import { day } from "../../support/days";

describe("readCount", () => {
  it.each([
    [0, 0],
    [120, 120],
    ["120", 120],
    [" 120 ", 120],
    ["0", 0],
    ["120.0", 120],
    ["+12", 12],
  ])("reads %j as a number of plants", (cell, count) => {
    expect(readCount(cell)).toEqual({ kind: "count", count, readAs: null });
  });

  it.each(["", "  ", "\n", "none", "nil", "n/a", "-", "not counted"])(
    "keeps %j apart from 0",
    (cell) => {
      expect(readCount(cell)).toEqual({ kind: "blank" });
    },
  );

  it.each([
    [-1, "below 0"],
    ["-1", "below 0"],
    [2.5, "part of a plant"],
    ["2.5", "part of a plant"],
    [Number.NaN, "not a number"],
    [Number.POSITIVE_INFINITY, "not a number"],
    ["9".repeat(400), "not a number"],
    [true, "tick box"],
    [{ day: day("2026-09-03") }, "a date"],
    ["#DIV/0!", "shows #DIV/0!"],
    ["0x10", "not a number"],
    ["1e3", "not a number"],
    ["12 13", "not a number"],
    [0.5, "part of a plant"],
    ["50 %", "per cent where a number of plants is due"],
    ["=12", "not a number"],
  ])("leaves %j unread and says why", (cell, why) => {
    expect(readCount(cell)).toEqual({ kind: "unread", why: expect.stringContaining(why) });
  });
});
