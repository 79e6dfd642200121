/* Longer than most: all that one click of Set up does to a workbook, tab by tab. */
import { describe, expect, it } from "vitest";
import * as stages from "../../src/sentences/made/batch-columns";
import * as setUp from "../../src/sentences/made/set-up";
import { noGrafts } from "../../src/sentences/made/take-faults";
import { noTakeRates } from "../../src/sentences/made/take-tabs";
import {
  AS_OF,
  type Nursery,
  openNursery,
  SETTINGS,
  SMALL_HEADER,
  smallRecords,
  smallRow,
  tab,
  withoutMinute,
} from "./nursery";

const OURS = [
  ...[SETTINGS, "Nursery timetable", "Due list", "Stages", "Ready by month", "Takes", "Checks"],
  ...["Takes compared", "Takes by month", "What takes go with", "Write log", "Work plan"],
  "Nursery overview",
];
const ONCE = { tab: "Records", columns: [], methods: [] };

/** Every cell that shows an error, with its message. */
function errors({ w }: Nursery): string[] {
  return w
    .sheets()
    .flatMap(({ name, rows }) =>
      rows.flatMap((row) =>
        row.flatMap((cell) =>
          cell && /^#[A-Z]/.test(String(cell.value))
            ? [`${name}: ${cell.value} ${cell.message ?? ""}`]
            : [],
        ),
      ),
    );
}

