import { describe, expect, it } from "vitest";
import { headers as costs } from "../../src/sentences/made/cost-columns";
import { headers as germination } from "../../src/sentences/made/germination-columns";
import * as text from "../../src/sentences/made/overview";
import { type Nursery, openNursery, smallRecords, tab } from "./nursery";

const ONCE = { tab: "Records", columns: [], methods: [] };
const ALL = ["lookback", "balance", "losses", "places", "needs", "costs"];
const SEEDS = "How seed came up";
const NAMES = [
  ...["Look back", "Where plants went", "Plants lost", "Places by week", "Needs ahead"],
  "Batch costs",
];
const shownIn = (nursery: Nursery, name: string) => nursery.values(name).flat().map(String);
const links = (nursery: Nursery) =>
  nursery.sheet("Nursery overview").getDataRange().getFormulas().flat().filter(Boolean) as string[];

describe("tabs made on choice", () => {
  it("are made where they are chosen, each live and answering", async () => {
    const nursery = openNursery(undefined, { live: true });
    const { made } = nursery.ask("sidebarSetUp", { ...ONCE, tabs: ALL });
    await nursery.w.settled();
    expect(made).toEqual(expect.arrayContaining(NAMES));
    for (const name of NAMES) {
      expect(nursery.sheet(name).getRange("A3").getFormula()).toMatch(/^=[A-Z_]+\(/);
      expect(shownIn(nursery, name).filter((one) => /^#[A-Z]/.test(one))).toEqual([]);
      expect(nursery.values(name).length).toBeGreaterThan(4);
    }
  });

  it("are none where none is chosen, and stay where they were chosen once", () => {
    const nursery = openNursery();
    nursery.ask("sidebarSetUp", ONCE);
    expect(nursery.tabs().filter((name) => NAMES.includes(name))).toEqual([]);
    nursery.ask("sidebarSetUp", { ...ONCE, tabs: ["costs"] });
    nursery.sheet("Batch costs").getRange("A3").setValue("gone");
    nursery.ask("sidebarSetUp", ONCE);
    expect(nursery.sheet("Batch costs").getRange("A3").getFormula()).toContain("BATCH_COST(");
    expect(nursery.ask("sidebarOpen", null).moreTabs.filter(({ isThere }) => isThere)).toEqual([
      expect.objectContaining({ key: "costs", tab: "Batch costs" }),
    ]);
  });

  it("read the person's prices and places, and say that there are none", async () => {
    const prices = tab("Prices", [
      ["Item", "Price", "Per"],
      ["Hour", 3, ""],
    ]);
    const nursery = openNursery([smallRecords(), prices], { live: true });
    nursery.ask("sidebarSetUp", { ...ONCE, tabs: ["costs", "losses", "places"] });
    await nursery.w.settled();
    for (const name of ["Batch costs", "Plants lost"]) {
      expect(nursery.sheet(name).getRange("A3").getFormula()).toContain("'Prices'!A:C");
    }
    expect(nursery.values("Batch costs")[2]).toContain(costs().cost);
    expect(shownIn(nursery, "Places by week")).toContain(text.noPlaces());
  });

  it("keep nobody from a tab of their own of that name, unless it is asked for", () => {
    const own = tab("Batch costs", [["mine"]]);
    const nursery = openNursery([smallRecords(), own]);
    nursery.ask("sidebarSetUp", ONCE);
    expect(nursery.value("Batch costs", "A1")).toBe("mine");
    expect(nursery.fault("sidebarSetUp", { ...ONCE, tabs: ["costs"] })).toEqual({
      code: "notOurs",
      tab: "Batch costs",
    });
  });
});

// An invented nursery's trays, a row an inspection; batch S2 comes up poorly.
describe("samples of seed in a tab of the person's", () => {
  const HEADER = ["Batch", "Tray", "Sown on", "Seeds sown", "Date", "Came up"];
  const rows = [
    ["S1", 1, "2026-10-01", 100, "2026-10-12", 60],
    ["S1", 1, "", "", "2026-10-20", 25],
    ["S2", 1, "2026-10-03", 100, "2026-10-14", 10],
    ["S2", 1, "", "", "2026-10-22", 8],
  ];
  const opened = (name: string, options: { readonly live?: boolean } = {}) =>
    openNursery([smallRecords(), tab(name, [HEADER, ...rows])], options);
  const shares = (nursery: Nursery) =>
    nursery.ask("sidebarFace", { face: "germination" }).rows.map((row) => [row[0], row[4]]);

  it.each(["Germination", "Levées", "Trays 2026"])(
    "are found in %s, on the page and in the tab",
    async (name) => {
      const nursery = opened(name, { live: true });
      const { made } = nursery.ask("sidebarSetUp", { ...ONCE, tabs: ["germination"] });
      await nursery.w.settled();
      expect(made).toContain(SEEDS);
      expect(shares(nursery)).toEqual([
        ["S1", 0.85],
        ["S2", 0.18],
      ]);
      expect(nursery.sheet(SEEDS).getRange("A3").getFormula()).toContain(`'${name}'!A:F`);
      const [head = [], ...shown] = nursery.values(SEEDS).slice(2);
      expect(head[4]).toBe(germination().germination);
      expect(shown.slice(0, 2).map((row) => [row[0], row[4]])).toEqual(shares(nursery));
      const { remark } = nursery.ask("sidebarFace", { face: "germination" });
      expect(remark).toContain("S2");
      expect(shownIn(nursery, SEEDS)).toContain(remark);
    },
  );

  it("are told to be missing where nobody has any, and no log is taken for them", () => {
    const log = tab("Log", [
      ["Batch", "Day", "Came up"],
      ["B1", "2026-10-12", 60],
    ]);
    const nursery = openNursery([smallRecords(), log]);
    nursery.ask("sidebarSetUp", { ...ONCE, tabs: ["germination"] });
    expect(nursery.ask("sidebarFace", { face: "germination" })).toEqual({
      ...{ columns: [], rows: [], remark: text.noGermination() },
    });
    expect(shownIn(nursery, SEEDS)).toContain(text.noGermination());
  });
});

describe("the overview", () => {
  it("leads to every tab of ours by its number, and names those that can be made", async () => {
    const nursery = openNursery([smallRecords()], { live: true });
    nursery.ask("sidebarSetUp", { ...ONCE, tabs: ["needs"] });
    await nursery.w.settled();
    const ours = nursery
      .tabs()
      .filter((name) => name !== "Records" && name !== "Nursery overview")
      .map((name) => `=HYPERLINK("#gid=${nursery.sheet(name).getSheetId()}","${name}")`);
    expect(links(nursery).sort()).toEqual(ours.sort());
    // The engine keeps the words of a link apart from values.
    const shown = shownIn(nursery, "Nursery overview");
    expect(shown).toContain(text.notMade({ tab: "Batch costs" }));
    expect(shown).not.toContain(text.notMade({ tab: "Needs ahead" }));
    expect(shown).toContain(text.answer({ tab: "needs" }));
  });

  it("stands before the due list, and follows plans and tabs with other names", () => {
    const nursery = openNursery([smallRecords()]).ready();
    const tabs = nursery.tabs();
    expect(tabs.indexOf("Nursery overview")).toBe(tabs.indexOf("Due list") - 1);
    nursery.ask("sidebarOrderTab", {
      ...{ order: "O-1", variety: "", wanted: 20, by: "2027-10-01", assurance: 0.8 },
      ...{ method: "", harvest: "" },
    });
    nursery.sheet("Due list").setName("Monday's work");
    nursery.w.call("refreshDueList");
    const led = links(nursery).join("\n");
    expect(led).toContain(',"Plan O-1")');
    expect(led).toContain(',"Monday\'s work")');
  });
});
