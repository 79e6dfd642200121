import { describe, expect, it } from "vitest";
import type { Cell } from "../../../src/core/cells/cell";
import { summaryAnswer } from "../../../src/core/takes/summary-answer";
import { rowsByName } from "../../support/answers";
import { fixture } from "../../support/fixtures";
import { reading } from "../records/reading";

interface Limits {
  readonly lower: number;
  readonly upper: number;
}
interface Group {
  readonly dilution: string;
  readonly seed: string;
  readonly extract: string;
  readonly plates: number;
  readonly germinated: number;
  readonly seeds: number;
  readonly pooledShare: number;
  readonly wilson95BySpread: Limits;
}
type Plate = Pick<Group, "dilution" | "seed" | "extract" | "germinated" | "seeds">;
const crowder = (table: 1 | 3) =>
  fixture<{ plates: readonly Plate[] }, { spread: number; groups: readonly Group[] }>(
    `crowder-1978-table-${table}`,
  );

const HEADER = ["Batch", "Variety", "Grafter", "Grafts made", "Takes", "Moon"];
const summary = (rows: readonly (readonly Cell[])[], by: string, header = HEADER, level = 0.95) =>
  summaryAnswer({ records: reading([header, ...rows]), by, level });

describe("published values: Crowder (1978), Appl. Statist. 27:34-37", () => {
  it("Table 1 comes out as pooled shares, with R's spread and widened Wilson limits", () => {
    const { data, expected } = crowder(1);
    const rows = data.plates.map((plate, at) => [
      ...[`Plate ${at}`, plate.dilution, "", plate.seeds, plate.germinated],
    ]);
    const answer = rowsByName(summary(rows, "Variety"));
    expect(answer.map((row) => (row["Take rate"] as number).toFixed(3))).toEqual([
      ...["0.142", "0.872", "0.842"],
    ]);
    answer.forEach((row, at) => {
      const group = expected.groups[at] as Group;
      expect(row.Variety).toBe(group.dilution);
      expect([row.Batches, row.Grafted, row.Taken]).toEqual([
        ...[group.plates, group.seeds, group.germinated],
      ]);
      expect(row["Take rate"]).toBeCloseTo(group.pooledShare, 14);
      expect(row["Batch spread"]).toBeCloseTo(expected.spread, 12);
      expect(row.From).toBeCloseTo(group.wilson95BySpread.lower, 10);
      expect(row.To).toBeCloseTo(group.wilson95BySpread.upper, 10);
      expect(row.Remark).toBeNull();
    });
  });

  it("Table 3 by seed and extract spreads 31.651 on 17 degrees of freedom", () => {
    const { data, expected } = crowder(3);
    const rows = data.plates.map((plate, at) => [
      ...[`Plate ${at}`, plate.seed, plate.extract, plate.seeds, plate.germinated],
    ]);
    const answer = rowsByName(summary(rows, "Variety + Grafter"));
    expect(answer.map(({ Variety, Grafter }) => [Variety, Grafter])).toEqual(
      expected.groups.map(({ seed, extract }) => [seed, extract]),
    );
    answer.forEach((row, at) => {
      const group = expected.groups[at] as Group;
      expect([row.Taken, row.Grafted]).toEqual([group.germinated, group.seeds]);
      expect(((row["Batch spread"] as number) * 17).toFixed(3)).toBe("31.651");
      expect(row.From).toBeCloseTo(group.wilson95BySpread.lower, 10);
      expect(row.To).toBeCloseTo(group.wilson95BySpread.upper, 10);
    });
  });
});

