import { describe, expect, it } from "vitest";
import { cleanTable } from "../../src/checks/records/clean-sheet";
import { sheetsFor } from "../../src/checks/records/combination";
import { differences, outcomeOf } from "../../src/checks/records/differences";
import { type Listed, type Reading, readSheet } from "../../src/checks/records/reading";
import type { Batch } from "../../src/core/records/batch";

// The check of the reader is itself checked: a reading that is spoilt on purpose must be found out.

const { clean, messy } = sheetsFor(
  { seed: 1, batches: 20, habits: ["title lines above", "columns in another order"] },
  cleanTable("."),
);
const right = readSheet(clean);
const read = readSheet(messy);
const SECOND = read.records?.batches[1] as Batch;

function spoilt(change: (batches: readonly Batch[]) => readonly Batch[]): Reading {
  if (read.records === null) throw new Error("the messy sheet was refused");
  return { ...read, records: { ...read.records, batches: change(read.records.batches) } };
}

function withSecond(change: Partial<Batch>): Reading {
  return spoilt((all) => all.map((batch) => (batch === SECOND ? { ...batch, ...change } : batch)));
}

function saying(reading: Reading, said: Partial<Listed>): Reading {
  const listed = { row: null, column: "", found: "", trouble: "Doubtful", ...said };
  return { ...reading, listed: [...reading.listed, listed] };
}

const outcome = (reading: Reading) => outcomeOf(differences(right, reading));

describe("the differences between two readings", () => {
  it("are none where the messy sheet was read as the clean one", () => {
    expect(right.records?.batches).toHaveLength(20);
    expect(differences(right, read)).toEqual([]);
  });

  it.each<[string, Reading]>([
    ["a batch that went lost", spoilt((all) => all.slice(1))],
    ["a batch too many", spoilt((all) => [...all, { ...SECOND, row: 999 }])],
    ["two batches in each other's row", spoilt((all) => swapped(all))],
    ["another name", withSecond({ name: "Total" })],
    ["another fact", withSecond({ variety: "Bay 2" })],
    ["another count", withSecond({ counts: SECOND.counts.map((count) => (count ?? 0) + 1) })],
    ["a count that is 0, not blank", withSecond({ counts: SECOND.counts.map((n) => n ?? 0) })],
    ["another day", withSecond({ days: SECOND.days.map(() => null) })],
    ["plants culled", withSecond({ culled: 12_345 })],
    ["plants given", withSecond({ given: 12_345 })],
    ["a closed batch", withSecond({ closed: !SECOND.closed })],
  ])("are silent for %s that nothing tells of", (_, reading) => {
    expect(outcome(reading)).toBe("silent");
  });

  it("are listed where BATCH_CHECK names the cell, the row or the column, and nothing else", () => {
    const wrong = withSecond({ variety: "Bay 2" });
    const { row } = SECOND;
    expect(outcome(saying(wrong, { row, column: "Variety" }))).toBe("listed");
    expect(outcome(saying(wrong, { row, column: "" }))).toBe("listed");
    expect(outcome(saying(wrong, { row: null, column: "Variety" }))).toBe("listed");
    expect(outcome(saying(wrong, { row, column: "Place" }))).toBe("silent");
    expect(outcome(saying(wrong, { row: row + 1, column: "Variety" }))).toBe("silent");
    expect(outcome(saying(wrong, { row: null, column: "" }))).toBe("silent");
  });

  it("are not listed by what the clean sheet is told of, too", () => {
    const wrong = saying(withSecond({ variety: "Bay 2" }), { row: SECOND.row, column: "Variety" });
    const cleanRow = right.records?.batches[1]?.row ?? 0;
    const saidBefore = saying(right, { row: cleanRow, column: "Variety" });
    expect(outcomeOf(differences(saidBefore, wrong))).toBe("silent");
  });

  it("can't be had where rows went lost from the tally", () => {
    if (read.records === null) throw new Error("the messy sheet was refused");
    const rows = { ...read.records.rows, blank: read.records.rows.blank + 1 };
    expect(() =>
      differences(right, { ...read, records: { ...read.records, rows } } as Reading),
    ).toThrow("rows tallied");
  });
});

function swapped(all: readonly Batch[]): readonly Batch[] {
  const [first, second, ...others] = all as [Batch, Batch, ...Batch[]];
  return [{ ...first, row: second.row }, { ...second, row: first.row }, ...others];
}
