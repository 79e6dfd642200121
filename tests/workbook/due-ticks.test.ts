import { describe, expect, it } from "vitest";
import { countBlank } from "../../src/sentences/made/due-rows";
import { written as tasksWritten } from "../../src/sentences/made/menu";
import type { Asked } from "../../src/wording/writing-codes";
import { rowCode } from "../../src/workbook/due/row-state";
import {
  dueCell,
  dueRow,
  dueRows,
  dueState,
  dueValue,
  enterDue,
  NO_TAKES,
  setDue,
  takesIn,
} from "./due-list";
import { type Nursery, openNursery, smallNursery, smallRecords, tab, takesOf } from "./nursery";
import { asksText, notTakenBackText, takenBackText, writtenText } from "./row-texts";

const logged = (nursery: Nursery) =>
  nursery
    .values("Write log")
    .slice(2)
    .map((row) => [row[4], row[8], row[9], row[10]]);
const DAY = "2026-11-25";

async function ticked(nursery: Nursery, count = "60"): Promise<number> {
  const row = dueRow(nursery, "B1");
  await enterDue(nursery, row, { Count: count, Done: "TRUE" });
  return row;
}

const moreThan = (count: number): Asked => ({
  code: "moreThanBefore",
  count,
  before: 80,
  step: "Grafting",
  batch: "B1",
});
const holding = (stands: string, would: string): Asked => ({
  code: "holdsAlready",
  header: "Takes",
  cell: "M2",
  stands,
  would,
});

describe("clearing the box of a task that the list wrote", () => {
  it("takes that write back, and no other", async () => {
    const nursery = smallNursery();
    const before = nursery.snapshot("Records");
    nursery.ask("sidebarRecord", takesOf("B2"));
    const row = await ticked(nursery);
    await enterDue(nursery, row, { Done: "FALSE" });
    expect(nursery.w.editErrors).toEqual([]);
    expect(takesIn(nursery)).toEqual([NO_TAKES, ["2026-11-24", 60]]);
    expect(dueState(nursery, row)).toBe(takenBackText("Records!L2", "Records!M2"));
    expect(dueValue(nursery, "Write", row)).toBe("");
    nursery.ask("sidebarTakeBack", { logId: String(nursery.value("Write log", "A3")) });
    expect(nursery.snapshot("Records")).toBe(before);
    // Ticked once more it is written once more.
    await enterDue(nursery, row, { Done: "TRUE" });
    expect(takesIn(nursery)[0]).toEqual([DAY, 60]);
  });

  it("says why where somebody has gone on with it since", async () => {
    const nursery = smallNursery();
    const row = await ticked(nursery);
    nursery.sheet("Records").getRange("M2").setValue(62);
    await enterDue(nursery, row, { Done: "FALSE" });
    expect(takesIn(nursery)[0]).toEqual([DAY, 62]);
    const why = notTakenBackText({
      code: "changedSince",
      header: "Takes",
      cell: "M2",
      stands: "62",
      wrote: "60",
    });
    expect(dueState(nursery, row)).toBe(why);
    // It is not forgotten when the list is made anew.
    nursery.w.call("refreshDueList");
    expect(dueRows(nursery, ["Written"]).flat()).toContain(why);
  });

  it("leaves what the sidebar wrote, and says so", async () => {
    const nursery = smallNursery();
    const row = dueRow(nursery, "B1");
    nursery.ask("sidebarRecord", takesOf("B1", { day: DAY }));
    await enterDue(nursery, row, { Done: "TRUE", Count: "60" });
    await enterDue(nursery, row, { Done: "FALSE" });
    expect(takesIn(nursery)[0]).toEqual([DAY, 60]);
    expect(rowCode(String(dueState(nursery, row)))).toBe("still");
  });

  it("forgets what was asked or refused", async () => {
    const nursery = smallNursery();
    const row = await ticked(nursery, "99");
    expect(dueState(nursery, row)).toBe(asksText(moreThan(99)));
    await enterDue(nursery, row, { Done: "FALSE" });
    expect([dueState(nursery, row), dueValue(nursery, "Write", row)]).toEqual(["", ""]);
  });

  it("takes several back at once, from the menu too", () => {
    const nursery = smallNursery();
    const before = nursery.snapshot("Records");
    const rows = [dueRow(nursery, "B1"), dueRow(nursery, "B2")];
    for (const row of rows) setDue(nursery, row, { Done: true, Count: 60 });
    nursery.w.call("writeTicked");
    expect(nursery.w.desk.toasts.at(-1)?.message).toBe(
      tasksWritten({ recorded: 2, takenBack: 0, refused: 0 }),
    );
    for (const row of rows) setDue(nursery, row, { Done: false });
    nursery.w.call("writeTicked");
    expect(nursery.w.desk.toasts.at(-1)?.message).toBe(
      tasksWritten({ recorded: 0, takenBack: 2, refused: 0 }),
    );
    expect(nursery.snapshot("Records")).toBe(before);
  });

  it("in a log of one line a job takes the line away", async () => {
    const lines = [
      ["Date", "Batch", "What was done", "How many"],
      ["2026-07-20", "B1", "Sown", 100],
      ["2026-07-30", "B1", "Germination", 90],
      ["2026-10-24", "B1", "Grafting", 80],
    ];
    const nursery = openNursery([tab("Records", lines)]).ready();
    const before = nursery.snapshot("Records");
    const row = await ticked(nursery);
    expect(nursery.values("Records").at(-1)).toEqual([DAY, "B1", "Take count", 60]);
    await enterDue(nursery, row, { Done: "FALSE" });
    expect(nursery.snapshot("Records")).toBe(before);
  });
});

