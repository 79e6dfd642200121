/*
 * Longer than most: each week is worked out by hand beside its case, from one table of places and
 * steps.
 */
import { format, parseISO } from "date-fns";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readCount } from "../../src/core/cells/read-count";
import type { RowTrouble } from "../../src/core/tables/row-trouble";
import * as text from "../../src/sentences/made/places";
import * as records from "../../src/sentences/made/records";
import { noHeaderRow, rowShows } from "../../src/sentences/made/table-faults";
import { sentenceOf } from "../../src/wording/sentence-of";
import { ROW_TROUBLES } from "../../src/wording/small-tables";
import { ask, askTable } from "../support/ask";
import { refusal } from "../support/refusal";
import { expectAlikeInAnyOrder } from "../support/turned-rows";

/** A Wednesday in week 48 of 2026, by the published calendar of ISO 8601 weeks. */
const AS_OF = "2026-11-25";
/** No losses and no spread of days: what stands is arithmetic. */
const TIMETABLE = [
  ["Method", "Step", "After", "From day", "Usual day", "By day", "Counted", "Kept of 100"],
  ["Plain", "Sowing", "", 0, 0, 0, "yes", ""],
  ["Plain", "Ready", "Sowing", 20, 20, 20, "yes", 100],
];
const PLACES = [
  ["Place", "Holds"],
  ["Bay 1", 150],
  ["Bay 2", 100],
];
const HEADER = ["Batch", "Place", "Sown", "Seeds sown", "Ready on", "Ready plants", "Closed"];
const sown = (name: string, place: string, day: string, plants: number | "") => [
  name,
  place,
  day,
  plants,
  "",
  "",
  "",
];
const load = (batches: unknown[][], places: unknown = PLACES, timetable: unknown = TIMETABLE) =>
  askTable("PLACE_LOAD", [[HEADER, ...batches], timetable, places, AS_OF]);
const row = (Place: string, Week: string, Plants: number, Holds: unknown, over: unknown) => ({
  Place,
  Week,
  Plants,
  Holds,
  "Over by": over,
  // The Monday, by another author's reader of ISO 8601 weeks.
  "Week from": Week === "" ? "" : format(parseISO(Week), "yyyy-MM-dd"),
});
const blank = (remark: string) => row(remark, "", "" as never, "", "");

