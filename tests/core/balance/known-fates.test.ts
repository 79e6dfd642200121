import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { balanceIn, type LotRow, lotsTable } from "./lots-table";

/** Where the plants of a lot went, as somebody who saw it all would tell. */
interface Fate {
  readonly culled: number;
  readonly givenBefore: readonly number[];
  /** Gone before the count without being written down. */
  readonly lost: number;
  readonly givenAfter: readonly number[];
  readonly dispatched: number;
  readonly standing: number;
}

const some = fc.nat(120);
const fate: fc.Arbitrary<Fate> = fc.record({
  culled: some,
  givenBefore: fc.array(fc.integer({ min: 1, max: 60 }), { maxLength: 3 }),
  lost: some,
  givenAfter: fc.array(fc.integer({ min: 1, max: 60 }), { maxLength: 3 }),
  dispatched: some,
  standing: some,
});

const COUNT_DAY = 100;
const sum = (numbers: readonly number[]) => numbers.reduce((total, one) => total + one, 0);

/** The rows that a nursery would have written of such a lot, and of the batches taken from it. */
function rowsOf(
  { culled, givenBefore, lost, givenAfter, dispatched, standing }: Fate,
  closed: boolean,
): LotRow[] {
  const counted = sum(givenAfter) + dispatched + standing;
  const started = counted + culled + sum(givenBefore) + lost;
  const child = (count: number, day: number, index: number): LotRow => ({
    name: `G${day}-${index}`,
    from: "R-1",
    days: [null, null, day],
    counts: [null, null, count],
  });
  return [
    { name: "R-1", days: [0, COUNT_DAY], counts: [started, counted], culled, dispatched, closed },
    ...givenBefore.map((count, index) => child(count, COUNT_DAY - 1 - index, index)),
    // On the day of the count itself plants are taken once they are counted.
    ...givenAfter.map((count, index) => child(count, COUNT_DAY + index, index)),
  ];
}

describe("the balance of a lot whose plants' fates are known", () => {
  it("finds those that did not come up, though nobody wrote it down, and those that stand", () => {
    fc.assert(
      fc.property(fate, (truth) => {
        const records = lotsTable(rowsOf(truth, false));
        expect(balanceIn(records, records.batches[1])).toMatchObject({
          given: sum(truth.givenBefore) + sum(truth.givenAfter),
          culled: truth.culled,
          dispatched: truth.dispatched,
          standing: truth.standing,
          unexplained: 0,
          losses: [{ stage: "not-come-up", lost: truth.lost }],
        });
      }),
      { numRuns: 300, seed: 20261125 },
    );
  });

  it("finds those that still stood when the lot was closed unexplained, too", () => {
    fc.assert(
      fc.property(fate, (truth) => {
        const records = lotsTable(rowsOf(truth, true));
        expect(balanceIn(records, records.batches[1])).toMatchObject({
          standing: 0,
          unexplained: truth.standing,
          losses: [{ stage: "not-come-up", lost: truth.lost }],
        });
      }),
      { numRuns: 100, seed: 20261125 },
    );
  });
});
