/*
 * Longer than most: each cost is worked out by hand beside its case, from one table of prices and
 * steps.
 */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { shortened } from "../../src/core/cells/quoted";
import * as text from "../../src/sentences/made/costs";
import * as records from "../../src/sentences/made/records";
import * as tables from "../../src/sentences/made/small-tables";
import { noHeaderRow, rowLoading } from "../../src/sentences/made/table-faults";
import { ask, askTable } from "../support/ask";
import { textCases } from "../support/sheet-values";
import { turnedRows } from "../support/turned-rows";

const AS_OF = "2026-11-25";
const TIMETABLE = [
  [
    ...["Method", "Step", "After", "From day", "Usual day", "By day", "Counted", "Kept of 100"],
    ...["Per person-hour", "Needs"],
  ],
  ["Plain", "Sowing", "", 0, 0, 0, "yes", "", 100, "bag 1; mix 500 ml"],
  ["Plain", "Grafting", "Sowing", 80, 90, 100, "yes", 90, 20, "strip 40 cm"],
  ["Plain", "Ready", "Grafting", 100, 110, 120, "yes", 100, "", ""],
];
const PRICES = [
  ["Item", "Price", "Per"],
  ["Bag", 5, "100"],
  ["Mix", 0.2, "l"],
  ["Strip", 0.1, "m"],
  ["Hour", 4, ""],
];
const HEADER = [
  ...["Batch", "From lot", "Sown", "Seeds sown", "Grafted on", "Grafts made"],
  ...["Ready on", "Ready plants", "Closed"],
];
const cost = (batches: unknown[][], prices: unknown = PRICES, timetable: unknown = TIMETABLE) =>
  askTable("BATCH_COST", [[HEADER, ...batches], timetable, prices, AS_OF]);
const row = (Batch: string, Materials: unknown, Hours: unknown, Cost: unknown, each: unknown) => ({
  ...{ Batch, Materials, Hours, Cost, "Cost per ready plant": each },
});
const mix = text.itemIn({ item: "mix", unit: "ml" });
const strip = text.itemIn({ item: "strip", unit: "cm" });
const pricedBy = (item: string, unit: string, by: string) =>
  text.itemPricedBy({ item, unit, units: [by] });
const withoutPlants = (steps: readonly string[]) =>
  text.noPlants({ batches: [text.batchSteps({ batch: "B1", steps })] });
const leftOut = (row: string, why: string) =>
  tables.rowLeftOut({ table: tables.prices(), row, why });
const remarkOf = (rows: Record<string, unknown>[]) => String(rows.at(-1)?.Batch);

/** 200 seeds, 160 grafted, 128 ready. */
const DONE = ["B1", "", "2025-11-03", 200, "2026-02-01", 160, "2026-05-20", 128, "yes"];

