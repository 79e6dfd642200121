import { describe, expect, it } from "vitest";
import { nurseryAsRead } from "../../../src/checks/calibration/nursery-as-read";
import { nurseryOf } from "../../../src/checks/calibration/nursery-jobs";
import { recordsOnDay } from "../../../src/checks/calibration/records-on-day";
import { cleanTable } from "../../../src/checks/records/clean-sheet";
import { readGrid } from "../../../src/checks/records/reading";
import { gridOf } from "../../../src/core/cells/cell";
import { checkedRecords } from "../../../src/core/check/checked-records";
import { builtInTimetable } from "../../../src/core/timetable/read-timetable";
import { day } from "../../support/days";

const timetable = builtInTimetable();

describe("a clean nursery gives no false alarm", () => {
  it("in the sample: only what its README says was never written", () => {
    const { columns, rows } = cleanTable(".");
    const body = rows.map((row) => (row.kind === "batch" ? row.cells : []));
    const grid = gridOf([columns.map(({ upper }) => upper), ...body]);
    const read = readGrid(grid, "en_GB");
    const { troubles } = checkedRecords(read, { timetable, faults: [] }, day("2026-11-25"));
    // "Some steps were never written […] a few germination days have no count."
    expect(troubles.map(({ row, column, found, code }) => [row, column, found, code])).toEqual([
      [142, "First release", "", "release-missed"],
      [175, "Germinated", "", "count-missing"],
    ]);
  });

  it.each([0, 1, 2, 3])("in simulated nursery %i: only what it left unwritten", (number) => {
    const { history, asOfDays } = nurseryOf({ kind: 2, number });
    const { records, asOf } = nurseryAsRead(recordsOnDay(history, asOfDays[0] as number));
    const { troubles } = checkedRecords(records, { timetable, faults: [] }, asOf);
    const of = (...codes: string[]) => troubles.filter(({ code }) => codes.includes(code));
    expect(records.batches.length).toBeGreaterThan(20);
    expect(of("count-rises", "scions-cut")).toEqual([]);
    // It leaves out some records, and closes some batches without a record of being ready.
    for (const { found } of of("count-missing", "release-missed")) expect(found).toBe("");
    const ready = records.stepKeys.indexOf("ready");
    for (const { row } of of("closed-standing")) {
      const batch = records.batches.find((one) => one.row === row);
      expect([batch?.counts[ready], batch?.dispatched]).toEqual([null, null]);
    }
  });
});
