import fc from "fast-check";
import { expect } from "vitest";

/** Rows, and the same rows in another order: what is answered of both must be alike. */
export function turnedRows<Row>(rows: fc.Arbitrary<Row[]>): fc.Arbitrary<readonly [Row[], Row[]]> {
  return rows.chain((some) =>
    fc.tuple(
      fc.constant(some),
      fc.shuffledSubarray(some, { minLength: some.length, maxLength: some.length }),
    ),
  );
}

/** Tries whether an answer is the same whatever the order of the rows it is asked of. */
export function expectAlikeInAnyOrder<Row>(
  rows: fc.Arbitrary<Row[]>,
  answer: (rows: Row[]) => unknown,
): void {
  fc.assert(
    fc.property(turnedRows(rows), ([some, turned]) => {
      expect(answer(turned)).toEqual(answer(some));
    }),
    { numRuns: 100 },
  );
}