describe("Set up", () => {
  it("makes every tab, marked, with its header in view, and touches no other", async () => {
    const nursery = openNursery();
    const before = nursery.tabs();
    const untouched = before.map((name) => nursery.snapshot(name));
    const answer = nursery.ask("sidebarSetUp", ONCE);
    await nursery.w.settled();
    expect([...answer.made].sort()).toEqual([...OURS].sort());
    expect(answer.kept).toEqual([]);
    expect(nursery.tabs().sort()).toEqual([...before, ...OURS].sort());
    for (const name of OURS) {
      expect(nursery.value(name, "A1")).toMatch(/^Nursery batches: /);
      expect(nursery.sheet(name).getFrozenRows()).toBeGreaterThanOrEqual(2);
    }
    expect(before.map((name) => nursery.snapshot(name))).toEqual(untouched);
    expect(nursery.w.lock.isFree()).toBe(true);
  });

  it("lists a column without a cell among those not used", () => {
    const header = ["Batch", "Grafted on", "Grafts made", "Firma"];
    const nursery = openNursery([tab("Records", [header, ["B1", "2026-10-24", 80, null]])]);
    expect(nursery.ask("sidebarColumns", { tab: "Records" }).columns).toContainEqual(
      expect.objectContaining({ header: "Firma", readAs: null }),
    );
  });

  it("fills the live tabs with answers, none of them an error", async () => {
    const nursery = openNursery(undefined, { live: true });
    nursery.ask("sidebarSetUp", ONCE);
    await nursery.w.settled();
    expect(errors(nursery)).toEqual([]);
    for (const name of ["Stages", "Ready by month", "Takes"]) {
      expect(nursery.sheet(name).getRange("A3").getFormula()).toMatch(/^=[A-Z_]+\(/);
      expect(nursery.values(name).length).toBeGreaterThan(3);
    }
    expect(nursery.value("Stages", "A3")).toBe(stages.batch());
  });

  it("follows the calendar through one cell that every formula points to", async () => {
    const nursery = openNursery([smallRecords()]);
    nursery.ask("sidebarSetUp", ONCE);
    expect(nursery.sheet(SETTINGS).getRange("B4").getFormula()).toBe("=TODAY()");
    for (const name of ["Stages", "Ready by month", "Checks"]) {
      expect(nursery.sheet(name).getRange("A3").getFormula()).toContain("'Nursery settings'!$B$4");
    }
    nursery.sheet(SETTINGS).getRange("B4").setValue("2026-07-25");
    await nursery.w.settled();
    expect(nursery.ask("sidebarToday", { daysAhead: 7 }).asOf).toBe("2026-07-25");
    expect(nursery.ask("sidebarOpen", null).setUp?.asOf).toBe("2026-07-25");
  });

  it("answers without errors for a table without varieties", async () => {
    const bare = tab("Records", [
      ["Batch", "Sown", "Grafted on", "Grafts made", "Take count day", "Takes"],
      ["B1", "2026-07-20", "2026-10-01", 80, "2026-11-01", 60],
    ]);
    const nursery = openNursery([bare], { live: true });
    nursery.ask("sidebarSetUp", ONCE);
    await nursery.w.settled();
    expect(errors(nursery)).toEqual([]);
    expect(nursery.ask("sidebarTakes", { by: "" }).columns).toBeInstanceOf(Array);
  });

  it("offers a table whose names stand under a header it doesn't know, so that it can be told", () => {
    const header = ["Tray no", "Cultivar", "Sowing", "No. sown", "Grafting", "Grafted qty"];
    const rows = [
      ["T1", "Amberlow", "2026-08-17", 120, null, null],
      ["T2", "Duskpod", "2026-08-20", 100, null, null],
    ];
    const nursery = openNursery([tab("Trays", [header, ...rows])]);
    const offered = () => nursery.ask("sidebarOpen", null).candidates;
    expect(offered()).toEqual([{ tab: "Trays", rows: 2 }]);
    nursery.ask("sidebarSetUp", {
      tab: "Trays",
      columns: [{ header: "Tray no", readAs: "Batch" }],
      methods: [],
    });
    nursery.sheet(SETTINGS).getRange("B4").setValue(AS_OF);
    const { tasks } = nursery.ask("sidebarToday", { daysAhead: 7 });
    expect(new Set(tasks.map(({ batch }) => batch))).toEqual(new Set(["T1", "T2"]));
    expect(offered()).toEqual([{ tab: "Trays", rows: 2 }]);
  });

  // What the page advises where a second tab holds another season.
  it("reads a season put below another with its header, and writes into it", () => {
    const second = [
      ["Batch", "Grafted on", "Grafts made", "Take count day", "Takes"],
      ["C1", "2026-10-24", 70, null, null],
    ];
    const nursery = openNursery([smallRecords([], ...second), tab("Season 2", second)]);
    const { candidates } = nursery.ask("sidebarOpen", null);
    expect(candidates).toEqual([
      { tab: "Records", rows: 5 },
      { tab: "Season 2", rows: 1 },
    ]);
    nursery.ready();
    const { tasks } = nursery.ask("sidebarToday", { daysAhead: 7 });
    expect(tasks.map(({ batch }) => batch)).toEqual(expect.arrayContaining(["B1", "C1"]));
    const { written } = nursery.ask("sidebarRecord", {
      ...{ batch: "C1", task: "Take count", day: "2026-11-24", count: 60, who: "", note: "" },
      sure: [],
    });
    expect(written.map(({ where }) => where).sort()).toEqual(["Records!D6", "Records!E6"]);
  });

  it("offers no timetable, crew or orders as records", () => {
    const { candidates } = openNursery().ask("sidebarOpen", null);
    expect(candidates.map(({ tab }) => tab)).toEqual(["Records"]);
  });

  it("keeps settings and timetable when it is done again, and the live tabs live", async () => {
    const nursery = openNursery([smallRecords()], { live: true });
    nursery.ask("sidebarSetUp", ONCE);
    const settings = nursery.sheet(SETTINGS);
    settings.getRange("B4").setValue("2026-11-20");
    settings.getRange("B5").setValue(0.9);
    settings.getRange("B6").setValue(21);
    nursery.sheet("Nursery timetable").getRange("E4").setValue(11);
    const timetable = nursery.snapshot("Nursery timetable");
    await nursery.w.settled();
    const answer = nursery.ask("sidebarSetUp", ONCE);
    await nursery.w.settled();
    expect([...answer.kept].sort()).toEqual([SETTINGS, "Nursery timetable", "Write log"]);
    expect(nursery.ask("sidebarOpen", null).setUp).toEqual({
      recordsTab: "Records",
      timetableTab: null,
      asOf: "2026-11-20",
      level: 0.9,
      daysAhead: 21,
      initials: false,
      looks: true,
    });
    expect(nursery.snapshot("Nursery timetable")).toBe(timetable);
    expect(nursery.tabs().filter((name) => name.includes("(being made)"))).toEqual([]);
    expect(errors(nursery)).toEqual([]);
  });

  it("keeps what a person has written into the settings, formulas as well", () => {
    const nursery = openNursery([smallRecords()]);
    nursery.ask("sidebarSetUp", ONCE);
    const settings = nursery.sheet(SETTINGS);
    settings.getRange("B4").setFormula("=TODAY()-1");
    settings.getRange("B6").setFormula("=7*2");
    settings.getRange("C6").setValue("two weeks");
    const before = withoutMinute(nursery.snapshot(SETTINGS));
    nursery.ask("sidebarSetUp", ONCE);
    expect(withoutMinute(nursery.snapshot(SETTINGS))).toBe(before);
  });

  it("says in the Takes tab that the table has no takes", () => {
    const nursery = openNursery([
      tab("Records", [
        ["Batch", "Sown"],
        ["B1", "2026-07-20"],
      ]),
    ]);
    nursery.ask("sidebarSetUp", ONCE);
    expect(nursery.value("Takes", "A3")).toBe(noTakeRates({ why: noGrafts() }));
  });

  it("keeps the log when it is done again", () => {
    const nursery = openNursery([smallRecords()]).ready();
    const written = nursery.ask("sidebarRecord", {
      ...{ batch: "B1", task: "Take count", day: "2026-11-24", count: 60, who: "", note: "" },
      sure: [],
    });
    const log = nursery.snapshot("Write log");
    nursery.ask("sidebarSetUp", ONCE);
    expect(nursery.snapshot("Write log")).toBe(log);
    const { restored } = nursery.ask("sidebarTakeBack", { logId: written.logId ?? "" });
    expect(restored).toHaveLength(2);
  });

  it.each(OURS)("never touches a person's own tab called %s, and says so", (name) => {
    const nursery = openNursery([smallRecords(), tab(name, [["my own things", 1]])]);
    const before = [nursery.snapshot(name), nursery.snapshot("Records")];
    expect(nursery.fault("sidebarSetUp", ONCE)).toEqual({ code: "notOurs", tab: name });
    expect([nursery.snapshot(name), nursery.snapshot("Records")]).toEqual(before);
    // Half a set up would answer as if it were done.
    expect(nursery.tabs()).toEqual(["Records", name]);
  });

  it("leaves what is set up as it is when the new tab holds no records", () => {
    const nursery = openNursery([smallRecords(), tab("Shopping", [["milk"], ["bread"]])]).ready();
    const before = nursery.ask("sidebarToday", { daysAhead: 7 });
    expect(nursery.refusal("sidebarSetUp", { ...ONCE, tab: "Shopping" })).not.toBe("");
    expect(nursery.ask("sidebarOpen", null).setUp?.recordsTab).toBe("Records");
    expect(nursery.ask("sidebarToday", { daysAhead: 7 })).toEqual(before);
  });

  it.each(["Due list", SETTINGS, "Nowhere"])("refuses %s as the tab of records", (name) => {
    const nursery = openNursery([smallRecords()]).ready();
    nursery.refusal("sidebarSetUp", { ...ONCE, tab: name });
    expect(nursery.ask("sidebarOpen", null).setUp?.recordsTab).toBe("Records");
  });
});

describe("columns as they are guessed", () => {
  const answerOf = (rows: Parameters<typeof tab>[1]) =>
    openNursery([tab("Records", rows)]).ask("sidebarColumns", { tab: "Records" });

  // People saw "Please look 6" on a table whose headers are ours word for word.
  it("ask nothing of a table in our words, which lacks nothing", () => {
    const { columns, essentials } = answerOf([
      SMALL_HEADER,
      smallRow({ Batch: "B1", Sown: "2026-07-20", "Seeds sown": 100, "Grafted on": "2026-10-24" }),
    ]);
    expect(columns.filter(({ sure }) => sure === "guessed" || sure === "likely")).toEqual([]);
    const read = new Set(columns.map(({ readAs }) => readAs));
    expect(essentials.map(({ what }) => what)).toEqual([
      "batch",
      "start",
      "graftDay",
      "grafts",
      "takes",
    ]);
    for (const { readAs } of essentials) expect(readAs.some((name) => read.has(name))).toBe(true);
  });

  // Check alone named a column without a header: Set up counted the columns as if it were not there.
  it("tell of a column without a header that holds something, and of no blank one", () => {
    const rows = ["tall", "split bag", "", "tall"].map((note, at) => [
      ...[`B${at}`, "2026-10-24", 100 + at, note, ""],
    ]);
    const { columns } = answerOf([["Batch", "Grafted on", "Grafts made", "", ""], ...rows]);
    expect(columns.slice(3)).toMatchObject([
      { column: 3, header: "", readAs: null, sure: "not used", holds: "text" },
    ]);
    expect(columns[3]?.samples.map(({ text: sample }) => sample)).toContain("split bag");
  });

  it("of a nursery's own words say what each may be, holds, and is used for", () => {
    const { columns } = answerOf([
      ["Bag lot", "Lot", "Sown", "Seeds", "Up", "Wood cut", "Grafted", "Grafts", "Alive 3 mth"],
      ["L1", "B1", "2026-02-01", 200, 180, "2026-06-01", "2026-06-02", 150, 90],
      ["L1", "B2", "2026-02-03", 210, 190, "2026-06-03", "2026-06-04", 160, 80],
      ["L2", "B3", "2026-02-05", 220, 200, "2026-06-05", "2026-06-06", 170, 70],
    ]);
    const guess = (name: string) => columns.find(({ header }) => header === name);
    expect(guess("Bag lot")).toMatchObject({
      ...{ readAs: null, sure: "guessed", holds: "text" },
      others: ["From lot"],
    });
    expect(guess("Up")).toMatchObject({ readAs: "Germinated" });
    expect(guess("Wood cut")).toMatchObject({ readAs: null, sure: "scions", holds: null });
    expect(guess("Alive 3 mth")).toMatchObject({
      ...{ readAs: null, sure: "guessed", holds: "count" },
      others: ["Takes"],
    });
  });
});

describe("columns that a person corrects", () => {
  const header = [...SMALL_HEADER, "Tally day"];
  const records = tab("Records", [
    header,
    [...smallRow({ Batch: "B1", Sown: "2026-07-20", "Grafted on": "2026-10-24" }), "2026-11-21"],
  ]);
  const guess = (nursery: Nursery, name: string) =>
    nursery.ask("sidebarColumns", { tab: "Records" }).columns.find((one) => one.header === name);

  it("are read as told, and left alone as told, and shown so", async () => {
    const nursery = openNursery([records], { live: true });
    const { choices } = nursery.ask("sidebarColumns", { tab: "Records" });
    const takeDay = choices.find((choice) => /take count/i.test(choice) && /day/i.test(choice));
    if (takeDay === undefined) throw new Error(`no such choice: ${choices.join(", ")}`);
    nursery.ask("sidebarSetUp", {
      ...ONCE,
      columns: [
        { header: "Tally day", readAs: takeDay },
        { header: "Take count day", readAs: null },
      ],
    });
    await nursery.w.settled();
    expect(guess(nursery, "Tally day")).toMatchObject({
      readAs: takeDay,
      sure: "told",
      samples: [{ text: "2026-11-21", initials: null }],
    });
    expect(guess(nursery, "Take count day")).toMatchObject({ readAs: null, sure: "told" });
    expect(errors(nursery)).toEqual([]);
    expect(
      nursery.ask("sidebarToday", { daysAhead: 7 }).tasks.map(({ task }) => task),
    ).not.toContain("Take count");
    // A later set up that says nothing of them leaves them as they are.
    nursery.ask("sidebarSetUp", ONCE);
    expect(guess(nursery, "Tally day")?.sure).toBe("told");
  });

  it("can be corrected once more after the header was renamed in the sheet", () => {
    const nursery = openNursery([records]);
    nursery.ask("sidebarSetUp", { ...ONCE, columns: [{ header: "Tally day", readAs: null }] });
    nursery.sheet("Records").getRange(1, header.length).setValue("Counting day");
    expect(guess(nursery, "Counting day")).toBeDefined();
    // What was told is said, so that the person can choose again.
    const told = [{ header: "Tally day", readAs: null }];
    expect(nursery.ask("sidebarColumns", { tab: "Records" }).lost).toEqual(told);
    expect(nursery.refusal("sidebarToday", { daysAhead: 7 })).toBe(
      setUp.lostHeader({ header: "Tally day", name: "Leave alone" }),
    );
    expect(nursery.ask("sidebarSetUp", ONCE).forgotten).toEqual(told);
    expect(nursery.ask("sidebarToday", { daysAhead: 7 }).tasks).toBeInstanceOf(Array);
  });

  it("are refused before anything is made when the choice is none of ours", () => {
    const nursery = openNursery([records]).ready();
    const columns = [{ header: "Tally day", readAs: "Weight of the moon" }];
    nursery.refusal("sidebarSetUp", { ...ONCE, columns });
    expect(nursery.ask("sidebarToday", { daysAhead: 7 }).tasks).toBeInstanceOf(Array);
  });

  it("reads a table in another language from two headers that are known and what is told of the rest", () => {
    const header = ["Batch", "Variety", "Ausgesät", "Samen", "Veredelt am", "Stück"];
    const rows = [["A-1", "Rot", "2026-06-01", 200, "2026-10-20", 150]];
    const nursery = openNursery([tab("Liste", [header, ...rows])]);
    expect(nursery.ask("sidebarOpen", null).candidates).toEqual([{ tab: "Liste", rows: 1 }]);
    const told = { Ausgesät: "Sown", Samen: "Seeds sown", "Veredelt am": "Grafted on" };
    nursery.ask("sidebarSetUp", {
      ...{ tab: "Liste", methods: [] },
      columns: [...Object.entries(told), ["Stück", "Grafts made"] as const].map(
        ([name, readAs]) => ({ header: name, readAs }),
      ),
    });
    const { tasks } = nursery.ask("sidebarToday", { daysAhead: 30 });
    // Of 150 grafts the timetable lets 75 of 100 take, and what is likely of so wide a range lies a little above.
    const flush = tasks.find(({ task }) => task === "First flush");
    expect(Math.abs((flush?.plants ?? 0) - 150 * 0.75)).toBeLessThan(6);
  });
});
