import fc from "fast-check";
import { describe, expect, it } from "vitest";
import * as text from "../../src/sentences/made/records";
import { askRows } from "../support/ask";

/**
 * What an answer can't use it names. Batches of a method that can't be read are left out: then the
 * answer is that of a table without them, and it names them.
 */
const AS_OF = "2026-11-25";
const HEAD = [
  ...["Batch", "Variety", "Method", "Place", "Sown", "Seeds sown", "Grafted on", "Grafts made"],
  ...["Takes counted on", "Takes", "Ready on", "Ready plants", "Closed"],
];
const METHOD = "Cocoa cleft graft";
type Row = readonly (string | number)[];
const row = (name: string, variety: string, place: string, ...cells: Row): Row => [
  ...[name, variety, METHOD, place],
  ...cells,
];
const BATCHES: readonly Row[] = [
  row(
    "A1",
    "Alba",
    "Bay 1",
    "2025-11-01",
    200,
    "2026-02-01",
    150,
    "2026-03-05",
    120,
    "2026-05-20",
    110,
    "yes",
  ),
  row(
    "A2",
    "Alba",
    "Bay 1",
    "2025-12-01",
    220,
    "2026-03-02",
    160,
    "2026-04-05",
    100,
    "2026-06-25",
    90,
    "yes",
  ),
  row(
    "A3",
    "Nera",
    "Bay 2",
    "2026-01-05",
    180,
    "2026-04-04",
    140,
    "2026-05-06",
    115,
    "2026-07-28",
    101,
    "",
  ),
  row(
    "A4",
    "Nera",
    "Bay 2",
    "2026-04-01",
    210,
    "2026-07-02",
    170,
    "2026-08-04",
    131,
    "2026-10-25",
    120,
    "",
  ),
  row("A5", "Alba", "Bay 1", "2026-05-10", 190, "2026-08-10", 150, "2026-09-12", 118, "", "", ""),
  row("A6", "Alba", "Bay 3", "2026-06-01", 200, "2026-09-01", 155, "2026-10-03", 127, "", "", ""),
  row("A7", "Nera", "Bay 3", "2026-07-15", 200, "2026-10-14", 149, "", "", "", "", ""),
  row("A8", "Rossa", "Bay 1", "2026-08-20", 230, "2026-11-18", 180, "", "", "", "", ""),
  row("A9", "Rossa", "Bay 2", "2026-09-01", 205, "", "", "", "", "", "", ""),
  row("B1", "Alba", "Bay 2", "2026-10-10", 199, "", "", "", "", "", "", ""),
  row("B2", "Nera", "Bay 1", "2026-11-01", 240, "", "", "", "", "", "", ""),
  row("B3", "Rossa", "Bay 3", "2026-11-20", 150, "", "", "", "", "", "", ""),
];
const isOpen = (batch: Row) => batch[12] === "";
const ORDERS = [
  ["Order", "Variety", "Wanted", "By"],
  ["O1", "Alba", 150, "2026-12-20"],
  ["O2", "Nera", 260, "2027-03-01"],
  ["O3", "", 90, "2027-01-15"],
];
const CREW = [
  ["Person", "Hours a day"],
  ["Ana", 6],
];
const PLACES = [
  ["Place", "Holds"],
  ["Bay 1", 500],
];
const PRICES = [
  ["Item", "Price", "Per"],
  ["seed", 0.1, ""],
];

/** Every function that reads methods, how it is asked, and which batches can be lacking in it. */
const ASKED: readonly (readonly [
  string,
  (records: unknown) => unknown[],
  (batch: Row) => boolean,
])[] = [
  ["BATCH_DUE", (records) => [records, "", AS_OF, 90], isOpen],
  ["BATCH_STEPS", (records) => [records, "", AS_OF], () => true],
  ["BATCH_READY", (records) => [records, "", AS_OF], () => true],
  ["BATCH_LOOKBACK", (records) => [records, "", AS_OF, 92], () => true],
  ["ORDER_OUTLOOK", (records) => [ORDERS, records, "", AS_OF], () => true],
  [
    "ORDER_PLAN",
    (records) => [150, "2027-12-01", "", METHOD, 0.8, records, "", AS_OF, "Alba"],
    () => true,
  ],
  ["WORK_NEEDS", (records) => [records, "", AS_OF, 60], isOpen],
  ["WORK_PLAN", (records) => [records, "", CREW, AS_OF, 14], isOpen],
  ["PLACE_LOAD", (records) => [records, "", PLACES, AS_OF], () => true],
  ["BATCH_COST", (records) => [records, "", PRICES, AS_OF], () => true],
];
const METHODS_UNREAD = {
  "Jackfruit marcot": (batches: readonly string[]) => text.noSuchMethod({ batches }),
  Cleft: (batches: readonly string[]) => text.severalMethods({ batches }),
} as const;

