import { expect, it } from "vitest";
import { looksHidden } from "../../src/sentences/made/records";
import { recordsRemarks } from "../../src/wording/records";
import { askRows } from "../support/ask";
import { dueRows } from "./due-list";
import { openNursery, SETTINGS, SMALL_HEADER, smallRow, tab } from "./nursery";

const BATCH = {
  Batch: "B3",
  "Grafted on": "2026-10-14",
  "Grafts made": 80,
  "First release": "2026-10-28",
};
const ONCE = { tab: "Records", columns: [], methods: [] };
const opened = () =>
  openNursery([tab("Records", [SMALL_HEADER, smallRow(BATCH)])], { newRows: 300 }).ready();
type Nursery = ReturnType<typeof opened>;
const today = (nursery: Nursery) => nursery.ask("sidebarToday", { daysAhead: 14 });
const looks = (nursery: Nursery) => today(nursery).tasks.filter(({ isLook }) => isLook);
const said = (nursery: Nursery) => recordsRemarks(today(nursery).remarks, "page") ?? "";

// Every look nagged a nursery that never writes them, and nowhere could it say so once for all.
it("looks are hidden on page, list and calendar by one setting, and their number is said", () => {
  const nursery = opened();
  const before = today(nursery);
  const number = looks(nursery).length;
  expect(number).toBeGreaterThan(1);
  expect(nursery.ask("sidebarOpen", null).setUp?.looks).toBe(true);
  nursery.ask("sidebarSetUp", { ...ONCE, looks: false });
  expect(nursery.ask("sidebarOpen", null).setUp?.looks).toBe(false);
  expect(today(nursery).tasks).toEqual(before.tasks.filter(({ isLook }) => !isLook));
  expect(said(nursery)).toContain(looksHidden({ looks: number }));
  const listed = dueRows(nursery, ["Task"]).map(([task]) => task);
  expect(listed).toContain("Take count");
  expect(listed).not.toContain("First flush");
  expect(nursery.ask("sidebarCalendar", { daysAhead: 14 }).text).not.toContain("First flush: B3");
  // A Set up that says nothing of them leaves them as they are; one that lists them again does.
  nursery.ask("sidebarSetUp", ONCE);
  expect(looks(nursery)).toEqual([]);
  nursery.ask("sidebarSetUp", { ...ONCE, looks: true });
  expect(today(nursery)).toEqual(before);
});

// The page hid them, and the tabs went on to count them.
it("the tabs of work and needs hide them too, by the settings' cell, and say their number", async () => {
  const crew = tab("Crew", [
    ["Person", "Hours a day"],
    ["Ana", 8],
  ]);
  const nursery = openNursery([tab("Records", [SMALL_HEADER, smallRow(BATCH)]), crew], {
    ...{ newRows: 300, live: true },
  });
  nursery.ask("sidebarSetUp", { ...ONCE, tabs: ["needs"] });
  const timetable = nursery.sheet("Nursery timetable");
  const header = nursery.values("Nursery timetable").findIndex((row) => row.includes("Needs"));
  const [step, needed] = ["Step", "Needs"].map(
    (name) => nursery.values("Nursery timetable")[header]?.indexOf(name) ?? -1,
  ) as [number, number];
  for (const [at, row] of nursery.values("Nursery timetable").entries()) {
    if (row[step] === "First flush") timetable.getRange(at + 1, needed + 1).setValue("lens 1");
  }
  nursery.ask("sidebarSetUp", ONCE);
  await nursery.w.settled();
  const shown = (name: string) => nursery.values(name).flat().map(String);
  expect(shown("Work plan")).toContain("First flush");
  expect(shown("Needs ahead")).toContain("lens");
  const row = nursery.values(SETTINGS).findIndex(([label]) => label === "Looks") + 1;
  nursery.sheet(SETTINGS).getRange(`B${row}`).setValue("hidden");
  await nursery.w.settled();
  const work = nursery.ask("sidebarWork", { days: 14 });
  const needs = nursery.ask("sidebarFace", { face: "needs" });
  for (const [name, absent] of [
    ["Work plan", "First flush"],
    ["Needs ahead", "lens"],
  ] as const) {
    expect(shown(name)).not.toContain(absent);
    const remark = name === "Work plan" ? work.remark : needs.remark;
    const number = [...Array(20)].findIndex((_, looks) => remark?.includes(looksHidden({ looks })));
    expect(number).toBeGreaterThan(0);
    expect(shown(name).join(" ")).toContain(looksHidden({ looks: number }));
  }
  const parts = work.parts.map(({ task }) => task);
  expect(parts.length).toBeGreaterThan(0);
  expect(shown("Work plan").filter((one) => parts.includes(one))).toHaveLength(parts.length);
  expect(JSON.stringify(needs.rows)).not.toContain("lens");
});

it("a formula of the person's leaves looks out where it is told to", () => {
  const [rows, hidden] = [[], ["", "hidden"]].map((more) =>
    askRows("BATCH_DUE", [[SMALL_HEADER, smallRow(BATCH)], "", "2026-11-25", 14, ...more]),
  ) as [unknown[][], unknown[][]];
  const tasks = (found: unknown[][]) => found.slice(1).map(([, task]) => task);
  expect(tasks(rows)).toContain("First flush");
  expect(tasks(hidden)).not.toContain("First flush");
  expect(tasks(hidden).filter(Boolean)).toEqual(
    tasks(rows).filter((task) => tasks(hidden).includes(task) && task !== ""),
  );
  const gone = tasks(rows).filter((task) => task !== "" && !tasks(hidden).includes(task));
  expect(hidden.at(-1)?.join(" ")).toContain(looksHidden({ looks: gone.length }));
});

it("the setting is the person's: what they type counts, and anything else lists looks", () => {
  const nursery = opened();
  const row = nursery.values(SETTINGS).findIndex(([label]) => label === "Looks") + 1;
  const type = (value: string) => nursery.sheet(SETTINGS).getRange(`B${row}`).setValue(value);
  type("Hidden");
  expect(looks(nursery)).toEqual([]);
  for (const word of ["", "yes", "shown"]) {
    type(word);
    expect(looks(nursery).length).toBeGreaterThan(0);
  }
});

it("a settings tab of an older add-in gets the line above what was told, which stays", () => {
  const told = [{ header: "Note", readAs: null }];
  const nursery = opened();
  nursery.ask("sidebarSetUp", { ...ONCE, columns: told });
  const made = nursery.values(SETTINGS);
  const row = made.findIndex(([label]) => label === "Looks") + 1;
  nursery.sheet(SETTINGS).deleteRows(row, 1);
  expect(looks(nursery).length).toBeGreaterThan(0);
  nursery.ask("sidebarSetUp", { ...ONCE, looks: false });
  const again = nursery.values(SETTINGS);
  expect(again.slice(1, row - 1)).toEqual(made.slice(1, row - 1));
  expect(again[row - 1]?.slice(0, 2)).toEqual(["Looks", "hidden"]);
  expect(again[row]).toEqual(made[row]);
  expect(again[row + 1]?.slice(0, 3)).toEqual(["Leave alone", "Note", "header"]);
});
