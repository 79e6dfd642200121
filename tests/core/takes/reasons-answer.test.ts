import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { numberBands } from "../../../src/core/statistics/number-bands";
import { comparedAnswer } from "../../../src/core/takes/compared-answer";
import { reasonsAnswer } from "../../../src/core/takes/reasons-answer";
import { takeReasons } from "../../../src/core/takes/take-reasons";
import { csvRows } from "../../samples/csv-rows";
import { rowsByName } from "../../support/answers";
import { reading } from "../records/reading";

const HEADER = ["Batch", "Variety", "Grafter", "Place", "Grafts made", "Takes"];
const reasons = (rows: readonly (readonly (string | number)[])[]) =>
  reasonsAnswer({ records: reading([HEADER, ...rows]), level: 0.95 });

/** Batches of two varieties; where `together`, Mirel has all of the hard one. */
function batches(together: boolean) {
  return Array.from({ length: 40 }, (_, place) => {
    const hard = place % 2 === 1;
    const grafter = (together ? hard : place % 4 < 2) ? "Mirel" : "Orrin";
    const taken = (hard ? 55 : 80) + ((place * 5) % 7) - 3;
    return [`B${place}`, hard ? "Hard" : "Easy", grafter, `Bay ${place % 3}`, 100, taken];
  });
}

describe("reasonsAnswer", () => {
  it("ranks the column that takes go with first, and finds nothing in the others", () => {
    const rows = rowsByName(reasons(batches(false)));
    expect(rows.map(({ Column, Groups }) => [Column, Groups])).toEqual([
      ["Variety", 2],
      ["Grafter", 2],
      ["Place", 3],
    ]);
    expect(rows[0]?.["Spread explained"]).toBeGreaterThan(0.7);
    expect(rows[0]).toMatchObject({ Best: "Easy (80 %)", Worst: "Hard (55 %)" });
    expect(rows[0]?.Reading).toMatch(/^goes with takes, also where the other columns are alike/);
    for (const row of rows.slice(1)) {
      expect(row).toMatchObject({ Best: null, Worst: null, Reading: "no clear link" });
    }
  });

  it("does not credit either of two columns that always change together", () => {
    const rows = rowsByName(reasons(batches(true)));
    for (const name of ["Variety", "Grafter"]) {
      expect(rows.find(({ Column }) => Column === name)?.Reading).toBe(
        "goes with takes, but what else differed may be behind it",
      );
    }
  });

  it("says that going with is not causing, whatever it found", () => {
    for (const rows of [batches(true), [["B1", "Easy", "Orrin", "Bay 1", 100, 80]]]) {
      expect(reasons(rows).remark).toMatch(/^Going with takes is not causing them/);
    }
  });

  it("reads columns of one group, or of groups of one or two batches, as too few to tell", () => {
    const rows = rowsByName(reasons(batches(false).slice(0, 5)));
    expect(rows.find(({ Column }) => Column === "Place")?.Reading).toBe("too few to tell");
    expect(rowsByName(reasons([])).every(({ Reading }) => Reading === "too few to tell")).toBe(
      true,
    );
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

  it("calls nobody the best or the worst in a sheet where nobody asked for people to be compared", () => {
    const { rows, remark } = reasonsAnswer({ records, level: 0.95 });
    expect(rows.find(([column]) => column === "Grafter")?.slice(3, 5)).toEqual([null, null]);
    expect(JSON.stringify(rows)).not.toMatch(/Kesto|Mirel|Orrin|Tavi/);
    expect(remark).toContain(
      "People are not named here: to compare them fairly, use TAKE_COMPARED.",
    );
    expect(String(rows.find(([column]) => column === "Variety")?.[4])).toMatch(/^Duskpod/);
  });

  it("sets Kesto apart by an even comparison, and not Mirel, whose plain rate is the lowest", () => {
    const rows = rowsByName(
      comparedAnswer({ records, by: "Grafter", evenFor: "Variety", level: 0.95 }),
    );
    const named = rows.filter(({ Grafter }) => Grafter !== "(blank)");
    const lowest = named.reduce((low, row) =>
      (row["Take rate"] as number) < (low["Take rate"] as number) ? row : low,
    );
    expect(lowest.Grafter).toBe("Mirel");
    expect(named.map(({ Grafter, Reading }) => [Grafter, Reading])).toEqual([
      ["Kesto", "below the rest"],
      ["Mirel", "no clear difference"],
      ["Orrin", "no clear difference"],
      ["Tavi", "no clear difference"],
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
