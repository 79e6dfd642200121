import { expect, it } from "vitest";
import { dueRow, enterDue } from "./due-list";
import { openNursery, smallRecords, tab, takesOf } from "./nursery";

it("lists the last writes of the log, the newest first, ticks of the due list among them", async () => {
  const nursery = openNursery([
    smallRecords(),
    tab("Orders", [
      ["Order", "Customer", "Variety", "Wanted", "By", "Delivered"],
      ["O-1", "Bo", "", 10, "2027-09-01"],
    ]),
  ]).ready();
  expect(nursery.ask("sidebarLastWrites", null)).toEqual({ writes: [], isMore: false });
  nursery.ask("sidebarRecord", takesOf("B1", { who: "Orrin", note: "dry" }));
  await enterDue(nursery, dueRow(nursery, "B2"), { Count: "50", Done: "TRUE" });
  nursery.ask("sidebarAddOrder", {
    ...{ order: "N-1", customer: "", variety: "", wanted: 40, by: "2027-10-01" },
    sure: [],
  });
  const { writes, isMore } = nursery.ask("sidebarLastWrites", null);
  expect(isMore).toBe(false);
  expect(writes.map(({ task, about, who, state }) => [task, about, who, state])).toEqual([
    ["(new order)", "N-1", "", "written"],
    ["Take count", "B2", "", "written"],
    ["Take count", "B1", "Orrin", "written"],
  ]);
  expect(writes[2]?.cells).toEqual([
    { where: "Records!L2", header: "Take count day", value: "2026-11-24" },
    { where: "Records!M2", header: "Takes", value: "60" },
    { where: "Records!P2", header: "Note", value: "dry" },
  ]);
  // Each takes itself back, in whatever order.
  const before = nursery.saved();
  const again = openNursery(before);
  for (const { logId } of [...writes].reverse()) {
    expect(again.ask("sidebarTakeBack", { logId }).asked).toEqual([]);
  }
  const states = again.ask("sidebarLastWrites", null).writes.map(({ state }) => state);
  expect(states).toEqual(["taken back", "taken back", "taken back"]);
  expect(again.value("Records", "M2")).toBe("");
});

it("passes over what came to nothing, and says what was cut off", () => {
  const nursery = openNursery([smallRecords()]).ready();
  nursery.w.meter.before("Utilities.getUuid", () => nursery.w.type("Records", "M2", "7"));
  nursery.ask("sidebarRecord", takesOf("B1"));
  expect(nursery.ask("sidebarLastWrites", null).writes).toEqual([]);
  nursery.ask("sidebarRecord", takesOf("B2"));
  nursery
    .sheet("Write log")
    .getRange("K5:K6")
    .setValues([["not known"], ["not known"]]);
  expect(nursery.ask("sidebarLastWrites", null).writes.map(({ state }) => state)).toEqual([
    "not known",
  ]);
});

it("tells where the log holds older ones", () => {
  const nursery = openNursery([smallRecords()]).ready();
  const lines = Array.from({ length: 500 }, (_, at) => [
    ...[`w${Math.floor(at / 2)}`, "2026-11-01 08:00", "", "Records", "L2", "Take count day", "B1"],
    ...["Take count", "", "2026-11-01", "taken back"],
  ]);
  const log = nursery.sheet("Write log");
  log.getRange(3, 1, lines.length, 11).setValues(lines);
  const { writes, isMore } = nursery.ask("sidebarLastWrites", null);
  expect(isMore).toBe(true);
  expect(writes).toHaveLength(30);
  expect(writes.every(({ cells }) => cells.length === 2)).toBe(true);
});
