import { describe, expect, it } from "vitest";
import { columns } from "../../src/core/answer";
import { cellsOut } from "../../src/door/answer-out";
import { daysOfInstants } from "../../src/door/days-of-instants";
import { day } from "../support/days";
import { dateCell, hostIn } from "../support/host";

const COLUMNS = columns({ Batch: "text", "Done on": "day", Plants: "count", Closed: "text" });

describe("cellsOut", () => {
  it.each(["Etc/UTC", "Pacific/Auckland", "America/New_York", "Asia/Kolkata"])(
    "puts the header first, days at midnight in %s, blanks for what is not known, the remark last",
    (zone) => {
      const days = daysOfInstants(hostIn(zone));
      const rows = [
        ["B1", day("2026-09-03"), 0, true],
        [null, null, null, false],
      ];
      expect(cellsOut({ columns: COLUMNS, rows, remark: "1 row left out" }, days)).toEqual([
        ["Batch", "Done on", "Plants", "Closed"],
        ["B1", dateCell(zone, "2026-09-03"), 0, true],
        ["", "", "", false],
        ["1 row left out", "", "", ""],
      ]);
    },
  );

  it("is the header alone where there is nothing to tell", () => {
    const days = daysOfInstants(hostIn("Etc/UTC"));
    expect(cellsOut({ columns: COLUMNS, rows: [], remark: null }, days)).toEqual([
      ["Batch", "Done on", "Plants", "Closed"],
    ]);
  });

  it.each([Number.NaN, Number.POSITIVE_INFINITY])("never hands out %s", (value) => {
    const days = daysOfInstants(hostIn("Etc/UTC"));
    const answer = { columns: COLUMNS, rows: [["B1", null, value, null]], remark: null };
    expect(() => cellsOut(answer, days)).toThrow("must not reach a cell");
  });
});
