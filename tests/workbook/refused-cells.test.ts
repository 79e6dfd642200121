import { describe, expect, it } from "vitest";
import type { Conditions } from "../../src/local/spreadsheet-app/conditions";
import { rowCode } from "../../src/workbook/due/row-state";
import { dueRow, dueValue, enterDue } from "./due-list";
import { type Nursery, openNursery, smallRecords, takesOf } from "./nursery";

/** Day, count and note go into L2, M2 and P2 of "Records". */
const NOTED = takesOf("B1", { note: "dry" });

const states = (nursery: Nursery) =>
  nursery
    .values("Write log")
    .slice(2)
    .map((row) => `${row[4]}: ${row.at(-1)}`);

const REFUSING: readonly [string, (conditions: Conditions) => void][] = [
  ["a protected first cell", (on) => on.protect("Records", "L:L")],
  ["a protected last cell", (on) => on.protect("Records", "P2:P9")],
  ["a column of numbers that rejects days", (on) => on.reject("Records", "L2:L9", ["never"])],
  ["a list that rejects the note", (on) => on.reject("Records", "P2:P9", ["wet"])],
  ["a typed column of a table", (on) => on.table("Records", "A1:P3", { types: { M: "checkbox" } })],
];

describe.each(["alone", "rest"] as const)("a cell that is refused late (%s)", (lateRefusals) => {
  it.each(REFUSING)("leaves table and log true: %s", (_, refuse) => {
    const nursery = openNursery([smallRecords()], { lateRefusals, newRows: 60 }).ready();
    const before = nursery.snapshot("Records");
    refuse(nursery.w.conditions);
    const sentence = nursery.refusal("sidebarRecord", NOTED);
    expect(sentence).toMatch(/protected cell|data validation rules/);
    expect(nursery.snapshot("Records")).toBe(before);
    expect(new Set(states(nursery).map((one) => one.split(": ")[1]))).toEqual(
      new Set(["not written"]),
    );
    expect(nursery.w.lock.isFree()).toBe(true);
  });

  it("says so in the ticked row, and the box may be ticked again", async () => {
    const nursery = openNursery([smallRecords()], { lateRefusals, newRows: 60 }).ready();
    nursery.w.conditions.protect("Records", "M2:M3");
    const before = nursery.snapshot("Records");
    const row = dueRow(nursery, "B1");
    await enterDue(nursery, row, { Count: "60", Done: "TRUE" });
    expect(nursery.w.editErrors).toEqual([]);
    expect(nursery.snapshot("Records")).toBe(before);
    expect(rowCode(String(dueValue(nursery, "Written", row)))).toBe("refused");
    expect(states(nursery).join()).not.toMatch(/: (?:written|writing)/);
  });
});

describe("other things that people do", () => {
  it("a merge over the count swallows it", () => {
    const nursery = openNursery([smallRecords()], { newRows: 60 }).ready();
    nursery.w.conditions.merge("Records", "L2:M2");
    const written = nursery.w.run("sidebarRecord", takesOf("B1")) as { ok: boolean };
    expect(nursery.value("Records", "M2")).toBe("");
    if (written.ok) expect(states(nursery)).not.toContain("M2: written");
  });

  it("a chart on its own tab is passed over", () => {
    const nursery = openNursery([smallRecords()], { newRows: 60 });
    nursery.w.conditions.tabWithoutCells("Chart of takes");
    nursery.ready();
    expect(nursery.ask("sidebarToday", { daysAhead: 7 }).tasks.length).toBeGreaterThan(0);
  });

  it.each(["fr_FR", "pt_BR", "id_ID"])("live tabs answer in %s", async (locale) => {
    const nursery = openNursery([smallRecords()], { locale, live: true, newRows: 60 }).ready();
    await nursery.w.settled();
    const wrong = nursery.tabs().filter((tab) =>
      nursery
        .values(tab)
        .flat()
        .some((value) => value === "#ERROR!"),
    );
    expect(wrong).toEqual([]);
  });
});
