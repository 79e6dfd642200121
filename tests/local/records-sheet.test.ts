import { describe, expect, it } from "vitest";
import { withAsOf } from "../../src/local/as-of-cell";
import { recordsSheet, timetableSheet } from "../../src/local/records-sheet";
import { oneCell, wholeColumns } from "../../src/local/references";
import { settingReference } from "../../src/local/settings-tab";
import { numberCell, type SheetDraft, textCell } from "../../src/local/workbook-data";

const tab = (name: string, ...rows: string[][]): SheetDraft => ({
  name,
  rows: rows.map((row) => row.map((text) => (text === "" ? undefined : textCell(text)))),
});
const records = tab("2026", ["Our batches"], [], ["BATCH no", "Variety", "Sown", "Grafted on"]);
const orders = tab("Orders", ["Order", "Customer", "Variety", "Ready"]);
const places = tab("Places", ["Place", "Batch", "Variety"]);
const DAY = "yyyy-mm-dd";

describe("recordsSheet", () => {
  it("finds the tab by its header, below title lines too", () => {
    expect(recordsSheet([orders, places, records])).toBe(records);
  });

  it("knows records that are one row an event", () => {
    const events = tab("Log", ["Day", "Batch", "Step", "Count", "Person"]);
    expect(recordsSheet([orders, events])).toBe(events);
  });

  it("takes the tab that the person names, small or capital letters", () => {
    expect(recordsSheet([orders, records], "orders ")).toBe(orders);
  });

  it("says which tabs there are when it can't tell", () => {
    expect(() => recordsSheet([orders, places])).toThrow(/--sheet NAME: Orders, Places$/);
    expect(() => recordsSheet([orders], "Records")).toThrow(
      'There is no tab named "Records"; the tabs are: Orders',
    );
  });
});

describe("timetableSheet", () => {
  it("needs the name and the header", () => {
    const own = tab("timetable", ["Method", "Step", "After"]);
    expect(timetableSheet([orders, own])).toBe(own);
    expect(timetableSheet([tab("Timetable", ["Bus", "Leaves at"])])).toBeNull();
    expect(timetableSheet([tab("Plan", ["Method", "Step"])])).toBeNull();
  });
});

describe("references", () => {
  it("names whole columns to the last filled one, with quotes where a name needs them", () => {
    expect(wholeColumns(orders)).toBe("Orders!A:D");
    expect(wholeColumns(records)).toBe("'2026'!A:D");
    expect(oneCell("Bob's tab", 2, 27)).toBe("'Bob''s tab'!$AB$3");
    expect(oneCell("Q2", 0, 0)).toBe("'Q2'!$A$1");
  });
});

describe("withAsOf", () => {
  const settings = (...value: string[]) =>
    tab("Settings", ["Level", "0.8"], ["As-of day", ...value]);

  it("adds a tab when the workbook has no such setting, beside one of the same name", () => {
    const made = withAsOf([records, tab("As of")], undefined, 46095);
    expect(made).toMatchObject({ reference: "'As of 2'!$B$1", sheet: "As of 2", row: 0 });
    expect(made.drafts[2]?.rows[0]).toEqual([textCell("As-of day"), numberCell(46095, DAY)]);
  });

  it("keeps the day of the workbook unless another one is asked for", () => {
    const own = [records, settings("2026-05-01")];
    expect(withAsOf(own, undefined, 46095)).toMatchObject({
      drafts: own,
      reference: "Settings!$B$2",
    });
    const asked = withAsOf(own, 46000, 46095);
    expect(asked.drafts[1]?.rows[1]?.[1]).toEqual(numberCell(46000, DAY));
    expect(own[1]?.rows[1]?.[1]).toEqual(textCell("2026-05-01"));
  });

  it("fills in today where the workbook leaves the day open", () => {
    expect(withAsOf([settings()], undefined, 46095).drafts[0]?.rows[1]?.[1]).toEqual(
      numberCell(46095, DAY),
    );
  });

  it("points at other settings only when they are filled in", () => {
    expect(settingReference([settings()], "level")).toBe("Settings!$B$1");
    expect(settingReference([settings()], "As-of day")).toBeNull();
    expect(settingReference([records], "Level")).toBeNull();
  });
});
