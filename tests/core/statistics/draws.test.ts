import { describe, expect, it } from "vitest";
import { seededDraws } from "../../../src/core/statistics/draws";
import { windowLength } from "../../../src/core/statistics/step-length";

const TIMES = 100_000;

/** Mean and variance of many draws must lie within four standard errors of those of the formula. */
function expectMoments(draw: () => number, mean: number, variance: number) {
  let [sum, squares, fourths] = [0, 0, 0];
  for (let time = 0; time < TIMES; time += 1) {
    const off = draw() - mean;
    sum += off;
    squares += off * off;
    fourths += off ** 4;
  }
  const fourth = fourths / TIMES;
  expect(Math.abs(sum / TIMES)).toBeLessThan(4 * Math.sqrt(variance / TIMES));
  expect(Math.abs(squares / TIMES - variance)).toBeLessThan(
    4 * Math.sqrt(Math.max(0, fourth - variance ** 2) / TIMES),
  );
}

describe("draws with a seed", () => {
  const draws = seededDraws(42);

  it("are the same from the same seed, and others from another", () => {
    const list = (seed: number) => {
      const { uniform, share, plants, day } = seededDraws(seed);
      const length = windowLength({ from: 7, usual: 10, by: 14 });
      return Array.from({ length: 20 }, () => [
        ...[uniform(), share(0.7, 0.1), plants(300, 0.7), plants(5, 0.5), day(length)],
      ]);
    };
    expect(list(1)).toEqual(list(1));
    expect(list(1)).not.toEqual(list(2));
  });

  it("are even between 0 and 1, 1 left out", () => {
    expectMoments(
      () => {
        const value = draws.uniform();
        if (!(value >= 0 && value < 1)) throw new Error(`${value}`);
        return value;
      },
      0.5,
      1 / 12,
    );
  });

  it.each([
    [0.5, 0.1],
    [0.9, 0.02],
    [0.75, 0.5],
    [0.97, 0.36],
    [0.02, 0.2],
  ])("of shares have the mean %d and the correlation %d", (mean, correlation) => {
    expectMoments(
      () => {
        const share = draws.share(mean, correlation);
        if (!(share >= 0 && share <= 1)) throw new Error(`${share}`);
        return share;
      },
      mean,
      mean * (1 - mean) * correlation,
    );
  });

  it("of shares that don't vary are the mean", () => {
    expect([draws.share(0.7, 0), draws.share(0, 0.1), draws.share(1, 0.1)]).toEqual([0.7, 0, 1]);
  });

  it("of shares that lie nearly always at the ends are ends in the right part", () => {
    let all = 0;
    for (let time = 0; time < 10_000; time += 1) {
      const share = draws.share(0.3, 0.9999);
      if (Number.isNaN(share)) throw new Error("no number");
      all += share;
    }
    expect(Math.abs(all / 10_000 - 0.3)).toBeLessThan(4 * Math.sqrt(0.21 / 10_000));
  });

  it.each([
    [5, 0.3],
    [40, 0.9],
    [20, 0.5],
    [79, 0.5],
    [81, 0.5],
    [1000, 0.46],
    [1000, 0.002],
    [100_000, 0.75],
  ])("of plants, %d with the chance %d, have a binomial's moments and are whole", (of, chance) => {
    const variance = of * chance * (1 - chance);
    let [sum, squares] = [0, 0];
    for (let time = 0; time < TIMES; time += 1) {
      const count = draws.plants(of, chance);
      if (!(Number.isInteger(count) && count >= 0 && count <= of)) throw new Error(`${count}`);
      sum += count - of * chance;
      squares += (count - of * chance) ** 2;
    }
    expect(Math.abs(sum / TIMES)).toBeLessThan(4 * Math.sqrt(variance / TIMES));
    const fourth = variance * (1 + 3 * (of - 2) * chance * (1 - chance));
    const error = 4 * Math.sqrt((fourth - variance ** 2) / TIMES);
    // A large count is a normal one, rounded: rounding adds a twelfth of a plant's square.
    const rounding = variance > 20 ? 1 / 12 : 0;
    expect(Math.abs(squares / TIMES - variance - rounding)).toBeLessThan(error);
  });

  it("of plants that all pass, or none, or are none, are sure", () => {
    for (const of of [0, 1, 50, 5000]) {
      expect([draws.plants(of, 0), draws.plants(of, 1)]).toEqual([0, of]);
    }
    expect(draws.plants(0, 0.5)).toBe(0);
  });

  it("of a small count follow the binomial's chances one by one", () => {
    const times = new Array<number>(6).fill(0);
    for (let time = 0; time < TIMES; time += 1) {
      const count = draws.plants(5, 0.7);
      times[count] = (times[count] as number) + 1;
    }
    [1, 5, 10, 10, 5, 1].forEach((ways, count) => {
      const chance = ways * 0.7 ** count * 0.3 ** (5 - count);
      const error = 4 * Math.sqrt((chance * (1 - chance)) / TIMES);
      expect(Math.abs((times[count] as number) / TIMES - chance)).toBeLessThan(error);
    });
  });

  it("of days follow the distribution", () => {
    const length = windowLength({ from: 7, usual: 10, by: 14 });
    const times = new Map<number, number>();
    for (let time = 0; time < TIMES; time += 1) {
      const day = draws.day(length);
      times.set(day, (times.get(day) ?? 0) + 1);
    }
    length.mass.forEach((chance, at) => {
      const drawn = (times.get(length.first + at) ?? 0) / TIMES;
      const error = 5 * Math.sqrt((chance * (1 - chance)) / TIMES);
      expect(Math.abs(drawn - chance)).toBeLessThan(error + 1e-4);
    });
    const outside = [...times.keys()].filter(
      (day) => length.mass[day - length.first] === undefined,
    );
    expect(outside).toEqual([]);
  });
});
