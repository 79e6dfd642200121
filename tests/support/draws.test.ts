import { describe, expect, it } from "vitest";
import { seededDraws } from "./draws";

const TIMES = 100_000;

/** Mean and variance of many draws must lie within four standard errors of those of the formula. */
function expectMoments(draw: () => number, mean: number, variance: number, fourth: number) {
  let [sum, squares] = [0, 0];
  for (let time = 0; time < TIMES; time += 1) {
    const off = draw() - mean;
    sum += off;
    squares += off * off;
  }
  expect(Math.abs(sum / TIMES)).toBeLessThan(4 * Math.sqrt(variance / TIMES));
  expect(Math.abs(squares / TIMES - variance)).toBeLessThan(
    4 * Math.sqrt((fourth - variance ** 2) / TIMES),
  );
}

describe("seeded draws", () => {
  const draws = seededDraws(42);

  it.each([0.3, 1, 7])("of gamma %d have its moments", (shape) => {
    expectMoments(() => draws.gamma(shape), shape, shape, 3 * shape ** 2 + 6 * shape);
  });

  it.each([
    [2, 3],
    [0.5, 0.5],
    [6, 0.7],
  ])("of beta %d, %d have its moments", (a, b) => {
    const sum = a + b;
    const variance = (a * b) / (sum * sum * (sum + 1));
    const excess =
      (6 * ((a - b) ** 2 * (sum + 1) - a * b * (sum + 2))) / (a * b * (sum + 2) * (sum + 3));
    expectMoments(() => draws.beta(a, b), a / sum, variance, (excess + 3) * variance ** 2);
  });

  it.each([
    [5, 0.3],
    [40, 0.9],
    [1000, 0.46],
  ])("of binomial %d, %d have its moments, and stay within the trials", (trials, share) => {
    const variance = trials * share * (1 - share);
    const fourth = variance * (1 + 3 * (trials - 2) * share * (1 - share));
    expectMoments(
      () => {
        const count = draws.binomial(trials, share);
        if (!(count >= 0 && count <= trials && Number.isInteger(count)))
          throw new Error(`${count}`);
        return count;
      },
      trials * share,
      variance,
      fourth,
    );
  });

  it("are the same from the same seed", () => {
    const list = (seed: number) => {
      const own = seededDraws(seed);
      return Array.from({ length: 5 }, () => own.beta(2, 3));
    };
    expect(list(1)).toEqual(list(1));
    expect(list(1)).not.toEqual(list(2));
  });
});
