import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { askTable } from "../support/ask";
import { turnedRows } from "../support/turned-rows";

const AS_OF = "2026-11-25";
const TIMETABLE = [
  ["Method", "Step", "After", "From day", "Usual day", "By day", "Counted", "Needs"],
  ["Plain", "Sowing", "", 0, 0, 0, "yes", "bag 1"],
  ["Plain", "Grafting", "Sowing", 80, 90, 100, "yes", "scion 1; strip 40 cm; plate 0.04"],
];
const HEADER = ["Batch", "Sown", "Seeds sown", "Grafted on"];
const needs = (batches: unknown[][], days = 30) =>
  askTable("WORK_NEEDS", [[HEADER, ...batches], TIMETABLE, AS_OF, days]);

const batches = fc
  .array(fc.tuple(fc.integer({ min: 1, max: 400 }), fc.integer({ min: 1, max: 28 })), {
    minLength: 1,
    maxLength: 12,
  })
  .map((rows) =>
    rows.map(([plants, day], at) => [
      `B${at}`,
      `2026-09-${String(day).padStart(2, "0")}`,
      plants,
      "",
    ]),
  );
/** By item; what is bought by the metre in centimetres, as the steps say it. */
const amounts = (rows: Record<string, unknown>[]) =>
  new Map(
    rows.map(({ Item, Amount, Unit }) => [
      Item,
      Math.round(Number(Amount) * (Unit === "m" ? 100 : 1)),
    ]),
  );

describe("WORK_NEEDS", () => {
  it("adds up, over all tasks ahead, to plants times the need of each", () => {
    fc.assert(
      fc.property(batches, (rows) => {
        const plants = rows.reduce((sum, row) => sum + Number(row[2]), 0);
        // Grafting begins 80 days after sowing: by 17 December for the last, within 30 days.
        const found = amounts(needs(rows));
        expect(found.get("scion")).toBe(plants);
        expect(found.get("strip")).toBe(plants * 40);
        // 25 plants a plate; a part of one is a whole one.
        expect(found.get("plate")).toBe(Math.ceil(plants / 25));
      }),
      { numRuns: 100 },
    );
  });

  it("answers alike whatever the order of the batches", () => {
    fc.assert(
      fc.property(turnedRows(batches), ([rows, other]) => {
        expect(needs(other)).toEqual(needs(rows));
      }),
      { numRuns: 100 },
    );
  });

  it("never needs less for more days ahead, or for one batch more", () => {
    fc.assert(
      fc.property(batches, fc.integer({ min: 0, max: 40 }), (rows, days) => {
        const now = amounts(needs(rows, days));
        for (const more of [
          needs(rows, days + 5),
          needs([...rows, ["More", "2026-09-01", 10, ""]], days),
        ]) {
          const then = amounts(more);
          for (const [item, amount] of now) {
            expect(then.get(item) ?? 0).toBeGreaterThanOrEqual(amount);
          }
        }
      }),
      { numRuns: 50 },
    );
  });

  // What a planned sowing needs is what is to be bought, and it was not in it.
  it("counts the plants written down for a planned day, from their step on", () => {
    const planned = [["P1", "2026-12-10", 77, ""]];
    expect(amounts(needs(planned)).get("bag")).toBe(77);
    const due = askTable("BATCH_DUE", [[HEADER, ...planned], TIMETABLE, AS_OF, 30]);
    expect(due.map(({ Task, Plants }) => [Task, Plants])).toEqual([["Sowing", 77]]);
    const columns = ["Batch", "From lot", "Sown", "Seeds sown", "Grafted on", "Grafts made"];
    const graft = ["P2", "L1", "2026-09-20", "", "2026-12-12", 50];
    const rows = askTable("WORK_NEEDS", [[columns, graft], TIMETABLE, AS_OF, 30]);
    expect(amounts(rows).get("scion")).toBe(50);
  });
});
