import { expect } from "vitest";
import { written } from "../../src/sentences/made/due-rows";
import { patternOf } from "../support/pattern-of";
import { dueRow, dueValue, setDue } from "./due-list";
import { type Nursery, openNursery, SETTINGS, smallRecords, takesOf } from "./nursery";

export const DUE = "Due list";
export const LOG = "Write log";
export const ONCE = { tab: "Records", columns: [], methods: ["Cocoa cleft graft"] };
export const PLAN = {
  ...{ order: "O-1", variety: "", wanted: 20, by: "2027-10-01", assurance: 0.8 },
  ...{ method: "", harvest: "" },
};
export const OURS = [
  ...[SETTINGS, "Nursery timetable", DUE, LOG, "Stages", "Ready by month", "Takes", "Checks"],
  ...["Takes compared", "Takes by month", "What takes go with", "Plan O-1"],
  "Nursery overview",
];

/** A workbook at work: a task typed into, one in the log, a plan of an order. */
export function atWork(): Nursery {
  const nursery = openNursery([smallRecords()], { newRows: 60 }).ready();
  nursery.ask("sidebarOrderTab", PLAN);
  nursery.ask("sidebarRecord", takesOf("B1"));
  setDue(nursery, dueRow(nursery, "B2"), { Count: 61, Who: "Orrin", Note: "dry" });
  return nursery;
}

/** One of each kind: tabs of one formula are all made alike. */
export const KINDS = [SETTINGS, "Nursery timetable", DUE, LOG, "Stages", "Plan O-1"];

/** Everything that people do, once more; what was typed must come out of it. */
export function goesOn(nursery: Nursery): void {
  expect(nursery.ask("sidebarOpen", null).setUp?.recordsTab).toBe("Records");
  expect(nursery.ask("sidebarToday", { daysAhead: 7 }).asOf).toBe("2026-11-25");
  nursery.ask("sidebarRecord", takesOf("B1", { note: "wet" }));
  nursery.w.call("writeTicked");
  nursery.w.call("refreshDueList");
  const row = dueRow(nursery, "B2");
  const entered = (["Done", "Count", "Who", "Note"] as const).map((one) =>
    dueValue(nursery, one, row),
  );
  expect(entered).toEqual([false, 61, "Orrin", "dry"]);
  setDue(nursery, row, { Done: true });
  nursery.w.call("writeTicked");
  expect(dueValue(nursery, "Written", row)).toMatch(
    new RegExp(`^✓ ${patternOf(written({ cells: "Records!CELLS" }), { CELLS: ".*" }).source}$`),
  );
  expect(nursery.values("Records")[2]?.slice(11, 13)).toEqual(["2026-11-25", 61]);
  const logId = String(
    nursery.values(LOG).find((one) => one[5] === "Takes" && one[6] === "B1")?.[0],
  );
  expect(nursery.ask("sidebarTakeBack", { logId }).restored).toHaveLength(2);
  nursery.ask("sidebarOrderTab", { ...PLAN, wanted: 30 });
  nursery.ask("sidebarSetUp", { ...ONCE, columns: [{ header: "Note", readAs: null }] });
  expect(nursery.ask("sidebarColumns", { tab: "Records" }).columns).toContainEqual(
    expect.objectContaining({ header: "Note", sure: "told" }),
  );
  expect(nursery.tabs().sort()).toEqual(["Records", ...OURS].sort());
}
