import { describe, expect, it } from "vitest";
import type { Cell } from "../../../src/core/cells/cell";
import { comparedTakes } from "../../../src/core/takes/compared-takes";
import { faultOf } from "../../support/fault-of";
import { fixture } from "../../support/fixtures";
import { reading } from "../records/reading";

const HEADER = ["Batch", "Variety", "Grafter", "Sown", "Grafted on", "Grafts made", "Takes"];
const compared = (
  rows: readonly (readonly Cell[])[],
  evenFor = "Variety",
  { by = "Grafter", level = 0.95, header = HEADER } = {},
) => comparedTakes({ records: reading([header, ...rows]), by, evenFor, level });

let number = 0;
const batch = (
  variety: string,
  grafter: string,
  taken: Cell,
  grafted = 100,
  day = "2026-03-02",
) => {
  number += 1;
  return [`B${number}`, variety, grafter, "2025-12-01", day, grafted, taken];
};

/** Batches a little apart, as batches are. */
const some = (variety: string, grafter: string, taken: number, count = 6) =>
  Array.from({ length: count }, (_, index) =>
    batch(variety, grafter, taken + ((index * 5) % 7) - 3),
  );

describe("published values: Bickel et al. (1975), admissions by department", () => {
  it("gives the taken, expected and evened rates of R's Mantel-Haenszel sums", () => {
    const { data, expected } = fixture<
      { cells: { stratum: string; group: string; successes: number; trials: number }[] },
      { groups: { group: string; trials: number; expected: number; evenedRate: number }[] }
    >("ucb-admissions");
    const rows = data.cells.map(({ stratum, group, successes, trials }) =>
      batch(stratum, group, successes, trials),
    );
    const { groups } = compared(rows);
    for (const theirs of expected.groups) {
      const ours = groups.find(({ group }) => group[0] === theirs.group);
      expect(ours?.grafted).toBe(theirs.trials);
      expect((ours?.expectedRate as number) * theirs.trials).toBeCloseTo(theirs.expected, 8);
      expect(ours?.evenedRate).toBeCloseTo(theirs.evenedRate, 12);
      expect(ours?.from).toBeLessThan(theirs.evenedRate);
      expect(ours?.to).toBeGreaterThan(theirs.evenedRate);
      expect(ours?.reading).toBe("alike");
    }
  });
});

