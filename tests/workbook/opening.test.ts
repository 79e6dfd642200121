import { describe, expect, it } from "vitest";
import { openNursery, SMALL_HEADER, smallRow, tab } from "./nursery";

const WAGES = ["Who", "Month", "Paid"];
const wages = (rows: number) =>
  tab("Pay", [WAGES, ...Array.from({ length: rows }, (_, at) => [`Hand ${at}`, "May", 300 + at])]);
const records = (rows: number) =>
  tab("Records", [
    SMALL_HEADER,
    ...Array.from({ length: rows }, (_, at) =>
      smallRow({ Batch: `B${at}`, Variety: "Amberlow", Sown: "2026-07-20", "Seeds sown": 100 }),
    ),
  ]);

/** Cells that opening the sidebar reads. */
function cellsRead(rows: number): number {
  const nursery = openNursery([records(rows), wages(rows)]);
  nursery.w.meter.reset();
  const { candidates } = nursery.ask("sidebarOpen", null);
  expect(candidates).toEqual([{ tab: "Records", rows }]);
  return nursery.w.meter.cellsRead;
}

// Opening the page read every cell of every tab, wages among them, to tell which holds batches.
describe("opening the sidebar", () => {
  it("reads the heads of tabs, and of a tab with a header of batches 30 rows", () => {
    const heads = 11 * (SMALL_HEADER.length + WAGES.length);
    // The first cell of a tab tells whether it is ours.
    const firstCells = 2;
    expect(cellsRead(300)).toBe(heads + 30 * SMALL_HEADER.length + firstCells);
    expect(cellsRead(900)).toBe(cellsRead(300));
  });

  it("reads nothing twice of a tab that ends in its head", () => {
    const nursery = openNursery([records(3)]);
    nursery.w.meter.reset();
    nursery.ask("sidebarOpen", null);
    expect(nursery.w.meter.cellsRead).toBe(4 * SMALL_HEADER.length + 1);
  });

  it("takes a long log for no more than the table of its batches", () => {
    const line = (at: number) => ["2026-11-10", `B${at % 4}`, "Sowing", 10];
    const log = tab("Diary", [
      ["Day", "Batch", "Step", "Count"],
      ...Array.from({ length: 70 }, (_, at) => line(at)),
    ]);
    const { candidates } = openNursery([log, records(12)]).ask("sidebarOpen", null);
    expect(candidates).toEqual([
      { tab: "Records", rows: 12 },
      { tab: "Diary", rows: 70 },
    ]);
  });
});
