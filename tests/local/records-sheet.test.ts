import { describe, expect, it } from "vitest";
import { withAsOf } from "../../src/local/as-of-cell";
import { loadBundle } from "../../src/local/bundle";
import { recordsTabs, timetableSheet } from "../../src/local/records-sheet";
import { filledCells, oneCell, wholeColumns } from "../../src/local/references";
import { settingReference } from "../../src/local/settings-tab";
import { numberCell, type SheetDraft, textCell } from "../../src/local/workbook-data";
import * as text from "../../src/sentences/made/report";

const tab = (name: string, ...rows: string[][]): SheetDraft => ({
  name,
  rows: rows.map((row) => row.map((text) => (text === "" ? undefined : textCell(text)))),
});
const records = tab("2026", ["Our batches"], [], ["BATCH no", "Variety", "Sown", "Grafted on"]);
const orders = tab("Orders", ["Order", "Customer", "Variety", "Ready"]);
const places = tab("Places", ["Place", "Holds"]);
const DAY = "yyyy-mm-dd";

/**
 * Stands for the add-in: reads a batch from every row below a row with "Batch", or what is told and there, in
 * it, and closes with a remark.
 */
const READER = `
/** @customfunction */
function BATCH_BALANCE(records, columns) {
  var isThere = columns && records.some(function (row) { return row.indexOf(columns[0][1]) >= 0; });
  var named = isThere ? columns[0][1] : 'Batch';
  for (var r = 0; r < records.length; r++) {
    var at = records[r].indexOf(named);
    if (at < 0) continue;
    var batches = records.slice(r + 1).map(function (row) { return [row[at], row[at + 1] || '', 'as counted']; });
    return [['Batch', 'Started with', 'Remark']].concat(batches, [['1 row is left out.', '', '']]);
  }
  throw new Error('BATCH_BALANCE: no header');
}
`;
const bundle = loadBundle(READER, { spreadsheetZone: "UTC", scriptZone: "UTC", locale: "en_GB" });
const counted = (name: string, ...batches: string[]) =>
  tab(name, ["Our batches"], ["Batch", "Seeds"], ...batches.map((batch) => [batch, "120"])).rows;
const withCounts = (name: string, ...batches: string[]): SheetDraft => ({
  name,
  rows: counted(name, ...batches).map((row, index) =>
    index < 2 ? row : [row[0], numberCell(120)],
  ),
});

describe("recordsTabs", () => {
  const season = withCounts("2026", "B1", "B2", "B3");

  it("finds the tab in which the add-in reads batches", () => {
    const found = recordsTabs([orders, season], bundle);
    expect(found.records).toBe(season);
    expect(found.from).toEqual(["2026"]);
    expect(found.drafts).toEqual([orders, season]);
  });

  it("puts several such tabs under one another in a tab of their own", () => {
    const lots = withCounts("Lots", "L1", "L2");
    const { records: together, from, drafts } = recordsTabs([lots, orders, season], bundle);
    expect(from).toEqual(["Lots", "2026"]);
    expect(together.name).toBe(text.allRecords());
    expect(together.rows).toEqual([...lots.rows, ...season.rows]);
    expect(drafts).toEqual([lots, orders, season, together]);
  });

  it("takes the longer of two tabs that tell of the same batches", () => {
    const older = withCounts("2026 old", "B1", "B2");
    expect(recordsTabs([older, season], bundle).from).toEqual(["2026"]);
  });

  it("puts a table of facts to the log that counts for it", () => {
    const facts = tab("Batches", ["Batch", "Variety"], ["B1", ""], ["B2", ""]);
    expect(recordsTabs([season, facts], bundle).from).toEqual(["2026", "Batches"]);
  });

  it("reads tabs by what was told of columns, each by what is told of it", () => {
    const trays = tab("Trays", ["Tray no", "Seeds"], ["T1", ""]);
    const told = { columns: [["Batch", "Tray no", "header"]] as const };
    expect(() => recordsTabs([trays], bundle)).toThrow(text.noRecords({ tabs: [trays.name] }));
    expect(recordsTabs([orders, trays], bundle, told).from).toEqual(["Trays"]);
    expect(recordsTabs([season, trays], bundle, told).from).toEqual(["2026", "Trays"]);
  });

  it("finds a tab whose header is known only by all that is told of it together", () => {
    // As the add-in: one known word makes no header.
    const strict = loadBundle(READER.replace("at < 0", "at < 0 || columns.length < 2"), {
      ...{ spreadsheetZone: "UTC", scriptZone: "UTC", locale: "en_GB" },
    });
    const foreign = tab("Liste", ["Charge", "Sorte"], ["C1", "Amberlow"]);
    const batch = ["Batch", "Charge", "header"] as const;
    const variety = ["Variety", "Sorte", "header"] as const;
    expect(recordsTabs([foreign], strict, { columns: [batch, variety] }).from).toEqual(["Liste"]);
    expect(() => recordsTabs([foreign], strict, { columns: [batch] })).toThrow(
      text.noRecords({ tabs: [foreign.name] }),
    );
  });

  it("takes a template without batches for what it is, and only where nothing else has any", () => {
    const template = tab("Records", ["Our batches"], [], ["Batch", "Seeds"]);
    const found = recordsTabs([orders, template], bundle);
    expect([found.from, found.isBlank]).toEqual([["Records"], true]);
    const other = recordsTabs([orders, template, season], bundle);
    expect([other.from, other.isBlank]).toEqual([["2026"], false]);
  });

  it("takes the tab that the person names, small or capital letters", () => {
    expect(recordsTabs([orders, season], bundle, { sheet: "orders ", columns: [] }).records).toBe(
      orders,
    );
  });

  it("says which tabs there are when it can't tell", () => {
    expect(() => recordsTabs([orders, places], bundle)).toThrow(
      text.noRecords({ tabs: ["Orders", "Places"] }),
    );
    expect(() => recordsTabs([orders], bundle, { sheet: "Records", columns: [] })).toThrow(
      text.noTab({ tab: "Records", tabs: ["Orders"] }),
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
    expect(filledCells({ name: "Long", rows: [[], [textCell("a")], [undefined], []] })).toBe(
      "Long!A1:A2",
    );
    expect(wholeColumns(records)).toBe("'2026'!A:D");
    expect(oneCell("Bob's tab", 2, 27)).toBe("'Bob''s tab'!$AB$3");
    expect(oneCell("Q2", 0, 0)).toBe("'Q2'!$A$1");
  });
});

describe("withAsOf", () => {
  const settings = (...value: string[]) =>
    tab("Settings", ["Level", "0.8"], ["As-of day", ...value]);

  it("adds a tab when the workbook has no such setting, beside one of the same name", () => {
    const made = withAsOf([records, tab(text.asOfTab())], undefined, 46095);
    const sheet = `${text.asOfTab()} 2`;
    expect(made).toMatchObject({ reference: oneCell(sheet, 0, 1), sheet, row: 0 });
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
