import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type ReadyRow, readyPlants } from "../../../src/core/projection/ready-plants";
import { timetableOf } from "../timetable/typed-timetable";
import { AS_OF, later, questionOf } from "./nursery";

const COLUMNS = [
  "Batch",
  "Variety",
  "Method",
  "Grafted on",
  "Grafts made",
  "Ready on",
  "Ready plants",
];
/** The rows of one time after the other; those of all times stand last. */
const before = (rows: readonly ReadyRow[]) => rows.filter(({ month }) => month !== "all");

describe("what is likely adds up", () => {
  const anyBatch = fc.record({
    ago: fc.integer({ min: 0, max: 110 }),
    plants: fc.integer({ min: 1, max: 900 }),
    variety: fc.constantFrom("Alba", "Nera", "Rossa", ""),
    method: fc.constantFrom("Plum", "Pear", "Cocoa"),
    isReady: fc.boolean(),
  });
  /** Days that spread over months. */
  const timetable = timetableOf(`
    Method | Step     | After    | From day | Usual day | By day | Counted | Kept of 100
    Plum   | Grafting |          |          |           |        | yes     |
    Plum   | Ready    | Grafting | 20       | 60        | 160    | yes     | 72
    Pear   | Grafting |          |          |           |        | yes     |
    Pear   | Ready    | Grafting | 90       | 90        | 90     | yes     | 90
    Cocoa  | Grafting |          |          |           |        | yes     |
    Cocoa  | Ready    | Grafting | 10       | 30        | 70     | yes     | 60`).timetable;

  it.each([0.5, 0.8, 0.95])("over batches, varieties and months, at level %s", (level) => {
    fc.assert(
      fc.property(fc.array(anyBatch, { minLength: 1, maxLength: 14 }), (batches) => {
        const facts = batches.map(({ ago, plants, variety, method, isReady }, at) => ({
          ...{ Batch: `B-${at}`, Variety: variety, Method: method, "Grafts made": plants },
          "Grafted on": later(AS_OF, -ago),
          ...(isReady ? { "Ready on": later(AS_OF, -ago), "Ready plants": plants } : {}),
        }));
        const found = readyPlants(questionOf(facts, { columns: COLUMNS, timetable, level }));
        const sum = (of: readonly { readonly likely: number }[]) =>
          of.reduce((total, { likely }) => total + likely, 0);
        const all = found.rows.find(({ month, variety }) => month === "all" && variety === null);
        expect(sum(found.batches.flatMap(({ plants }) => plants ?? []))).toBe(all?.likely);
        const groups = [...new Set(found.rows.map(({ variety }) => variety))];
        for (const variety of groups) {
          const own = found.rows.filter((row) => row.variety === variety);
          const together = own.find(({ month }) => month === "all");
          expect(sum(before(own))).toBe(together?.likely);
          if (variety === null) continue;
          const behind = found.batches.filter((one) => one.batch.variety === variety);
          expect(sum(behind.flatMap(({ plants }) => plants ?? []))).toBe(together?.likely);
        }
        let running = 0;
        for (const month of [...new Set(found.rows.map((row) => row.month))]) {
          const rows = found.rows.filter((row) => row.month === month);
          const ofAll = rows.find(({ variety }) => variety === null);
          expect(sum(rows.filter(({ variety }) => variety !== null))).toBe(ofAll?.likely);
          running += ofAll?.likely ?? 0;
          if (month !== "all") expect(ofAll?.likelyByEnd).toBe(running);
        }
        for (const row of found.rows) {
          expect(row.fewest).toBeLessThanOrEqual(row.likely);
          expect(row.likely).toBeLessThanOrEqual(row.most);
          if (row.likelyByEnd === null) continue;
          expect(row.fewestByEnd).toBeLessThanOrEqual(row.likelyByEnd);
          expect(row.likelyByEnd).toBeLessThanOrEqual(row.mostByEnd as number);
        }
      }),
      { numRuns: 25 },
    );
  });
});
