/* Longer than most: a fortnight of work, from the sample to tabs of persons as they may be. */
import { describe, expect, it } from "vitest";
import { CREW_HEADER } from "../../src/core";
import type { SheetDraft } from "../../src/local/workbook-data";
import { crew as crewName, notHours, rowLeftOut } from "../../src/sentences/made/small-tables";
import { noHeaderRow, rowShows } from "../../src/sentences/made/table-faults";
import { tabThere } from "../../src/sentences/made/writing-faults";
import {
  AS_OF,
  type Made,
  type Nursery,
  openNursery,
  SMALL_HEADER,
  smallRecords,
  tab,
} from "./nursery";

const DAYS = { days: 14 };
const CREW = ["Person", "Tasks", "Hours a day", "Off from", "Off to"];
const MADE_CREW = ["Person", "Tasks", "Hours a day", "Days", "Off from", "Off to"];

const crew = (...rows: readonly (readonly Made[])[]): SheetDraft => tab("Crew", [CREW, ...rows]);
const opened = (...drafts: readonly SheetDraft[]): Nursery =>
  openNursery([smallRecords(), ...drafts]).ready();
const sumOf = (hours: readonly (number | null)[]) =>
  Math.round(hours.reduce((sum: number, one) => sum + (one ?? 0), 0) * 100) / 100;

/** The built-in timetable knows no work rates: they are each nursery's own. */
function workRate(nursery: Nursery, step: string, perHour: number): void {
  nursery.values("Nursery timetable").forEach((row, at) => {
    if (row[1] !== step) return;
    nursery
      .sheet("Nursery timetable")
      .getRange(`I${at + 1}`)
      .setValue(perHour);
  });
}

/** The sample with its work rates, which stand in a tab that the sidebar does not read. */
function sample(live: boolean): Nursery {
  const nursery = openNursery(undefined, { live }).ready();
  for (const step of ["Grafting", "First release", "Take count"]) workRate(nursery, step, 40);
  return nursery;
}

describe("the sample nursery's fortnight", () => {
  const nursery = sample(false);
  const work = nursery.ask("sidebarWork", DAYS);

  it("names the tabs it reads and the persons in them", () => {
    expect([work.crewTab, work.closedTab]).toEqual(["Crew", "Closed days"]);
    expect(work.persons).toEqual(["Hand 1", "Hand 2", "Kesto", "Mirel", "Orrin", "Tavi"]);
    expect(work.days).toHaveLength(14);
    expect(work.days[0]?.day).toBe(AS_OF);
  });

  it("has on each day the hours of its parts, and of its persons", () => {
    expect(work.parts.filter(({ hours }) => hours !== null).length).toBeGreaterThan(10);
    for (const { day, asked, there, hands } of work.days) {
      const parts = work.parts.filter((part) => part.day === day);
      expect(asked).toBe(sumOf(parts.map(({ hours }) => hours)));
      expect(there).toBe(sumOf(hands));
      work.persons.forEach((person, index) => {
        const own = parts.filter((part) => part.person === person);
        expect(sumOf(own.map(({ hours }) => hours))).toBeLessThanOrEqual(hands[index] as number);
      });
    }
  });

  it("closes the Sundays and sends nobody to work who is off", () => {
    const closed = work.days.filter(({ isClosed }) => isClosed).map(({ day }) => day);
    expect(closed).toEqual(["2026-11-29", "2026-12-06"]);
    const kesto = work.persons.indexOf("Kesto");
    expect(work.days.find(({ day }) => day === "2026-11-30")?.hands[kesto]).toBe(0);
  });

  it("says the same as WORK_PLAN in its own tab", async () => {
    const live = sample(true);
    await live.w.settled();
    expect(live.value("Work plan", "A1")).toContain(
      "WORK_PLAN('Records'!A:AB;'Nursery timetable'!A:O;'Crew'!A:E;",
    );
    const rows = live.values("Work plan").slice(3);
    const shown = rows.filter((row) => row[0] !== "" && row[2] !== "");
    const { parts } = live.ask("sidebarWork", DAYS);
    expect(shown.map(([day, task, batch, , , , person]) => [day, task, batch, person])).toEqual(
      parts.map(({ day, task, batch, person }) => [day, task, batch, person ?? ""]),
    );
  });
});

describe("too much for the hands that are there", () => {
  it("is a stretch with its sum and the least that mends it", () => {
    // Nobody counts more than 20 plants an hour, and Ana has a quarter of an hour a day.
    const nursery = opened(crew(["Ana", "Take count", 0.25, null, null]));
    workRate(nursery, "Take count", 20);
    const work = nursery.ask("sidebarWork", DAYS);
    const [first] = work.overloads;
    expect(first?.persons).toEqual(["Ana"]);
    const codes = work.unassigned.flatMap(({ remarks }) => remarks.map(({ code }) => code));
    expect(codes).toContain("does-not-fit");
    expect(work.days.some(({ isOverloaded }) => isOverloaded)).toBe(true);
    const { asked = 0, there = 0, short = 0 } = first ?? {};
    expect(short).toBeGreaterThan(0);
    expect(sumOf([asked, -there])).toBe(short);
  });
});

