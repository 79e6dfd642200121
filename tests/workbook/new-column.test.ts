import { describe, expect, it } from "vitest";
import type { Asked } from "../../src/wording/writing-codes";
import { dueRow, dueState, enterDue } from "./due-list";
import { type Made, type Nursery, openNursery, tab } from "./nursery";
import { asksText, writtenText } from "./row-texts";

const RELEASE = "First release";
const RECORDS: Made[][] = [
  ["Batch", "Grafted on", "Grafts made", "Remarks"],
  ["B1", "2026-11-11", 50, null],
  ["B2", "2026-11-12", 60, "dry"],
];
const small = (...more: Made[][]) =>
  openNursery([tab("Records", [...RECORDS, ...more])], { newRows: 300 }).ready();
const wish = (
  batch: string,
  more: { readonly sure?: readonly string[]; readonly notDone?: boolean } = {},
) => ({
  ...{
    batch,
    task: RELEASE,
    day: "2026-11-25",
    count: null,
    who: "Tavi",
    note: "",
    sure: [],
    ...more,
  },
});
const asked: Asked = { code: "newColumn", step: RELEASE, cell: "Records!E1" };
const column = (nursery: Nursery) => nursery.values("Records").map((row) => row[4]);

// A step that the table had no column for could not be ticked at all: it was but a reminder.
describe("a step without a column", () => {
  it("is given one when that is agreed to, and written there", () => {
    const nursery = small();
    const before = nursery.snapshot("Records");
    const answer = nursery.ask("sidebarRecord", wish("B1"));
    expect([answer.asked.map(({ ask }) => ask), answer.written]).toEqual([[asked], []]);
    expect(nursery.snapshot("Records")).toBe(before);
    const sure = answer.asked.map(({ id }) => id);
    const { written, logId } = nursery.ask("sidebarRecord", wish("B1", { sure }));
    expect(written.map(({ where }) => where)).toEqual(["Records!E2"]);
    expect(column(nursery)).toEqual([RELEASE, "2026-11-25", ""]);
    const left = nursery
      .ask("sidebarToday", { daysAhead: 7 })
      .tasks.filter(({ task }) => task === RELEASE);
    expect(left.map(({ batch, dayHeader }) => [batch, dayHeader])).toEqual([["B2", RELEASE]]);
    // The next one finds it there, unasked.
    expect(nursery.ask("sidebarRecord", wish("B2", { notDone: true })).asked).toEqual([]);
    nursery.ask("sidebarTakeBack", { logId: logId ?? "" });
    expect(column(nursery).slice(0, 2)).toEqual([RELEASE, ""]);
    expect(nursery.ask("sidebarLastWrites", null).writes.map(({ task }) => task)).toEqual([
      RELEASE,
      RELEASE,
    ]);
    expect(nursery.values("Write log").flat()).toContain("(new column)");
  });

  it("is asked about in its row of the due list, for all rows of it at once", async () => {
    const nursery = small();
    const rows = ["B1", "B2"].map((batch) => dueRow(nursery, batch, RELEASE));
    for (const row of rows) await enterDue(nursery, row, { Done: "TRUE" });
    expect(rows.map((row) => dueState(nursery, row))).toEqual([asksText(asked), asksText(asked)]);
    await enterDue(nursery, rows[0] as number, { "Yes, write it": "TRUE" });
    expect(column(nursery)).toEqual([RELEASE, "2026-11-25", "2026-11-25"]);
    expect(rows.map((row) => dueState(nursery, row))).toEqual([
      writtenText("Records!E2"),
      writtenText("Records!E3"),
    ]);
    await enterDue(nursery, rows[0] as number, { Done: "FALSE" });
    expect(column(nursery)).toEqual([RELEASE, "", "2026-11-25"]);
  });

  it("is given one right of all that the tab holds", () => {
    const nursery = small(["", "", "", ""], ["", "", "", "", "", "a note far right"]);
    const { ask } = nursery.ask("sidebarRecord", wish("B1")).asked[0] ?? {};
    expect(ask).toMatchObject({ code: "newColumn", cell: "Records!G1" });
  });
});
