import { describe, expect, it } from "vitest";
import { builtInTimetable } from "../../src/core";
import * as headers from "../../src/sentences/made/order-columns";
import * as faults from "../../src/sentences/made/order-faults";
import { all } from "../../src/sentences/made/orders";
import { notSetUp } from "../../src/sentences/made/set-up";
import type { OrderTabRequest, PlanOrderRequest } from "../../src/wire/orders";
import { needsWords, planFact, planWarning } from "../../src/wording/order-plan";
import { faultSentence } from "../../src/wording/writing";
import { day } from "../support/days";
import { refusalText } from "../support/refusal";
import { type Nursery, openNursery, smallRecords, tab } from "./nursery";

const PLAN: PlanOrderRequest = {
  ...{ variety: "Amberlow", wanted: 150, by: "2027-10-01", assurance: 0.8 },
  ...{ method: "Cocoa cleft graft", harvest: "" },
};
const ORDER: OrderTabRequest = { ...PLAN, order: "O-1" };
const small = () => openNursery([smallRecords()]).ready();
const unread = (name: string) => faultSentence({ code: "unreadable", name });
const ONCE = { tab: "Records", columns: [], methods: [] };
const madeTab = (nursery: Nursery, more: Partial<OrderTabRequest> = {}) =>
  nursery.ask("sidebarOrderTab", { ...ORDER, ...more }).tab;

/** Plans by the same small records. */
function planner(nursery = small()) {
  return (more: Partial<PlanOrderRequest> = {}) =>
    nursery.ask("sidebarPlanOrder", { ...PLAN, ...more });
}

const METHODS = builtInTimetable().methods.map(({ name }) => name);
const outOfRange = (found: number) =>
  refusalText({ code: "wanted-out-of-range", argument: "Wanted", most: 1_000_000, found });
const unreadable = (wanted: "day" | "number", argument: string, found: string | number) =>
  refusalText({ code: "argument-unreadable", argument, wanted, found });
const noLevel = (found: number) =>
  refusalText({ code: "level-out-of-range", argument: "assurance", found });

describe("planning an order", () => {
  it("goes step by step to ready, with days, plants, needs and the usual care", () => {
    const { method, steps, needs, remark } = planner()();
    expect([method, remark]).toEqual(["Cocoa cleft graft", null]);
    expect(steps[0]?.step).toBe("Sowing");
    expect(steps.at(-1)).toMatchObject({ step: "Ready", plants: 150, isPast: false });
    const grafting = steps.find(({ step }) => step === "Grafting");
    expect(grafting?.plants).toBeGreaterThan(150);
    expect(grafting?.caution).toMatch(/blade|knife|sharp/i);
    expect(grafting?.needs.length).toBeGreaterThan(0);
    expect(needs.map(({ item }) => item)).toContain("bag");
    for (const { doBy } of steps) expect(doBy).toMatch(/^20\d\d-\d\d-\d\d$/);
  });

  it("is surer with more plants, and takes the timetable's first method where none is named", () => {
    const plan = planner();
    const first = (assurance: number) => plan({ assurance, method: "" }).steps[0]?.plants ?? 0;
    expect(first(0.95)).toBeGreaterThan(first(0.8));
    expect(plan({ method: "" }).method).toBe("Cocoa cleft graft");
    expect(plan({ assurance: null as unknown as number })).toEqual(plan());
  });

  it("says what is too late, what can still be met, and when it is no season for seed", () => {
    const plan = planner();
    const late = plan({ by: "2026-12-20" }).steps[0];
    expect(late?.isPast).toBe(true);
    expect(late?.warnings).toMatchObject([
      { code: "start-was-due" },
      { code: "started-now", wanted: 150 },
      { by: day("2026-12-20") },
    ]);
    const outside = (harvest: string) =>
      plan({ harvest }).steps[0]?.warnings.find(({ code }) => code === "outside-harvest");
    expect(outside("June")).toMatchObject({ months: "June" });
    expect(outside("Jan-Dec")).toBeUndefined();
  });

  it("hides no warning behind what only explains, and takes no explanation for one", () => {
    const plan = planner();
    const late = plan({ by: "2026-12-20" }).steps;
    expect(late[0]?.warnings).toHaveLength(3);
    expect(late[0]?.warnings[0]?.code).toBe("start-was-due");
    expect(late.flatMap(({ warnings }) => warnings)).toContainEqual({ code: "day-past" });
    const early = plan({ by: "2028-06-15" }).steps;
    expect(early.flatMap(({ warnings }) => warnings)).toEqual([]);
    const facts = early.flatMap((step) => step.facts);
    expect(facts.length).toBeGreaterThan(3);
    const codes = ["plain-division", "more-than-plain", "general-share", "chances"];
    for (const { code } of facts) expect(codes).toContain(code);
  });

  it.each<[Partial<Record<keyof PlanOrderRequest, unknown>>, RegExp | string]>([
    [{ wanted: 0 }, outOfRange(0)],
    [{ wanted: 2.5 }, unreadable("number", "Wanted", 2.5)],
    [{ wanted: "150" }, outOfRange(0)],
    [{ wanted: null }, outOfRange(0)],
    [{ by: "soon" }, unreadable("day", "By", "soon")],
    [{ by: null }, refusalText({ code: "argument-missing", argument: "By", needs: "day" })],
    [{ assurance: 1 }, noLevel(1)],
    [{ assurance: -1 }, noLevel(-1)],
    [
      { method: "<b>none</b>" },
      refusalText({ code: "unknown-method", name: "<b>none</b>", known: METHODS }),
    ],
    [{ method: ["Cocoa cleft graft"] }, unread("Method")],
    [{ harvest: "whenever" }, faults.noHarvest({ found: "whenever" })],
    [{ harvest: { from: 1 } }, unread("Harvest months")],
    [{ variety: [["x"]] }, unread("Variety")],
  ])("refuses %j in a sentence", (more, sentence) => {
    const nursery = small();
    const request = { ...ORDER, ...more } as OrderTabRequest;
    const refused = (said: string) =>
      typeof sentence === "string" ? expect(said).toBe(sentence) : expect(said).toMatch(sentence);
    refused(nursery.refusal("sidebarPlanOrder", request));
    const tabs = nursery.tabs();
    refused(nursery.refusal("sidebarOrderTab", request));
    expect(nursery.tabs()).toEqual(tabs);
  });
});

