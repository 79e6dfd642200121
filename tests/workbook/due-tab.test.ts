import { describe, expect, it } from "vitest";
import { justEntered, offTheList } from "../../src/sentences/made/due-tab";
import { written as tasksWritten } from "../../src/sentences/made/menu";
import type { Asked } from "../../src/wording/writing-codes";
import { rowCode } from "../../src/workbook/due/row-state";
import {
  dueCell,
  dueRow,
  dueRows,
  dueState,
  enterDue,
  NO_TAKES,
  setDue,
  takesIn,
} from "./due-list";
import { openNursery, smallNursery, smallRecords, tab, takesOf } from "./nursery";
import { asksText, notWrittenText, thereText, writtenText } from "./row-texts";

const MORE_THAN_GRAFTED: Asked = {
  code: "moreThanBefore",
  count: 81,
  before: 80,
  step: "Grafting",
  batch: "B1",
};
const DONE = ["2026-11-25", 60];

describe("the due tab", () => {
  it("lists what the sidebar lists, with boxes to tick", () => {
    const nursery = smallNursery();
    const listed = dueRows(nursery, ["Done", "Task", "Batch", "From", "By"]);
    const { tasks } = nursery.ask("sidebarToday", { daysAhead: 7 });
    expect(listed).toEqual(tasks.map((one) => [false, one.task, one.batch, one.from, one.by]));
    expect(listed.length).toBeGreaterThan(1);
    expect(() => nursery.sheet("Due list").getRange("A3").setValue("yes")).toThrow();
  });

  it("records a task that is ticked, with the count beside it", async () => {
    const nursery = smallNursery();
    const row = dueRow(nursery, "B1");
    await enterDue(nursery, row, { Count: "60" });
    expect(takesIn(nursery)).toEqual([NO_TAKES, NO_TAKES]);
    await enterDue(nursery, row, { Done: "TRUE" });
    expect(nursery.w.editErrors).toEqual([]);
    expect(takesIn(nursery)).toEqual([DONE, NO_TAKES]);
    expect(dueState(nursery, row)).toBe(writtenText("Records!L2", "Records!M2"));
  });

  it("loses no count that is typed after the tick", async () => {
    const nursery = smallNursery();
    const row = dueRow(nursery, "B1");
    await enterDue(nursery, row, { Done: "TRUE", Count: "60" });
    expect(takesIn(nursery)).toEqual([DONE, NO_TAKES]);
  });

  it("does not write twice what is ticked twice", async () => {
    const nursery = smallNursery();
    const row = dueRow(nursery, "B1");
    await enterDue(nursery, row, { Count: "60", Done: "TRUE" });
    nursery.w.paste("Due list", dueCell(nursery, "Done", row), [["TRUE"]]);
    await nursery.w.settled();
    nursery.w.call("writeTicked");
    expect(takesIn(nursery)).toEqual([DONE, NO_TAKES]);
    expect(nursery.values("Write log")).toHaveLength(4);
    expect(rowCode(String(dueState(nursery, row)))).toBe("written");
  });

  it("picks a lost edit up with the next one, or from the menu", async () => {
    const nursery = smallNursery();
    const rows = [dueRow(nursery, "B1"), dueRow(nursery, "B2")] as const;
    nursery.w.edits.dropsAll = true;
    for (const row of rows) await enterDue(nursery, row, { Count: "60" });
    await enterDue(nursery, rows[0], { Done: "TRUE" });
    expect(takesIn(nursery)).toEqual([NO_TAKES, NO_TAKES]);
    nursery.w.edits.dropsAll = false;
    await enterDue(nursery, rows[1], { Done: "TRUE" });
    expect(takesIn(nursery)).toEqual([DONE, DONE]);

    const other = smallNursery();
    setDue(other, dueRow(other, "B2"), { Done: true, Count: 60 });
    other.w.call("writeTicked");
    expect(takesIn(other)).toEqual([NO_TAKES, DONE]);
    expect(other.w.desk.toasts.at(-1)?.message).toBe(
      tasksWritten({ recorded: 1, takenBack: 0, refused: 0 }),
    );
  });

  it.each(["refreshDueList", "sidebarSetUp"])("loses no tick to %s", async (way) => {
    const nursery = smallNursery();
    setDue(nursery, dueRow(nursery, "B1"), { Done: true, Count: 60, Who: "Tavi", Note: "dry" });
    if (way === "refreshDueList") nursery.w.call(way);
    else nursery.ask("sidebarSetUp", { tab: "Records", columns: [], methods: [] });
    nursery.w.call("writeTicked");
    expect(takesIn(nursery)).toEqual([DONE, NO_TAKES]);
    expect(nursery.value("Records", "P2")).toBe("dry");
  });

  it("carries over what is typed but not ticked, and what is ticked but asked about", () => {
    const nursery = smallNursery();
    const rows = [dueRow(nursery, "B1"), dueRow(nursery, "B2")] as const;
    setDue(nursery, rows[0], { Count: 55, Who: "Tavi", Note: "'=1+1" });
    setDue(nursery, rows[1], { Done: true, Count: 99 });
    nursery.w.call("refreshDueList");
    const entered = (batch: string) =>
      dueRows(nursery, ["Done", "Count", "Who", "Note"])[dueRow(nursery, batch) - 3];
    expect(entered("B1")).toEqual([false, 55, "Tavi", "=1+1"]);
    expect(entered("B2")).toEqual([true, 99, "", ""]);
    expect(rowCode(String(dueState(nursery, dueRow(nursery, "B2"))))).toBe("asks");
    // A task that is not due any more does not take along what was entered.
    nursery.sheet("Records").getRange("A2").setValue("B1-renamed");
    nursery.w.call("refreshDueList");
    const last = dueRows(nursery, ["Count", "Task", "Batch", "Written"]).at(-1);
    expect(last?.slice(0, 3)).toEqual([55, "Take count", "B1"]);
    expect(last?.[3]).toBe(`– ${offTheList()}`);
  });

  it("is left as it is when something is entered while it is made anew", () => {
    const nursery = smallNursery();
    const cell = dueCell(nursery, "Count", 3);
    nursery.w.meter.before("Range.setWrap", () => nursery.w.type("Due list", cell, "61"));
    expect(() => nursery.w.call("refreshDueList")).toThrow(justEntered());
    expect(nursery.value("Due list", cell)).toBe(61);
    expect(nursery.tabs().filter((name) => / \((new|old)\)/.test(name))).toEqual([]);
  });

  it("records several ticks that come at once", async () => {
    const nursery = smallNursery();
    const rows = dueRows(nursery, ["Task"]);
    rows.forEach(([task], at) => {
      if (task === "Take count") setDue(nursery, at + 3, { Count: 60 });
    });
    nursery.w.paste(
      "Due list",
      "A3",
      rows.map(() => ["TRUE"]),
    );
    await nursery.w.settled();
    expect(nursery.w.editErrors).toEqual([]);
    expect(takesIn(nursery)).toEqual([DONE, DONE]);
    // First flush has no column in this table, and one is offered.
    const said = dueRows(nursery, ["Task", "Written"])
      .filter(([task]) => task === "First flush")
      .map(([, text]) => text);
    expect(said).toHaveLength(2);
    for (const text of said) expect(rowCode(String(text))).toBe("asks");
    expect(nursery.values("Records")[0]).not.toContain("First flush");
  });

  it.each([
    ["81", asksText(MORE_THAN_GRAFTED)],
    ["many", notWrittenText({ code: "notACount", found: "many" })],
    ["1.5", notWrittenText({ code: "notACount", found: "1.5" })],
    ["-4", notWrittenText({ code: "notACount", found: "-4" })],
  ])(
    "says why a count of %s is not written, and writes it once it is right",
    async (count, why) => {
      const nursery = smallNursery();
      const row = dueRow(nursery, "B1");
      await enterDue(nursery, row, { Count: count, Done: "TRUE" });
      expect(dueState(nursery, row)).toBe(why);
      expect(takesIn(nursery)).toEqual([NO_TAKES, NO_TAKES]);
      await enterDue(nursery, row, { Count: "60" });
      expect(takesIn(nursery)).toEqual([DONE, NO_TAKES]);
    },
  );

  it("never writes over what stands in the records, and says what does", async () => {
    const nursery = smallNursery();
    const row = dueRow(nursery, "B1");
    nursery.sheet("Records").getRange("M2").setValue(55);
    await enterDue(nursery, row, { Count: "60", Done: "TRUE" });
    expect(takesIn(nursery)).toEqual([["", 55], NO_TAKES]);
    expect(dueState(nursery, row)).toBe(
      asksText({ code: "holdsAlready", header: "Takes", cell: "M2", stands: "55", would: "60" }),
    );
  });

  it("says written when only saying so had failed before", () => {
    const nursery = smallNursery();
    const row = dueRow(nursery, "B1");
    setDue(nursery, row, { Done: true, Count: 60 });
    nursery.ask("sidebarRecord", takesOf("B1", { day: "2026-11-25" }));
    nursery.w.call("writeTicked");
    expect(dueState(nursery, row)).toBe(thereText("Records!L2", "Records!M2"));
    expect(nursery.values("Write log")).toHaveLength(4);
  });

  it("leaves edits elsewhere alone, and a person's own tab of that name", async () => {
    const nursery = openNursery([smallRecords(), tab("Due list", [["mine"]])]);
    nursery.w.type("Due list", "A2", "TRUE");
    await nursery.w.settled();
    nursery.w.type("Records", "A9", "B9");
    await nursery.w.settled();
    expect(nursery.w.editErrors).toEqual([]);
    expect(nursery.values("Due list")).toEqual([["mine"], [true]]);
  });
});
