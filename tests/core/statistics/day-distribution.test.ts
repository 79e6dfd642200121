import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  type DayDistribution,
  dayQuantile,
  onlyDays,
  pointAt,
  sum,
} from "../../../src/core/statistics/day-distribution";

const distribution = fc
  .tuple(
    fc.integer({ min: -20, max: 200 }),
    fc.array(fc.integer({ min: 0, max: 9 }), { minLength: 1, maxLength: 12 }),
  )
  .filter(([, weights]) => weights.some((weight) => weight > 0))
  .map(([first, weights]): DayDistribution => {
    const total = weights.reduce((all, weight) => all + weight, 0);
    return { first, mass: Float64Array.from(weights, (weight) => weight / total) };
  });

const total = ({ mass }: DayDistribution) => mass.reduce((all, chance) => all + chance, 0);
const mean = ({ first, mass }: DayDistribution) =>
  mass.reduce((all, chance, index) => all + chance * (first + index), 0);
const variance = (one: DayDistribution) =>
  one.mass.reduce((all, chance, index) => all + chance * (one.first + index) ** 2, 0) -
  mean(one) ** 2;
const chanceOf = ({ first, mass }: DayDistribution, day: number) => mass[day - first] ?? 0;

describe("sum of days", () => {
  it("gives the chances of two dice", () => {
    const die = { first: 1, mass: Float64Array.from({ length: 6 }, () => 1 / 6) };
    const two = sum(die, die);
    expect(two.first).toBe(2);
    expect([...two.mass].map((chance) => Math.round(chance * 36))).toEqual([
      1, 2, 3, 4, 5, 6, 5, 4, 3, 2, 1,
    ]);
  });

  it("adds means and variances, keeps the total, does not mind the order", () => {
    fc.assert(
      fc.property(distribution, distribution, (one, other) => {
        const both = sum(one, other);
        expect(total(both)).toBeCloseTo(1, 12);
        expect(mean(both)).toBeCloseTo(mean(one) + mean(other), 8);
        expect(variance(both)).toBeCloseTo(variance(one) + variance(other), 6);
        const turned = sum(other, one);
        both.mass.forEach((chance, index) => {
          expect(turned.mass[index]).toBeCloseTo(chance, 14);
        });
      }),
      { numRuns: 60 },
    );
  });

  it("moves by a certain day, and not at all by day 0", () => {
    fc.assert(
      fc.property(distribution, fc.integer({ min: -9, max: 9 }), (one, days) => {
        expect(sum(one, pointAt(days))).toEqual({ first: one.first + days, mass: one.mass });
      }),
      { numRuns: 30 },
    );
  });
});

describe("onlyDays", () => {
  it("keeps the chances of the days left in proportion, and nothing else", () => {
    fc.assert(
      fc.property(
        distribution,
        fc.integer({ min: -30, max: 220 }),
        fc.integer({ min: 0, max: 30 }),
        (one, from, more) => {
          const by = from + more;
          const left = onlyDays(one, from, by);
          const inside = one.mass.filter(
            (_, index) => one.first + index >= from && one.first + index <= by,
          );
          const chance = inside.reduce((all, part) => all + part, 0);
          if (left === null) {
            expect(chance).toBe(0);
            return;
          }
          expect(chance).toBeGreaterThan(0);
          expect(total(left)).toBeCloseTo(1, 12);
          for (let day = from - 2; day <= by + 2; day += 1) {
            const expected = day < from || day > by ? 0 : chanceOf(one, day) / chance;
            expect(chanceOf(left, day)).toBeCloseTo(expected, 12);
          }
        },
      ),
      { numRuns: 100 },
    );
  });

  it("goes on without end where no end is set", () => {
    const die = { first: 1, mass: Float64Array.from({ length: 6 }, () => 1 / 6) };
    expect([...(onlyDays(die, 5, Number.POSITIVE_INFINITY)?.mass ?? [])]).toEqual([0.5, 0.5]);
    expect(onlyDays(die, 7, Number.POSITIVE_INFINITY)).toBeNull();
    expect(onlyDays(die, -5, 0)).toBeNull();
  });

  it("does not change what it is given", () => {
    const die = { first: 1, mass: Float64Array.of(0.25, 0.75) };
    onlyDays(die, 2, 2);
    expect(die).toEqual({ first: 1, mass: Float64Array.of(0.25, 0.75) });
  });
});

describe("dayQuantile", () => {
  it("is the first day by which the chance is reached", () => {
    const one = { first: 10, mass: Float64Array.of(0.1, 0, 0.4, 0.5) };
    const asked = [0.0001, 0.1, 0.1001, 0.5, 0.51, 1];
    expect(asked.map((chance) => dayQuantile(one, chance))).toEqual([10, 10, 12, 12, 13, 13]);
  });

  it("does not move by a day for a hair of rounding", () => {
    const tenths = { first: 0, mass: Float64Array.from({ length: 10 }, () => 0.1) };
    // Ten tenths, added one by one, end below 1; three end above 0.3.
    expect([dayQuantile(tenths, 0.3), dayQuantile(tenths, 1)]).toEqual([2, 9]);
  });
});
