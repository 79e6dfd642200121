import { expect, it } from "vitest";
import * as blocked from "../../src/sentences/made/blocked-tabs";
import * as text from "../../src/sentences/made/menu";
import { step } from "../../src/sentences/made/order-columns";
import { cellName } from "../../src/workbook/host/cell-name";
import { type Nursery, openNursery, smallRecords } from "./nursery";

const DUE = "Due list";
const AGAIN = { tab: "Records", columns: [], methods: [] };
const ORDER = { order: "O-1", variety: "", wanted: 20, by: "2027-10-01", assurance: 0.8 };
const PLAN = "Plan O-1";

/** With its live tabs and a plan calculated. */
async function live(): Promise<Nursery> {
  const nursery = openNursery([smallRecords()], { newRows: 60, live: true }).ready();
  nursery.ask("sidebarOrderTab", { ...ORDER, method: "", harvest: "" });
  await nursery.w.settled();
  return nursery;
}

/** What stages and plan show, in the columns of their answers. */
const answers = (nursery: Nursery) => [
  nursery.values("Stages").flatMap((row, at) => (at < 2 ? [] : [row.slice(0, 18)])),
  nursery.values(PLAN).flatMap((row, at) => (at < 4 ? [] : [row.slice(0, 5)])),
];
const said = (nursery: Nursery) => nursery.ask("sidebarOpen", null).inTheWay;
const toast = (nursery: Nursery) => nursery.w.desk.toasts.at(-1)?.message;

// People saw #REF! in place of all stages, and nothing said which cell was in the way.
it("a live tab and a plan that show no answer are named when the sidebar opens, and mended by a refresh", async () => {
  const nursery = await live();
  expect(said(nursery)).toEqual([]);
  const before = answers(nursery);
  nursery.sheet("Stages").getRange("C5").setValue("ask Orrin");
  nursery.sheet(PLAN).getRange("B7").setValue("too late?");
  nursery.sheet(PLAN).getRange("C8").setFormula("=1+1");
  await nursery.w.settled();
  expect(said(nursery)).toEqual([
    blocked.inTheWay({ tab: "Stages", cell: 'C5 ("ask Orrin")', more: 0 }),
    blocked.inTheWay({ tab: PLAN, cell: 'B7 ("too late?")', more: 1 }),
  ]);
  nursery.w.call("refreshDueList");
  await nursery.w.settled();
  expect(said(nursery)).toEqual([]);
  const [stages, first] = [cellWith("Stages", "ask Orrin"), cellWith(PLAN, "too late?")];
  const row8 = nursery.sheet(PLAN).getDataRange().getFormulas()[7] ?? [];
  const second = cellName({ row: 8, column: row8.indexOf("=1+1") + 1 });
  expect(stages).toMatch(/^[A-Z]+5$/);
  expect(first).toMatch(/^[A-Z]+7$/);
  const moved = [
    { from: "Stages!C5", to: `Stages!${stages}` },
    { from: "Plan O-1!B7", to: `Plan O-1!${first}` },
    { from: "Plan O-1!C8", to: `Plan O-1!${second}` },
  ].map(text.moved);
  expect(toast(nursery)).toBe(text.dueListRefreshed({ some: 3, moved }));
  expect(answers(nursery)).toEqual(before);

  function cellWith(tab: string, note: string): string {
    const values = nursery.values(tab);
    const at = values.findIndex((cells) => cells.includes(note));
    return cellName({ row: at + 1, column: (values[at]?.indexOf(note) ?? -1) + 1 });
  }
});

it("a note in the way of a plan is moved beside it by Set up, which names it", async () => {
  const nursery = await live();
  nursery.sheet(PLAN).getRange("A7").setValue("mine");
  await nursery.w.settled();
  expect(nursery.value(PLAN, "A5")).toMatch(/^#/);
  const { moved } = nursery.ask("sidebarSetUp", AGAIN);
  await nursery.w.settled();
  expect(moved).toEqual([{ from: "Plan O-1!A7", to: expect.stringMatching(/^Plan O-1![A-Z]+7$/) }]);
  expect(nursery.value(PLAN, "A5")).toBe(step());
  expect(nursery.value(PLAN, moved[0]?.to.split("!")[1] ?? "")).toBe("mine");
});

it("a live tab without room for its answer is named with what makes it again", async () => {
  const nursery = await live();
  const before = answers(nursery);
  const stages = nursery.sheet("Stages");
  stages.deleteRows(5, stages.getMaxRows() - 4);
  await nursery.w.settled();
  expect(nursery.value("Stages", "A3")).toMatch(/^#(REF|SPILL)!$/);
  expect(said(nursery)).toEqual([blocked.noRoom({ tab: "Stages" })]);
  nursery.ask("sidebarSetUp", AGAIN);
  await nursery.w.settled();
  expect(answers(nursery)).toEqual(before);
});

// What people had typed below the list under Task or Batch was cleared by the next refresh, and
// formulas became what they showed.
it("lines of one's own below the due list stay below the new one, and are named", () => {
  const nursery = openNursery([smallRecords()], { newRows: 60 }).ready();
  const due = nursery.sheet(DUE);
  const below = nursery.values(DUE).length + 1;
  due.getRange(`M${below}:N${below}`).setValues([["Weed", "B7"]]);
  due.getRange(`N${below + 1}`).setValue("all of bay 2");
  due.getRange(`E${below + 2}`).setFormula(`=SUM(E3:E${below - 1})+E${below + 2}*0`);
  due.getRange(`D${below + 3}`).setValue("mine");
  nursery
    .sheet("Records")
    .getRange("A4:I4")
    .setValues([["B3", "", "Bay 2", "", "2026-07-20", 100, "2026-07-30", 90, "2026-10-24"]]);
  nursery.w.call("refreshDueList");
  const values = nursery.values(DUE);
  const at = values.findIndex((row) => row[12] === "Weed") + 1;
  expect(at).toBeGreaterThan(below);
  expect(values[at - 1]?.slice(12, 14)).toEqual(["Weed", "B7"]);
  expect(values[at]?.[13]).toBe("all of bay 2");
  expect(due.getRange(`E${at + 2}`).getFormula()).toBe(`=SUM(E3:E${below - 1})+E${at + 2}*0`);
  expect(values[at + 2]?.[3]).toBe("mine");
  const named = [
    { from: `Due list!M${below}`, to: `Due list!M${at}` },
    { from: `Due list!N${below + 1}`, to: `Due list!N${at + 1}` },
    { from: `Due list!E${below + 2}`, to: `Due list!E${at + 2}` },
  ].map(text.moved);
  expect(toast(nursery)).toBe(
    text.dueListRefreshed({ some: 4, moved: [...named, text.moreMoved({ more: 1 })] }),
  );
  nursery.w.call("refreshDueList");
  expect(toast(nursery)).toBe(text.dueListRefreshed({ some: 0, moved: [] }));
  expect(nursery.values(DUE).filter((row) => row[12] === "Weed")).toHaveLength(1);
});
