import { describe, expect, it } from "vitest";
import type { InputFault } from "../../src/core";
import { formulaCell, type SheetDraft } from "../../src/local/workbook-data";
import * as records_ from "../../src/sentences/made/records";
import * as setUp from "../../src/sentences/made/set-up";
import { timetableLoss, timetableRemark } from "../../src/wording/timetable";
import { refusalText } from "../support/refusal";
import { AS_OF, openNursery, SETTINGS, smallRecords, tab } from "./nursery";

const HEADER = ["Method", "Step", "After", "From day", "Usual day", "By day", "Counted"];

/** A timetable of the nursery's own, with a step that the built-in ones lack. */
function ownTimetable(
  name: string,
  { weeding = 30, ready = 120 }: { weeding?: string | number; ready?: number } = {},
): SheetDraft {
  const [from, by] = typeof weeding === "number" ? ([20, 40] as const) : (["", ""] as const);
  return tab(name, [
    ["What we do, and when"],
    HEADER,
    ["Hill way", "Sowing", "", "", "", "", "yes"],
    ["Hill way", "Grafting", "Sowing", 80, 90, 110, "yes"],
    ["Hill way", "Weeding", "Grafting", from, weeding, by, ""],
    ["Hill way", "Ready", "Grafting", 100, ready, 150, "yes"],
  ]);
}
const ONCE = { tab: "Records", columns: [], methods: [] };
const WITH_OWN = { ...ONCE, timetable: "Our steps" };

function opened(...drafts: readonly SheetDraft[]) {
  return openNursery([smallRecords(), ...drafts]);
}

const SOON = {
  ...({ row: 5, column: "usual", found: "soon" } as const),
  ...({ code: "no-number", leftOut: "row" } as const),
};
const TOO_LATE = {
  ...({ row: 6, column: "usual", found: "100 / 200 / 150" } as const),
  ...({ code: "days-must-rise", step: "Ready", leftOut: "method" } as const),
};
const corrected = (fault: InputFault) =>
  setUp.correctTimetable({ why: refusalText(fault), tab: "Our steps" });