describe("a plan as a tab", () => {
  it("says what the sidebar says, and follows what the person changes in it", async () => {
    const nursery = openNursery([smallRecords()], { live: true }).ready();
    expect(madeTab(nursery)).toBe("Plan O-1");
    const shown = async () => {
      await nursery.w.settled();
      return nursery
        .values("Plan O-1")
        .slice(5)
        .map((row) => row.slice(0, 5));
    };
    const planned = (more: Partial<PlanOrderRequest> = {}) => {
      const { steps, needs } = nursery.ask("sidebarPlanOrder", { ...PLAN, ...more });
      return [
        ...steps.map((one) => [
          one.step,
          one.doBy,
          one.plants,
          needsWords(one.needs),
          [...one.facts.map(planFact), ...one.warnings.map(planWarning)].join(" "),
        ]),
        [all(), "", "", needsWords(needs), ""],
      ];
    };
    expect(await shown()).toEqual(planned());
    expect(nursery.values("Plan O-1")[4]?.slice(0, 5)).toEqual([
      headers.step(),
      headers.doBy(),
      headers.plants(),
      headers.needs(),
      headers.remarks(),
    ]);
    nursery.w.type("Plan O-1", "C3", "300");
    nursery.w.type("Plan O-1", "G3", "June");
    const changed = planned({ wanted: 300, harvest: "June" });
    expect(changed).not.toEqual(planned());
    // What is typed is calculated a little later.
    await expect.poll(shown).toEqual(changed);
  });

  it("holds the page's text in cells, never in its formula", () => {
    const nursery = small();
    const nasty = '=HYPERLINK("x")&\'"); <b>';
    const name = madeTab(nursery, { order: nasty, variety: '"+1+"' });
    expect(name).toBe("Plan =HYPERLINK x & ; b");
    const row = nursery.values(name)[2];
    expect([row?.[0], row?.[4]]).toEqual([nasty, '"+1+"']);
    const formulas = nursery.sheet(name).getDataRange().getFormulas().flat().filter(Boolean);
    expect(formulas).toEqual([
      "=ORDER_PLAN($C$3,$B$3,'Nursery timetable'!A:O,$D$3,$F$3,'Records'!A:P,'Nursery settings'!$A$11:$C$211,'Nursery settings'!$B$4,$E$3,$G$3)",
    ]);
  });

  it.each([
    ["", "Plan 150 Amberlow"],
    ["[A]*?:\\/'\"<>|\n\t", "Plan A"],
    ["x".repeat(500), `Plan ${"x".repeat(26)}`],
    ["🌱".repeat(40), `Plan ${"🌱".repeat(26)}`],
    ["***", "Plan 150 Amberlow"],
    ["O-1 (being made)", "Plan O-1 being made"],
  ])("for the order %j is called %s", (order, name) => {
    expect(madeTab(small(), { order })).toBe(name);
  });

  it("is made anew for the same order, and beside any other tab of its name", () => {
    const nursery = openNursery([smallRecords(), tab("plan o-2", [["Mine"]])]).ready();
    madeTab(nursery);
    expect(madeTab(nursery, { wanted: 99 })).toBe("Plan O-1");
    expect(nursery.value("Plan O-1", "C3")).toBe(99);
    expect(madeTab(nursery, { order: "O-1*" })).toBe("Plan O-1 2");
    expect(nursery.value("Plan O-1", "C3")).toBe(99);
    expect(madeTab(nursery, { order: "O-2" })).toBe("Plan O-2 2");
    expect(nursery.values("plan o-2")).toEqual([["Mine"]]);
    // A tab that we made for the person to fill is theirs, whatever they call it.
    nursery.ask("sidebarMakeOrders", null);
    nursery.sheet("Orders").setName("Plan O-3");
    nursery.sheet("Plan O-3").getRange("A3").setValue("O-3");
    const filled = nursery.snapshot("Plan O-3");
    expect(madeTab(nursery, { order: "O-3" })).toBe("Plan O-3 2");
    expect(nursery.snapshot("Plan O-3")).toBe(filled);
  });

  it("is left alone when it is put by under another name, and so is a timetable", () => {
    const nursery = small();
    madeTab(nursery);
    nursery.sheet("Plan O-1").setName("Plan O-1 (old)");
    nursery.sheet("Nursery timetable").setName("Nursery timetable (old)");
    // Its formula may follow the tabs that are read by now; what was asked stays.
    const kept = () => [
      JSON.stringify(nursery.values("Plan O-1 (old)").slice(0, 3)),
      nursery.snapshot("Nursery timetable (old)"),
    ];
    const before = kept();
    for (const _ of [1, 2]) {
      madeTab(nursery);
      nursery.ask("sidebarSetUp", { ...ONCE, methods: ["Cocoa cleft graft"] });
    }
    expect(kept().map((one, at) => one === before[at])).toEqual([true, true]);
  });

  it("stays as it is when the tabs are made again, but reads the records that are chosen by then", () => {
    const other = { ...smallRecords(), name: "New records" };
    const nursery = openNursery([smallRecords(), other]).ready("Records");
    madeTab(nursery);
    nursery.sheet("Plan O-1").getRange("C3").setValue(77);
    const before = nursery.snapshot("Plan O-1");
    nursery.ask("sidebarSetUp", ONCE);
    expect(nursery.snapshot("Plan O-1")).toBe(before);
    nursery.ask("sidebarSetUp", { ...ONCE, tab: "New records" });
    const moved = nursery.sheet("Plan O-1").getRange("A5").getFormula();
    expect(moved).toContain("'New records'!A:P");
    expect(nursery.value("Plan O-1", "C3")).toBe(77);
    nursery.sheet("Plan O-1").getRange("A5").setValue("mine");
    nursery.ask("sidebarSetUp", ONCE);
    expect(nursery.value("Plan O-1", "A5")).toBe("mine");
  });

  it("goes by the built-in steps where there is no timetable", () => {
    const nursery = small();
    nursery.remove("Nursery timetable");
    madeTab(nursery);
    expect(nursery.sheet("Plan O-1").getRange("A5").getFormula()).toContain("($C$3,$B$3,,$D$3,");
  });

  it("needs the tabs of Set up first", () => {
    const nursery = openNursery([smallRecords()]);
    expect(nursery.refusal("sidebarOrderTab", ORDER)).toBe(notSetUp());
    expect(nursery.refusal("sidebarOrders", null)).toBe(notSetUp());
  });
});
