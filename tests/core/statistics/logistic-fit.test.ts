import { describe, expect, it } from "vitest";
import { raisedForMany } from "../../../src/core/statistics/benjamini-hochberg";
import { type LogisticFit, logisticFit } from "../../../src/core/statistics/logistic-fit";
import type { LogisticRow } from "../../../src/core/statistics/logistic-row";
import { reasonsFit } from "../../../src/core/statistics/reasons-fit";
import { beyondF, beyondT, reachOfT } from "../../../src/core/statistics/t-and-f-tails";
import { fixture } from "../../support/fixtures";

interface Model {
  readonly residualDeviance: number;
  readonly degreesOfFreedom: number;
  readonly dispersion: number;
  readonly coefficients: readonly { readonly estimate: number; readonly standardError: number }[];
  readonly fitted?: readonly number[];
}
interface Plate {
  readonly seed: string;
  readonly extract: string;
  readonly seeds: number;
  readonly germinated: number;
}

function fitOf(rows: readonly LogisticRow[], columns: number): LogisticFit {
  return logisticFit(rows, { bases: 1, columns, ridge: 0 }) as LogisticFit;
}

function expectLike(rows: readonly LogisticRow[], columns: number, model: Model) {
  const fit = fitOf(rows, columns);
  expect(fit.deviance).toBeCloseTo(model.residualDeviance, 9);
  expect(rows.length - 1 - fit.usedColumns).toBe(model.degreesOfFreedom);
  const pearson = rows.reduce((sum, { taken, grafted }, index) => {
    const share = fit.shares[index] as number;
    return sum + (taken - grafted * share) ** 2 / (grafted * share * (1 - share));
  }, 0);
  const dispersion = pearson / model.degreesOfFreedom;
  expect(dispersion).toBeCloseTo(model.dispersion, 8);
  const [intercept, ...others] = model.coefficients;
  expect(fit.bases[0]).toBeCloseTo(intercept?.estimate as number, 8);
  const errorOf = (columns: number[]) =>
    Math.sqrt(dispersion * fit.logOddsVariance({ base: 0, columns }));
  expect(errorOf([])).toBeCloseTo(intercept?.standardError as number, 7);
  others.forEach(({ estimate, standardError }, column) => {
    expect(fit.coefficients[column]).toBeCloseTo(estimate, 8);
    const error = Math.sqrt(dispersion * fit.coefficientVariance(column));
    expect(error).toBeCloseTo(standardError, 7);
  });
  return fit;
}