// People who keep a timetable found a second one beside it, and answers by days that were not theirs.
describe("a timetable of the nursery's own", () => {
  it("is found, and what in it can't be used is told", () => {
    const { timetables } = openNursery().ask("sidebarOpen", null);
    expect(timetables).toEqual([
      { tab: "Timetable", methods: ["Cocoa cleft graft"], trouble: null },
    ]);
    const faulty = opened(ownTimetable("Our steps", { ready: 200 })).ask("sidebarOpen", null);
    expect(faulty.timetables[0]).toMatchObject({
      tab: "Our steps",
      methods: [],
      trouble: refusalText({ code: "timetable-unusable", fault: TOO_LATE, more: 0 }),
    });
    const inPart = opened(ownTimetable("Our steps", { weeding: "soon" })).ask("sidebarOpen", null);
    expect(inPart.timetables[0]).toMatchObject({
      tab: "Our steps",
      methods: ["Hill way"],
      trouble: timetableRemark([SOON], "page"),
    });
    expect(faulty.candidates.map(({ tab: name }) => name)).toEqual(["Records"]);
  });

  it("is used where it is chosen: none is made beside it, and it is only read", async () => {
    const drafts = [smallRecords(), ownTimetable("Our steps")];
    const nursery = openNursery(drafts, { live: true });
    const before = nursery.snapshot("Our steps");
    const answer = nursery.ask("sidebarSetUp", WITH_OWN);
    nursery.sheet(SETTINGS).getRange("B4").setValue(AS_OF);
    await nursery.w.settled();
    expect(answer.made).not.toContain("Nursery timetable");
    expect(nursery.tabs()).not.toContain("Nursery timetable");
    expect(nursery.snapshot("Our steps")).toBe(before);
    expect(nursery.ask("sidebarOpen", null).setUp?.timetableTab).toBe("Our steps");
    const tasks = nursery.ask("sidebarToday", { daysAhead: 7 }).tasks.map(({ task }) => task);
    expect(tasks).toContain("Weeding");
    expect(nursery.sheet("Stages").getRange("A3").getFormula()).toContain("'Our steps'!A:G");
    expect(nursery.values("Stages").flat()).toContain("Hill way");
    const { choices } = nursery.ask("sidebarColumns", { tab: "Records", timetable: "Our steps" });
    expect(choices).toContain("Weeding day");
  });

  it("answers in every live tab of the sample nursery by its own timetable and settings", async () => {
    const nursery = openNursery(undefined, { live: true });
    const before = ["Timetable", "Settings"].map((name) => nursery.snapshot(name));
    nursery.ask("sidebarSetUp", { ...ONCE, timetable: "Timetable" });
    nursery.sheet(SETTINGS).getRange("B4").setValue(AS_OF);
    await nursery.w.settled();
    for (const name of ["Stages", "Ready by month", "Takes", "Checks"]) {
      const values = nursery.values(name).flat();
      expect(values.length).toBeGreaterThan(20);
      expect(values.filter((value) => String(value).startsWith("#"))).toEqual([]);
    }
    expect(nursery.ask("sidebarOpen", null).setUp).toMatchObject({ daysAhead: 14, level: 0.8 });
    expect(["Timetable", "Settings"].map((name) => nursery.snapshot(name))).toEqual(before);
  });

  // Told as a step of their own, a column turned four of the tabs into #ERROR!.
  it("is what every tab reads columns by, those of takes too", async () => {
    const records = tab("Records", [
      ["Batch", "Variety", "Grafted on", "Grafts made", "Hoed", "Take count day", "Takes"],
      ["B1", "Alba", "2026-09-01", 100, "2026-10-01", "2026-10-10", 80],
      ["B2", "Nera", "2026-09-03", 90, "2026-10-03", "2026-10-12", 77],
    ]);
    const nursery = openNursery([records, ownTimetable("Our steps")], { live: true });
    const hoed = { header: "Hoed", readAs: "Weeding day" };
    nursery.ask("sidebarSetUp", { ...WITH_OWN, columns: [hoed], compareBy: "Variety" });
    await nursery.w.settled();
    for (const name of ["Stages", "Takes", "Takes by month", "What takes go with", "Checks"]) {
      expect(nursery.sheet(name).getRange("A3").getFormula()).toContain("'Our steps'!A:G");
      const texts = nursery.values(name).flat().map(String);
      expect(texts.filter((text) => text.startsWith("#"))).toEqual([]);
      expect(texts.join(" ")).not.toContain(
        records_.toldAs({ header: "Hoed", name: "Weeding day" }),
      );
    }
  });

  // One slip in one row shut the sidebar and turned every tab into an error.
  it("goes on without a row that can't be read, and names it everywhere", async () => {
    const drafts = [smallRecords(), ownTimetable("Our steps", { weeding: "soon" })];
    const nursery = openNursery(drafts, { live: true });
    nursery.ask("sidebarSetUp", WITH_OWN);
    nursery.sheet(SETTINGS).getRange("B4").setValue(AS_OF);
    await nursery.w.settled();
    const remark = timetableRemark([SOON], "cell");
    for (const name of ["Stages", "Ready by month", "Takes"]) {
      expect(nursery.values(name).flat().join(" ")).toContain(remark);
    }
    const leftOut = { code: "timetable-left-out", faults: [SOON] };
    const { remarks, tasks } = nursery.ask("sidebarToday", { daysAhead: 120 });
    expect(remarks).toContainEqual(leftOut);
    expect(tasks).not.toEqual([]);
    expect(nursery.ask("sidebarAhead", null).remarks).toContainEqual(leftOut);
    const { rows } = nursery.ask("sidebarCheck", null);
    expect(rows[0]).toMatchObject({ found: "soon", whatHappens: timetableLoss(SOON) });
  });

  it("gives way to the add-in's when that is chosen, and comes back", () => {
    const nursery = opened(ownTimetable("Our steps"));
    nursery.ask("sidebarSetUp", WITH_OWN);
    expect(nursery.ask("sidebarSetUp", ONCE).made).toContain("Nursery timetable");
    expect(nursery.ask("sidebarOpen", null).setUp?.timetableTab).toBeNull();
    expect(nursery.sheet("Stages").getRange("A3").getFormula()).toContain(
      "'Nursery timetable'!A:O",
    );
    nursery.ask("sidebarSetUp", WITH_OWN);
    expect(nursery.sheet("Stages").getRange("A3").getFormula()).toContain("'Our steps'!A:G");
  });

  it("may bear the name of ours when it is the one chosen", () => {
    const nursery = opened(ownTimetable("Nursery timetable"));
    const before = nursery.snapshot("Nursery timetable");
    nursery.ask("sidebarSetUp", { ...ONCE, timetable: "Nursery timetable" });
    expect(nursery.snapshot("Nursery timetable")).toBe(before);
  });

  it.each([
    [
      "without a method that can be used",
      ownTimetable("Our steps", { ready: 200 }),
      corrected({ code: "timetable-unusable", fault: TOO_LATE, more: 0 }),
    ],
    [
      "without its header",
      tab("Our steps", [["milk"], ["bread"]]),
      corrected({ code: "no-header-row", argument: "timetable", columns: ["Step", "After"] }),
    ],
    ["that is gone", tab("Shopping", [["milk"]]), setUp.noSuchTimetable({ tab: "Our steps" })],
  ])("is refused %s before anything is made", (_, draft, sentence) => {
    const nursery = opened(draft);
    expect(nursery.refusal("sidebarSetUp", WITH_OWN)).toBe(sentence);
    expect(nursery.tabs()).toEqual(["Records", draft.name]);
  });

  it("says so when it is taken away later, and can be chosen anew", () => {
    const nursery = opened(ownTimetable("Our steps"));
    nursery.ask("sidebarSetUp", WITH_OWN);
    nursery.remove("Our steps");
    expect(nursery.refusal("sidebarToday", { daysAhead: 7 })).toBe(
      setUp.noSuchTimetable({ tab: "Our steps" }),
    );
    expect(nursery.ask("sidebarOpen", null).timetables).toEqual([]);
    nursery.ask("sidebarSetUp", ONCE);
    expect(nursery.ask("sidebarToday", { daysAhead: 7 }).tasks).toBeInstanceOf(Array);
  });

  it("is no trouble for settings made before there was a choice", () => {
    const nursery = opened(ownTimetable("Our steps")).ready();
    nursery.sheet(SETTINGS).getRange("A7:C7").clearContent();
    expect(nursery.ask("sidebarOpen", null).setUp?.timetableTab).toBeNull();
    nursery.ask("sidebarSetUp", WITH_OWN);
    expect(nursery.value(SETTINGS, "A7")).toBe("Timetable tab");
    expect(nursery.value(SETTINGS, "B7")).toBe("Our steps");
  });
});

