import { describe, expect, it } from "vitest";
import * as stages from "../../src/sentences/made/batch-columns";
import * as setUp from "../../src/sentences/made/set-up";
import * as settingsTab from "../../src/sentences/made/settings-tab";
import { noHeaderRow } from "../../src/sentences/made/table-faults";
import { linesAbove, notOurs } from "../../src/sentences/made/writing-faults";
import { type Nursery, openNursery, SETTINGS, smallRecords, tab } from "./nursery";
import { atWork, DUE, goesOn, KINDS, LOG, ONCE, OURS, PLAN } from "./tabs-at-work";

let start: ReturnType<Nursery["saved"]> | null = null;

/** How people tidy a tab. */
const TIDIED: Record<string, (sheet: ReturnType<Nursery["sheet"]>) => void> = {
  "blank rows deleted": (sheet) => {
    const last = Math.max(sheet.getLastRow(), sheet.getFrozenRows() + 1);
    if (sheet.getMaxRows() > last) sheet.deleteRows(last + 1, sheet.getMaxRows() - last);
  },
  "blank columns deleted": (sheet) => {
    const last = sheet.getLastColumn();
    if (sheet.getMaxColumns() > last) sheet.deleteColumns(last + 1, sheet.getMaxColumns() - last);
  },
  "its title row removed": (sheet) => sheet.deleteRows(1, 1),
  "a row put in above": (sheet) => sheet.insertRowsBefore(1, 1),
  "a row put in below the title": (sheet) => sheet.insertRowsAfter(1, 1),
  "a column put in on the left": (sheet) => sheet.insertColumnsBefore(1, 1),
  "a column of the person's put in": (sheet) => {
    sheet.insertColumnsAfter(1, 1);
    // A new column has the boxes of the one on its left, which take no text.
    sheet.getRange(2, 2, sheet.getMaxRows() - 1, 1).setDataValidation(null);
    sheet.getRange("B2:B3").setValues([["Mine"], ["my own"]]);
  },
  "a column moved": (sheet) => sheet.moveColumns(sheet.getRange("B1"), 5),
  "a header renamed": (sheet) => sheet.getRange("B2").setValue("Something else"),
};

/** In each round every tab is tidied in another way, so that after all of them each was in every way. */
const ROUNDS = Object.keys(TIDIED).map((_, round) => {
  const ways = Object.keys(TIDIED);
  const wayOf = (at: number) => ways[(round + at) % ways.length] as string;
  return KINDS.map((name, at) => [name, wayOf(at)] as const);
});

// People saw "The coordinates of the range are outside the dimensions of the sheet."
it.each(ROUNDS.map((round) => ({ round, told: round.map((one) => one.join(": ")).join(", ") })))(
  "$told: everything goes on",
  ({ round }) => {
    start ??= atWork().saved();
    const nursery = openNursery(start, { newRows: 60 });
    for (const [name, how] of round) TIDIED[how]?.(nursery.sheet(name));
    if (round.some(([name, how]) => name === "Nursery timetable" && how === "a header renamed")) {
      expect(nursery.refusal("sidebarToday", { daysAhead: 7 })).toBe(
        setUp.correctTimetable({
          why: noHeaderRow({ argument: "timetable", columns: ["Step", "After"] }),
          tab: "Nursery timetable",
        }),
      );
      nursery.sheet("Nursery timetable").getRange("B2").setValue("Step");
    }
    goesOn(nursery);
  },
);

