import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { numberBands } from "../../../src/core/statistics/number-bands";
import { comparedTakes } from "../../../src/core/takes/compared-takes";
import { takeReasons } from "../../../src/core/takes/take-reasons";
import { csvRows } from "../../samples/csv-rows";
import { reading } from "../records/reading";

const HEADER = ["Batch", "Variety", "Grafter", "Place", "Grafts made", "Takes"];
const reasons = (rows: readonly (readonly (string | number)[])[]) =>
  takeReasons({ records: reading([HEADER, ...rows]), level: 0.95 });

/** Batches of two varieties; where `together`, Mirel has all of the hard one. */
function batches(together: boolean) {
  return Array.from({ length: 40 }, (_, index) => {
    const hard = index % 2 === 1;
    const grafter = (together ? hard : index % 4 < 2) ? "Mirel" : "Orrin";
    const taken = (hard ? 55 : 80) + ((index * 5) % 7) - 3;
    return [`B${index}`, hard ? "Hard" : "Easy", grafter, `Bay ${index % 3}`, 100, taken];
  });
}

describe("takeReasons", () => {
  it("ranks the column that takes go with first, and finds nothing in the others", () => {
    const { reasons: rows } = reasons(batches(false));
    expect(rows.map(({ column, groups }) => [column, groups])).toEqual([
      ["Variety", 2],
      ["Grafter", 2],
      ["Place", 3],
    ]);
    expect(rows[0]?.explained).toBeGreaterThan(0.7);
    expect(rows[0]).toMatchObject({ best: { name: "Easy" }, worst: { name: "Hard" } });
    expect(rows[0]?.best?.takeRate).toBeCloseTo(0.8, 2);
    expect(rows[0]?.worst?.takeRate).toBeCloseTo(0.55, 2);
    expect(rows[0]?.reading).toBe("stays");
    for (const row of rows.slice(1)) {
      expect(row).toMatchObject({ best: null, worst: null, reading: "no clear link" });
    }
  });

  it("does not credit either of two columns that always change together", () => {
    const { reasons: rows } = reasons(batches(true));
    for (const name of ["Variety", "Grafter"]) {
      expect(rows.find(({ column }) => column === name)?.reading).toBe("others may be behind");
    }
  });

  it("says that going with is not causing, whatever it found", () => {
    for (const rows of [batches(true), [["B1", "Easy", "Orrin", "Bay 1", 100, 80]]]) {
      expect(reasons(rows).remarks[0]).toEqual({ code: "not-cause" });
    }
  });

  it("reads columns of one group, or of groups of one or two batches, as too few to tell", () => {
    const { reasons: rows } = reasons(batches(false).slice(0, 5));
    expect(rows.find(({ column }) => column === "Place")?.reading).toBe("too few to tell");
    expect(reasons([]).reasons.every(({ reading }) => reading === "too few to tell")).toBe(true);
  });
});

describe("the sample nursery, of which is known what is true", () => {
  const sheet = new URL("../../../sample-sheets/hillside-nursery/records.csv", import.meta.url);
  const records = reading(csvRows(readFileSync(sheet, "utf8")));

  it("finds that varieties, scions and one grafter go with takes, rootstock and place do not", () => {
    const { reasons } = takeReasons({ records, level: 0.95 });
    const of = (name: string) => reasons.find(({ column }) => column === name);
    expect(of("Month")?.worst?.name).toBe("2026-03");
    expect(of("Variety")?.worst?.name).toBe("Duskpod");
    expect(of("Grafter")?.worst?.name).toBe("Kesto");
    expect(of("Scion source")?.worst?.name).toBe("Old terrace trees");
    for (const column of ["Rootstock", "Place"]) expect(of(column)?.reading).toBe("no clear link");
  });

  it("sets Kesto apart by an even comparison, and not Mirel, whose plain rate is the lowest", () => {
    const { groups } = comparedTakes({ records, by: "Grafter", evenFor: "Variety", level: 0.95 });
    const named = groups.filter(({ group }) => group[0] !== "");
    const lowest = named.reduce((low, one) => (one.takeRate < low.takeRate ? one : low));
    expect(lowest.group).toEqual(["Mirel"]);
    expect(named.map(({ group, reading }) => [group[0], reading])).toEqual([
      ["Kesto", "below"],
      ["Mirel", "alike"],
      ["Orrin", "alike"],
      ["Tavi", "alike"],
    ]);
  });
});

describe("numberBands", () => {
  it("holds about as many values in each band, and equal numbers together", () => {
    const bands = numberBands([9, 10, 10, 11, 12, 13, 14, 20], 4);
    expect(bands).toEqual([
      ...["9", "10 to 11", "10 to 11", "10 to 11", "12 to 13", "12 to 13", "14 to 20", "14 to 20"],
    ]);
    expect(numberBands([3, 1, 1], 4)).toEqual(["3", "1", "1"]);
    expect(numberBands([], 4)).toEqual([]);
  });
});