describe("published values: R's glm(family = quasibinomial)", () => {
  const { data, expected } = fixture<
    { plates: readonly Plate[] },
    { quasibinomial: { withInteraction: Model; withoutInteraction: Model } }
  >("crowder-1978-table-3");
  const row = ({ seed, extract, seeds, germinated }: Plate, interaction: boolean): LogisticRow => {
    const columns = [];
    if (seed === "O75") columns.push(0);
    if (extract === "cucumber") columns.push(1);
    if (interaction && columns.length === 2) columns.push(2);
    return { taken: germinated, grafted: seeds, base: 0, columns };
  };

  it("Crowder (1978) Table 3, with and without interaction; dispersion 1.8618", () => {
    const { withInteraction, withoutInteraction } = expected.quasibinomial;
    expectLike(
      data.plates.map((plate) => row(plate, true)),
      3,
      withInteraction,
    );
    expect(withInteraction.dispersion.toFixed(4)).toBe("1.8618");
    expectLike(
      data.plates.map((plate) => row(plate, false)),
      2,
      withoutInteraction,
    );
  });

  it("the same plates with extracts as strata give the same effect of the seed", () => {
    const rows = data.plates.map(({ seed, extract, seeds, germinated }) => ({
      taken: germinated,
      grafted: seeds,
      base: extract === "cucumber" ? 1 : 0,
      columns: seed === "O75" ? [0] : [],
    }));
    const fit = logisticFit(rows, { bases: 2, columns: 1, ridge: 0 }) as LogisticFit;
    const [, seedEffect] = expected.quasibinomial.withoutInteraction.coefficients;
    expect(fit.coefficients[0]).toBeCloseTo(seedEffect?.estimate as number, 8);
    const { dispersion, coefficients } = expected.quasibinomial.withoutInteraction;
    const error = Math.sqrt(dispersion * fit.coefficientVariance(0));
    expect(error).toBeCloseTo(coefficients[1]?.standardError as number, 7);
    const ofBase = Math.sqrt(dispersion * fit.logOddsVariance({ base: 0, columns: [] }));
    expect(ofBase).toBeCloseTo(coefficients[0]?.standardError as number, 7);
  });

  it("budworm moths, a numeric column, with and without interaction", () => {
    const moths = fixture<
      { trays: readonly { sex: string; dose: number; moths: number; dead: number }[] },
      { sexTimesDose: Model; sexAndDose: Model }
    >("budworm");
    const rows = (interaction: boolean) =>
      moths.data.trays.map(({ sex, dose, moths: grafted, dead }): LogisticRow => {
        const log = Math.log2(dose);
        const male = sex === "M";
        return {
          taken: dead,
          grafted,
          base: 0,
          columns: male ? (interaction ? [0, 1, 2] : [0, 1]) : [1],
          values: male ? (interaction ? [1, log, log] : [1, log]) : [log],
        };
      });
    for (const [model, columns, interaction] of [
      [moths.expected.sexTimesDose, 3, true],
      [moths.expected.sexAndDose, 2, false],
    ] as const) {
      const fit = expectLike(rows(interaction), columns, model);
      fit.shares.forEach((share, index) => {
        expect(share).toBeCloseTo(model.fitted?.[index] as number, 9);
      });
    }
  });

  it("takes one large batch for one fate: beside small ones it makes no link", () => {
    // Shares of 60 to 90 % in either group; the one batch of 5,000 happens to be a poor one.
    const batches = Array.from({ length: 24 }, (_, at) => {
      const grafted = at === 0 ? 5000 : 100;
      return { grafted, taken: grafted * (at === 0 ? 0.6 : 0.6 + ((at * 7) % 13) * 0.025) };
    });
    const group = { levels: batches.map((_, at) => at % 2), levelCount: 2 };
    const chanceOf = (correlation?: number) =>
      reasonsFit(batches, [group], correlation === undefined ? {} : { correlation })[0]
        ?.aloneByChance as number;
    expect(chanceOf(0)).toBeLessThan(0.01);
    expect(chanceOf()).toBeGreaterThan(0.2);
  });

  it("shares of the spread and their chances agree with R's anova(test = F)", () => {
    interface Reason {
      readonly alone: number;
      readonly beside: number;
      readonly aloneChance: number;
      readonly besideChance: number;
    }
    const { expected: theirs } = fixture<unknown, { seed: Reason; extract: Reason }>(
      "reasons-deviance",
    );
    const column = (is: (plate: Plate) => boolean) => ({
      levels: data.plates.map((plate) => (is(plate) ? 1 : 0)),
      levelCount: 2,
    });
    const ours = reasonsFit(
      data.plates.map(({ seeds, germinated }) => ({ grafted: seeds, taken: germinated })),
      [column(({ seed }) => seed === "O75"), column(({ extract }) => extract === "cucumber")],
      { ridge: 0, correlation: 0 },
    );
    const both = [theirs.seed, theirs.extract];
    const alone = raisedForMany(both.map((one) => one.aloneChance));
    const beside = raisedForMany(both.map((one) => one.besideChance));
    ours.forEach((one, index) => {
      expect(one.alone).toBeCloseTo(both[index]?.alone as number, 9);
      expect(one.besideOthers).toBeCloseTo(both[index]?.beside as number, 9);
      expect(one.aloneByChance).toBeCloseTo(alone[index] as number, 9);
      expect(one.besideOthersByChance).toBeCloseTo(beside[index] as number, 9);
    });
  });

  it("tails of Student's t and of F agree with R's pt, qt and pf", () => {
    const tails = fixture<
      { t: [number, number][]; levels: [number, number][]; f: [number, number, number][] },
      { beyondT: number[]; reachOfT: number[]; beyondF: number[] }
    >("student-f");
    const { t, levels, f } = tails.data;
    t.forEach((args, at) => {
      expect(beyondT(...args)).toBeCloseTo(tails.expected.beyondT[at] as number, 12);
    });
    levels.forEach((args, at) => {
      expect(reachOfT(...args)).toBeCloseTo(tails.expected.reachOfT[at] as number, 8);
    });
    f.forEach((args, at) => {
      expect(beyondF(...args)).toBeCloseTo(tails.expected.beyondF[at] as number, 12);
    });
  });
});

describe("logisticFit", () => {
  const rows: LogisticRow[] = [
    { taken: 50, grafted: 100, base: 0, columns: [] },
    { taken: 0, grafted: 80, base: 0, columns: [0] },
    { taken: 60, grafted: 90, base: 0, columns: [1] },
    { taken: 30, grafted: 60, base: 0, columns: [] },
  ];

  it("stays finite with a small ridge where a column took nothing at all", () => {
    const fit = logisticFit(rows, { bases: 1, columns: 2, ridge: 0.01 }) as LogisticFit;
    expect(fit.shares[1]).toBeLessThan(0.01);
    expect(fit.coefficients.every(Number.isFinite)).toBe(true);
    expect(fit.coefficients[1]).toBeCloseTo(Math.log(2), 2);
  });

  it("refuses columns that can't be told apart without a ridge, and counts them once with one", () => {
    const twice = rows.map((row, index) => ({
      ...row,
      taken: index === 1 ? 20 : row.taken,
      columns: row.columns.includes(1) ? [1, 2] : row.columns,
    }));
    expect(logisticFit(twice, { bases: 1, columns: 3, ridge: 0 })).toBeNull();
    const fit = logisticFit(twice, { bases: 1, columns: 3, ridge: 0.0001 }) as LogisticFit;
    expect(fit.usedColumns).toBeCloseTo(2, 1);
  });
});
