import { describe, expect, it } from "vitest";
import { builtInTimetable, checkedRecords, readRecords } from "../../src/core";
import { dayArgument } from "../../src/door/arguments";
import { decimalMark } from "../../src/door/decimal-mark";
import { localeOrder } from "../../src/door/locale-order";
import { asExpected, MESSY_SAMPLES, messySample } from "./messy-sample";

describe.each(MESSY_SAMPLES)("the messy sample %s", (folder) => {
  const sample = messySample(folder);
  const { expected, grid } = sample;
  const timetable = builtInTimetable();
  const asOf = dayArgument("asOf", expected.asOf, () => null);
  const records = readRecords(grid, {
    stepNames: timetable.methods.flatMap(({ steps }) => steps.map(({ name }) => name)),
    asOf,
    localeOrder: localeOrder(expected.locale),
    decimalMark: decimalMark(expected.locale),
    told: new Map(),
  });
  const check = checkedRecords(records, { timetable, faults: [] }, asOf);
  const listed = check.troubles.map(({ row, found }) => ({ row, found }));

  it("reads to the batches that a careful clerk reads, cell by cell", () => {
    const read = asExpected(records);
    const wanted = expected.batches.map(({ nameless, ...batch }) =>
      nameless ? { ...batch, name: read.find(({ name }) => name.startsWith("Row "))?.name } : batch,
    );
    expect(read).toEqual(wanted);
  });

  it("lists every cell that is not plainly written", () => {
    for (const cell of expected.mustBeListed) {
      expect(listed, JSON.stringify(cell)).toContainEqual({
        row: sample.rowOf(cell),
        found: cell.found,
      });
    }
  });

  it("says which columns were filled down", () => {
    for (const { column } of expected.mustBeSaid ?? []) {
      expect(check.troubles.some((one) => one.column === column && one.row === null)).toBe(true);
    }
  });

  it("reads no sum, heading or note as a batch", () => {
    const rows = new Set(records.batches.map(({ row }) => row));
    for (const other of expected.notBatches ?? []) {
      expect(rows.has(sample.rowOf(other)), JSON.stringify(other)).toBe(false);
    }
  });

  it("accounts for every row of the range", () => {
    const { heading, used, leftOut, notBatches, blank } = records.rows;
    expect(heading + used + leftOut + notBatches + blank).toBe(grid.rowCount);
  });
});
