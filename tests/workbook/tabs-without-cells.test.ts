import { describe, expect, it } from "vitest";
import { noTab } from "../../src/sentences/made/order-writes";
import * as setUp from "../../src/sentences/made/set-up";
import { noCells } from "../../src/sentences/made/writing-faults";
import { type Nursery, openNursery, type Sheet, smallRecords, takesOf } from "./nursery";

const ONCE = { tab: "Records", columns: [], methods: ["Cocoa cleft graft"] };
const PLAN = {
  ...{ order: "O-1", variety: "", wanted: 20, by: "2027-10-01", assurance: 0.8 },
  ...{ method: "", harvest: "" },
};
const ORDER = {
  ...{ order: "N-1", customer: "Ana", variety: "Amberlow", wanted: 40, by: "2027-10-01" },
  sure: [],
};

function withSheets(...names: readonly (readonly [string, "OBJECT" | "DATASOURCE"])[]): Nursery {
  const sheets = names.map(([name, kind]) => ({ name, rows: [], kind }));
  return openNursery([...sheets, smallRecords()], { newRows: 60 });
}

describe("a workbook with a chart, a timeline and a connected sheet", () => {
  // People saw "The action is not supported for OBJECT sheet." in place of the sidebar.
  it("is opened, set up and worked with as any other", () => {
    const nursery = withSheets(
      ["Takes by bay", "OBJECT"],
      ["Settings", "OBJECT"],
      ["Warehouse", "DATASOURCE"],
      ["Orders", "OBJECT"],
    );
    const { candidates, timetables } = nursery.ask("sidebarOpen", null);
    expect(candidates).toEqual([{ tab: "Records", rows: 2 }]);
    expect(timetables).toEqual([]);
    nursery.ready();
    nursery.sheet("Takes by bay").activate();
    nursery.ask("sidebarSetUp", ONCE);
    nursery.ask("sidebarToday", { daysAhead: 7 });
    nursery.ask("sidebarWork", { days: 14 });
    expect(nursery.ask("sidebarOrders", null).ordersTab).toBeNull();
    nursery.ask("sidebarCheck", null);
    const { logId } = nursery.ask("sidebarRecord", takesOf("B1"));
    nursery.ask("sidebarTakeBack", { logId: logId ?? "" });
    nursery.ask("sidebarOrderTab", PLAN);
    nursery.ask("sidebarMakeCrew", null);
    nursery.w.call("refreshDueList");
    nursery.w.call("writeTicked");
    nursery.ask("sidebarSetUp", ONCE);
    const { SpreadsheetApp } = nursery.w.uncounted() as { SpreadsheetApp: Sheet };
    nursery.sheet("Warehouse").activate();
    nursery.w.call("refreshDueList");
    expect(SpreadsheetApp.getActive().getActiveSheet().getName()).toBe("Warehouse");
  });

  it.each(["Due list", "Stages", "Nursery settings", "due LIST"])(
    "called %s like a tab of ours: one sentence says so",
    (name) => {
      const nursery = withSheets([name, "OBJECT"]);
      expect(nursery.ask("sidebarOpen", null).setUp).toBeNull();
      expect(nursery.fault("sidebarSetUp", ONCE)).toEqual({ code: "noCells", tab: name });
      expect(nursery.tabs()).toEqual([name, "Records"]);
    },
  );

  it("called like a tab that we make to be filled, or like a plan", () => {
    const nursery = withSheets(
      ["Orders", "OBJECT"],
      ["crew", "DATASOURCE"],
      ["Plan O-1", "OBJECT"],
    );
    nursery.ready();
    expect(nursery.fault("sidebarMakeOrders", null)).toEqual({ code: "noCells", tab: "Orders" });
    expect(nursery.fault("sidebarMakeCrew", null)).toEqual({ code: "noCells", tab: "crew" });
    expect(nursery.refusal("sidebarAddOrder", ORDER)).toBe(noTab());
    expect(nursery.ask("sidebarOrderTab", PLAN).tab).toBe("Plan O-1 2");
  });

  it("chosen as records or timetable is no such tab", () => {
    const nursery = withSheets(["Chart", "OBJECT"]);
    expect(nursery.refusal("sidebarSetUp", { ...ONCE, tab: "Chart" })).toBe(
      setUp.noTab({ tab: "Chart" }),
    );
    expect(nursery.refusal("sidebarColumns", { tab: "Chart" })).toBe(setUp.noTab({ tab: "Chart" }));
    expect(nursery.refusal("sidebarSetUp", { ...ONCE, timetable: "Chart" })).toBe(
      setUp.noSuchTimetable({ tab: "Chart" }),
    );
    nursery.ready();
    nursery.sheet("Nursery settings").getRange("B3").setValue("Chart");
    expect(nursery.refusal("sidebarToday", { daysAhead: 7 })).toBe(setUp.tabGone({ tab: "Chart" }));
  });
});

it("where a person has put up a chart by the name of the due list since", () => {
  const nursery = openNursery([smallRecords()], { newRows: 60 }).ready();
  nursery.remove("Due list");
  nursery.w.conditions.tabWithoutCells("Due list");
  expect(() => nursery.w.call("refreshDueList")).toThrow(noCells({ tab: "Due list" }));
  expect(nursery.ask("sidebarToday", { daysAhead: 7 }).tasks).not.toEqual([]);
});
