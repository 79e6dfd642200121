import { describe, expect, it } from "vitest";
import { openNursery, SETTINGS, smallRecords } from "./nursery";
import { ONCE } from "./tabs-at-work";

const told = { header: "Note", readAs: null };
const moreRecords = () => ({ ...smallRecords(), name: "More" });

// Formulas of older tabs refer to two columns; remarks of the person's stand below and beside.
describe("told words of an older add-in", () => {
  it("are read, and get their third column and room for 200 without touching what stands below", async () => {
    const nursery = openNursery([smallRecords()], { newRows: 300, live: true });
    nursery.ask("sidebarSetUp", { ...ONCE, columns: [told] });
    const sheet = nursery.sheet(SETTINGS);
    // As it was made before: two columns, 40 rows.
    sheet.deleteRows(52, 160);
    sheet.getRange("A10:D10").setValues([["Our column", "Header in your sheet", "By hand", ""]]);
    sheet.getRange("C11").setValue("the old hand's");
    sheet.getRange("A52:C52").setValues([["Our year", 2026, "for the printer"]]);
    nursery.sheet("Records").getRange("Z1").setFormula("='Nursery settings'!$A$52");
    expect(nursery.ask("sidebarColumns", { tab: "Records" }).columns).toContainEqual(
      expect.objectContaining({ header: "Note", readAs: null, sure: "told" }),
    );
    nursery.ask("sidebarSetUp", ONCE);
    await nursery.w.settled();
    expect(sheet.getRange("A10:C11").getValues()).toEqual([
      ["Our name", "Your word", "What it is"],
      ["Leave alone", "Note", "header"],
    ]);
    expect(sheet.getRange("A212:C212").getValues()).toEqual([
      ["Our year", 2026, "for the printer"],
    ]);
    expect(nursery.sheet("Records").getRange("Z1").getValue()).toBe("Our year");
    expect(nursery.sheet("Stages").getRange("A3").getFormula()).toContain("$A$10:$C$210");
  });

  it("are kept by Set up, words in cells too where another tab is read", () => {
    const nursery = openNursery([smallRecords(), moreRecords()], { newRows: 60 });
    nursery.ask("sidebarSetUp", { ...ONCE, columns: [told] });
    const sheet = nursery.sheet(SETTINGS);
    sheet.getRange("A12:C13").setValues([
      ["North", "N", "value"],
      ["North", "Noth", "not the same"],
    ]);
    nursery.ask("sidebarSetUp", { ...ONCE, tab: "More" });
    expect(sheet.getRange("A11:C13").getValues()).toEqual([
      ["North", "N", "value"],
      ["North", "Noth", "not the same"],
      ["", "", ""],
    ]);
  });
});
