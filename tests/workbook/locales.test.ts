import { describe, expect, it } from "vitest";
import { type Nursery, openNursery, smallRecords, tab } from "./nursery";

const LIVE = ["Stages", "Ready by month", "Takes", "Takes compared", "Takes by month", "Checks"];
const PLAN = {
  ...{ order: "O-1", variety: "", wanted: 20, by: "2027-10-01", assurance: 0.8 },
  ...{ method: "", harvest: "" },
};
const TABS = [...LIVE, "What takes go with", "Work plan", "Plan O-1"];

async function setUpIn(locale: string): Promise<Nursery> {
  const crew = tab("Crew", [
    ["Person", "Tasks", "Hours a day"],
    ["Tavi", "", 8],
  ]);
  const nursery = openNursery([smallRecords(), crew], { locale, live: true }).ready();
  nursery.ask("sidebarOrderTab", PLAN);
  await nursery.w.settled();
  return nursery;
}

/** Tabs of a live formula that show an error, or whose formula shows nothing below itself. */
function dead(nursery: Nursery): string[] {
  return TABS.filter((name) => {
    const shown = nursery.values(name).flat().map(String);
    const has = nursery.sheet(name).getDataRange().getFormulas().flat().some(Boolean);
    return !has || shown.some((text) => /^#[A-Z]/.test(text));
  });
}

describe.each(["fr_FR", "pt_BR", "en_ZA"])(
  "in a workbook of %s, which has a decimal comma",
  (locale) => {
    // Every live tab was an error there, while Set up said that all was made.
    it("every live tab and plan answers, before and after the locale is changed", async () => {
      const nursery = await setUpIn(locale);
      expect(dead(nursery)).toEqual([]);
      nursery.w.conditions.locale("en_US");
      await nursery.w.settled();
      expect(dead(nursery)).toEqual([]);
      const plan = nursery.snapshot("Plan O-1");
      nursery.ask("sidebarSetUp", { tab: "Records", columns: [], methods: [] });
      await nursery.w.settled();
      expect(dead(nursery)).toEqual([]);
      expect(nursery.snapshot("Plan O-1")).toBe(plan);
    });
  },
);

it("brings tabs to life that an older add-in left as errors", async () => {
  const nursery = await setUpIn("fr_FR");
  nursery
    .sheet("Stages")
    .getRange("A3")
    .setValue("=BATCH_STAGES('Records'!A:P,'Nursery timetable'!A:L,'Nursery settings'!$B$4,0.8)");
  nursery
    .sheet("Plan O-1")
    .getRange("A5")
    .setValue(
      "=ORDER_PLAN($C$3,$B$3,'Nursery timetable'!A:L,$D$3,$F$3,'Records'!A:P,'Nursery settings'!$A$8:$C$208,'Nursery settings'!$B$4,$E$3,$G$3)",
    );
  await nursery.w.settled();
  expect(dead(nursery).sort()).toEqual(["Plan O-1", "Stages"]);
  nursery.ask("sidebarSetUp", { tab: "Records", columns: [], methods: [] });
  await nursery.w.settled();
  expect(dead(nursery)).toEqual([]);
});
