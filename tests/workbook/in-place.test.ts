import { describe, expect, it } from "vitest";
import { type Nursery, openNursery, SETTINGS, type Sheet, smallRecords, tab } from "./nursery";

const ONCE = { tab: "Records", columns: [], methods: ["Cocoa cleft graft"] };
const SMALL = { newRows: 60 };
const FORMULA_TABS = ["Stages", "Ready by month", "Takes", "Checks", "Takes by month"];

/** A person's tab that counts late tasks and looks at a stage. */
const board = () =>
  tab("Board", [
    ["Tasks", "Stage"],
    [
      { f: "=COUNTA('Due list'!M3:M40)" },
      { f: "=Stages!A3" },
      { f: "='Plan O-1'!C3" },
      { f: "='Nursery settings'!B5" },
    ],
  ]);
const PLAN = {
  ...{ order: "O-1", variety: "", wanted: 20, by: "2027-10-01", assurance: 0.8 },
  ...{ method: "", harvest: "" },
};
const again: Record<string, (nursery: Nursery) => void> = {
  refreshDueList: (nursery) => nursery.w.call("refreshDueList"),
  sidebarSetUp: (nursery) => nursery.ask("sidebarSetUp", ONCE),
  sidebarOrderTab: (nursery) => nursery.ask("sidebarOrderTab", { ...PLAN, wanted: 30 }),
};

function withBoard(): Nursery {
  const nursery = openNursery([smallRecords(), board()], SMALL).ready();
  nursery.ask("sidebarOrderTab", PLAN);
  return nursery;
}

describe.each(Object.entries(again))("what %s fills again", (name, run) => {
  // People saw `=COUNTA(#REF!)` on their own tabs after each refresh.
  it("stays the same sheet, so that a person's formulas go on pointing at it", () => {
    const nursery = withBoard();
    const formulas = () => nursery.sheet("Board").getRange("A2:D2").getFormulas()[0];
    const before = formulas();
    const idOf = (one: string) => nursery.sheet(one).getSheetId();
    const ids = nursery.tabs().map((one) => [one, idOf(one)]);
    run(nursery);
    expect(formulas()).toEqual(before);
    expect(nursery.tabs().map((one) => [one, idOf(one)])).toEqual(ids);
  });

  it("leaves widths and what a person wrote beside the table as they are", () => {
    const nursery = withBoard();
    const tabs = ["Due list", "Stages", "Plan O-1", SETTINGS];
    for (const one of tabs) {
      nursery.sheet(one).setColumnWidth(2, 222);
      nursery.sheet(one).getRange("W4").setValue("my remark");
    }
    run(nursery);
    for (const one of tabs) {
      expect([one, nursery.sheet(one).getColumnWidth(2)]).toEqual([one, 222]);
      expect([one, nursery.value(one, "W4")]).toEqual([one, "my remark"]);
    }
  });

  it("moves nobody's view to another tab", () => {
    const nursery = withBoard();
    const { SpreadsheetApp } = nursery.w.uncounted() as { SpreadsheetApp: Sheet };
    nursery.sheet("Board").activate();
    run(nursery);
    const front = SpreadsheetApp.getActive().getActiveSheet().getName();
    // Who asks for a plan wants to see it.
    expect(front).toBe(name === "sidebarOrderTab" ? "Plan O-1" : "Board");
  });
});

it("shows the due list where Set up has made it, and else the tab that one has open", () => {
  const nursery = openNursery([smallRecords(), board()], SMALL);
  const { SpreadsheetApp } = nursery.w.uncounted() as { SpreadsheetApp: Sheet };
  const front = () => SpreadsheetApp.getActive().getActiveSheet().getName();
  nursery.sheet("Board").activate();
  nursery.ask("sidebarSetUp", ONCE);
  expect(front()).toBe("Due list");
  nursery.sheet("Board").activate();
  nursery.remove("Takes");
  nursery.ask("sidebarSetUp", ONCE);
  expect(nursery.tabs()).toContain("Takes");
  expect(front()).toBe("Board");
});

it("leaves no row of a longer due list behind", () => {
  const nursery = openNursery([smallRecords()], SMALL).ready();
  const long = nursery.values("Due list").length;
  nursery
    .sheet("Records")
    .getRange("L2:M2")
    .setValues([["2026-11-24", 60]]);
  nursery.w.call("refreshDueList");
  const rows = nursery.values("Due list");
  expect(rows.length).toBeLessThan(long);
  const { tasks } = nursery.ask("sidebarToday", { daysAhead: 7 });
  expect(rows).toHaveLength(tasks.length + 2);
  // A box below the list could be ticked for nothing.
  expect(() =>
    nursery
      .sheet("Due list")
      .getRange(rows.length + 1, 1)
      .setValue("x"),
  ).not.toThrow();
});

it("keeps the look that a person gave a live tab, and its answers", async () => {
  const nursery = openNursery([smallRecords()], { ...SMALL, live: true }).ready();
  await nursery.w.settled();
  const before = FORMULA_TABS.map((name) => nursery.snapshot(name));
  nursery.ask("sidebarSetUp", ONCE);
  await nursery.w.settled();
  expect(FORMULA_TABS.map((name) => nursery.snapshot(name))).toEqual(before);
});
