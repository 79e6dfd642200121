import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { balances, builtInTimetable } from "../../../src/core";
import { balanceIn, type LotRow, lostAtStages, lotsTable } from "./lots-table";

const RUNS = { numRuns: 100, seed: 20261125 };
const maybe = <T>(value: fc.Arbitrary<T>) => fc.option(value, { nil: null, freq: 3 });

/** Batches that name any lot: one of the others, themselves, one that isn't there, or none. */
const genealogy: fc.Arbitrary<LotRow[]> = fc.integer({ min: 1, max: 14 }).chain((size) =>
  fc.tuple(
    ...Array.from({ length: size }, (_, index) =>
      fc.record({
        name: fc.constant(nameOf(index)),
        from: fc.oneof(
          { weight: 2, arbitrary: fc.constant("") },
          { weight: 6, arbitrary: fc.nat(size - 1).map(nameOf) },
          { weight: 1, arbitrary: fc.constant("Lot 99") },
        ),
        days: fc.array(maybe(fc.nat(600)), { minLength: 5, maxLength: 5 }),
        counts: fc.array(maybe(fc.nat(400)), { minLength: 5, maxLength: 5 }),
        culled: maybe(fc.nat(300)),
        dispatched: maybe(fc.nat(300)),
        closed: fc.boolean(),
      }),
    ),
  ),
);

function nameOf(index: number): string {
  return `L${String.fromCharCode(65 + index)}-${index + 1}`;
}

/** Whether a batch comes round to itself by its lots. */
function isInCircle(rows: readonly LotRow[], start: LotRow): boolean {
  let one: LotRow | undefined = start;
  for (let step = 0; step < rows.length; step += 1) {
    one = rows.find(({ name }) => name === one?.from);
    if (one === undefined) return false;
    if (one === start) return true;
  }
  return false;
}

function firstCount({ counts }: LotRow): number {
  return counts?.find((count) => count !== null) ?? 0;
}

describe("the balance of batches and lots", () => {
  it("accounts for every plant that came in, whatever the lots", () => {
    fc.assert(
      fc.property(genealogy, (rows) => {
        const records = lotsTable(rows);
        const [, ...batches] = records.batches;
        expect(batches.map(({ name }) => name)).toEqual(rows.map(({ name }) => name));
        for (const batch of batches) {
          const balance = balanceIn(records, batch);
          if (balance === null) {
            expect(batch.counts.every((count) => count === null)).toBe(true);
            continue;
          }
          const { started, standing, given, dispatched, culled, unexplained } = balance;
          const lost = lostAtStages(balance);
          expect(standing + given + dispatched + culled + lost + unexplained).toBe(started);
          for (const one of balance.losses) expect(one.lost).toBeGreaterThanOrEqual(0);
          expect(standing).toBeGreaterThanOrEqual(0);
          if (batch.closed) expect(standing).toBe(0);
        }
      }),
      RUNS,
    );
  });

  it("says that a lot gave what the batches taken from it started with", () => {
    fc.assert(
      fc.property(genealogy, (rows) => {
        const [, ...batches] = lotsTable(rows).batches;
        rows.forEach((row, index) => {
          const children = rows.filter(
            (child) => child.from === row.name && !isInCircle(rows, child),
          );
          const given = children.reduce((sum, child) => sum + firstCount(child), 0);
          expect([row.name, batches[index]?.given]).toEqual([row.name, given]);
        });
      }),
      RUNS,
    );
  });

  it("names every batch in a circle of lots, and every lot that isn't there", () => {
    fc.assert(
      fc.property(genealogy, (rows) => {
        const { troubles, batches: all } = lotsTable(rows);
        const batches = all.slice(1);
        const rowsWith = (which: string) =>
          troubles.filter(({ code }) => code === which).map(({ row }) => row);
        const rowsOf = (is: (row: LotRow) => boolean) =>
          rows.flatMap((row, index) => (is(row) ? [batches[index]?.row] : []));
        expect(rowsWith("lots-in-a-circle")).toEqual(rowsOf((row) => isInCircle(rows, row)));
        expect(rowsWith("no-such-lot")).toEqual(rowsOf(({ from }) => from === "Lot 99"));
      }),
      RUNS,
    );
  });

  it("names every lot that gave more than it had, and to whom", () => {
    fc.assert(
      fc.property(genealogy, (rows) => {
        const records = lotsTable(rows);
        const { troubles, batches } = records;
        for (const batch of batches) {
          const balance = balanceIn(records, batch);
          if (balance === null || balance.given === 0 || balance.shouldStand >= 0) continue;
          const said = troubles.find(
            ({ row, code }) => row === batch.row && code === "lot-overdrawn",
          );
          expect(said).toMatchObject({ taken: balance.given });
          const child = rows.find((one) => one.from === batch.name && !isInCircle(rows, one));
          expect(said).toMatchObject({ batches: expect.arrayContaining([child?.name]) });
        }
      }),
      RUNS,
    );
  });

  it("shows the same sums in the table that people see", () => {
    fc.assert(
      fc.property(genealogy, (rows) => {
        const found = balances(lotsTable(rows), builtInTimetable()).rows;
        expect(found).toHaveLength(rows.length + 1);
        for (const { started, culled, given, dispatched, shouldStand, remarks } of found) {
          if (started === null) expect(remarks).toEqual([{ code: "no-plants-counted" }]);
          else {
            const left = started - (culled ?? 0) - (given ?? 0) - (dispatched ?? 0);
            expect(shouldStand).toBe(left);
          }
        }
      }),
      RUNS,
    );
  });
});
