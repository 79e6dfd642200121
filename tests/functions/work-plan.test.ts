import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { daysOutOfRange } from "../../src/sentences/made/table-faults";
import * as text from "../../src/sentences/made/work";
import { partRemarks, tooMuchDays, tooMuchSum } from "../../src/wording/work";
import { ask, askTable } from "../support/ask";
import { day } from "../support/days";
import { refusal } from "../support/refusal";

const AS_OF = "2026-11-25";
const TIMETABLE = [
  ["Method", "Step", "After", "From day", "Usual day", "By day", "Counted", "Per person-hour"],
  ["Plain", "Sowing", "", "", "", "", "yes", ""],
  ["Plain", "Grafting", "Sowing", 80, 90, 100, "yes", 10],
  ["Plain", "First release", "Grafting", 10, 14, 18, "", ""],
];
const HEADER = ["Batch", "Place", "Sown", "Seeds sown", "Grafted on", "Grafts made"];
/** Sown 85 days before the as-of day: grafting usually in 5 days, by 15 days. */
const batch = (name: string, plants: number, sown = "2026-09-01", place = "Bay 1") => [
  name,
  place,
  sown,
  plants,
  "",
  "",
];
const CREW = [
  ["Person", "Tasks", "Hours a day", "Off from", "Off to"],
  ["Ana", "", 8, "", ""],
  ["Bo", "Grafting", 4, "2026-11-30", "2026-11-30"],
];
const plan = (batches: unknown[][], crew: unknown = CREW, ...more: unknown[]) =>
  askTable("WORK_PLAN", [[HEADER, ...batches], TIMETABLE, crew, AS_OF, ...more]);
const sum = (rows: Record<string, unknown>[], column: string) =>
  rows.reduce((all, row) => all + Number(row[column] || 0), 0);

