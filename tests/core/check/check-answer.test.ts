import { describe, expect, it } from "vitest";
import type { Cell } from "../../../src/core/cells/cell";
import { checkAnswer } from "../../../src/core/check/check-answer";
import { builtInTimetable } from "../../../src/core/timetable/read-timetable";
import { rowsByName } from "../../support/answers";
import { day } from "../../support/days";
import { reading } from "../records/reading";
import { timetableOf } from "../timetable/timetable-rows";

const HEADER = ["Batch", "Method", "Sown", "Grafted on", "Grafts made", "Takes", "Ready plants"];
const built = { timetable: builtInTimetable(), faults: [] };

function check(rows: readonly (readonly Cell[])[], asOf: string | null = "2026-11-25") {
  return rowsByName(
    checkAnswer(reading([HEADER, ...rows]), built, asOf === null ? null : day(asOf)),
  );
}
const lines = (rows: ReturnType<typeof check>) =>
  rows
    .slice(0, -1)
    .map(({ Row, Column, Found, Trouble }) => `${Row} ${Column} ${Found}: ${Trouble}`);

describe("checkAnswer", () => {
  it("says so when there is no trouble, and counts the rows of the range", () => {
    const rows = check([["B1", "", "2026-05-01", "2026-08-01", 100, 80, 70], []]);
    expect(rows).toEqual([
      {
        ...{ Row: null, Column: null, Found: null, Trouble: "No trouble found" },
        ...{ "What happens": "Every row is used", "What to do": "Nothing" },
      },
      {
        ...{ Row: null, Column: null, Found: null, Trouble: "3 rows in the range" },
        ...{
          "What happens":
            "1 used, 0 left out, 0 no batches (sums, headings, notes), 1 header and above, 1 blank",
        },
        "What to do": null,
      },
    ]);
  });

  it("names rows from the top of the range, titles counted", () => {
    const records = reading([["Title"], [], HEADER, ["B1", "", "soon", "", 100, "", ""]]);
    const [first] = rowsByName(checkAnswer(records, built, null));
    expect(first).toMatchObject({ Row: 4, Column: "Sown", Found: "soon" });
  });

  it("finds counts that rise along the steps", () => {
    expect(lines(check([["B1", "", "", "", 100, 101, 120]]))).toEqual([
      "2 Takes 101: More plants than the 100 at Grafting",
      "2 Ready plants 120: More plants than the 101 at Take count",
    ]);
  });

  it("does not mind counts that stay, or are not made", () => {
    expect(lines(check([["B1", "", "", "", 100, "", 100]]))).toEqual([
      "null null null: No trouble found",
    ]);
  });

  it("finds days that run backwards, and days to come", () => {
    expect(lines(check([["B1", "", "2026-08-02", "2026-08-01", "", "", ""]]))).toEqual([
      "2 Grafted on 1 Aug 2026: Before Sowing on 2 Aug 2026",
    ]);
    const ahead = [["B1", "", "2026-08-01", "2026-11-26", "", "", ""]];
    expect(lines(check(ahead))).toEqual([
      "2 Grafted on 26 Nov 2026: After the as-of day, 25 Nov 2026",
    ]);
    expect(lines(check(ahead, null))).toEqual(["null null null: No trouble found"]);
    expect(lines(check(ahead, "2026-11-26"))).toEqual(["null null null: No trouble found"]);
  });

  it("finds a name that is used twice, whatever its capitals, and methods that are not there", () => {
    expect(
      lines(
        check([
          ["B1", "Kiwi", "", "", 100, "", ""],
          ["b1", "cocoa CLEFT graft", "", "", 90, "", ""],
        ]),
      ),
    ).toEqual([
      "2 Method Kiwi: The timetable has no such method",
      '3 Batch b1: Nearly the same name as "B1" in row 2',
    ]);
    const named = (first: string, second: string) =>
      lines(check([first, second].map((name) => [name, "", "2026-05-01", "", 100, "", ""])));
    expect(named("B1", "B1")).toEqual(["3 Batch B1: Row 2 has the same name"]);
    expect(named("E-05", "e o5")).toEqual([
      '3 Batch e o5: Nearly the same name as "E-05" in row 2',
    ]);
    expect(named("B1", "B10")).toEqual(["null null null: No trouble found"]);
  });

  it("puts what costs most first, then goes down the table", () => {
    const rows = check([
      ["B1", "", "mid May 2026", "", 100, 110, ""],
      ["B2", "", "soon", "", 90, "", ""],
      ["Total", "", "", "", 100, 110, ""],
      ["B3", "", "later", "", 80, "", ""],
    ]);
    expect(rows.map(({ Row, Trouble }) => [Row, Trouble])).toEqual([
      [3, "Not a date"],
      [5, "Not a date"],
      [2, "More plants than the 100 at Grafting"],
      [2, "Not plainly written"],
      [4, "A row of sums"],
      [null, "5 rows in the range"],
    ]);
    for (const row of rows.slice(0, -1)) {
      expect(row["What happens"]).toBeTruthy();
      expect(row["What to do"]).toBeTruthy();
    }
  });

  it("lists what is wrong with the timetable", () => {
    const broken = timetableOf(
      "Step|After|From day|Usual day|By day\nSowing||||\nReady|Sowing|9|5|7",
    );
    const [first] = rowsByName(checkAnswer(reading([HEADER]), broken, null));
    expect(first).toEqual({
      ...{ Row: null, Column: "Timetable row 3, Usual day", Found: "9 / 5 / 7" },
      Trouble: "the days of Ready must rise from From day to Usual day to By day",
      ...{ "What happens": "The method can't be used", "What to do": "Correct the timetable" },
    });
  });
});
