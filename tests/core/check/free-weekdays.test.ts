import { describe, expect, it } from "vitest";
import type { Cell } from "../../../src/core/cells/cell";
import { checkedRecords } from "../../../src/core/check/checked-records";
import { isoDay } from "../../../src/core/dates";
import { builtInTimetable } from "../../../src/core/timetable/read-timetable";
import { day } from "../../support/days";
import { reading } from "../records/reading";

const built = { timetable: builtInTimetable(), faults: [] };
const HEADER = ["Batch", "Grafted on", "Grafts made"];
// 2026-01-05 is a Monday, as `date -d 2026-01-05 +%A` of GNU coreutils says.
const MONDAY = day("2026-01-05");

/** Batches grafted on so many weekdays of six, Sundays left out, then some days more. */
function listed(workdays: number, more: readonly Cell[], asOf: string | null = "2026-11-25") {
  const worked = Array.from({ length: workdays }, (_, at) =>
    isoDay((MONDAY + Math.floor(at / 6) * 7 + (at % 6)) as typeof MONDAY),
  );
  const rows = [...worked, ...more].map((cell, at) => [`B${at}`, cell, 50]);
  const records = reading([HEADER, ...rows]);
  return checkedRecords(records, built, asOf === null ? null : day(asOf)).entries.map(
    ({ troubles }) => [
      ...[troubles[0]?.code, troubles.map(({ found }) => found)],
      troubles[0]?.code === "free-weekday" ? [troubles[0].weekday, troubles[0].others] : null,
    ],
  );
}

describe("days on a weekday on which the nursery never works", () => {
  it("are named, with the weekday and how many days are none", () => {
    expect(listed(60, ["2026-05-03"])).toEqual([["free-weekday", ["2026-05-03"], [7, 60]]]);
  });

  it("are one entry however many batches share the day", () => {
    expect(listed(40, ["2026-05-03", "2026-05-03", "2026-05-03"])).toEqual([
      ["free-weekday", ["2026-05-03", "2026-05-03", "2026-05-03"], [7, 40]],
    ]);
  });

  it("are none in a table of few days, where they are no habit, or still to come", () => {
    expect(listed(39, ["2026-05-03"])).toEqual([]);
    expect(listed(60, ["2026-05-03", "2026-05-10"])).toEqual([]);
    expect(listed(60, [])).toEqual([]);
    expect(listed(60, ["2026-11-29"], "2026-11-25").map(([code]) => code)).toEqual(["after-as-of"]);
  });

  it("are none where the cell says no day but a week or a month, which is said already", () => {
    // Mid-May is read as 15 May; of the weekday nobody wrote anything.
    const codes = listed(60, ["end of May 2026"]).map(([code]) => code);
    expect(codes).toEqual(["cell-read-as"]);
  });
});
