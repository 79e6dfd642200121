import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Cell } from "../../../src/core/cells/cell";
import { checkedRecords } from "../../../src/core/check/checked-records";
import { isoDay } from "../../../src/core/dates";
import { builtInTimetable } from "../../../src/core/timetable/read-timetable";
import { day } from "../../support/days";
import { reading } from "../records/reading";

const built = { timetable: builtInTimetable(), faults: [] };
const HEADER = ["Batch", "Sown", "Grafted on", "Grafts made", "First release", "Take count day"];

function checked(rows: readonly (readonly Cell[])[], asOf = "2026-11-25") {
  const records = reading([[...HEADER, "Takes"], ...rows], { localeOrder: "day-first" });
  return checkedRecords(records, built, day(asOf));
}

const found = (rows: readonly (readonly Cell[])[], asOf?: string) =>
  checked(rows, asOf).troubles.map((one) =>
    one.code === "day-swapped"
      ? `${one.row} ${one.column} ${one.found}, not ${isoDay(one.fits)}: ${one.against} ${isoDay(one.againstDay)}`
      : `${one.row} ${one.column} ${one.code}`,
  );

describe("a day that another person writes month first", () => {
  // "Grafted 3/4" is 4 March to Mira, who writes as she learned it elsewhere; the sheet reads 3 April.
  it("is named with the day that fits, in the step that is wrong, not in those that follow", () => {
    expect(
      found([
        ["B1", "", "20/03/2026", 100, "03/04/2026", "20/04/2026", 80],
        ["B2", "", "03/04/2026", 100, "18/03/2026", "03/04/2026", 80],
      ]),
    ).toEqual(["3 Grafted on 2026-04-03, not 2026-03-04: First release 2026-03-18"]);
    expect(found([["B1", "", "20/09/2026", 100, "10/04/2026", "", ""]])).toEqual([
      "2 First release 2026-04-10, not 2026-10-04: Grafting 2026-09-20",
    ]);
  });

  it("is one entry with every row it is in", () => {
    const [first, ...more] = checked([
      ["B1", "", "20/09/2026", 100, "10/04/2026", "", ""],
      ["B2", "", "21/09/2026", 100, "10/05/2026", "", ""],
      ["B3", "", "22/09/2026", 100, "06/10/2026", "", ""],
    ]).entries;
    expect(first?.troubles.map(({ row, code }) => [row, code])).toEqual([
      [2, "day-swapped"],
      [3, "day-swapped"],
    ]);
    expect([first?.plants, more]).toEqual([200, []]);
  });

  it("may be two days of one row", () => {
    expect(found([["B1", "", "20/09/2026", 100, "10/04/2026", "11/01/2026", 80]])).toEqual([
      "2 First release 2026-04-10, not 2026-10-04: Grafting 2026-09-20",
      "2 Take count day 2026-01-11, not 2026-11-01: Grafting 2026-09-20",
    ]);
  });

  it("is not guessed at where no swap puts the row into order, or into a day still to come", () => {
    expect(found([["B1", "", "20/09/2026", 100, "19/09/2026", "", ""]])).toEqual([
      "2 First release before-step",
    ]);
    expect(found([["B1", "", "20/03/2026", 100, "03/01/2026", "", ""]], "2026-02-01")).toContain(
      "2 First release before-step",
    );
  });

  it("is found again wherever one day of a sound row was swapped and stands before an earlier step", () => {
    const gaps = fc.tuple(
      fc.integer({ min: 12, max: 25 }),
      fc.integer({ min: 28, max: 50 }),
      fc.integer({ min: 0, max: 2 }),
      fc.integer({ min: 0, max: 250 }),
    );
    let swaps = 0;
    fc.assert(
      fc.property(gaps, ([release, count, at, start]) => {
        const grafted = day("2026-01-01") + start;
        const days = [grafted, grafted + release, grafted + count];
        const texts = days.map((one) => isoDay(one as ReturnType<typeof day>));
        const [year, month, ofMonth] = (texts[at] as string).split("-");
        fc.pre(Number(ofMonth) <= 12 && ofMonth !== month);
        const written = texts.map((text, index) =>
          index === at ? `${year}-${ofMonth}-${month}` : text,
        ) as [string, string, string];
        const row = ["B1", "", written[0], 100, written[1], written[2], 80];
        const codes = checked([row], "2026-12-31").troubles;
        // Release and take count hang on the grafting alone, so that is all that can be out of order.
        const isBackwards = written[1] < written[0] || written[2] < written[0];
        if (isBackwards) swaps += 1;
        const named = codes.flatMap((one) =>
          one.code === "day-swapped" ? [[one.column, isoDay(one.fits)]] : [],
        );
        if (!isBackwards) expect(named).toEqual([]);
        else {
          // Turned round as it says, the row is in order.
          const columns = ["Grafted on", "First release", "Take count day"];
          const turned = written.map(
            (text, index) => named.find(([column]) => column === columns[index])?.[1] ?? text,
          );
          expect((turned[1] as string) >= (turned[0] as string)).toBe(true);
          expect((turned[2] as string) >= (turned[0] as string)).toBe(true);
          expect(named.length).toBeGreaterThan(0);
        }
      }),
      { numRuns: 500 },
    );
    expect(swaps).toBeGreaterThan(20);
  });
});

describe("a day before a step further up", () => {
  it("is out of order where the step it hangs on has no day", () => {
    expect(found([["B1", "20/05/2026", "", 100, "10/02/2026", "", ""]])).toEqual([
      "2 First release 2026-02-10, not 2026-10-02: Sowing 2026-05-20",
    ]);
    expect(found([["B1", "20/05/2026", "", 100, "19/02/2026", "", ""]])).toEqual([
      "2 First release before-step",
    ]);
  });
});
