import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { askTable } from "../support/ask";
import { expectAlikeInAnyOrder } from "../support/turned-rows";

const AS_OF = "2026-11-25";
const TIMETABLE = [
  ["Method", "Step", "After", "From day", "Usual day", "By day", "Counted", "Needs"],
  ["Plain", "Sowing", "", 0, 0, 0, "yes", "bag 1"],
  ["Plain", "Grafting", "Sowing", 80, 90, 100, "yes", "scion 1; strip 40 cm; plate 0.04"],
];
const HEADER = ["Batch", "Sown", "Seeds sown", "Grafted on"];
const needs = (batches: unknown[][], days = 30) =>
  askTable("WORK_NEEDS", [[HEADER, ...batches], TIMETABLE, AS_OF, days]);

const batches = fc
  .array(fc.tuple(fc.integer({ min: 1, max: 400 }), fc.integer({ min: 1, max: 28 })), {
    minLength: 1,
    maxLength: 12,
  })
  .map((rows) =>
    rows.map(([plants, day], at) => [
      `B${at}`,
      `2026-09-${String(day).padStart(2, "0")}`,
      plants,
      "",
    ]),
  );
/** By item; what is bought by the metre in centimetres, as the steps say it. */
const amounts = (rows: Record<string, unknown>[]) =>
  new Map(
    rows.map(({ Item, Amount, Unit }) => [
      Item,
      Math.round(Number(Amount) * (Unit === "m" ? 100 : 1)),
    ]),
  );