describe("without a tab of persons", () => {
  it("says so, and makes an empty one that is then read", () => {
    const nursery = opened();
    const none = nursery.ask("sidebarWork", DAYS);
    expect(none).toMatchObject({ crewTab: null, closedTab: null, days: [], parts: [] });
    expect(none.crewHeader).toEqual(MADE_CREW);
    expect(nursery.tabs()).not.toContain("Work plan");
    expect(nursery.ask("sidebarMakeCrew", null)).toEqual({ tab: "Crew" });
    expect(nursery.values("Crew")[1]).toEqual(MADE_CREW);
    const empty = nursery.ask("sidebarWork", DAYS);
    expect(empty).toMatchObject({ crewTab: "Crew", persons: [], days: [] });
    nursery
      .sheet("Crew")
      .getRange("A3:C3")
      .setValues([["Ana", "", 8]]);
    expect(nursery.ask("sidebarWork", DAYS)).toMatchObject({ persons: ["Ana"] });
    nursery.ask("sidebarSetUp", { tab: "Records", columns: [], methods: [] });
    expect(nursery.tabs()).toContain("Work plan");
    expect(nursery.values("Crew")[2]?.slice(0, 3)).toEqual(["Ana", "", 8]);
    expect(nursery.ask("sidebarOpen", null).candidates.map((one) => one.tab)).toEqual(["Records"]);
  });

  it("never makes one over a tab that is there", () => {
    const nursery = opened(tab("crew", [["Who is on holiday"], ["Ana"]]));
    const before = nursery.snapshot("crew");
    expect(nursery.refusal("sidebarMakeCrew", null)).toBe(
      tabThere({ tab: "crew", columns: CREW_HEADER }),
    );
    expect(nursery.snapshot("crew")).toBe(before);
  });

  it("keeps every row that a person has put in, whatever is made again beside it", () => {
    const made = opened();
    made.ask("sidebarMakeCrew", null);
    const [said = [], header = []] = made.values("Crew");
    // Copies of the tab we made begin with our words, too.
    const filled = (name: string) =>
      tab(name, [said, header, [`Of ${name}`, "", 8], ["=1+1", "", 6]]);
    const beside = ["Crew (being replaced)", "Crew (being made)", "Crew (being made) 2"];
    const nursery = openNursery([smallRecords(), ...["Crew", ...beside].map(filled)]);
    const snapshots = (names: readonly string[]) => names.map((name) => nursery.snapshot(name));
    const before = snapshots(["Crew", ...beside]);
    nursery.ready();
    for (const _ of [1, 2]) {
      expect(nursery.ask("sidebarMakeCrew", null)).toEqual({ tab: "Crew" });
      nursery.ask("sidebarSetUp", { tab: "Records", columns: [], methods: [] });
      nursery.w.call("refreshDueList");
    }
    expect(snapshots(["Crew", ...beside])).toEqual(before);
    nursery.remove("Crew");
    nursery.ask("sidebarMakeCrew", null);
    nursery.ready();
    expect(snapshots(beside)).toEqual(before.slice(1));
  });

  it("finds one under another name, and never in the records or a tab of ours", () => {
    const sheet = tab("Our people", [["Summer list"], ["Name", "Hours"], ["Ana", 8]]);
    expect(opened(sheet).ask("sidebarWork", DAYS)).toMatchObject({
      crewTab: "Our people",
      persons: ["Ana"],
    });
    const equipe = tab("Équipe", [
      ["Nom", "Heures par jour"],
      ["Zoé", 7],
    ]);
    const ferme = tab("Jours fermés", [["Jour"], ["dimanche"]]);
    expect(opened(sheet, equipe, ferme).ask("sidebarWork", DAYS)).toMatchObject({
      ...{ crewTab: "Équipe", closedTab: "Jours fermés", persons: ["Zoé"] },
    });
    const records = tab("Records", [
      [...SMALL_HEADER.slice(0, 15), "Person", "Hours"],
      ["B1", "Amberlow", "Bay 1", "Kito", "2026-07-20", 100, "2026-07-30", 90, "2026-10-24", 80],
    ]);
    expect(openNursery([records]).ready().ask("sidebarWork", DAYS).crewTab).toBeNull();
  });
});