const table = (rows: readonly Row[]) => [HEAD, ...rows];
const methodOf = (batch: Row, method: string): Row =>
  batch.map((cell, at) => (at === 2 ? method : cell));
const subsets = fc
  .tuple(
    fc.subarray([...BATCHES], { minLength: 1, maxLength: 10 }),
    fc.constantFrom("Jackfruit marcot", "Cleft"),
  )
  .filter(([subset]) => BATCHES.some((batch) => isOpen(batch) && !subset.includes(batch)));

describe("batches of a method that can't be read", () => {
  it.each(ASKED)("%s answers as without them, and names each", (name, args, canLack) => {
    fc.assert(
      fc.property(subsets, ([subset, method]) => {
        const damaged = BATCHES.map((batch) =>
          subset.includes(batch) ? methodOf(batch, method) : batch,
        );
        const lacking = subset
          .filter(canLack)
          .map(([batch]) => String(batch))
          .sort();
        const say = METHODS_UNREAD[method as keyof typeof METHODS_UNREAD];
        const sentence = lacking.length === 0 ? "" : say(lacking);
        const found = askRows(name, args(table(damaged)));
        const without = askRows(
          name,
          args(table(BATCHES.filter((batch) => !subset.includes(batch)))),
        );
        const told = found
          .flat()
          .filter((cell) => typeof cell === "string")
          .join(" ");
        if (sentence !== "") expect(told).toContain(sentence);
        // What is left of the answer is the other one.
        const bare = (rows: unknown[][]) =>
          rows
            .map((cells) =>
              cells.map((cell) =>
                typeof cell === "string" ? cell.replace(sentence, "").trim() : cell,
              ),
            )
            .filter((cells) => cells.some((cell) => cell !== ""));
        expect(bare(found)).toEqual(bare(without));
      }),
      { numRuns: 12 },
    );
  });

  it("are rows of their own in BATCH_STAGES, and of the closed ones it names each", () => {
    const damaged = BATCHES.map((batch) => methodOf(batch, "Jackfruit marcot"));
    const rows = askRows("BATCH_STAGES", [table(damaged), "", AS_OF]);
    const told = rows.map(([batch]) => batch);
    for (const batch of BATCHES.filter(isOpen)) expect(told).toContain(batch[0]);
    expect(rows.at(-1)?.[0]).toBe(text.noSuchMethod({ batches: ["A1", "A2"] }));
  });

  it("are named up to ten, then counted with the place to look", () => {
    const damaged = BATCHES.map((batch) => methodOf(batch, "Jackfruit marcot"));
    const rows = askRows("BATCH_STEPS", [table(damaged), "", AS_OF]);
    const names = BATCHES.map(([batch]) => String(batch)).slice(0, 10);
    expect(rows.at(-1)?.[0]).toBe(
      text.noSuchMethod({ batches: [...names, text.moreOfCell({ batches: 2 })] }),
    );
  });

  it("are used where methods don't matter", () => {
    const damaged = BATCHES.map((batch, at) => (at % 2 === 0 ? methodOf(batch, "Cleft") : batch));
    for (const [name, ...more] of [["TAKE_SUMMARY", "Variety"], ["BATCH_BALANCE"]] as const) {
      expect(askRows(name, [table(damaged), ...more])).toEqual(
        askRows(name, [table(BATCHES), ...more]),
      );
    }
  });
});

describe("batches without a variety or a name", () => {
  it.each(ASKED)("%s has as many of them", (name, args) => {
    fc.assert(
      fc.property(fc.subarray([...BATCHES], { minLength: 1 }), fc.nat(1), (subset, blanked) => {
        const nameless = BATCHES.map((batch) =>
          subset.includes(batch) ? batch.map((cell, at) => (at === blanked ? "" : cell)) : batch,
        );
        const rowOf = (batch: Row) =>
          blanked === 0 ? `Row ${BATCHES.indexOf(batch) + 2}` : String(batch[0]);
        const told = (rows: unknown[][]) => {
          const cells = rows
            .flat()
            .map((cell) => (cell instanceof Date ? cell.toISOString() : String(cell)));
          return (batch: string) => cells.filter((cell) => cell === batch).length;
        };
        const before = told(askRows(name, args(table(BATCHES))));
        const after = told(askRows(name, args(table(nameless))));
        for (const batch of subset) expect(after(rowOf(batch))).toBe(before(String(batch[0])));
      }),
      { numRuns: 8 },
    );
  });
});