// The engine loses the place of a formula when its own tab and another are moved at once, so that each
// is tried with what it can bear.
it.each([
  ["blank rows deleted", OURS],
  ["a row put in above", [SETTINGS]],
  ["its title row removed", [SETTINGS]],
  ["its title row removed", ["Stages"]],
])("%s in %s: the live tabs answer after Set up", async (how, names) => {
  const nursery = openNursery([smallRecords()], { newRows: 60, live: true }).ready();
  nursery.ask("sidebarOrderTab", PLAN);
  await nursery.w.settled();
  const shown = () => nursery.values("Stages").filter((row) => row[1] !== "");
  const before = shown();
  expect(before.length).toBe(3);
  for (const name of names) TIDIED[how]?.(nursery.sheet(name));
  await nursery.w.settled();
  nursery.ask("sidebarSetUp", ONCE);
  await nursery.w.settled();
  expect(shown()).toEqual(before);
  for (const name of OURS) {
    const texts = nursery.values(name).flat().map(String);
    expect([name, texts.filter((text) => /^#[A-Z]/.test(text))]).toEqual([name, []]);
  }
});

describe("the settings", () => {
  const sheetOf = (nursery: Nursery) => nursery.sheet(SETTINGS);
  const told = { header: "Note", readAs: null };

  it("are found by their labels where their rows were sorted, and put in order by Set up", async () => {
    const nursery = openNursery([smallRecords()], { newRows: 60, live: true });
    nursery.ask("sidebarSetUp", { ...ONCE, columns: [told] });
    const sheet = sheetOf(nursery);
    sheet.getRange("B4").setFormula("=DATE(2026;11;25)");
    sheet.getRange("B5").setValue(0.9);
    const rows = sheet.getRange("A3:C12");
    const formulas = rows.getFormulas();
    const cells: unknown[][] = rows
      .getValues()
      .map((row: unknown[], at: number) => row.map((cell, column) => formulas[at][column] || cell));
    rows.setValues([...cells].sort((a, b) => String(a[0]).localeCompare(String(b[0]))));
    await nursery.w.settled();
    expect(nursery.ask("sidebarOpen", null).setUp).toEqual({
      ...{ recordsTab: "Records", timetableTab: null, asOf: "2026-11-25", level: 0.9 },
      ...{ daysAhead: 7, initials: false, looks: true },
    });
    nursery.ask("sidebarSetUp", ONCE);
    await nursery.w.settled();
    expect(sheet.getRange("A3:A12").getValues().flat()).toEqual([
      ...["Records tab", "As-of day", "Level", "Days ahead", "Timetable tab"],
      ...["Takes compared by", "People", "Looks", "Our name", "Leave alone"],
    ]);
    expect(sheet.getRange("B4").getFormula()).toBe("=DATE(2026,11,25)");
    expect(sheet.getRange("B5").getValue()).toBe(0.9);
    expect(nursery.values("Stages")[2]?.[0]).toBe(stages.batch());
  });

  it("say in a sentence which line is gone, and Set up puts it back", () => {
    const nursery = openNursery([smallRecords()], { newRows: 60 }).ready();
    sheetOf(nursery).deleteRows(5, 1);
    expect(nursery.ask("sidebarOpen", null).setUp?.level).toBe(0.8);
    expect(nursery.refusal("sidebarOrderTab", PLAN)).toBe(
      settingsTab.lineLost({ settings: SETTINGS, label: "Level" }),
    );
    nursery.ask("sidebarSetUp", ONCE);
    expect(nursery.value(SETTINGS, "A5")).toBe("Level");
    expect(nursery.ask("sidebarOpen", null).setUp?.asOf).toBe("2026-11-25");
    nursery.ask("sidebarOrderTab", PLAN);
    sheetOf(nursery).deleteRows(3, 1);
    expect(nursery.refusal("sidebarToday", { daysAhead: 7 })).toBe(
      setUp.noRecordsTab({ settings: SETTINGS }),
    );
    nursery.ask("sidebarSetUp", ONCE);
    expect(nursery.ask("sidebarToday", { daysAhead: 7 }).asOf).toBe("2026-11-25");
  });

  it("keep a row that a person put in between, and all formulas follow", async () => {
    const nursery = openNursery([smallRecords()], { newRows: 60, live: true }).ready();
    const sheet = sheetOf(nursery);
    sheet.insertRowsAfter(3, 1);
    sheet.getRange("A4:C4").setValues([["Our year", "2026", "for the printer"]]);
    nursery.ask("sidebarOrderTab", PLAN);
    nursery.ask("sidebarSetUp", { ...ONCE, columns: [told] });
    await nursery.w.settled();
    expect(sheet.getRange("A4:C4").getValues()).toEqual([["Our year", 2026, "for the printer"]]);
    expect(nursery.sheet("Stages").getRange("A3").getFormula()).toContain(
      "'Nursery settings'!$B$5,'Nursery settings'!$B$6,'Nursery settings'!$A$12:$C$212",
    );
    expect(nursery.sheet("Plan O-1").getRange("A5").getFormula()).toContain("$B$5");
    expect(nursery.ask("sidebarOpen", null).setUp?.asOf).toBe("2026-11-25");
    expect(nursery.values("Stages")[2]?.[0]).toBe(stages.batch());
  });

  it("of an older add-in are read, and brought up to date by Set up", () => {
    const nursery = openNursery([smallRecords()], { newRows: 60 }).ready();
    const sheet = sheetOf(nursery);
    sheet.getRange("A7:C7").clearContent();
    expect(nursery.ask("sidebarOpen", null).setUp?.timetableTab).toBeNull();
    nursery.ask("sidebarSetUp", ONCE);
    expect(nursery.value(SETTINGS, "A7")).toBe("Timetable tab");
  });

  it("of an older add-in get the newer rows, and what points at the told columns goes on doing so", async () => {
    const nursery = openNursery([smallRecords()], { newRows: 60, live: true });
    nursery.ask("sidebarSetUp", { ...ONCE, columns: [told] });
    const sheet = sheetOf(nursery);
    sheet.deleteRows(8, 3);
    // Told columns stand where the newer settings will: they are none of them.
    expect(nursery.value(SETTINGS, "A9")).toBe("Leave alone");
    expect(nursery.ask("sidebarOpen", null).setUp?.initials).toBe(false);
    nursery.sheet("Records").getRange("Z1").setFormula("='Nursery settings'!$A$9");
    nursery.ask("sidebarSetUp", ONCE);
    await nursery.w.settled();
    expect(sheet.getRange("A7:B12").getValues()).toEqual([
      ["Timetable tab", ""],
      ["Takes compared by", ""],
      ["People", "names"],
      ["Looks", "shown"],
      ["Our name", "Your word"],
      ["Leave alone", "Note"],
    ]);
    expect(sheet.getRange("C9").getValue()).toBe(
      settingsTab.people({ initials: "initials", names: "names" }),
    );
    expect(nursery.sheet("Records").getRange("Z1").getValue()).toBe("Leave alone");
    expect(nursery.sheet("Stages").getRange("A3").getFormula()).toContain("$A$11:$C$211");
  });
});

describe("lines of the person's own above a table of ours", () => {
  it.each([DUE, LOG])("in %s: a sentence names the tab and what mends it", (name) => {
    const nursery = atWork();
    nursery.sheet(name).insertRowsBefore(1, 1);
    nursery.sheet(name).getRange("A1").setValue("For Ana: read this first");
    expect(() => nursery.w.call("refreshDueList")).toThrow(
      linesAbove({ tab: name, mendedBy: name === DUE ? "refresh" : "again" }),
    );
    nursery.sheet(name).deleteRows(1, 1);
    goesOn(nursery);
  });
});

it("leaves a person's own tab alone that looks a little like one of ours", () => {
  const own = [
    tab("Due list", [
      ["Done", "Task", "Batch"],
      [null, "Weed", "B1"],
    ]),
    tab("Stages", [[{ f: "=BATCH_STAGES(Records!A:P)" }]]),
    tab("Plan B", [
      ["Order", "By", "Wanted"],
      ["O-1", null, 3],
    ]),
  ];
  for (const mine of own) {
    const nursery = openNursery([smallRecords(), mine], { newRows: 60 });
    const before = nursery.snapshot(mine.name);
    const run = () => nursery.ask("sidebarSetUp", ONCE);
    if (mine.name === "Plan B") run();
    else expect(run).toThrow(notOurs({ tab: mine.name }));
    expect(nursery.snapshot(mine.name)).toBe(before);
  }
});
