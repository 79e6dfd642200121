import { describe, expect, it } from "vitest";
import { type Nursery, openNursery, smallRecords, tab, takesOf } from "./nursery";

const small = () => openNursery([smallRecords()]).ready();

/** Row of a task in the due tab, from 1. */
function rowOf(nursery: Nursery, batch: string, task = "Take count"): number {
  const row = nursery.values("Due list").findIndex((one) => one[5] === task && one[6] === batch);
  if (row === -1) throw new Error(`no ${task} of ${batch} in the due tab`);
  return row + 1;
}

const state = (nursery: Nursery, row: number) => nursery.value("Due list", `E${row}`);
const takes = (nursery: Nursery) =>
  nursery
    .values("Records")
    .slice(1)
    .map((row) => [row[11], row[12]]);
const BLANK = ["", ""];
const DONE = ["2026-11-25", 60];

describe("the due tab", () => {
  it("lists what the sidebar lists, with boxes to tick", () => {
    const nursery = small();
    const listed = nursery
      .values("Due list")
      .slice(2)
      .map((row) => [row[0], row[5], row[6], row[9], row[10]]);
    const { tasks } = nursery.ask("sidebarToday", { daysAhead: 7 });
    expect(listed).toEqual(tasks.map((one) => [false, one.task, one.batch, one.from, one.by]));
    expect(listed.length).toBeGreaterThan(1);
    expect(() => nursery.sheet("Due list").getRange("A3").setValue("yes")).toThrow();
  });

  it("records a task that is ticked, with the count beside it", async () => {
    const nursery = small();
    const row = rowOf(nursery, "B1");
    nursery.w.type("Due list", `B${row}`, "60");
    await nursery.w.settled();
    expect(takes(nursery)).toEqual([BLANK, BLANK]);
    nursery.w.type("Due list", `A${row}`, "TRUE");
    await nursery.w.settled();
    expect(nursery.w.editErrors).toEqual([]);
    expect(takes(nursery)).toEqual([DONE, BLANK]);
    expect(state(nursery, row)).toBe("written: Records!L2, Records!M2");
  });

  it("loses no count that is typed after the tick", async () => {
    const nursery = small();
    const row = rowOf(nursery, "B1");
    nursery.w.type("Due list", `A${row}`, "TRUE");
    await nursery.w.settled();
    nursery.w.type("Due list", `B${row}`, "60");
    await nursery.w.settled();
    expect(takes(nursery)).toEqual([DONE, BLANK]);
  });

  it("does not write twice what is ticked twice", async () => {
    const nursery = small();
    const row = rowOf(nursery, "B1");
    nursery.w.type("Due list", `B${row}`, "60");
    for (const tick of ["TRUE", "FALSE", "TRUE"]) {
      nursery.w.type("Due list", `A${row}`, tick);
      await nursery.w.settled();
    }
    nursery.w.call("writeTicked");
    expect(takes(nursery)).toEqual([DONE, BLANK]);
    expect(nursery.values("Write log")).toHaveLength(4);
    expect(state(nursery, row)).toMatch(/^written/);
  });

  it("picks a lost edit up with the next one, or from the menu", async () => {
    const nursery = small();
    const rows = [rowOf(nursery, "B1"), rowOf(nursery, "B2")];
    nursery.w.edits.dropsAll = true;
    for (const row of rows) nursery.w.type("Due list", `B${row}`, "60");
    nursery.w.type("Due list", `A${rows[0]}`, "TRUE");
    await nursery.w.settled();
    expect(takes(nursery)).toEqual([BLANK, BLANK]);
    nursery.w.edits.dropsAll = false;
    nursery.w.type("Due list", `A${rows[1]}`, "TRUE");
    await nursery.w.settled();
    expect(takes(nursery)).toEqual([DONE, DONE]);

    const other = small();
    other.w.edits.dropsAll = true;
    other.w.paste("Due list", `A${rowOf(other, "B2")}`, [["TRUE", "60"]]);
    await other.w.settled();
    other.w.call("writeTicked");
    expect(takes(other)).toEqual([BLANK, DONE]);
    expect(other.w.desk.toasts.at(-1)?.message).toBe("1 task written");
  });

  it.each(["refreshDueList", "sidebarSetUp"])("loses no tick to %s", async (way) => {
    const nursery = small();
    const row = rowOf(nursery, "B1");
    nursery.w.edits.dropsAll = true;
    nursery.w.paste("Due list", `A${row}`, [["TRUE", "60", "Tavi", "dry"]]);
    await nursery.w.settled();
    if (way === "refreshDueList") nursery.w.call(way);
    else nursery.ask("sidebarSetUp", { tab: "Records", columns: [], methods: [] });
    nursery.w.call("writeTicked");
    expect(takes(nursery)).toEqual([DONE, BLANK]);
    expect(nursery.value("Records", "P2")).toBe("dry");
  });

  it("carries over what is typed but not ticked, and what is ticked but asked about", () => {
    const nursery = small();
    const rows = [rowOf(nursery, "B1"), rowOf(nursery, "B2")];
    nursery.w.edits.dropsAll = true;
    nursery.w.paste("Due list", `B${rows[0]}`, [["55", "Tavi", "=1+1"]]);
    nursery.w.paste("Due list", `A${rows[1]}`, [["TRUE", "99"]]);
    nursery.w.call("refreshDueList");
    const entered = (row: number) => nursery.values("Due list")[row - 1]?.slice(0, 4);
    expect(entered(rowOf(nursery, "B1"))).toEqual([false, 55, "Tavi", "=1+1"]);
    expect(entered(rowOf(nursery, "B2"))).toEqual([true, 99, "", ""]);
    expect(state(nursery, rowOf(nursery, "B2"))).toMatch(/^not written: 99 are more than the 80/);
    // A task that is not due any more does not take along what was entered.
    nursery.sheet("Records").getRange("A2").setValue("B1-renamed");
    nursery.w.call("refreshDueList");
    const last = nursery.values("Due list").at(-1);
    expect([last?.[1], last?.[5], last?.[6]]).toEqual([55, "Take count", "B1"]);
    expect(last?.[4]).toMatch(/not on the list any more/);
  });

  it("is left as it is when something is entered while it is made anew", () => {
    const nursery = small();
    nursery.w.meter.before("Range.setDataValidation", () => nursery.w.type("Due list", "B3", "61"));
    expect(() => nursery.w.call("refreshDueList")).toThrow(/just entered/);
    expect(nursery.value("Due list", "B3")).toBe(61);
    expect(nursery.tabs().filter((name) => / \((new|old)\)/.test(name))).toEqual([]);
  });

  it("records several ticks that are pasted at once", async () => {
    const nursery = small();
    const rows = nursery.values("Due list").slice(2);
    nursery.w.paste(
      "Due list",
      "A3",
      rows.map((row) => ["TRUE", row[5] === "Take count" ? "60" : ""]),
    );
    await nursery.w.settled();
    expect(nursery.w.editErrors).toEqual([]);
    expect(takes(nursery)).toEqual([DONE, DONE]);
    // Bud break has no column in this table, and that is said.
    const said = nursery
      .values("Due list")
      .slice(2)
      .filter((row) => row[5] === "Bud break")
      .map((row) => row[4]);
    expect(said).toHaveLength(2);
    for (const text of said) expect(text).toMatch(/^not written: .*no column for Bud break/);
  });

  it.each([
    ["81", /more than the 80/],
    ["many", /no count/],
    ["1.5", /whole number/],
    ["-4", /whole number/],
  ])(
    "says why a count of %s is not written, and writes it once it is right",
    async (count, why) => {
      const nursery = small();
      const row = rowOf(nursery, "B1");
      nursery.w.paste("Due list", `A${row}`, [["TRUE", count]]);
      await nursery.w.settled();
      expect(state(nursery, row)).toMatch(/^not written: /);
      expect(state(nursery, row)).toMatch(why);
      expect(takes(nursery)).toEqual([BLANK, BLANK]);
      nursery.w.type("Due list", `B${row}`, "60");
      await nursery.w.settled();
      expect(takes(nursery)).toEqual([DONE, BLANK]);
    },
  );

  it("never writes over what stands in the records, and says what does", async () => {
    const nursery = small();
    const row = rowOf(nursery, "B1");
    nursery.sheet("Records").getRange("M2").setValue(55);
    nursery.w.paste("Due list", `A${row}`, [["TRUE", "60"]]);
    await nursery.w.settled();
    expect(takes(nursery)).toEqual([["", 55], BLANK]);
    expect(state(nursery, row)).toMatch(/not written.*55/);
  });

  it("says written when only saying so had failed before", () => {
    const nursery = small();
    const row = rowOf(nursery, "B1");
    nursery
      .sheet("Due list")
      .getRange(row, 1, 1, 2)
      .setValues([[true, 60]]);
    nursery.ask("sidebarRecord", takesOf("B1", { day: "2026-11-25" }));
    nursery.w.call("writeTicked");
    expect(state(nursery, row)).toMatch(/^written/);
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
