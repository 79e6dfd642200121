import { describe, expect, it } from "vitest";
import { offTheList } from "../../src/sentences/made/due-tab";
import { dueRow, dueRows, setDue } from "./due-list";
import { type Nursery, openNursery, smallRecords } from "./nursery";

const DUE = "Due list";
const SMALL = { newRows: 80 };
/** Two columns to the right of the list's own. */
const BESIDE = "U";

const besideOf = (nursery: Nursery, row: number) =>
  nursery.sheet(DUE).getRange(`${BESIDE}${row}`).getValue();

describe("what a person has noted beside the due list", () => {
  it("goes with its batch and its task when the list is made anew", () => {
    const nursery = openNursery([smallRecords()], SMALL).ready();
    const due = nursery.sheet(DUE);
    const row = dueRow(nursery, "B2");
    due.getRange(`${BESIDE}2`).setValue("Mine");
    due.getRange(`${BESIDE}${row}`).setValue("call Ana first");
    const total = due.getRange(`${BESIDE}${dueRow(nursery, "B1")}`);
    total.setFormula(`=E${dueRow(nursery, "B1")}*2`);
    // A task that is late comes first: all others move down.
    nursery.sheet("Records").getRange("I3").setValue("2026-09-01");
    nursery.w.call("refreshDueList");
    expect(dueRow(nursery, "B2")).not.toBe(row);
    expect(besideOf(nursery, dueRow(nursery, "B2"))).toBe("call Ana first");
    expect(due.getRange(`${BESIDE}2`).getValue()).toBe("Mine");
    const moved = dueRow(nursery, "B1");
    expect(due.getRange(`${BESIDE}${moved}`).getFormula()).toBe(`=E${moved}*2`);
    const all = due.getRange(`${BESIDE}3:${BESIDE}40`).getValues().flat();
    expect(all.filter((cell: unknown) => cell === "call Ana first")).toHaveLength(1);
  });

  it("stays when the task is done, and when the batch is gone", () => {
    const nursery = openNursery([smallRecords()], SMALL).ready();
    const due = nursery.sheet(DUE);
    due.getRange(`${BESIDE}${dueRow(nursery, "B1")}`).setValue("next to the pump");
    due.getRange(`${BESIDE}${dueRow(nursery, "B2")}`).setValue("call Ana first");
    setDue(nursery, dueRow(nursery, "B1"), { Done: true, Count: 60 });
    nursery.sheet("Records").getRange("A3").setValue("B2-renamed");
    for (const _ of [1, 2]) nursery.w.call("refreshDueList");
    expect(nursery.value("Records", "M2")).toBe(60);
    expect(besideOf(nursery, dueRow(nursery, "B1"))).toBe("next to the pump");
    expect(besideOf(nursery, dueRow(nursery, "B2"))).toBe("call Ana first");
    const said = dueRows(nursery, ["Written"]).flat();
    expect(said.filter((text) => text === `– ${offTheList()}`)).toHaveLength(1);
  });

  it("stays where it was written below the list, however long that gets", () => {
    const nursery = openNursery([smallRecords()], SMALL).ready();
    const due = nursery.sheet(DUE);
    const below = nursery.values(DUE).length + 2;
    due.getRange(`H${below}`).setValue("Order more strips");
    nursery
      .sheet("Records")
      .getRange("A4:I4")
      .setValues([["B3", "", "Bay 2", "", "2026-07-20", 100, "2026-07-30", 90, "2026-10-24"]]);
    for (const _ of [1, 2]) nursery.w.call("refreshDueList");
    const notes = dueRows(nursery, ["Note"]).flat();
    expect(notes.filter((note) => note === "Order more strips")).toHaveLength(1);
    expect(dueRows(nursery, ["Batch"]).flat()).toContain("B3");
  });
});

// People saw #REF! in place of all stages, and were told nothing.
describe("a note in the way of an answer", () => {
  it("is moved beside it by Set up, which names it, and the answer stands", async () => {
    const nursery = openNursery([smallRecords()], { ...SMALL, live: true }).ready();
    await nursery.w.settled();
    const stages = nursery.sheet("Stages");
    const before = nursery.values("Stages").slice(2);
    stages.getRange("C5").setValue("ask Orrin");
    stages.getRange("D5").setFormula("=1+1");
    await nursery.w.settled();
    expect(nursery.value("Stages", "A3")).toMatch(/^#/);
    const { moved } = nursery.ask("sidebarSetUp", { tab: "Records", columns: [], methods: [] });
    await nursery.w.settled();
    expect(moved).toEqual([
      { from: "Stages!C5", to: expect.stringMatching(/^Stages![A-Z]+5$/) },
      { from: "Stages!D5", to: expect.stringMatching(/^Stages![A-Z]+5$/) },
    ]);
    const [text, formula] = moved.map(({ to }) => stages.getRange(to.replace("Stages!", "")));
    expect(text.getValue()).toBe("ask Orrin");
    expect(formula.getFormula()).toBe("=1+1");
    const width = before[0]?.length ?? 0;
    const after = nursery.values("Stages").slice(2);
    expect(after.map((row) => row.slice(0, width))).toEqual(before);
  });

  it("is left where nothing is in the way", async () => {
    const nursery = openNursery([smallRecords()], { ...SMALL, live: true }).ready();
    await nursery.w.settled();
    nursery.sheet("Stages").getRange("Z5").setValue("mine");
    const { moved } = nursery.ask("sidebarSetUp", { tab: "Records", columns: [], methods: [] });
    expect(moved).toEqual([]);
    expect(nursery.value("Stages", "Z5")).toBe("mine");
  });
});