// A workbook holds other tables of persons and of days than those that a plan needs.
describe("a tab that is something else", () => {
  it("is no crew where it is a log of hours worked", () => {
    const log = tab("Wages", [
      ["Date", "Worker", "Hours", "Task"],
      ["2026-11-02", "Ana", 8, "Weeding"],
    ]);
    expect(opened(log).ask("sidebarWork", DAYS).crewTab).toBeNull();
  });

  it.each([
    ["Closed", ["Batch", "Closed"], ["B7", "2026-11-27"]],
    ["Holidays", ["Name", "From", "To"], ["Ana", "2026-11-27", "2026-12-04"]],
    ["Holidays", ["Who", "Day"], ["Ana", "2026-11-27"]],
    ["Holidays", ["What we do then"], ["Clean the tools"]],
  ])("is no closed days: %s with %j", (name, header, row) => {
    const people = crew(["Ana", null, 8, null, null]);
    const work = opened(people, tab(name, [header, row])).ask("sidebarWork", DAYS);
    expect(work.closedTab).toBeNull();
    expect(work.days.every(({ isClosed }) => !isClosed)).toBe(true);
  });

  it("is closed days where the days have names", () => {
    const holidays = tab("Holidays", [
      ["Date", "Name"],
      ["2026-11-27", "Founders' day"],
    ]);
    const work = opened(crew(["Ana", null, 8, null, null]), holidays).ask("sidebarWork", DAYS);
    expect(work.closedTab).toBe("Holidays");
    expect(work.days.filter(({ isClosed }) => isClosed)).toHaveLength(1);
  });
});

it("refuses nothing that a page may send as days", () => {
  const nursery = opened(crew(["Ana", null, 8, null, null]));
  for (const days of [0, -1, 1.5, "x", null]) {
    expect(nursery.ask("sidebarWork", { days: days as number }).days).toHaveLength(14);
  }
  expect(nursery.ask("sidebarWork", { days: 9999 }).days).toHaveLength(366);
});

it("keeps a nasty name as text, and says what it could not read", () => {
  const nursery = opened(
    crew(["<b>Ana</b>", null, 8, null, null], ["Bo", null, "many", null, null]),
  );
  const { persons, remark } = nursery.ask("sidebarWork", DAYS);
  expect(persons).toEqual(["<b>Ana</b>"]);
  expect(remark).toContain(
    rowLeftOut({ table: crewName(), row: "3", why: notHours({ found: "many" }) }),
  );
});

describe("tabs of persons and closed days as they may be", () => {
  const ana: readonly Made[] = ["Ana", null, 8, null, null];

  it("takes the one called Crew of two tables of persons", () => {
    const other = tab("Crew of last year", [CREW, ["Old", null, 8, null, null]]);
    expect(opened(other, crew(ana)).ask("sidebarWork", DAYS)).toMatchObject({
      crewTab: "Crew",
      persons: ["Ana"],
    });
  });

  it("says in which row a cell shows an error, and plans nothing from half a crew", () => {
    const nursery = opened(crew(ana));
    nursery.sheet("Crew").getRange("C2").setValue("#DIV/0!");
    expect(nursery.refusal("sidebarWork", DAYS)).toBe(
      rowShows({ argument: "crew", row: "2", shown: "#DIV/0!" }),
    );
  });

  it("shows fourteen closed days where every day is closed, with what nobody can do", () => {
    const closed = tab("Closed days", [
      ["Day", "To"],
      ["2026-11-01", "2027-12-31"],
    ]);
    const nursery = opened(crew(ana), closed);
    workRate(nursery, "Take count", 20);
    const { days, overloads, unassigned } = nursery.ask("sidebarWork", DAYS);
    expect(days.every(({ isClosed, there, asked }) => isClosed && there + asked === 0)).toBe(true);
    expect(overloads[0]).toMatchObject({ persons: ["Ana"], asked: 8, there: 0, short: 8 });
    expect(unassigned.filter(({ task }) => task === "Take count")).toHaveLength(2);
  });

  it("marks only the usual days of what one person alone may do, while others stand idle", () => {
    const nursery = opened(
      crew(["Ana", "Take count", 0.25, null, null], ["Bo", "Sowing", 8, null, null]),
    );
    workRate(nursery, "Take count", 20);
    const { days, overloads } = nursery.ask("sidebarWork", DAYS);
    expect(overloads.every(({ lacksWho }) => lacksWho)).toBe(true);
    const marked = new Set(overloads.flatMap((one) => one.days)).size;
    const stretch = overloads.reduce((sum, { from, to }) => sum + to - from + 1, 0);
    expect(marked).toBeGreaterThan(0);
    expect(marked).toBeLessThan(stretch);
    expect(days.filter(({ isOverloaded }) => isOverloaded).length).toBeLessThanOrEqual(marked);
  });

  it("says that a tab of closed days has no header", () => {
    const nursery = opened(crew(ana), tab("Closed days", [["25 Dec"]]));
    expect(nursery.refusal("sidebarWork", DAYS)).toBe(
      noHeaderRow({ argument: "closedDays", columns: ["Day"] }),
    );
  });
});
