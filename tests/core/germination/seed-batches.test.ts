import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { gridOf } from "../../../src/core/cells";
import { readSamples, seedBatches } from "../../../src/core/germination";
import { day } from "../../support/days";
import { fixture } from "../../support/fixtures";

const asDay = (iso: string) => ({ day: day(iso) });
const HABITS = { decimalMark: null, localeOrder: null } as const;
const read = (rows: readonly (readonly unknown[])[]) =>
  seedBatches(readSamples(gridOf(rows as never), HABITS));

interface Sampled {
  readonly genotype: string;
  readonly replicate: number;
  readonly counts: readonly number[];
  readonly sown: number;
}
interface Measured {
  readonly daysToHalfCoolbear: number;
}
const { data, expected } = fixture<
  { readonly days: readonly number[]; readonly rows: readonly Sampled[] },
  { readonly rows: readonly Measured[] }
>("germination-metrics");

describe("published data: gcdata of germinationmetrics, a row an inspection", () => {
  const inspections = (
    rows: readonly Sampled[],
    up: (counts: readonly number[], at: number) => number,
    name: (row: Sampled) => string,
  ) =>
    rows.flatMap((row) =>
      data.days.map((day, at) => [name(row), row.replicate, row.sown, day, up(row.counts, at)]),
    );
  const NEW = ["Seed lot", "Replicate", "Seeds sown", "Days after sowing", "Germinated"];
  const RUNNING = ["Lot", "Tray", "Seeds", "DAS", "Up so far"];
  const since = (counts: readonly number[], at: number) => counts[at] as number;
  const soFar = (counts: readonly number[], at: number) =>
    counts.slice(0, at + 1).reduce((sum, one) => sum + one, 0);

  it("each sample for itself has the days to half of the package", () => {
    const each = (row: Sampled) => `${row.genotype} ${row.replicate}`;
    for (const [header, up] of [[NEW, since] as const, [RUNNING, soFar] as const]) {
      const { batches, remarks } = read([header, ...inspections(data.rows, up, each)]);
      expect(remarks.filter(({ code }) => code !== "comes-up-poorly")).toEqual([]);
      expect(batches.map(({ batch }) => batch)).toEqual(data.rows.map(each));
      batches.forEach(({ halfUp }, at) => {
        expect(halfUp).toBeCloseTo(expected.rows[at]?.daysToHalfCoolbear as number, 5);
      });
    }
  });

  it("samples of one lot are summed, and lots that come up alike are not called poor", () => {
    const { batches, remarks } = read([
      NEW,
      ...inspections(data.rows, since, ({ genotype }) => genotype),
    ]);
    expect(remarks).toEqual([]);
    for (const { batch, samples, seedsSown, up } of batches) {
      const of = data.rows.filter(({ genotype }) => genotype === batch);
      expect(samples).toBe(3);
      expect(seedsSown).toBe(of.reduce((sum, { sown }) => sum + sown, 0));
      expect(up).toBe(of.flatMap(({ counts }) => counts).reduce((sum, one) => sum + one, 0));
    }
  });
});

describe("a poor batch", () => {
  const HEADER = ["Batch", "Sown on", "Seeds sown", "Counted on", "Came up"];
  const sown = asDay("2026-06-01");
  const rows = (batch: string, ups: readonly number[]) =>
    ups.map((up, at) => [
      batch,
      at === 0 ? sown : "",
      at === 0 ? 100 : "",
      asDay(`2026-06-${10 + 5 * at}`),
      up,
    ]);

  it("is said after its first inspections, beside the others on that day", () => {
    const { batches, remarks } = read([
      HEADER,
      ...rows("A", [30, 40, 15]),
      ...rows("B", [28, 44, 11]),
      ...rows("C", [2, 9]),
    ]);
    const [, , c] = batches;
    expect(c).toMatchObject({ batch: "C", up: 11, lastInspection: 14, othersByThen: 0.71 });
    expect(remarks).toEqual([
      { code: "comes-up-poorly", batch: "C", share: 0.11, others: 0.71, day: 14 },
    ]);
  });

  it("is none where the others were not looked at so late, or where it may be chance", () => {
    expect(read([HEADER, ...rows("A", [30]), ...rows("B", [3, 5])]).remarks).toEqual([]);
    expect(read([HEADER, ...rows("A", [70]), ...rows("B", [66])]).remarks).toEqual([]);
  });

  it("is none where all are poor: this table alone can't tell", () => {
    expect(read([HEADER, ...rows("A", [9]), ...rows("B", [8])]).remarks).toEqual([]);
  });
});

describe("what can't be read", () => {
  it("is left out and named, row by row", () => {
    const { batches, remarks } = read([
      ["Lote", "Bandeja", "Semillas", "Día", "Germinadas en total", "Riego"],
      ["L1", 1, 50, 7, 10, "x"],
      ["L1", 1, 50, 14, 8, "x"],
      ["L1", 1, 50, "soon", 20, "x"],
      ["L1", 1, 50, 21, "many", "x"],
      ["L1", 1, 50, 28, "", "x"],
      ["", 1, 50, 7, 10, "x"],
      ["L1", 1, 50, asDay("2026-06-20"), 30, "x"],
      ["L2", 1, "", 7, 10, "x"],
      ["L3", 1, 20, 7, 21, "x"],
    ]);
    expect(batches).toMatchObject([{ batch: "L1", up: 10, seedsSown: 50 }]);
    const left = remarks.flatMap((one) =>
      one.code === "row-left-out" ? [[one.row, one.why.code]] : [],
    );
    expect(left).toEqual([
      [3, "up-falls"],
      [4, "not-a-day"],
      [5, "up-unread"],
      [6, "up-blank"],
      [7, "no-batch-named"],
      [8, "no-day-of-sowing"],
    ]);
    const others = remarks.filter(({ code }) => code !== "row-left-out");
    expect(others).toEqual([
      { code: "columns-unread", table: "germination", columns: [{ header: "Riego", field: null }] },
      { code: "seeds-unsaid", batches: ["L2"] },
      { code: "more-up-than-seeds", batches: ["L3"] },
    ]);
  });

  it("loses no seed that came up: each is in a row, or its row or batch is named", () => {
    const cell = fc.oneof(fc.nat(60), fc.constantFrom("", "?", "x"));
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.constantFrom("A", "B", "C"), cell, fc.nat(30), cell), {
          maxLength: 12,
        }),
        (rows) => {
          const header = ["Batch", "Seeds sown", "Day", "Came up"];
          if (rows.length === 0) return;
          const { batches, remarks } = read([header, ...rows]);
          const leftRows = new Set(
            remarks.flatMap((one) => (one.code === "row-left-out" ? [one.row] : [])),
          );
          const leftBatches = new Set(
            remarks.flatMap((one) =>
              one.code === "seeds-unsaid" || one.code === "more-up-than-seeds" ? one.batches : [],
            ),
          );
          for (const name of ["A", "B", "C"]) {
            const seen = rows.reduce(
              (sum, [batch, , , up], at) =>
                batch === name && typeof up === "number" && !leftRows.has(at + 2) ? sum + up : sum,
              0,
            );
            const row = batches.find(({ batch }) => batch === name);
            if (!leftBatches.has(name)) expect(row?.up ?? 0).toBe(seen);
          }
        },
      ),
    );
  });
});
