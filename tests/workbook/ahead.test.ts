import { describe, expect, it } from "vitest";
import { batchesBehind } from "../../src/sidebar/ahead/month-ranges";
import { type Nursery, openNursery, smallRecords, smallRow } from "./nursery";

/** Months and varieties whose count is not that of the batches behind them. */
function unlike(nursery: Nursery): string[] {
  const answer = nursery.ask("sidebarAhead", null);
  return answer.rows.flatMap((row) => {
    const behind = batchesBehind(answer, row).length;
    return behind === row.batches
      ? []
      : [`${row.month} ${row.variety}: ${row.batches} told, ${behind} behind`];
  });
}

const ready = smallRow({
  ...{ Batch: "B3", Variety: "Amberlow", "Grafted on": "2026-06-01", "Grafts made": 50 },
  ...{ "Ready on": "2026-10-20", "Ready plants": 40 },
});
// Sown in spring, and nothing written down since.
const overdue = smallRow({ Batch: "B4", Sown: "2026-03-02", "Seeds sown": 60 });
const uncounted = smallRow({ Batch: "B5", Variety: "Corvane", "Grafted on": "2026-10-01" });

describe("the batches behind a month", () => {
  // People saw "9 batches" on the bar of this month and none behind it.
  it("are as many as its bar says, for batches that were ready long ago too", () => {
    const nursery = openNursery([smallRecords(ready, overdue, uncounted)]).ready();
    expect(unlike(nursery)).toEqual([]);
    const { batches } = nursery.ask("sidebarAhead", null);
    const b3 = batches.find(({ batch }) => batch === "B3");
    expect(b3).toMatchObject({ month: "now", readyLikely: "2026-10-20", likely: 40 });
    // What was never counted adds nothing to a bar.
    expect(batches.map(({ batch }) => batch)).not.toContain("B5");
  });

  it("add up in what is likely: to their variety, to all of it and to all together", () => {
    const answer = openNursery([smallRecords(ready, overdue, uncounted)])
      .ready()
      .ask("sidebarAhead", null);
    expect(answer.rows.filter(({ month }) => month === "all").length).toBeGreaterThan(1);
    for (const row of answer.rows.filter(({ month }) => month === "all" || month === "now")) {
      const behind = batchesBehind(answer, row).map(({ likely }) => likely ?? Number.NaN);
      expect(behind.reduce((sum, likely) => sum + likely, 0)).toBe(row.likely);
    }
  });

  it("are as many in the sample nursery", () => {
    expect(unlike(openNursery().ready())).toEqual([]);
  });
});