describe("summaryAnswer", () => {
  const ROWS = [
    ["B1", "Alba", "Ana", 100, 80, "new"],
    ["B2", "Alba", "Ben", 50, 20, "full"],
    ["B3", "alba", "Ana", 10, "", ""],
    ["B4", "Nera", "Ana", 40, 0, ""],
    ["B5", "", "Ben", 40, 44, ""],
    ["B6", "Nera", "Ben", "", "", ""],
    ["B7", "Nera", "Ben", 0, 0, ""],
  ];

  it("pools batches, says which are not counted or can't be, and does not take blank for 0", () => {
    const rows = rowsByName(summary(ROWS, "Variety"));
    expect(
      rows.map(({ Variety, Batches, Grafted, Taken }) => [Variety, Batches, Grafted, Taken]),
    ).toEqual([
      ["(blank)", 0, 0, 0],
      ["Alba", 2, 150, 100],
      ["Nera", 1, 40, 0],
    ]);
    expect(rows.map((row) => row["Take rate"])).toEqual([null, 100 / 150, 0]);
    expect(rows.map(({ From }) => From === null)).toEqual([true, false, false]);
    expect(rows[0]?.Remark).toMatch(/1 batch left out: more taken than grafted/);
    expect(rows[1]?.Remark).toMatch(/1 batch not counted yet/);
  });

  it("remarks on one batch a group, where the spread can't be told", () => {
    const rows = rowsByName(summary([ROWS[0] as Cell[], ROWS[3] as Cell[]], "Variety"));
    for (const row of rows) {
      expect(row["Batch spread"]).toBe(1);
      expect(row.Remark).toMatch(/One batch a group/);
    }
  });

  it("groups by any column of the table, by its header whatever the capitals", () => {
    const rows = rowsByName(summary(ROWS.slice(0, 2), "MOON"));
    expect(rows.map(({ Moon }) => Moon)).toEqual(["full", "new"]);
  });

  it("groups by our name for a column, and shows the sheet's own header", () => {
    const header = ["Batch", "Clone", "Budder", "Grafts made", "Takes", "Moon"];
    const answer = summary(ROWS, "variety+grafter", header);
    expect(answer.columns.slice(0, 2).map(({ name }) => name)).toEqual(["Clone", "Budder"]);
  });

  // Once such a column could not be named at all.
  it("groups by a column whose header holds a plus", () => {
    const header = ["Batch", "Variety", "Grafter", "Grafts made", "Takes", "N+K"];
    expect(rowsByName(summary(ROWS.slice(0, 2), "N+K", header)).map((row) => row["N+K"])).toEqual([
      "full",
      "new",
    ]);
  });

  it("narrows with more plants and widens with the level", () => {
    const width = (level: number, times: number) => {
      const rows = [["B1", "Alba", "", 100 * times, 80 * times, ""]];
      const [only] = rowsByName(summary(rows, "Variety", HEADER, level));
      return (only?.To as number) - (only?.From as number);
    };
    expect(width(0.95, 1)).toBeGreaterThan(width(0.8, 1));
    expect(width(0.95, 1)).toBeGreaterThan(width(0.95, 10));
  });

  it.each([
    ["Remark", ["Remark", "Batches"]],
    ["Batch spread", ["Batch spread", "Batches"]],
    ["From", ["From", "Batches"]],
    ["__proto__", ["__proto__", "Batches"]],
    ["constructor", ["constructor", "Batches"]],
    ["2026", ["2026", "Batches"]],
    ["Grafter+2026", ["Grafter", "2026", "Batches"]],
    ["Grafter+Grafter", ["Grafter"]],
  ])("is as wide in every row as its header, by the column %s", (by, first) => {
    const own = by.split("+").at(-1) as string;
    const header = [
      "Batch",
      own === "Grafter" ? "Variety" : own,
      "Grafter",
      "Grafts made",
      "Takes",
    ];
    const { columns, rows } = summary(ROWS, by, header);
    expect(columns.slice(0, first.length).map(({ name }) => name)).toEqual(first);
    for (const row of rows) expect(row).toHaveLength(columns.length);
  });

  it("says which columns there are when it does not know the one it is asked for", () => {
    expect(() => summary(ROWS, "Tide")).toThrow(
      'by names "Tide", which is no column of the records; they have: Batch, Variety, Grafter, Grafts made, Takes, Moon',
    );
    expect(() => summary(ROWS, "Variety+")).toThrow('by names ""');
  });

  it.each([
    [["Batch", "Variety", "Grafted on", "Takes"], "Grafts made"],
    [["Batch", "Variety", "Grafts made", "Take count day"], "Takes"],
    [["Batch", "Variety", "Sown", "Note"], "Grafts made"],
  ])("needs grafts and takes: %j lacks %s", (header, lacking) => {
    expect(() => summary([["B1", "Alba", "", ""]], "Variety", header)).toThrow(
      `records has no column for ${lacking}`,
    );
  });

  it("has no rows where nothing was grafted", () => {
    expect(summary([["B1", "Alba", "", "", "", ""]], "Variety").rows).toEqual([]);
  });
});