describe("PLACE_LOAD", () => {
  it("adds up what stands in each place up to the week of its likely ready day", () => {
    // B1: 16 Nov + 20 days = 6 Dec, the Sunday of week 49. B2: 23 Nov + 20 = 13 Dec, week 50's.
    const rows = load([
      sown("B1", "Bay 1", "2026-11-16", 120),
      sown("B2", "bay 1", "2026-11-23", 80),
    ]);
    expect(rows).toEqual([
      row("Bay 1", "2026-W48", 200, 150, 50),
      row("Bay 1", "2026-W49", 200, 150, 50),
      row("Bay 1", "2026-W50", 80, 150, 0),
      blank(text.empty({ places: ["Bay 2"] })),
    ]);
  });

  it("gives what the table of places lacks in rows of its own, and says so", () => {
    const rows = load([
      sown("B1", "Shed", "2026-11-16", 120),
      sown("B2", "", "2026-11-23", 80),
      sown("B3", "Bay 1", "", ""),
    ]);
    expect(rows.filter(({ Place }) => !String(Place).startsWith("Bay"))).toEqual([
      row("Shed", "2026-W48", 120, "", ""),
      row("Shed", "2026-W49", 120, "", ""),
      row(text.noPlace(), "2026-W48", 80, "", ""),
      row(text.noPlace(), "2026-W49", 80, "", ""),
      row(text.noPlace(), "2026-W50", 80, "", ""),
      blank(
        [
          text.empty({ places: ["Bay 1", "Bay 2"] }),
          text.notListed({ places: ["Shed"] }),
          text.withoutPlace(),
          text.notCounted({ batches: ["B3"] }),
        ].join(" "),
      ),
    ]);
  });

  it("keeps plants that are ready for one week, and says which", () => {
    const ready = ["B1", "Bay 1", "2026-10-20", 120, "2026-11-10", 90, ""];
    expect(load([ready])).toEqual([
      row("Bay 1", "2026-W48", 90, 150, 0),
      blank(`${text.empty({ places: ["Bay 2"] })} ${text.oneWeek({ batches: ["B1"] })}`),
    ]);
    expect(load([[...ready.slice(0, 6), "yes"]])).toEqual([
      blank(text.empty({ places: ["Bay 1", "Bay 2"] })),
    ]);
  });

  it("leaves out and names batches forgotten long ago, and those of an unknown method", () => {
    const rows = askTable("PLACE_LOAD", [
      [
        [...HEADER, "Method"],
        [...sown("Old", "Bay 1", "2025-01-06", 50), "Plain"],
        [...sown("Odd", "Bay 1", "2026-11-16", 50), "Kiwi layering"],
        [...sown("Late", "Bay 1", "2026-10-26", 30), "Plain"],
      ],
      TIMETABLE,
      PLACES,
      AS_OF,
    ]);
    // "Late" was to be ready on 15 November and is not: it still stands.
    expect(rows[0]).toEqual(row("Bay 1", "2026-W48", 30, 150, 0));
    expect(String(rows.at(-1)?.Place)).toBe(
      [
        records.noSuchMethod({ batches: ["Odd"] }),
        text.empty({ places: ["Bay 2"] }),
        text.forgotten({ batches: ["Old"] }),
      ].join(" "),
    );
  });

  it("shows a year at most, and says what stands longer", () => {
    const timetable = [
      ...TIMETABLE.slice(0, 2),
      ["Plain", "Ready", "Sowing", 800, 800, 800, "yes", 100],
    ];
    const rows = load([sown("B1", "Bay 1", "2026-11-23", 100)], PLACES, timetable);
    expect(rows.filter(({ Place }) => Place === "Bay 1")).toHaveLength(53);
    expect(String(rows.at(-1)?.Place)).toBe(
      `${text.empty({ places: ["Bay 2"] })} ${text.standLonger({ batches: 1, weeks: 53 })}`,
    );
  });

  it("names batches that are planned for after the weeks shown, and shows no weeks for them", () => {
    const rows = load([
      sown("B1", "Bay 1", "2026-11-23", 100),
      sown("B2", "Bay 2", "2028-06-20", 50),
    ]);
    expect(rows.filter(({ Place }) => Place === "Bay 2")).toEqual([]);
    expect(String(rows.at(-1)?.Place)).toBe(
      `${text.empty({ places: ["Bay 2"] })} ${text.plannedAfter({ batches: ["B2"], weeks: 53 })}`,
    );
  });

  it("lets plants shrink after each likely count, and planned batches come in their week", () => {
    const timetable = [
      TIMETABLE[0],
      ["Plain", "Sowing", "", 0, 0, 0, "yes", ""],
      ["Plain", "Grafting", "Sowing", 10, 10, 10, "yes", 50],
      ["Plain", "Ready", "Sowing", 30, 30, 30, "yes", 100],
    ];
    // Grafted on Thursday 3 Dec, so from Monday 7 Dec (week 50) on; ready 23 Dec, week 52.
    const rows = load([sown("B1", "Bay 1", "2026-11-23", 100)], PLACES, timetable);
    const plants = rows.filter(({ Place }) => Place === "Bay 1").map((one) => one.Plants);
    expect(plants.slice(0, 2)).toEqual([100, 100]);
    expect(plants).toHaveLength(5);
    for (const later of plants.slice(2)) expect(Math.abs(Number(later) - 50)).toBeLessThan(5);
    const planned = load([sown("B1", "Bay 1", "2026-12-08", 100)]);
    expect(planned.slice(0, 3).map(({ Week, Plants }) => [Week, Plants])).toEqual([
      ["2026-W50", 100],
      ["2026-W51", 100],
      ["2026-W52", 100],
    ]);
  });

  it("uses or lists every row of the places", () => {
    const places = [
      ["Capacidad", "Lugar"],
      [150, "Bay 1"],
      ["about lots", "Bay 2"],
      [40, ""],
      [90, "BAY 1"],
      ["", "Bay 3"],
    ];
    const rows = load([sown("B1", "Bay 1", "2026-11-16", 120)], places);
    expect(rows.slice(0, 2)).toEqual([
      row("Bay 1", "2026-W48", 120, 90, 30),
      row("Bay 1", "2026-W49", 120, 90, 30),
    ]);
    const said = String(rows[2]?.Place);
    expect(said).toContain(text.empty({ places: ["Bay 2", "Bay 3"] }));
    const at = (row: number) => ({ table: "places", row }) as const;
    const troubles: readonly RowTrouble[] = [
      { code: "row-left-out", ...at(4), why: { code: "no-place-named" } },
      { code: "row-noted", ...at(5), what: { code: "named-twice", name: "Bay 1" } },
      { code: "row-noted", ...at(6), what: { code: "holds-unknown" } },
    ];
    for (const one of troubles) expect(said).toContain(sentenceOf(ROW_TROUBLES, one));
    const reading = readCount("about lots");
    expect(reading.kind).toBe("unread");
    if (reading.kind !== "unread") return;
    const { why } = reading;
    const unread = { code: "row-noted", ...at(3), what: { code: "holds-unread", why } } as const;
    expect(said).toContain(sentenceOf(ROW_TROUBLES, unread));
  });

  it.each([
    ["Place", "Holds"],
    ["Emplacement", "Capacité"],
    ["Lugar", "Capacidad"],
    ["Local", "Capacidade"],
    ["Lokasi", "Kapasitas"],
  ])("reads the headers %s and %s", (place, holds) => {
    const rows = load(
      [],
      [
        [holds, place],
        [10, "Bay 1"],
      ],
    );
    expect(rows).toEqual([blank(text.empty({ places: ["Bay 1"] }))]);
  });

  it("refuses places that are missing, without a header, or still loading", () => {
    const asking = (places: unknown) => () =>
      ask("PLACE_LOAD", [[HEADER, sown("B1", "", "2026-11-16", 9)], TIMETABLE, places, AS_OF]);
    expect(asking("")).toThrow(
      refusal("PLACE_LOAD", { code: "argument-missing", argument: "places", needs: "places" }),
    );
    expect(asking([["Bay 1", 3]])).toThrow(
      noHeaderRow({ argument: "places", columns: ["Place", "Holds"] }),
    );
    expect(asking([PLACES[0], ["Bay 1", "#REF!"]])).toThrow(
      rowShows({ argument: "places", row: "2", shown: "#REF!" }),
    );
  });

  const batches = fc
    .array(
      fc.tuple(
        fc.integer({ min: 0, max: 300 }),
        fc.integer({ min: 1, max: 30 }),
        fc.constantFrom("Bay 1", "Bay 2", "Shed", ""),
        fc.boolean(),
      ),
      { minLength: 1, maxLength: 12 },
    )
    .map((rows) =>
      rows.map(([plants, day, place, ready], at) => [
        `B${at}`,
        place,
        `2026-11-${String(day).padStart(2, "0")}`,
        plants,
        ...(ready && day < 5 ? ["2026-11-24", plants, ""] : ["", "", ""]),
      ]),
    );

  it("answers alike whatever the order of the batches", () => {
    expectAlikeInAnyOrder(batches, load);
  });

  it("never has less in a place for one batch more, and counts every plant in the first week", () => {
    const plantsOf = (rows: Record<string, unknown>[]) =>
      new Map(
        rows
          .filter(({ Week }) => Week !== "")
          .map((one) => [`${one.Place} ${one.Week}`, Number(one.Plants)]),
      );
    fc.assert(
      fc.property(batches, fc.integer({ min: 1, max: 24 }), (rows, day) => {
        const more = sown("More", "Bay 1", `2026-11-${day}`, 50);
        const before = plantsOf(load(rows));
        const after = plantsOf(load([...rows, more]));
        for (const [key, plants] of before) {
          expect(after.get(key) ?? -1).toBeGreaterThanOrEqual(plants);
        }
        expect(after.get("Bay 1 2026-W48")).toBe((before.get("Bay 1 2026-W48") ?? 0) + 50);
        const standing = rows
          .filter((row) => String(row[2]) <= AS_OF)
          .reduce((all, row) => all + Number(row[3]), 0);
        const first = [...before].filter(([key]) => key.endsWith("2026-W48"));
        const planned = rows
          .filter((row) => String(row[2]) > AS_OF && String(row[2]) <= "2026-11-29")
          .reduce((all, row) => all + Number(row[3]), 0);
        expect(first.reduce((all, [, plants]) => all + plants, 0)).toBe(standing + planned);
      }),
      { numRuns: 100 },
    );
  });
});