describe("settings of the nursery's own", () => {
  const settings = (asOf: ReturnType<typeof formulaCell> | string) =>
    tab("Settings", [
      ["As-of day", asOf],
      ["Level", 0.9],
      ["Days ahead", ""],
    ]);
  const formulas = (asOf: Parameters<typeof settings>[0]) => {
    const nursery = opened(settings(asOf));
    nursery.ask("sidebarSetUp", ONCE);
    return ["B4", "B5", "B6"].map((cell) => nursery.sheet(SETTINGS).getRange(cell).getFormula());
  };

  it("are followed, but for what is blank and a typed day, which stands still", () => {
    expect(formulas("2026-01-05")).toEqual(["=TODAY()", "='Settings'!$B$2", ""]);
    expect(formulas(formulaCell("=TODAY()-1"))[0]).toBe("='Settings'!$B$1");
  });

  // Many a workbook has a tab Settings for something else: followed, it kept the sidebar shut.
  it("are left alone where they can't be read as such", async () => {
    const nursery = opened(
      tab("Settings", [
        ["As-of day", formulaCell('="next week"')],
        ["Level", "advanced"],
        ["Days ahead", -3],
      ]),
    );
    await nursery.w.settled();
    nursery.ask("sidebarSetUp", ONCE);
    const cells = ["B4", "B5", "B6"].map((cell) => nursery.sheet(SETTINGS).getRange(cell));
    expect(cells.map((cell) => cell.getFormula())).toEqual(["=TODAY()", "", ""]);
    expect(nursery.ask("sidebarOpen", null).setUp).toMatchObject({ level: 0.8, daysAhead: 7 });
  });

  it("change the answers", async () => {
    const nursery = opened(settings("2026-01-05"));
    nursery.ask("sidebarSetUp", ONCE);
    await nursery.w.settled();
    expect(nursery.ask("sidebarOpen", null).setUp?.level).toBe(0.9);
  });
});
