import { describe, expect, it } from "vitest";
import { type KeptCount, shareCounts } from "../../../src/core/statistics/share-counts";
import { sharePosterior } from "../../../src/core/statistics/share-posterior";
import { newBatchShare, SHARE_PRIOR } from "../../../src/core/statistics/share-prior";
import { seededDraws } from "../../support/draws";
import { drawNursery } from "../../support/prior-draws";
import { plainLogLikelihood } from "./plates";

type Groups = Readonly<Record<string, readonly KeptCount[]>>;

function posteriorOf(groups: Groups, timetableMean: number) {
  return sharePosterior(
    new Map(Object.entries(groups).map(([name, batches]) => [name, shareCounts(batches)])),
    timetableMean,
  );
}

function meanAndVariance({ mean, meanSquare }: { mean: number; meanSquare: number }) {
  return { mean, variance: meanSquare - mean * mean };
}

describe("the share kept with nothing recorded", () => {
  it.each([0.02, 0.5, 0.75, 0.9, 0.99])("is the timetable's: %d", (mean) => {
    const posterior = sharePosterior(new Map(), mean);
    expect(posterior.newBatch("Alba")).toEqual(newBatchShare(mean));
    expect(posterior.newBatch("Alba").mean).toBe(mean);
  });

  it.each([0, 1])("is certain where the timetable keeps %d", (mean) => {
    const posterior = sharePosterior(new Map(), mean);
    expect(posterior.newBatch("Alba")).toEqual({ mean, meanSquare: mean });
    const { meanOf, correlation } = posterior.draw(() => 0.3);
    expect([meanOf("Alba"), correlation]).toEqual([mean, 0]);
  });

  it("stays the timetable's where batches tell nothing", () => {
    const { mean, variance } = meanAndVariance(posteriorOf({ Alba: [] }, 0.75).newBatch("Alba"));
    const prior = meanAndVariance(newBatchShare(0.75));
    // The grid of means is finite: a plant in a thousand.
    expect(Math.abs(mean - prior.mean)).toBeLessThan(0.001);
    expect(Math.abs(Math.sqrt(variance) - Math.sqrt(prior.variance))).toBeLessThan(0.001);
  });
});

/** @example batches("70/100 95/100") // two, of which 70 and 95 of 100 were kept */
const batches = (counts: string): readonly KeptCount[] =>
  counts.split(" ").map((one) => {
    const [kept = 0, of = 0] = one.split("/").map(Number);
    return { kept, of };
  });

const SMALL: readonly { what: string; timetable: number; groups: Groups }[] = [
  { what: "one batch", timetable: 0.75, groups: { Alba: batches("40/80") } },
  {
    what: "one variety, four batches that differ",
    timetable: 0.9,
    groups: { Alba: batches("70/100 95/100 30/40 12/12") },
  },
  {
    what: "two varieties that differ",
    timetable: 0.75,
    groups: { Alba: batches("45/60 50/60"), Nera: batches("20/60") },
  },
];

describe.each(SMALL)("the share kept after $what", ({ timetable, groups }) => {
  it("is that of nurseries drawn from the timetable, weighed by how they explain the counts", () => {
    const draws = seededDraws(1978);
    const names = Object.keys(groups);
    const asked = [...names, "never recorded"];
    const times = 100_000;
    const logs = new Float64Array(times);
    const means = asked.map(() => new Float64Array(times));
    const squares = asked.map(() => new Float64Array(times));
    for (let time = 0; time < times; time += 1) {
      const { varieties, correlation } = drawNursery(draws, timetable, asked.length);
      let log = 0;
      asked.forEach((name, at) => {
        const mean = Math.min(Math.max(varieties[at] as number, 1e-9), 1 - 1e-9);
        const batches = groups[name];
        if (batches !== undefined) log += plainLogLikelihood(batches, mean, correlation).sum;
        (means[at] as Float64Array)[time] = mean;
        (squares[at] as Float64Array)[time] = mean * mean + mean * (1 - mean) * correlation;
      });
      logs[time] = log;
    }
    const most = logs.reduce((best, log) => Math.max(best, log), Number.NEGATIVE_INFINITY);
    const weights = logs.map((log) => Math.exp(log - most));
    const all = weights.reduce((sum, weight) => sum + weight, 0);
    const posterior = posteriorOf(groups, timetable);
    asked.forEach((name, at) => {
      const ours = posterior.newBatch(name);
      for (const [list, moment] of [
        [means[at], ours.mean],
        [squares[at], ours.meanSquare],
      ] as const) {
        const values = list as Float64Array;
        const drawn = values.reduce((sum, x, i) => sum + x * (weights[i] as number), 0) / all;
        const spread = values.reduce((sum, x, i) => {
          const off = (weights[i] as number) * (x - drawn);
          return sum + off * off;
        }, 0);
        // Four standard errors of the weighed mean.
        expect([name, Math.abs(moment - drawn) < (4 * Math.sqrt(spread)) / all]).toEqual([
          name,
          true,
        ]);
      }
    });
  });
});

/** Batches of 300 plants about a mean, as many as asked for, each from its own beta. */
function manyBatches(mean: number, correlation: number, count: number, seed: number): KeptCount[] {
  const draws = seededDraws(seed);
  const sum = 1 / correlation - 1;
  return Array.from({ length: count }, () => ({
    kept: draws.binomial(300, draws.beta(mean * sum, (1 - mean) * sum)),
    of: 300,
  }));
}

