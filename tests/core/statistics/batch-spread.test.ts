import { describe, expect, it } from "vitest";
import { batchSpread, pooledRate } from "../../../src/core/statistics/batch-spread";
import { fixture } from "../../support/fixtures";

interface Plate {
  readonly seeds: number;
  readonly germinated: number;
}
interface Group {
  readonly pooledShare: number;
  readonly meanOfPlateShares: number;
  readonly pearson: number;
}
interface Expected {
  readonly printed: Readonly<Record<string, string>>;
  readonly pearson: number;
  readonly degreesOfFreedom: number;
  readonly spread: number;
  readonly groups: readonly (Group & { dilution: string; seed: string; extract: string })[];
}
const table1 = fixture<{ plates: (Plate & { dilution: string })[] }, Expected>(
  "crowder-1978-table-1",
);
const table3 = fixture<{ plates: (Plate & { seed: string; extract: string })[] }, Expected>(
  "crowder-1978-table-3",
);
const batch = ({ seeds, germinated }: Plate) => ({ grafted: seeds, taken: germinated });
const dilution = (name: string) =>
  table1.data.plates.filter((plate) => plate.dilution === name).map(batch);

describe("published values: Crowder (1978), Appl. Statist. 27:34-37, Table 1", () => {
  it.each(["1/1", "1/25", "1/625"])("dilution %s pools to the printed share", (name) => {
    const rate = pooledRate(dilution(name));
    expect(rate.toFixed(3)).toBe(table1.expected.printed[name]);
    const group = table1.expected.groups.find((one) => one.dilution === name);
    // The mean of the plates' own shares differs in the third digit already.
    expect(group?.meanOfPlateShares.toFixed(3)).not.toBe(table1.expected.printed[name]);
  });

  it("all plates pool to the printed 0.614", () => {
    const rate = pooledRate(table1.data.plates.map(batch));
    expect(rate.toFixed(3)).toBe("0.614");
    expect(table1.expected.printed.overall).toBe("0.614");
  });

  it("the plates' spread is R's", () => {
    const spread = batchSpread(["1/1", "1/25", "1/625"].map(dilution));
    expect(spread.chiSquare).toBeCloseTo(table1.expected.pearson, 9);
    expect(spread.degreesOfFreedom).toBe(table1.expected.degreesOfFreedom);
    expect(spread.factor).toBeCloseTo(table1.expected.spread, 12);
  });
});

describe("published values: Crowder (1978), Table 3, four groups of plates", () => {
  const groups = table3.expected.groups.map(({ seed, extract }) =>
    table3.data.plates.filter((one) => one.seed === seed && one.extract === extract).map(batch),
  );

  it("spread 31.651 on 17 degrees of freedom", () => {
    const spread = batchSpread(groups);
    expect(spread.chiSquare.toFixed(3)).toBe("31.651");
    expect(spread.degreesOfFreedom).toBe(17);
    expect(spread.factor).toBeCloseTo(31.651 / 17, 4);
  });

  it("each group's part is R's", () => {
    groups.forEach((group, index) => {
      expect(batchSpread([group]).chiSquare).toBeCloseTo(
        table3.expected.groups[index]?.pearson as number,
        9,
      );
    });
  });
});

describe("batchSpread", () => {
  it("is 1 on no degrees of freedom where no group has two batches", () => {
    const alone = [[{ grafted: 10, taken: 3 }], [{ grafted: 8, taken: 8 }], []];
    expect(batchSpread(alone)).toEqual({ chiSquare: 0, degreesOfFreedom: 0, factor: 1 });
    expect(batchSpread([])).toEqual({ chiSquare: 0, degreesOfFreedom: 0, factor: 1 });
  });

  it("is never below 1, though batches of one rate differ less than chance", () => {
    const alike = [Array.from({ length: 5 }, () => ({ grafted: 100, taken: 50 }))];
    expect(batchSpread(alike)).toEqual({ chiSquare: 0, degreesOfFreedom: 4, factor: 1 });
  });

  it("counts groups in which none or all took, which can't differ", () => {
    const group = (taken: number) => Array.from({ length: 3 }, () => ({ grafted: 9, taken }));
    expect(batchSpread([group(0), group(9)])).toEqual({
      chiSquare: 0,
      degreesOfFreedom: 4,
      factor: 1,
    });
  });

  it("comes out by hand for two batches: 10 of 20 and 18 of 20", () => {
    // Rate 0.7; (10 - 14)²/(20 · 0.7 · 0.3) + (18 - 14)²/(20 · 0.7 · 0.3) = 32/4.2.
    const spread = batchSpread([
      [
        { grafted: 20, taken: 10 },
        { grafted: 20, taken: 18 },
      ],
    ]);
    expect(spread.chiSquare).toBeCloseTo(32 / 4.2, 12);
    expect(spread.degreesOfFreedom).toBe(1);
  });
});
