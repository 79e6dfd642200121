import fc from "fast-check";

/** Rows, and the same rows in another order: what is answered of both must be alike. */
export function turnedRows<Row>(rows: fc.Arbitrary<Row[]>): fc.Arbitrary<readonly [Row[], Row[]]> {
  return rows.chain((some) =>
    fc.tuple(
      fc.constant(some),
      fc.shuffledSubarray(some, { minLength: some.length, maxLength: some.length }),
    ),
  );
}