describe("WORK_PLAN", () => {
  it("does the work on its usual day, by who is there", () => {
    expect(plan([batch("B1", 80)])).toEqual([
      {
        Day: "2026-11-30",
        Task: "Grafting",
        Batch: "B1",
        Place: "Bay 1",
        Plants: 80,
        Hours: 8,
        Person: "Ana",
        By: "2026-12-10",
        Remark: "",
      },
    ]);
  });

  it("splits a task into whole plants that add up to it", () => {
    const rows = plan([batch("B1", 333)]);
    expect(rows.length).toBeGreaterThan(2);
    expect(sum(rows, "Plants")).toBe(333);
    expect(sum(rows, "Hours")).toBeCloseTo(33.3, 9);
    for (const row of rows) {
      expect(Number.isInteger(row.Plants)).toBe(true);
      expect(row.Remark).toBe(text.partOf({ plants: 333 }));
    }
  });

  it("keeps closed days and days off free", () => {
    const closed = [["Day"], ["Sunday"], ["2026-11-30"]];
    const rows = plan([batch("B1", 80), batch("B2", 80)], CREW, 14, closed);
    expect(sum(rows, "Hours")).toBe(16);
    for (const row of rows) expect(["2026-11-29", "2026-11-30"]).not.toContain(row.Day);
  });

  it("proves what doesn't fit by adding up, and the hours that it says mend it do", () => {
    // From 25 November to 10 December there are 16 days of 8 hours: 128.
    const alone = [
      ["Person", "Hours a day"],
      ["Ana", 8],
    ];
    const rows = plan([batch("B1", 1500)], alone);
    expect(rows[0]).toMatchObject({
      ...{ Day: "", Task: "Grafting", Batch: "B1", Hours: "", Person: "Ana", By: "2026-12-10" },
      Remark: `${tooMuchDays({ from: day(AS_OF), to: day("2026-12-10") })} ${tooMuchSum({ persons: ["Ana"], tasks: ["Grafting"], asked: 150, there: 128, short: 22, lacksWho: false })}`,
    });
    expect(rows[1]).toMatchObject({ Day: "", Hours: 22, Plants: 220 });
    expect(rows[1]?.Remark).toBe(
      partRemarks([{ code: "does-not-fit" }, { code: "part-of", plants: 1500 }]),
    );
    const helper = (hours: number) => [...alone, ["Cy", hours, "2026-11-26"]];
    const withOff = (hours: number) => [
      ["Person", "Hours a day", "Off from"],
      ...helper(hours)
        .slice(1)
        .map((row) => [...row, ""].slice(0, 3)),
    ];
    expect(plan([batch("B1", 1500)], withOff(22)).some((row) => row.Day === "")).toBe(false);
    expect(plan([batch("B1", 1500)], withOff(21.9))[0]?.Remark).toContain(
      text.tooMuchSum({ asked: "150", there: "149.9", short: "0.1" }),
    );
  });

  it("says that nobody can do a task", () => {
    const crew = [
      ["Person", "Tasks", "Hours a day"],
      ["Ana", "First release", 8],
    ];
    expect(plan([batch("B1", 80)], crew)[0]).toMatchObject({
      ...{ Task: "Grafting", Person: "" },
      Remark: expect.stringContaining(text.tooMuchNobody({ asked: "8", tasks: ["Grafting"] })),
    });
  });

  // 13 of 14 days were marked as too much for an hour that only one may do, while others stood idle.
  it("says so where only one may do a task, and others have hours left", () => {
    const crew = [
      ["Person", "Tasks", "Hours a day"],
      ["Ana", "grafting (mango)", 8],
      ["Bo", "all but mango grafting", 0.2],
    ];
    const rows = plan([batch("B1", 80)], crew);
    expect(rows[0]?.Remark).toContain(
      text.tooMuchOnly({ asked: "8", there: "3.2", tasks: ["Grafting"], persons: ["Bo"] }),
    );
    // With hours of Ana's that are used up elsewhere it is too much for all.
    const short = [crew[0] as unknown[], ["Ana", "grafting (mango)", 0.1], ["Bo", "", 0.2]];
    expect(plan([batch("B1", 80)], short)[0]?.Remark).toContain(
      text.tooMuchSum({ asked: "8", there: "3.2", short: "4.8" }),
    );
  });

  it("reminds of a task without hours on an open day", () => {
    const grafted = ["B1", "Bay 1", "2026-08-01", 100, "2026-11-15", 90];
    // Usually on 29 November 2026, a Sunday.
    const rows = plan([grafted], CREW, 14, [["Day"], ["Sunday"]]);
    expect(rows).toEqual([
      {
        ...{ Day: "2026-11-30", Task: "First release", Batch: "B1", Place: "Bay 1", Plants: 90 },
        ...{ Hours: "", Person: "", By: "2026-12-03" },
        Remark: text.noRate(),
      },
    ]);
  });

  it("says what is late, and when there is no time for it", () => {
    const late = batch("B1", 80, "2026-08-10");
    const [row] = plan([late]);
    expect(row).toMatchObject({ Day: "2026-11-25", Remark: text.daysLate({ days: 7 }) });
    const away = [
      ["Person", "Hours a day", "Off from", "Off to"],
      ["Ana", 8, "2026-11-01", "2026-12-20"],
    ];
    const [waits] = plan([late], away);
    expect(waits).toMatchObject({
      Day: "",
      Hours: 8,
      Remark: partRemarks([
        { code: "not-before", day: day("2026-12-09") },
        { code: "days-late", days: 7 },
      ]),
    });
  });

  it("plans alike whatever the order of the rows of records and crew", () => {
    const sown = fc.integer({ min: 1, max: 28 }).map((one) => `2026-09-${one}`);
    const batches = fc
      .array(fc.tuple(fc.integer({ min: 1, max: 400 }), sown), { minLength: 1, maxLength: 12 })
      .map((rows) => rows.map(([plants, day], at) => batch(`B${at}`, plants, day)));
    const persons = fc
      .array(fc.integer({ min: 0, max: 9 }), { minLength: 1, maxLength: 4 })
      .map((hours) => hours.map((one, at) => [`P${at}`, at % 2 ? "Grafting" : "", one, "", ""]));
    const order = <T>(rows: readonly T[]) =>
      fc.shuffledSubarray([...rows], { minLength: rows.length, maxLength: rows.length });
    const asked = fc
      .tuple(batches, persons)
      .chain(([b, p]) => fc.tuple(fc.constant([b, p] as const), order(b), order(p)));
    fc.assert(
      fc.property(asked, ([[b, p], turned, people]) => {
        const header = CREW[0] as unknown[];
        const rows = plan(b, [header, ...p], 30);
        expect(plan(turned, [header, ...people], 30)).toEqual(rows);
      }),
      { numRuns: 100 },
    );
  });

  it("refuses days that make no plan", () => {
    for (const days of [0, 367]) {
      expect(() =>
        ask("WORK_PLAN", [[HEADER, batch("B1", 8)], TIMETABLE, CREW, AS_OF, days]),
      ).toThrow(daysOutOfRange({ most: "366", found: String(days) }));
    }
    expect(() => ask("WORK_PLAN", [[HEADER, batch("B1", 8)], TIMETABLE, "", AS_OF])).toThrow(
      refusal("WORK_PLAN", { code: "argument-missing", argument: "crew", needs: "crew" }),
    );
  });
});
