import { expect, it } from "vitest";
import { batch } from "../../src/sentences/made/batch-columns";
import { writtenDaily } from "../../src/sentences/made/due-tab";
import { called } from "./faults/fail-in-turn";
import { openNursery, SETTINGS, smallRecords } from "./nursery";

/** The day on the clock of Greenwich, by which these workbooks live. */
const today = () => new Date().toISOString().slice(0, 10);
const ONCE = { tab: "Records", columns: [], methods: ["Cocoa cleft graft"] };

async function setUp(refusesToday: boolean) {
  const nursery = openNursery([smallRecords()], {
    ...{ spreadsheetZone: "Etc/UTC", scriptZone: "Etc/UTC" },
    ...{ refusesToday, live: true, newRows: 120 },
  });
  nursery.ask("sidebarSetUp", ONCE);
  await nursery.w.settled();
  const shown = () => String(nursery.value("Stages", "A3"));
  const asOf = () => nursery.sheet(SETTINGS).getRange("B4").getFormula();
  return { nursery, shown, asOf };
}

it("leaves =TODAY() where functions may read it", async () => {
  const { nursery, shown, asOf } = await setUp(false);
  expect(shown()).toBe(batch());
  nursery.w.call("refreshDueList");
  await nursery.w.settled();
  expect(asOf()).toBe("=TODAY()");
  expect(shown()).toBe(batch());
});

it.each(["refreshDueList", "showSidebar"])(
  "writes the day as a value where they may not, by %s, and anew on the next day",
  async (item) => {
    const { nursery, shown, asOf } = await setUp(true);
    expect(shown()).toBe("#ERROR!");
    const day = today();
    // This workbook has no page to show.
    called(nursery, item);
    await nursery.w.settled();
    expect(asOf()).toBe("");
    expect([day, today()]).toContain(nursery.value(SETTINGS, "B4"));
    expect(nursery.value(SETTINGS, "C4")).toBe(`↻ ${writtenDaily()}`);
    expect(shown()).toBe(batch());
    nursery.sheet(SETTINGS).getRange("B4").setValue("2026-11-24");
    called(nursery, item);
    expect([day, today()]).toContain(nursery.value(SETTINGS, "B4"));
  },
);

it("leaves a day alone that a person has typed", async () => {
  const { nursery } = await setUp(true);
  nursery.sheet(SETTINGS).getRange("B4").setValue("2026-10-01");
  nursery.w.call("refreshDueList");
  expect(nursery.value(SETTINGS, "B4")).toBe("2026-10-01");
});
