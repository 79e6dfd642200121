import { describe, expect, it } from "vitest";
import type { Cell } from "../../../src/core/cells/cell";
import { summedTakes } from "../../../src/core/takes/summed-takes";
import { faultOf } from "../../support/fault-of";
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
  readonly wilson95: Limits;
}
type Plate = Pick<Group, "dilution" | "seed" | "extract" | "germinated" | "seeds">;
const crowder = (table: 1 | 3) =>
  fixture<{ plates: readonly Plate[] }, { groups: readonly Group[] }>(
    `crowder-1978-table-${table}`,
  );

const HEADER = ["Batch", "Variety", "Grafter", "Grafts made", "Takes", "Moon"];
const summary = (rows: readonly (readonly Cell[])[], by: string, header = HEADER, level = 0.95) =>
  summedTakes({ records: reading([header, ...rows]), by, level });

describe("published values: Crowder (1978), Appl. Statist. 27:34-37", () => {
  it("Table 1 comes out as pooled shares, with ranges that hold more than chance alone", () => {
    const { data, expected } = crowder(1);
    const rows = data.plates.map((plate, at) => [
      ...[`Plate ${at}`, plate.dilution, "", plate.seeds, plate.germinated],
    ]);
    const { groups } = summary(rows, "Variety");
    expect(groups.map(({ takeRate }) => takeRate?.toFixed(3))).toEqual(["0.142", "0.872", "0.842"]);
    groups.forEach((row, at) => {
      const group = expected.groups[at] as Group;
      expect(row.group).toEqual([group.dilution]);
      expect(row.batches).toBe(group.plates);
      expect([row.grafted, row.taken]).toEqual([group.seeds, group.germinated]);
      expect(row.takeRate).toBeCloseTo(group.pooledShare, 14);
      expect(row.from).toBeLessThan(group.wilson95.lower);
      expect(row.to).toBeGreaterThan(group.wilson95.upper);
    });
  });

  it("Table 3 by seed and extract is counted group by group", () => {
    const { data, expected } = crowder(3);
    const rows = data.plates.map((plate, at) => [
      ...[`Plate ${at}`, plate.seed, plate.extract, plate.seeds, plate.germinated],
    ]);
    const { groups } = summary(rows, "Variety + Grafter");
    expect(groups.map(({ group }) => group)).toEqual(
      expected.groups.map(({ seed, extract }) => [seed, extract]),
    );
    groups.forEach((row, at) => {
      const group = expected.groups[at] as Group;
      expect([row.taken, row.grafted]).toEqual([group.germinated, group.seeds]);
    });
  });
});

