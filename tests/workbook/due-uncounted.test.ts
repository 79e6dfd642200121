import { describe, expect, it } from "vitest";
import { countBlank } from "../../src/sentences/made/due-rows";
import { countMissing } from "../../src/sentences/made/troubles";
import type { Asked } from "../../src/wording/writing-codes";
import { rowCode } from "../../src/workbook/due/row-state";
import { dueRow, dueState, enterDue, takesIn } from "./due-list";
import { type Nursery, openNursery, smallNursery, smallRecords, smallRow } from "./nursery";
import { asksText, writtenText } from "./row-texts";

const DAY = "2026-11-25";

async function ticked(nursery: Nursery): Promise<number> {
  const row = dueRow(nursery, "B1");
  await enterDue(nursery, row, { Done: "TRUE" });
  return row;
}

describe("a count that is ticked without a number", () => {
  const notCounted: Asked = { code: "notCounted", step: "Take count", batch: "B1" };

  // The day was written at once, and the takes were never counted: nobody had asked.
  it("is asked about in its row, before anything is written", async () => {
    const nursery = smallNursery();
    const before = nursery.snapshot("Records");
    const row = await ticked(nursery);
    expect(nursery.snapshot("Records")).toBe(before);
    expect(dueState(nursery, row)).toBe(asksText(notCounted));
    await enterDue(nursery, row, { Done: "FALSE" });
    expect(dueState(nursery, row)).toBe("");
  });

  it("is written with the number once that is entered", async () => {
    const nursery = smallNursery();
    const row = await ticked(nursery);
    await enterDue(nursery, row, { Count: "60" });
    expect(takesIn(nursery)[0]).toEqual([DAY, 60]);
    expect(dueState(nursery, row)).toBe(writtenText("Records!L2", "Records!M2"));
  });

  it("is written without one after a yes, once, and then stands in Check", async () => {
    const nursery = smallNursery();
    const row = await ticked(nursery);
    await enterDue(nursery, row, { "Yes, write it": "TRUE" });
    expect(takesIn(nursery)[0]).toEqual([DAY, ""]);
    expect(dueState(nursery, row)).toContain(countBlank());
    nursery.w.call("writeTicked");
    expect(rowCode(String(dueState(nursery, row)))).toBe("written");
    const listed = nursery.ask("sidebarCheck", null).rows;
    expect(listed.map(({ rows, column, trouble }) => [rows, column, trouble])).toEqual([
      [[2], "Takes", countMissing()],
    ]);
    await enterDue(nursery, row, { Count: "60" });
    expect(takesIn(nursery)[0]).toEqual([DAY, 60]);
  });

  it("is none of a job at which nothing is counted", async () => {
    const grafted = { "Grafted on": "2026-11-11", "Grafts made": 50 };
    const nursery = openNursery([smallRecords(smallRow({ Batch: "B3", ...grafted }))]).ready();
    const row = dueRow(nursery, "B3", "First release");
    await enterDue(nursery, row, { Done: "TRUE" });
    expect(rowCode(String(dueState(nursery, row)))).toBe("written");
  });
});
