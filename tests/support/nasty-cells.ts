import fc from "fast-check";

/** Texts that have a meaning somewhere, or that trip programs. */
const TEXTS = [
  ...[
    "",
    " ",
    "\n",
    "\u00a0",
    "0",
    "-",
    "Total",
    "TOTALS",
    "Loading...",
    "#REF!",
    "#N/A",
    "#DIV/0!",
  ],
  ...["=1+1", "+1", "-1", "@x", "'007", "1e999", "NaN", "Infinity", "undefined", "null", "TRUE"],
  ...["__proto__", "constructor", "toString", "hasOwnProperty", "length", "<b>x</b>", "a\nb"],
  ...["3/9/26", "13/9/26", "9/13/26", "2026-09-03", "2026-02-30", "3 Sep", "mid March 2026"],
  ...["wk 12 2026", "0000-01-01", "9999-12-31", "29/2", "99999999", "12.5", "-3", "yes", "no"],
  ...["Batch", "Variety", "Grafted on", "Takes", "Step", "After", "Cocoa cleft graft", "Kiwi"],
  ...["Sowing", "Ready", "bag 1", "🌱", "é", "\ud800", "\u202e", "+".repeat(50), "9".repeat(400)],
];

const NUMBERS = [
  ...[0, -0, 1, 2, 100, 46268, 46351, 45474, -1, 0.5, 1e-9, 1e9, 1e15, 1e300, -1e300],
  ...[Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, Number.MAX_SAFE_INTEGER],
];

const DATES = [
  ...[0, Date.UTC(2026, 8, 3), Date.UTC(2026, 10, 25, 13, 5), Date.UTC(1899, 11, 30)],
  ...[Date.UTC(9999, 11, 31), -62_135_596_800_000, 8.64e15, -8.64e15, Number.NaN],
];

export const nastyText = fc.oneof(
  fc.constantFrom(...TEXTS),
  fc.string({ maxLength: 12, unit: "binary" }),
);

export const nastyNumber = fc.oneof(
  fc.constantFrom(...NUMBERS),
  fc.integer({ min: 0, max: 500 }),
  fc.double(),
);

const nastyDate = fc.constantFrom(...DATES).map((milliseconds) => new Date(milliseconds));

/** Anything that a cell of a range could bring. */
export const nastyCell: fc.Arbitrary<unknown> = fc.oneof(
  nastyText,
  nastyNumber,
  fc.boolean(),
  nastyDate,
  fc.constantFrom(null, undefined, ""),
);

/** Rows of anything, some shorter than others; a range has one cell at least. */
export const nastyGrid = fc
  .array(fc.array(nastyCell, { maxLength: 6 }), { minLength: 1, maxLength: 6 })
  .filter((rows) => rows.some((row) => row.length > 0));

/** A day that is plausible in a nursery about 2026, as a cell, typed, or a serial. */
export const plausibleDay: fc.Arbitrary<unknown> = fc
  .integer({ min: 20300, max: 20900 })
  .chain((days) =>
    fc.constantFrom<unknown>(
      new Date(days * 86_400_000),
      new Date(days * 86_400_000).toISOString().slice(0, 10),
      days + 25569,
    ),
  );

export const plausibleCount: fc.Arbitrary<unknown> = fc.integer({ min: 0, max: 400 });

/** Mostly what belongs in a column, now and then anything at all. */
export function mostly(cell: fc.Arbitrary<unknown>): fc.Arbitrary<unknown> {
  return fc.oneof(
    { arbitrary: cell, weight: 6 },
    { arbitrary: fc.constant(""), weight: 3 },
    { arbitrary: nastyCell, weight: 1 },
  );
}
