import { expect, it } from "vitest";
import { dueRow, dueRows, enterDue } from "./due-list";
import { type Nursery, openNursery, SETTINGS, smallRecords } from "./nursery";

/** Set up on the very day that it is, with all formulas calculated. */
async function today(): Promise<Nursery> {
  const nursery = openNursery([smallRecords()], { live: true });
  nursery.ask("sidebarSetUp", { tab: "Records", columns: [], methods: [] });
  await nursery.w.settled();
  nursery.w.call("refreshDueList");
  await nursery.w.settled();
  return nursery;
}

const age = (nursery: Nursery) => String(nursery.value("Due list", "C1"));

it("says in its first row of what day it is, and when something has changed since", async () => {
  const nursery = await today();
  expect(nursery.value("Due list", "A1")).toMatch(
    /^Nursery batches: due list of \d+ \w{3} \d{4}\./,
  );
  expect(age(nursery)).toMatch(/^Of \d+ \w{3} \d{4}$/);
  nursery.sheet("Records").getRange("C2").setValue("Bay 12");
  await nursery.w.settled();
  expect(age(nursery)).toMatch(/: records have changed since\. Tick the box beside/);
  nursery.w.call("refreshDueList");
  await nursery.w.settled();
  expect(age(nursery)).toMatch(/\d{4}$/);
  nursery.sheet("Nursery timetable").getRange("D4").setValue(3);
  await nursery.w.settled();
  expect(age(nursery)).toMatch(/changed since/);
  nursery.w.call("refreshDueList");
  nursery.sheet(SETTINGS).getRange("B6").setValue(14);
  await nursery.w.settled();
  expect(age(nursery)).toMatch(/changed since/);
});

it("does not take its own ticks for a change, nor that one is taken back", async () => {
  const nursery = await today();
  const row = dueRow(nursery, "B1");
  await enterDue(nursery, row, { Count: "60", Note: "dry", Done: "TRUE" });
  expect(nursery.value("Records", "M2")).toBe(60);
  expect(age(nursery)).toMatch(/\d{4}$/);
  await enterDue(nursery, row, { Done: "FALSE" });
  expect(nursery.value("Records", "M2")).toBe("");
  expect(age(nursery)).toMatch(/\d{4}$/);
  nursery.ask("sidebarRecord", {
    ...{ batch: "B2", task: "Take count", day: "2026-11-24", count: 60, who: "", note: "" },
    sure: [],
  });
  await nursery.w.settled();
  expect(age(nursery)).toMatch(/changed since/);
});

it("of another day says so", async () => {
  const nursery = openNursery([smallRecords()], { live: true }).ready();
  await nursery.w.settled();
  expect(age(nursery)).toBe("Of 25 Nov 2026: not today's list. Tick the box beside for a new one");
});

it("is made anew by the box in its first row, where there is no menu", async () => {
  const nursery = openNursery([smallRecords()]).ready();
  nursery.sheet("Records").getRange("A3").setValue("B2-renamed");
  nursery.w.type("Due list", "D1", "TRUE");
  await nursery.w.settled();
  expect(nursery.w.editErrors).toEqual([]);
  expect(dueRows(nursery, ["Batch"]).flat()).toContain("B2-renamed");
  expect(nursery.value("Due list", "D1")).toBe(false);
});

it("says in its first cell why it could not be made anew", async () => {
  const nursery = openNursery([smallRecords()]).ready();
  nursery.remove("Records");
  nursery.w.type("Due list", "D1", "TRUE");
  await nursery.w.settled();
  expect(nursery.value("Due list", "A1")).toMatch(
    /^Nursery batches: due list, not made anew\. .*no tab "Records"/,
  );
});

it("shows late tasks first, and says in words that they are", () => {
  const nursery = openNursery([smallRecords()]).ready();
  nursery.sheet("Records").getRange("I3").setValue("2026-09-01");
  nursery.w.call("refreshDueList");
  const rows = dueRows(nursery, ["What", "Status"]);
  const late = rows.map(([, status]) => String(status).startsWith("late by"));
  expect(late[0]).toBe(true);
  expect(late).toEqual([...late].sort((a, b) => Number(b) - Number(a)));
  expect(String(rows[0]?.[0])).toMatch(/\nLATE \d+ days?$/);
});
