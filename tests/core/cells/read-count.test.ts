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
    [-1, { code: "below-zero" }],
    ["-1", { code: "below-zero" }],
    [2.5, { code: "part-of-a-plant" }],
    ["2.5", { code: "part-of-a-plant" }],
    [Number.NaN, { code: "not-a-count" }],
    [Number.POSITIVE_INFINITY, { code: "not-a-count" }],
    ["9".repeat(400), { code: "not-a-count" }],
    [true, { code: "tick-box-for-count" }],
    [{ day: day("2026-09-03") }, { code: "date-for-count" }],
    ["#DIV/0!", { code: "cell-shows", shown: "#DIV/0!" }],
    ["0x10", { code: "not-a-count" }],
    ["1e3", { code: "not-a-count" }],
    ["12 13", { code: "not-a-count" }],
    [0.5, { code: "part-of-a-plant" }],
    ["50 %", { code: "percent-of-nothing" }],
    ["=12", { code: "not-a-count" }],
  ])("leaves %j unread and says why", (cell, why) => {
    expect(readCount(cell)).toEqual({ kind: "unread", why });
  });
});