describe("summedTakes", () => {
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
    const { groups } = summary(ROWS, "Variety");
    expect(
      groups.map(({ group, batches, grafted, taken }) => [group[0], batches, grafted, taken]),
    ).toEqual([
      ["", 0, 0, 0],
      ["Alba", 2, 150, 100],
      ["Nera", 1, 40, 0],
    ]);
    expect(groups.map(({ takeRate }) => takeRate)).toEqual([null, 100 / 150, 0]);
    expect(groups.map(({ from }) => from === null)).toEqual([true, false, false]);
    // Where none took there is no usual batch to tell of.
    expect(groups.map(({ remarks }) => remarks)).toEqual([
      [{ code: "more-taken-than-grafted", batches: 1 }],
      [
        expect.objectContaining({ code: "usual-batch", grafted: 50 }),
        { code: "not-counted-yet", batches: 1 },
      ],
      [],
    ]);
  });

  it("remarks on one batch a group, where the spread can't be told", () => {
    const { groups } = summary([ROWS[0] as Cell[], ROWS[3] as Cell[]], "Variety");
    for (const { remarks } of groups) expect(remarks).toContainEqual({ code: "one-batch-each" });
  });

  it("says the spread of a group at its usual size, and what such a batch mostly takes", () => {
    const batches = (variety: string, grafted: number) =>
      Array.from({ length: 20 }, (_, at) => [
        ...[`${variety}${at}`, variety, "", grafted, grafted * (at % 2 === 0 ? 0.9 : 0.7)],
      ]);
    const { groups } = summary([...batches("Alba", 100), ...batches("Nera", 400)], "Variety");
    const [small, large] = groups.map(({ spread }) => spread as number);
    // 1 + (size − 1) × one correlation for both.
    expect(((large as number) - 1) / ((small as number) - 1)).toBeCloseTo(399 / 99, 9);
    for (const { remarks } of groups) {
      const usual = remarks.find(({ code }) => code === "usual-batch");
      if (usual?.code !== "usual-batch") throw new Error("no usual batch");
      // 95 of 100 batches: the 70 and 90 % that all of these took lie well within.
      expect(usual.low).toBeLessThan(0.7);
      expect(usual.high).toBeGreaterThan(0.88);
    }
  });

  it("takes a group in which none took for no sign that batches are alike", () => {
    const varied = Array.from({ length: 8 }, (_, at) => [
      `B${at}`,
      "Alba",
      "",
      100,
      50 + 8 * (at % 5),
    ]);
    const none = Array.from({ length: 40 }, (_, at) => [`N${at}`, "Nera", "", 100, 0]);
    const alone = summary(varied, "Variety").groups[0];
    const beside = summary([...varied, ...none], "Variety").groups[0];
    expect([beside?.from, beside?.to]).toEqual([alone?.from, alone?.to]);
  });

  it("groups by any column of the table, by its header whatever the capitals", () => {
    const { groups } = summary(ROWS.slice(0, 2), "MOON");
    expect(groups.map(({ group }) => group)).toEqual([["full"], ["new"]]);
  });

  it("groups by our name for a column, and shows the sheet's own header", () => {
    const header = ["Batch", "Clone", "Budder", "Grafts made", "Takes", "Moon"];
    const answer = summary(ROWS, "variety+grafter", header);
    expect(answer.by.map(({ name }) => name)).toEqual(["Clone", "Budder"]);
  });

  // Once such a column could not be named at all.
  it("groups by a column whose header holds a plus", () => {
    const header = ["Batch", "Variety", "Grafter", "Grafts made", "Takes", "N+K"];
    const { groups } = summary(ROWS.slice(0, 2), "N+K", header);
    expect(groups.map(({ group }) => group)).toEqual([["full"], ["new"]]);
  });

  it("narrows with more plants and widens with the level", () => {
    const width = (level: number, times: number) => {
      const rows = [["B1", "Alba", "", 100 * times, 80 * times, ""]];
      const [only] = summary(rows, "Variety", HEADER, level).groups;
      return (only?.to as number) - (only?.from as number);
    };
    expect(width(0.95, 1)).toBeGreaterThan(width(0.8, 1));
    expect(width(0.95, 1)).toBeGreaterThan(width(0.95, 10));
  });

  it("says which columns there are when it does not know the one it is asked for", () => {
    const fault = { code: "no-such-column", argument: "by", known: HEADER };
    expect(faultOf(() => summary(ROWS, "Tide"))).toEqual({ ...fault, name: "Tide" });
    expect(faultOf(() => summary(ROWS, "Variety+"))).toEqual({ ...fault, name: "" });
  });

  it.each([
    [["Batch", "Variety", "Grafted on", "Takes"], "no-grafts"],
    [["Batch", "Variety", "Grafts made", "Take count day"], "no-takes"],
    [["Batch", "Variety", "Sown", "Note"], "no-grafts"],
  ])("needs grafts and takes: of %j says %s", (header, code) => {
    expect(faultOf(() => summary([["B1", "Alba", "", ""]], "Variety", header))).toEqual({ code });
  });

  it("has no rows where nothing was grafted", () => {
    expect(summary([["B1", "Alba", "", "", "", ""]], "Variety").groups).toEqual([]);
  });
});