describe("WORK_NEEDS", () => {
  it("adds up, over all tasks ahead, to plants times the need of each", () => {
    fc.assert(
      fc.property(batches, (rows) => {
        const plants = rows.reduce((sum, row) => sum + Number(row[2]), 0);
        // Grafting begins 80 days after sowing: by 17 December for the last, within 30 days.
        const found = amounts(needs(rows));
        expect(found.get("scion")).toBe(plants);
        expect(found.get("strip")).toBe(plants * 40);
        // 25 plants a plate; a part of one is a whole one.
        expect(found.get("plate")).toBe(Math.ceil(plants / 25));
      }),
      { numRuns: 100 },
    );
  });

  it("answers alike whatever the order of the batches", () => {
    expectAlikeInAnyOrder(batches, needs);
  });

  it("never needs less for more days ahead, or for one batch more", () => {
    fc.assert(
      fc.property(batches, fc.integer({ min: 0, max: 40 }), (rows, days) => {
        const now = amounts(needs(rows, days));
        for (const more of [
          needs(rows, days + 5),
          needs([...rows, ["More", "2026-09-01", 10, ""]], days),
        ]) {
          const then = amounts(more);
          for (const [item, amount] of now) {
            expect(then.get(item) ?? 0).toBeGreaterThanOrEqual(amount);
          }
        }
      }),
      { numRuns: 50 },
    );
  });

  // What a planned sowing needs is what is to be bought, and it was not in it.
  it("counts the plants written down for a planned day, from their step on", () => {
    const planned = [["P1", "2026-12-10", 77, ""]];
    expect(amounts(needs(planned)).get("bag")).toBe(77);
    const due = askTable("BATCH_DUE", [[HEADER, ...planned], TIMETABLE, AS_OF, 30]);
    expect(due.map(({ Task, Plants }) => [Task, Plants])).toEqual([["Sowing", 77]]);
    const columns = ["Batch", "From lot", "Sown", "Seeds sown", "Grafted on", "Grafts made"];
    const graft = ["P2", "L1", "2026-09-20", "", "2026-12-12", 50];
    const rows = askTable("WORK_NEEDS", [[columns, graft], TIMETABLE, AS_OF, 30]);
    expect(amounts(rows).get("scion")).toBe(50);
  });

  // Scions were cut and hours planned for seedlings that are graded out before anybody grafts them.
  describe("plants likely to be grafted", () => {
    const GRADED = [
      [...(TIMETABLE[0] as string[]), "Per person-hour", "Kept of 100"],
      ["Plain", "Sowing", "", 0, 0, 0, "yes", "bag 1", "", ""],
      ["Plain", "Germination", "Sowing", 10, 20, 30, "yes", "", 100, 90],
      ["Plain", "Grafting", "Sowing", 80, 90, 100, "yes", "scion 1; strip 40 cm", 20, 60],
    ];
    const COUNTED = [
      ...["Batch", "Variety", "Sown", "Seeds sown", "Germination day", "Germinated"],
      ...["Grafted on", "Grafts made"],
    ];
    const ask = (name: string, rows: unknown[][], ...more: unknown[]) =>
      askTable(name, [[COUNTED, ...rows], GRADED, AS_OF, ...more]);

    it("are what past batches kept, within a few plants", () => {
      // This nursery grafts 150 of 200 that came up, where the timetable says 60 of 100.
      const past = Array.from({ length: 30 }, (_, at) => [
        ...[`P${at}`, "Alba", "2026-01-10", 220, "2026-01-30", 200, "2026-04-10", 150],
      ]);
      const now = ["N", "Alba", "2026-09-01", 220, "2026-09-20", 200, "", ""];
      const [scion] = ask("WORK_NEEDS", [...past, now], 30);
      expect(scion).toMatchObject({ Item: "scion", Variety: "Alba" });
      expect(Math.abs(Number(scion?.Amount) - 150)).toBeLessThan(6);
      const [grafting] = ask("BATCH_DUE", [...past, now], 30);
      expect(grafting).toMatchObject({ Task: "Grafting", Plants: scion?.Amount });
      // Hours are shown to tenths.
      expect(Math.abs(Number(grafting?.Hours) - Number(scion?.Amount) / 20)).toBeLessThan(0.051);
    });

    // By hand: half of 100 are likely to pass the count, and get a label; all 100 are counted.
    it("are those that pass a count, where a count needs something", () => {
      const labelled = [
        GRADED[0],
        ["Plain", "Grafting", "", 0, 0, 0, "yes", "", "", ""],
        ["Plain", "Ready", "Grafting", 80, 90, 100, "yes", "label 1", "", 50],
      ];
      const rows = [
        ["Batch", "Grafted on", "Grafts made"],
        ["B1", "2026-09-20", 100],
      ];
      const of = (name: string) => askTable(name, [rows, labelled, "2026-12-15", 30])[0];
      expect(of("WORK_NEEDS")).toMatchObject({ Item: "label", Amount: 50 });
      expect(of("BATCH_DUE")).toMatchObject({ Task: "Ready", Plants: 100 });
    });

    const nursery = fc.array(
      fc.record({
        variety: fc.constantFrom("Alba", "Nera", ""),
        day: fc.integer({ min: 1, max: 28 }),
        sown: fc.integer({ min: 1, max: 300 }),
        up: fc.option(fc.integer({ min: 0, max: 100 }), { nil: null }),
        grafted: fc.option(fc.integer({ min: 0, max: 100 }), { nil: null, freq: 2 }),
      }),
      { minLength: 1, maxLength: 8 },
    );

    it("are in every answer the same: needs, hours and list add up to the likely plants", () => {
      fc.assert(
        fc.property(nursery, (found) => {
          const rows = found.map(({ variety, day, sown, up, grafted }, at) => {
            const month = grafted === null ? "09" : "05";
            const sownOn = `2026-${month}-${String(day).padStart(2, "0")}`;
            const came = up === null ? "" : Math.round((sown * up) / 100);
            const made = grafted === null ? "" : Math.round((Number(came || 0) * grafted) / 100);
            const cameOn = up === null ? "" : sownOn.replace(month, grafted === null ? "10" : "06");
            const graftedOn = grafted === null ? "" : sownOn.replace(month, "08");
            return [`B${at}`, variety, sownOn, sown, cameOn, came, graftedOn, made];
          });
          const likely = new Map(
            ask("BATCH_STEPS", rows).map(
              ({ Batch, Step, ...counts }) => [`${Batch} ${Step}`, counts] as const,
            ),
          );
          const due = ask("BATCH_DUE", rows, 60).filter(({ Task }) => Task === "Grafting");
          const scions = new Map<string, number>();
          for (const { Batch, Plants, Hours } of due) {
            const counts = likely.get(`${Batch} Grafting`);
            expect([Batch, Plants]).toEqual([Batch, counts?.["Likely count"]]);
            expect(Math.abs(Number(Hours) - Number(Plants) / 20)).toBeLessThan(0.051);
            const variety = String(rows.find(([name]) => name === Batch)?.[1]);
            if (Plants === 0) continue;
            scions.set(variety, (scions.get(variety) ?? 0) + Number(Plants));
          }
          const cut = ask("WORK_NEEDS", rows, 60).filter(({ Item }) => Item === "scion");
          expect(new Map(cut.map(({ Variety, Amount }) => [Variety, Amount]))).toEqual(scions);
          const hours = [...scions.values()].reduce((sum, plants) => sum + plants / 20, 0);
          const planned = askTable("WORK_PLAN", [
            ...[
              [COUNTED, ...rows],
              GRADED,
              [
                ["Person", "Hours a day"],
                ["A. B.", 24],
              ],
              AS_OF,
              61,
            ],
          ]).filter(({ Task, Day, Person }) => Task === "Grafting" && Day !== "" && Person !== "");
          const sum = planned.reduce((total, { Hours }) => total + Number(Hours), 0);
          expect(Math.abs(sum - hours)).toBeLessThanOrEqual(0.01 * due.length + 1e-6);
        }),
        { numRuns: 40 },
      );
    });
  });
});
