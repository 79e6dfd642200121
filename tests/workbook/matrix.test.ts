import { expect, it } from "vitest";
import * as orders from "../../src/sentences/made/orders";
import { dueRow, dueValue, enterDue } from "./due-list";
import { type Nursery, openNursery, smallRecords, takesOf } from "./nursery";

const ONCE = { tab: "Records", columns: [], methods: ["Cocoa cleft graft"] };
const LIVE = ["Stages", "Ready by month", "Takes by month", "Checks"];
const PLAN = {
  ...{ order: "O-1", variety: "", wanted: 20, by: "2027-10-01", assurance: 0.8 },
  ...{ method: "", harvest: "" },
};

/** What a row of the records holds of its take count: the day, the takes, the note. */
const takesIn = (nursery: Nursery, row: number) => {
  const cells = nursery.values("Records")[row - 1] ?? [];
  return [cells[11], cells[12], cells[15]];
};

/**
 * A short job from the first set up to an order's plan. Locales differ in how formulas, numbers and
 * days are written; the zones are those of workbooks whose script is in UTC.
 */
it.each<readonly [locale: string, zone: string]>([
  ...["en_GB", "en_US", "fr_FR", "de_DE", "pt_BR", "en_ZA"].map(
    (locale) => [locale, "Etc/UTC"] as const,
  ),
  ["es_ES", "Pacific/Auckland"],
  ["es_MX", "America/Bogota"],
  ["id_ID", "Asia/Kolkata"],
])("does a whole job in a workbook of %s, its zone %s", async (locale, spreadsheetZone) => {
  const nursery = openNursery([smallRecords()], {
    ...{ locale, spreadsheetZone, scriptZone: "Etc/UTC", live: true, newRows: 120 },
  }).ready();
  nursery.ask("sidebarSetUp", ONCE);
  await nursery.w.settled();
  for (const tab of LIVE) {
    const texts = nursery.values(tab).flat().map(String);
    expect([tab, texts.filter((text) => /^#[A-Z]/.test(text))]).toEqual([tab, []]);
  }
  expect(nursery.value("Stages", "A4")).toBe("B1");
  expect(nursery.value("Stages", "F4")).toBe("2026-11-07");

  const row = dueRow(nursery, "B1");
  await enterDue(nursery, row, { Count: "61", Done: "TRUE" });
  expect(nursery.w.editErrors).toEqual([]);
  expect(dueValue(nursery, "Written", row)).toMatch(/^✓ .*Records!/);
  expect(takesIn(nursery, 2)).toEqual(["2026-11-25", 61, ""]);

  const { logId } = nursery.ask("sidebarRecord", takesOf("B2", { note: "=1+1" }));
  expect(takesIn(nursery, 3)).toEqual(["2026-11-24", 60, "=1+1"]);
  nursery.ask("sidebarTakeBack", { logId: logId ?? "" });
  expect(takesIn(nursery, 3)).toEqual(["", "", ""]);

  const { tab } = nursery.ask("sidebarOrderTab", PLAN);
  await nursery.w.settled();
  const steps = nursery.values(tab).map(([step]) => step);
  expect(steps).toEqual(expect.arrayContaining(["Sowing", "Grafting", "Ready", orders.all()]));
  const ready = nursery.values(tab).find(([step]) => step === "Ready");
  expect(ready?.slice(1, 3)).toEqual(["2027-10-01", 20]);
});