describe("comparedTakes", () => {
  // Mirel has most of the hard variety: her plain rate is lowest, though she is as good as Orrin.
  const unfair = [
    ...some("Easy", "Orrin", 85, 8),
    ...some("Hard", "Orrin", 55, 3),
    ...some("Easy", "Mirel", 85, 3),
    ...some("Hard", "Mirel", 55, 8),
    ...some("Easy", "Tavi", 85, 6),
    ...some("Hard", "Tavi", 55, 6),
    ...some("Easy", "Kesto", 65, 8),
    ...some("Hard", "Kesto", 35, 3),
  ];

  it("sets apart the weak grafter, and not the one who has the hard variety", () => {
    const { groups } = compared(unfair);
    const of = (name: string) => groups.find(({ group }) => group[0] === name);
    expect(of("Mirel")?.takeRate).toBeLessThan(0.65);
    expect(of("Mirel")?.evenedRate).toBeGreaterThan(0.68);
    expect(of("Kesto")?.reading).toBe("below");
    expect(of("Kesto")?.to).toBeLessThan(of("Mirel")?.from as number);
    expect(of("Mirel")?.reading).not.toBe("below");
  });

  it("does not set apart a grafter for one batch that died, where others went as usual", () => {
    const even = [...some("Easy", "Orrin", 80, 10), ...some("Easy", "Tavi", 80, 10)];
    const died = [...even, ...some("Easy", "Mirel", 80, 9), batch("Easy", "Mirel", 0)];
    const readings = compared(died).groups.map(({ reading }) => reading);
    expect(readings).not.toContain("below");
    expect(readings).not.toContain("above");
    const low = [...even, ...some("Easy", "Mirel", 60, 10)];
    expect(compared(low).groups.find(({ group }) => group[0] === "Mirel")?.reading).toBe("below");
  });

  it("says with whom nobody can be compared, and counts their batches all the same", () => {
    const alone = compared([
      ...some("Easy", "Orrin", 85),
      ...some("Easy", "Mirel", 84),
      ...some("Rare", "Mirel", 50, 2),
      ...some("New", "Tavi", 70, 4),
    ]);
    expect(alone.alone).toEqual([
      { group: ["Mirel"], stratum: ["Rare"] },
      { group: ["Tavi"], stratum: ["New"] },
    ]);
    expect(alone.aloneBatches).toBe(6);
    const [mirel, orrin, tavi] = alone.groups;
    expect(mirel?.grafted).toBe(800);
    expect(orrin?.reading).toBe("alike");
    expect(tavi).toMatchObject({ evenedRate: null, from: null, to: null, reading: "too few" });
  });

  it("reads two batches as too few, whatever they took", () => {
    const { groups } = compared([
      ...some("Easy", "Orrin", 85),
      ...some("Easy", "Tavi", 84),
      ...some("Easy", "New", 9, 2),
    ]);
    expect(groups.find(({ group }) => group[0] === "New")?.reading).toBe("too few");
  });

  it("evens for several columns, and for those made from days", () => {
    const dated = [
      batch("Easy", "Orrin", 80, 100, "2026-03-02"),
      batch("Easy", "Tavi", 70, 100, "2026-03-30"),
      batch("Easy", "Orrin", 60, 100, "2026-04-02"),
    ];
    const expectedRates = (evenFor: string) =>
      compared(dated, evenFor).groups.map(({ expectedRate }) => expectedRate.toFixed(4));
    expect(expectedRates("Month")).toEqual([((75 + 60) / 200).toFixed(4), "0.7500"]);
    expect(expectedRates("Variety+Month")).toEqual(expectedRates("Month"));
    expect(expectedRates("Season")).toEqual(["0.7000", "0.7000"]);
    // 91, 119 and 122 days: 13, 17 and 17 weeks.
    expect(expectedRates("rootstock age in weeks")).toEqual([
      ((80 + 65) / 200).toFixed(4),
      "0.6500",
    ]);
  });

  it("narrows the ranges with more batches and widens them with the level", () => {
    const width = (times: number, level: number) => {
      const rows = Array.from({ length: times }, () => [
        ...some("Easy", "Orrin", 85),
        ...some("Easy", "Tavi", 84),
      ]).flat();
      const [first] = compared(rows, "Variety", { level }).groups;
      return (first?.to as number) - (first?.from as number);
    };
    expect(width(1, 0.95)).toBeGreaterThan(width(1, 0.8));
    expect(width(1, 0.95)).toBeGreaterThan(width(4, 0.95));
  });

  it("refuses to even for what is compared, and columns that are not there", () => {
    const argument = "evenFor";
    expect(faultOf(() => compared(unfair, "Variety+Grafter"))).toEqual({
      code: "compared-and-evened",
      argument,
      name: "Grafter",
    });
    for (const name of ["Moon", "Scion days stored"]) {
      expect(faultOf(() => compared(unfair, name))).toEqual({
        code: "no-such-column",
        argument,
        name,
        known: HEADER,
      });
    }
  });

  it("has no rows where nothing is counted, and says what is not", () => {
    const answer = compared([batch("Easy", "Orrin", ""), batch("Easy", "Tavi", 140)]);
    expect(answer.groups).toEqual([]);
    expect(answer.remarks).toEqual([
      { code: "not-counted-yet", batches: 1 },
      { code: "more-taken-than-grafted", batches: 1 },
    ]);
  });

  it("makes scion days from the day of cutting, and weeks of age from the lot's sowing", () => {
    const header = [
      "Batch",
      "From lot",
      "Sown",
      "Scions cut",
      "Grafter",
      "Grafted on",
      "Grafts made",
      "Takes",
    ];
    const rows = [
      ["L1", "", "2026-01-05", "", "", "", "", ""],
      ["B1", "L1", "", "2026-04-05", "Orrin", "2026-04-06", 100, 80],
      ["B2", "L1", "", "2026-04-04", "Tavi", "2026-04-07", 100, 60],
    ];
    const by = (name: string) =>
      compared(rows, "Grafter", { header, by: name }).groups.map(({ group }) => group[0]);
    expect(by("Scion days stored")).toEqual(["1", "3"]);
    expect(by("Rootstock age in weeks")).toEqual(["13"]);
  });
});