describe("BATCH_COST", () => {
  it("prices strip that is cut in inches by the metre", () => {
    const inches = TIMETABLE.map((cells) =>
      cells.map((cell) => (cell === "strip 40 cm" ? "strip 15 in" : cell)),
    );
    const rows = cost(
      [["B1", "", "2026-05-01", 200, "2026-08-01", 160, "", "", ""]],
      PRICES,
      inches,
    );
    // 200 bags 10, 100 l of mix 20; 160 strips of 0.381 m are 60.96 m: 6.10. Hours 2 + 8 at 4.
    expect(rows[0]).toMatchObject({ Materials: 36.1, Hours: 10, Cost: 76.1 });
  });

  it("carries materials, hours and losses to the ready plant", () => {
    // By hand. Bags 200 x 0.05 = 10; mix 200 x 0.5 l x 0.2 = 20; strips 160 x 0.4 m x 0.1 = 6.4:
    // 36.4. Hours 200 / 100 + 160 / 20 = 10, at 4 = 40. 76.4 / 128 = 0.596875; 76.4 / 200 = 0.382.
    expect(cost([DONE])).toEqual([
      row("B1", 36.4, 10, 76.4, 0.5969),
      row(text.allOf({ method: "Plain" }), 36.4, 10, 76.4, 0.5969),
      row(text.startedPlant({ method: "Plain" }), 0.182, 0.05, 0.382, ""),
      row(text.noRate({ steps: ["Ready"] }), "", "", "", ""),
    ]);
  });

  it("counts the steps done so far, and the ready plants that are likely", () => {
    // 100 seeds: 5 + 10 = 15, one hour: 19. Likely ready: about 90 of 100.
    const [own] = cost([["B1", "", "2026-11-03", 100, "", "", "", "", ""]]);
    expect(own).toMatchObject({ Materials: 15, Hours: 1, Cost: 19 });
    const ready = 19 / Number(own?.["Cost per ready plant"]);
    expect(ready).toBeGreaterThan(80);
    expect(ready).toBeLessThan(100);
  });

  it("passes a lot's cost to the batches taken from it, by their plants", () => {
    // The lot: 200 seeds, 30 + 2 h x 4 = 38; 100 + 50 grafted, so 50 stand: 38 / 200 = 0.19 each.
    // G1: 19 and strips 4 and 5 h x 4 = 20: 43. G2: half of it. The lot keeps 9.5.
    const rows = cost([
      ["L1", "", "2026-08-03", 200, "", "", "", "", ""],
      ["G1", "L1", "", "", "2026-11-02", 100, "", "", ""],
      ["G2", "L1", "", "", "2026-11-02", 50, "", "", ""],
    ]);
    expect(rows.slice(0, 4)).toMatchObject([
      { Batch: "L1", Materials: 7.5, Hours: 0.5, Cost: 9.5 },
      { Batch: "G1", Materials: 19, Hours: 6, Cost: 43 },
      { Batch: "G2", Materials: 9.5, Hours: 3, Cost: 21.5 },
      { Batch: text.allOf({ method: "Plain" }), Materials: 36, Hours: 9.5, Cost: 74 },
    ]);
    expect(rows[4]).toMatchObject({ Batch: text.startedPlant({ method: "Plain" }), Cost: 0.37 });
    // Nothing is missed of G1 and G2: they were sown in the lot.
    expect(rows).toHaveLength(5);
  });

  it("lets the plants taken pay for what a closed lot lost", () => {
    const rows = cost([
      ["L1", "", "2026-08-03", 200, "", "", "", "", "yes"],
      ["G1", "L1", "", "", "2026-11-02", 100, "", "", ""],
    ]);
    expect(rows.slice(0, 2)).toMatchObject([
      { Batch: "L1", Materials: 0, Hours: 0, Cost: 0, "Cost per ready plant": "" },
      { Batch: "G1", Materials: 34, Hours: 7, Cost: 62 },
    ]);
  });

  it("counts no sowing again for plants that a log moves from a lot", () => {
    const rows = askTable("BATCH_COST", [
      [
        ["Day", "Batch", "From lot", "Step", "Count"],
        ["2026-08-03", "L1", "", "Sowing", 200],
        ["2026-11-02", "G1", "L1", "Grafting", 100],
      ],
      ...[TIMETABLE, PRICES, AS_OF],
    ]);
    // The lot: 38, half of it passes on. G1: 19 and strips 4 and 5 h x 4.
    expect(rows.slice(0, 2)).toMatchObject([
      { Batch: "L1", Cost: 19 },
      { Batch: "G1", Materials: 19, Hours: 6, Cost: 43 },
    ]);
  });

  it("tells no cost of a started plant where lots and batches differ in method", () => {
    const other = TIMETABLE.slice(1).map(([, ...rest]) => ["Other", ...rest]);
    const rows = askTable("BATCH_COST", [
      [
        [...HEADER, "Method"],
        ["L1", "", "2026-08-03", 200, "", "", "", "", "", "Plain"],
        ["G1", "L1", "", "", "2026-11-02", 100, "", "", "", "Other"],
        ["X", "", "2026-08-03", 200, "", "", "", "", "", "Kiwi layering"],
      ],
      ...[[...TIMETABLE, ...other], PRICES, AS_OF],
    ]);
    expect(rows.map(({ Batch }) => Batch)).toEqual([
      "L1",
      "G1",
      text.allOf({ method: "Plain" }),
      text.allOf({ method: "Other" }),
      records.noSuchMethod({ batches: ["X"] }),
    ]);
    expect(rows.map(({ Cost }) => Cost)).toEqual([19, 43, 19, 43, ""]);
  });

  it("passes nothing on where lots go in a circle", () => {
    const rows = cost([
      ["L1", "L2", "2026-08-03", 200, "", "", "", "", ""],
      ["L2", "L1", "2026-08-03", 100, "", "", "", "", ""],
    ]);
    expect(rows.slice(0, 3).map(({ Cost }) => Cost)).toEqual([38, 19, 57]);
  });

  it("says what has no price, and never takes it for 0", () => {
    const some = cost(
      [DONE],
      [
        ["Harga", "Barang"],
        [0.05, "bag"],
        [1, "kite"],
        ["lots", "mix"],
      ],
    );
    expect(some[0]).toEqual(row("B1", 10, 10, 10, 0.0781));
    expect(remarkOf(some)).toBe(
      [
        leftOut("4", tables.notPrice({ found: "lots" })),
        text.noPrice({ items: [mix, strip] }),
        text.noHourPrice(),
        text.noRate({ steps: ["Ready"] }),
        text.notNeeded({ items: ["kite"] }),
      ].join(" "),
    );
    for (const per of ["0", `0.${"0".repeat(330)}1`, "9".repeat(330), "2 x 50 l"]) {
      const rows = cost([DONE], [PRICES[0], ["Bag", 5, per]]);
      expect(remarkOf(rows)).toContain(leftOut("2", tables.notUnit({ found: shortened(per) })));
    }
    const none = cost([DONE], "");
    expect(none[0]).toEqual(row("B1", "", 10, "", ""));
    expect(remarkOf(none)).toContain(text.noPrice({ items: ["bag", mix, strip] }));
    const wrongUnit = cost([DONE], [PRICES[0], ["Strip", 1, "kg"], ["Mix", 1, "l"]]);
    expect(remarkOf(wrongUnit)).toContain(
      text.noPrice({ items: ["bag", pricedBy("strip", "cm", "kg")] }),
    );
  });

  it("says of an item with a price in another unit that it has one", () => {
    const rows = cost([DONE], [PRICES[0], ["Strip", 3, "roll"], ["Bag", 2, "kg"]]);
    expect(remarkOf(rows)).toContain(
      text.noPrice({
        items: [pricedBy("bag", text.pieces(), "kg"), mix, pricedBy("strip", "cm", "roll")],
      }),
    );
  });

  it("does not say of prices that nothing needed them where the plants are not known", () => {
    const rows = cost([["B1", "", "2026-08-03", "", "2026-11-02", "", "", "", ""]]);
    expect(remarkOf(rows)).not.toContain(text.notNeeded({ items: ["bag", "mix", "strip"] }));
    expect(remarkOf(rows)).toContain(withoutPlants(["Grafting", "Sowing"]));
  });

  it("says which plants were never counted, and what is not begun", () => {
    const rows = cost([
      ["B1", "", "2026-08-03", "", "2026-11-02", 50, "", "", ""],
      ["B2", "", "2026-12-03", 80, "", "", "", "", ""],
    ]);
    // Strips 50 x 0.4 x 0.1 = 2, 2.5 h at 4.
    expect(rows[0]).toMatchObject({ Materials: 2, Hours: 2.5, Cost: 12 });
    expect(rows.some(({ Batch }) => Batch === "B2")).toBe(false);
    expect(remarkOf(rows)).toContain(withoutPlants(["Sowing"]));
    expect(remarkOf(rows)).toContain(text.notBegun({ batches: 1 }));
  });

  it.each(
    textCases(`
      Item     | Price  | Per
      Article  | Prix   | Unité
      Artículo | Precio | Unidad
      Item     | Preço  | Unidade
      Barang   | Harga  | Satuan`),
  )("reads the headers %s, %s and %s", (item, price, per) => {
    const rows = cost(
      [DONE],
      [[per, price, item], ...PRICES.slice(1).map((one) => [one[2], one[1], one[0]])],
    );
    expect(rows[0]).toEqual(row("B1", 36.4, 10, 76.4, 0.5969));
  });

  it("refuses prices without a header, or still loading", () => {
    const asking = (prices: unknown) => () =>
      ask("BATCH_COST", [[HEADER, DONE], TIMETABLE, prices, AS_OF]);
    expect(asking([["Bag", 3]])).toThrow(
      noHeaderRow({ argument: "prices", columns: ["Item", "Price"] }),
    );
    expect(asking([PRICES[0], ["Bag", "Loading..."]])).toThrow(
      rowLoading({ argument: "prices", row: "2" }),
    );
  });

  /** Lots and grafts from them, closed or not. */
  const nursery = fc
    .array(
      fc.record({
        seeds: fc.integer({ min: 1, max: 300 }),
        closed: fc.boolean(),
        grafts: fc.array(fc.integer({ min: 1, max: 100 }), { maxLength: 3 }),
      }),
      { minLength: 1, maxLength: 5 },
    )
    .map((lots) =>
      lots.flatMap(({ seeds, closed, grafts }, at) => [
        [`L${at}`, "", "2026-08-03", seeds, "", "", "", "", closed ? "yes" : ""],
        ...grafts.map((count, of) => [
          ...[`L${at}-G${of}`, `L${at}`, "", "", "2026-11-02", count, "", "", ""],
        ]),
      ]),
    );
  const own = (rows: Record<string, unknown>[]) =>
    rows.filter(({ Batch }) => /^L\d/.test(String(Batch)));
  const sum = (rows: Record<string, unknown>[], column: string) =>
    rows.reduce((all, one) => all + Number(one[column]), 0);

  it("adds up, over lots and batches, to items times price", () => {
    fc.assert(
      fc.property(nursery, (batches) => {
        const seeds = batches.reduce((all, one) => all + Number(one[3]), 0);
        const grafts = batches.reduce((all, one) => all + Number(one[5]), 0);
        const rows = own(cost(batches));
        expect(rows).toHaveLength(batches.length);
        // Each cell is rounded to a hundredth.
        const off = 0.005 * rows.length + 1e-9;
        const materials = seeds * (0.05 + 0.1) + grafts * 0.04;
        const hours = seeds / 100 + grafts / 20;
        expect(Math.abs(sum(rows, "Materials") - materials)).toBeLessThanOrEqual(off);
        expect(Math.abs(sum(rows, "Hours") - hours)).toBeLessThanOrEqual(off);
        expect(Math.abs(sum(rows, "Cost") - materials - hours * 4)).toBeLessThanOrEqual(off);
      }),
      { numRuns: 100 },
    );
  });

  it("costs double at double prices, and the hours stay", () => {
    const doubled = [PRICES[0], ...PRICES.slice(1).map(([a, b, c]) => [a, Number(b) * 2, c])];
    fc.assert(
      fc.property(nursery, (batches) => {
        const [once, twice] = [cost(batches), cost(batches, doubled)];
        once.forEach((one, at) => {
          for (const column of ["Materials", "Cost"]) {
            const more = Number(twice[at]?.[column]);
            expect(Math.abs(more - 2 * Number(one[column]))).toBeLessThanOrEqual(0.015 + 1e-9);
          }
          expect(twice[at]?.Hours).toBe(one.Hours);
        });
      }),
      { numRuns: 100 },
    );
  });

  it("answers alike whatever the order of the batches", () => {
    const byName = (rows: Record<string, unknown>[]) =>
      [...rows].sort((a, b) => (String(a.Batch) < String(b.Batch) ? -1 : 1));
    fc.assert(
      fc.property(turnedRows(nursery), ([rows, other]) => {
        expect(byName(cost(other))).toEqual(byName(cost(rows)));
      }),
      { numRuns: 100 },
    );
  });
});