describe("the share kept after very many batches", () => {
  it.each([
    [0.6, 0.05],
    [0.9, 0.02],
  ])("is the nursery's own, whatever the timetable says: mean %d, correlation %d", (mean, rho) => {
    const batches = manyBatches(mean, rho, 2000, 5);
    for (const timetable of [0.3, 0.75, 0.97]) {
      const posterior = posteriorOf({ Alba: batches }, timetable);
      const own = meanAndVariance(posterior.newBatch("Alba"));
      // Four standard errors of a mean of 2,000 batches, and the grid's step of a plant in 200.
      const error = 4 * Math.sqrt((mean * (1 - mean) * (rho + (1 - rho) / 300)) / 2000);
      expect(Math.abs(own.mean - mean)).toBeLessThan(error + 0.005);
      // Correlations are known by a short list of values, so the spread is told within a fifth.
      const spread = own.variance / (mean * (1 - mean));
      expect(spread).toBeGreaterThan(rho * 0.8);
      expect(spread).toBeLessThan(rho * 1.25);
    }
  });
});

describe("varieties", () => {
  const others = Object.fromEntries(
    ["A", "B", "C", "D", "E"].map((name, at) => [name, manyBatches(0.8, 0.03, 20, at)]),
  );
  const few: KeptCount[] = [{ kept: 120, of: 300 }];
  const meanOf = (own: readonly KeptCount[], name = "own") =>
    posteriorOf({ ...others, own }, 0.75).newBatch(name).mean;

  it("of few batches are judged mostly like the others, of many mostly by their own", () => {
    const means = [1, 4, 16, 64].map((times) => meanOf(Array(times).fill(few[0])));
    expect(means).toEqual([...means].sort((a, b) => b - a));
    // The others' mean is 0.8, its own 0.4: one batch leaves it on the others' side, 64 don't.
    expect(means[0]).toBeGreaterThan(0.6);
    expect(means[3]).toBeLessThan(0.45);
    expect(means[3]).toBeGreaterThan(0.39);
  });

  it("never recorded are like the others, not like the timetable", () => {
    const unknown = posteriorOf(others, 0.5).newBatch("never recorded");
    expect(Math.abs(unknown.mean - 0.8)).toBeLessThan(0.03);
    const known = posteriorOf(others, 0.5).newBatch("A");
    // One that is known is told more surely.
    expect(meanAndVariance(known).variance).toBeLessThan(meanAndVariance(unknown).variance);
  });

  it("may come in any order", () => {
    const groups = { ...others, own: few };
    const turned = Object.fromEntries(Object.entries(groups).reverse());
    for (const name of [...Object.keys(groups), "never recorded"]) {
      expect(posteriorOf(turned, 0.75).newBatch(name)).toEqual(
        posteriorOf(groups, 0.75).newBatch(name),
      );
    }
  });
});

describe("drawing what is unknown", () => {
  const groups: Groups = {
    Alba: [
      { kept: 45, of: 60 },
      { kept: 50, of: 60 },
    ],
    Nera: [{ kept: 20, of: 60 }],
  };

  it.each([
    ["what was recorded", posteriorOf(groups, 0.75)],
    ["the timetable alone", sharePosterior(new Map(), 0.75)],
  ])("from %s has the mean and spread that a new batch is said to have", (_, posterior) => {
    const draws = seededDraws(3);
    const times = 40_000;
    for (const name of ["Alba", "Nera", "never recorded"]) {
      let [sum, squares, square, fourths] = [0, 0, 0, 0];
      for (let time = 0; time < times; time += 1) {
        const truth = posterior.draw(draws.uniform);
        const mean = truth.meanOf(name);
        const second = mean * mean + mean * (1 - mean) * truth.correlation;
        sum += mean;
        square += mean * mean;
        squares += second;
        fourths += second * second;
      }
      const { mean, meanSquare } = posterior.newBatch(name);
      const meanError = Math.sqrt((square / times - (sum / times) ** 2) / times);
      const squareError = Math.sqrt((fourths / times - (squares / times) ** 2) / times);
      // Four standard errors.
      expect(Math.abs(sum / times - mean)).toBeLessThan(4 * meanError);
      expect(Math.abs(squares / times - meanSquare)).toBeLessThan(4 * squareError);
    }
  });

  it("keeps to one truth: the same mean however often and in whatever order it is asked", () => {
    const truth = posteriorOf(groups, 0.75).draw(seededDraws(8).uniform);
    const first = ["Nera", "Alba", "other"].map((name) => truth.meanOf(name));
    expect(["Nera", "Alba", "other"].map((name) => truth.meanOf(name))).toEqual(first);
    expect(new Set(first).size).toBeGreaterThan(1);
    expect(SHARE_PRIOR.batches.values).toContain(truth.correlation);
  });

  it("is the same from the same numbers", () => {
    const list = (seed: number) => {
      const { uniform } = seededDraws(seed);
      return Array.from({ length: 5 }, () =>
        posteriorOf(groups, 0.75).draw(uniform).meanOf("Nera"),
      );
    };
    expect(list(1)).toEqual(list(1));
    expect(list(1)).not.toEqual(list(2));
  });
});