describe("a count that is changed after the tick", () => {
  it("corrects the list's own line, and is taken back with it", async () => {
    const nursery = smallNursery();
    const before = nursery.snapshot("Records");
    const row = await ticked(nursery, "6");
    await enterDue(nursery, row, { Count: "60" });
    expect(takesIn(nursery)[0]).toEqual([DAY, 60]);
    expect(dueState(nursery, row)).toBe(writtenText("Records!L2", "Records!M2"));
    expect(logged(nursery)).toEqual([
      ["L2", "", DAY, "written"],
      ["M2", "", 6, "written"],
      ["M2", 6, 60, "written"],
    ]);
    await enterDue(nursery, row, { Done: "FALSE" });
    expect(nursery.snapshot("Records")).toBe(before);
    expect(logged(nursery).map((line) => line[3])).toEqual(Array(3).fill("taken back"));
  });

  it("is blanked in the records where it is cleared", async () => {
    const nursery = smallNursery();
    const row = await ticked(nursery);
    await enterDue(nursery, row, { Count: "" });
    expect(takesIn(nursery)[0]).toEqual([DAY, ""]);
    expect(dueState(nursery, row)).toContain(countBlank());
  });

  it("is asked about where it is hardly meant, and where the cell is somebody else's by now", async () => {
    const nursery = smallNursery();
    const row = await ticked(nursery);
    await enterDue(nursery, row, { Count: "500" });
    expect(dueState(nursery, row)).toBe(asksText(moreThan(500)));
    nursery.sheet("Records").getRange("M2").setValue(61);
    await enterDue(nursery, row, { Count: "70" });
    expect(dueState(nursery, row)).toBe(asksText(holding("61", "70")));
    expect(takesIn(nursery)[0]).toEqual([DAY, 61]);
    // The first write is not forgotten by the question.
    nursery.sheet("Records").getRange("M2").setValue(60);
    await enterDue(nursery, row, { Done: "FALSE" });
    expect(takesIn(nursery)[0]).toEqual(NO_TAKES);
  });
});

describe("a question in the list", () => {
  it("is answered by the box beside it, which is clear again afterwards", async () => {
    const nursery = smallNursery();
    const row = await ticked(nursery, "500");
    expect(takesIn(nursery)[0]).toEqual(NO_TAKES);
    expect(dueState(nursery, row)).toBe(asksText(moreThan(500)));
    await enterDue(nursery, row, { "Yes, write it": "TRUE" });
    expect(takesIn(nursery)[0]).toEqual([DAY, 500]);
    expect(rowCode(String(dueState(nursery, row)))).toBe("written");
    expect(dueValue(nursery, "Yes, write it", row)).toBe(false);
  });

  it("is not answered by a yes that was given to another", async () => {
    const nursery = smallNursery();
    const row = dueRow(nursery, "B1");
    await enterDue(nursery, row, { "Yes, write it": "TRUE", Count: "500", Done: "TRUE" });
    expect(takesIn(nursery)[0]).toEqual(NO_TAKES);
    expect(dueValue(nursery, "Yes, write it", row)).toBe(false);
    setDue(nursery, row, { Count: 600, "Yes, write it": true });
    nursery.w.call("writeTicked");
    expect(takesIn(nursery)[0]).toEqual(NO_TAKES);
    expect(dueState(nursery, row)).toBe(asksText(moreThan(600)));
  });

  it("is kept for a batch that is asked about twice, with all its questions", async () => {
    const nursery = smallNursery();
    nursery.sheet("Records").getRange("M2").setValue(55);
    const row = await ticked(nursery, "500");
    expect(dueState(nursery, row)).toBe(asksText(moreThan(500), holding("55", "500")));
    await enterDue(nursery, row, { "Yes, write it": "TRUE" });
    expect(takesIn(nursery)[0]).toEqual([DAY, 500]);
    await enterDue(nursery, row, { Done: "FALSE" });
    expect(takesIn(nursery)[0]).toEqual(["", 55]);
  });

  it("shows its sign beside the box", async () => {
    const nursery = openNursery([smallRecords()], { live: true }).ready();
    const row = await ticked(nursery, "500");
    await nursery.w.settled();
    expect(nursery.value("Due list", dueCell(nursery, "?", row))).toBe("?");
  });
});
