import { expect, it } from "vitest";
import { notMadeAnew, notWritten } from "../../src/sentences/made/due-rows";
import * as text from "../../src/sentences/made/due-tab";
import * as setUp from "../../src/sentences/made/set-up";
import { dayWords } from "../../src/wording/days";
import { FIRST_WORDS, MARK, NOT_NEEDED } from "../../src/workbook/host/mark";
import { day as dayNumber } from "../support/days";
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

/** The day that the list says it is of, which is the day on the clock. */
const dayOf = (nursery: Nursery) =>
  dayWords(dayNumber(nursery.ask("sidebarOpen", null).setUp?.asOf ?? ""));

const age = (nursery: Nursery) => String(nursery.value("Due list", "C1"));

it("says in its first row of what day it is, and when something has changed since", async () => {
  const nursery = await today();
  const day = dayOf(nursery);
  // On some days there is care to be taken of, which is said behind it.
  const begins = `${MARK} ${FIRST_WORDS.due} ${text.madeBy({ day, word: NOT_NEEDED, sign: "~" })}`;
  expect(String(nursery.value("Due list", "A1")).slice(0, begins.length)).toBe(begins);
  expect(age(nursery)).toBe(text.age({ day }));
  nursery.sheet("Records").getRange("C2").setValue("Bay 12");
  await nursery.w.settled();
  expect(age(nursery)).toBe(text.ageChanged({ day }));
  nursery.w.call("refreshDueList");
  await nursery.w.settled();
  expect(age(nursery)).toBe(text.age({ day: dayOf(nursery) }));
  nursery.sheet("Nursery timetable").getRange("D4").setValue(3);
  await nursery.w.settled();
  expect(age(nursery)).toBe(text.ageChanged({ day: dayOf(nursery) }));
  nursery.w.call("refreshDueList");
  nursery.sheet(SETTINGS).getRange("B6").setValue(14);
  await nursery.w.settled();
  expect(age(nursery)).toBe(text.ageChanged({ day: dayOf(nursery) }));
});

it("does not take its own ticks for a change, nor that one is taken back", async () => {
  const nursery = await today();
  const row = dueRow(nursery, "B1");
  await enterDue(nursery, row, { Count: "60", Note: "dry", Done: "TRUE" });
  expect(nursery.value("Records", "M2")).toBe(60);
  expect(age(nursery)).toBe(text.age({ day: dayOf(nursery) }));
  await enterDue(nursery, row, { Done: "FALSE" });
  expect(nursery.value("Records", "M2")).toBe("");
  expect(age(nursery)).toBe(text.age({ day: dayOf(nursery) }));
  nursery.ask("sidebarRecord", {
    ...{ batch: "B2", task: "Take count", day: "2026-11-24", count: 60, who: "", note: "" },
    sure: [],
  });
  await nursery.w.settled();
  expect(age(nursery)).toBe(text.ageChanged({ day: dayOf(nursery) }));
});

it("of another day says so", async () => {
  const nursery = openNursery([smallRecords()], { live: true }).ready();
  await nursery.w.settled();
  expect(age(nursery)).toBe(text.ageOtherDay({ day: dayWords(dayNumber("2026-11-25")) }));
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
  const why = setUp.tabGone({ tab: "Records" });
  expect(nursery.value("Due list", "A1")).toBe(
    `${MARK} ${FIRST_WORDS.due}, ${notMadeAnew({ why: `! ${notWritten({ why })}` })}`,
  );
});

it("shows late tasks first, and says in words that they are", () => {
  const nursery = openNursery([smallRecords()]).ready();
  nursery.sheet("Records").getRange("I3").setValue("2026-09-01");
  nursery.w.call("refreshDueList");
  const rows = dueRows(nursery, ["What", "Status"]);
  const { tasks } = nursery.ask("sidebarToday", { daysAhead: 7 });
  const lateDays = tasks.flatMap(({ daysLate: days }) => (days > 0 ? [days] : []));
  const words = lateDays.map((days) => text.lateBy({ days }));
  const late = rows.map(([, status]) => words.includes(String(status)));
  expect(late[0]).toBe(true);
  expect(late).toEqual([...late].sort((a, b) => Number(b) - Number(a)));
  const marks = lateDays.map((days) => text.lateMark({ days }));
  expect(marks).toContain(String(rows[0]?.[0]).split("\n").at(-1));
});
