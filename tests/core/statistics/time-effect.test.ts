import { describe, expect, it } from "vitest";
import { chanceOf } from "../../../src/checks/calibration/chance";
import type { SeenOnDay } from "../../../src/core/statistics/seen-by-month";
import { type TimeEffect, timeEffect } from "../../../src/core/statistics/time-effect";
import { fixture } from "../../support/fixtures";

const TODAY = 20_000;
const only = (sd: number) => [{ sd, weight: 1 }];
/** As wide as makes nothing of what is believed. */
const OPEN = { drift: only(1000), season: only(1000) };
const BELIEVED = {
  drift: [...only(0), { sd: 0.3, weight: 0.5 }],
  season: [...only(0), { sd: 0.3, weight: 0.5 }],
};

/** One a fortnight for so many years up to today. */
function seen(years: number, value: (day: number, normal: () => number) => number, seed = 1) {
  const chance = chanceOf(seed, 31);
  return Array.from({ length: Math.round(years * 26) }, (_, at): SeenOnDay => {
    const day = TODAY - Math.round(years * 365.25) + at * 14;
    return { day, value: value(day, chance.normal), chance: 0, unit: 1 };
  });
}
/** Change in a year up to a day: over four years, in which the waves are whole. */
const driftOf = (effect: TimeEffect | null, day: number) =>
  shiftOf(effect, day) / 4 - shiftOf(effect, day - 1461) / 4;
/** Height of the year's wave, from days half a year apart, twice a quarter of a year apart. */
const seasonOf = (effect: TimeEffect | null, day: number) => {
  const [one = 0, other = 0] = [day, day - 365.25 / 4].map(
    (at) => (shiftOf(effect, at) - shiftOf(effect, at - 365.25 / 2) - driftOf(effect, day) / 2) / 2,
  );
  return Math.hypot(one, other);
};
const shiftOf = (effect: TimeEffect | null, day: number) => {
  if (effect === null) throw new Error("too little was seen");
  return effect.on(day).shift;
};
const wave = (day: number) => Math.cos((2 * Math.PI * (day - 90)) / 365.25);

describe("what a day does", () => {
  it("is R's harmonic regression where nothing is believed beforehand", () => {
    const { data, expected } = fixture<
      { less: number; every: number; degrees: readonly number[] },
      {
        reference: number;
        drift: number;
        season: number;
        shifts: readonly { day: number; shift: number }[];
      }
    >("nottem");
    const months = data.degrees.map(
      (degrees, at): SeenOnDay => ({
        day: Math.floor((at + 0.5) * data.every),
        value: degrees - data.less,
        chance: 0,
        unit: 1,
      }),
    );
    const effect = timeEffect(months, expected.reference, OPEN);
    expect(driftOf(effect, expected.reference)).toBeCloseTo(expected.drift, 4);
    expect(seasonOf(effect, expected.reference)).toBeCloseTo(expected.season, 4);
    const [first, ...others] = expected.shifts;
    const on = (day: number) => effect?.on(day).shift ?? 0;
    for (const { day, shift } of others) {
      expect(on(day) - on(first?.day ?? 0)).toBeCloseTo(shift - (first?.shift ?? 0), 3);
    }
  });

  it("is not known of less than nine months", () => {
    expect(
      timeEffect(
        seen(0.6, () => 1),
        TODAY,
        BELIEVED,
      ),
    ).toBeNull();
    expect(
      timeEffect(
        seen(0.9, () => 1),
        TODAY,
        BELIEVED,
      ),
    ).not.toBeNull();
  });

  it("is next to nothing where nothing changes", () => {
    for (const seed of [1, 2, 3, 4, 5]) {
      const effect = timeEffect(
        seen(3, (_, normal) => 0.5 * normal(), seed),
        TODAY,
        BELIEVED,
      );
      expect(Math.abs(driftOf(effect, TODAY))).toBeLessThan(0.15);
      expect(seasonOf(effect, TODAY)).toBeLessThan(0.2);
    }
  });

  it("finds a fall and a season that are there, and the best month", () => {
    const effect = timeEffect(
      seen(3, (day, normal) => (-0.4 * (day - TODAY)) / 365.25 + 0.5 * wave(day) + 0.4 * normal()),
      TODAY,
      BELIEVED,
    );
    expect(Math.abs(driftOf(effect, TODAY) + 0.4)).toBeLessThan(0.2);
    expect(Math.abs(seasonOf(effect, TODAY) - 0.5)).toBeLessThan(0.2);
    const months = Array.from({ length: 12 }, (_, month) => TODAY - 365 + month * 30);
    const best = months.reduce((one, other) => {
      const [here, there] = [one, other].map((day) => effect?.on(day).shift ?? 0);
      // The fall is the same for all of them but for its part of a year.
      return (here ?? 0) - (0.4 * (TODAY - one)) / 365.25 >
        (there ?? 0) - (0.4 * (TODAY - other)) / 365.25
        ? one
        : other;
    });
    expect(wave(best)).toBeGreaterThan(0.8);
  });

  it("bends a fall to be level after today", () => {
    const effect = timeEffect(
      seen(3, (day) => (-0.4 * (day - TODAY)) / 365.25),
      TODAY,
      { drift: only(1), season: only(0) },
    );
    const year = (effect?.on(TODAY + 365).shift ?? 0) - (effect?.on(TODAY).shift ?? 0);
    const ninth = (effect?.on(TODAY + 3650).shift ?? 0) - (effect?.on(TODAY + 3285).shift ?? 0);
    expect(year).toBeLessThan(-0.25);
    expect(Math.abs(ninth)).toBeLessThan(0.01);
  });

  it("is drawn about what is likely, as far off as it is unsure", () => {
    const effect = timeEffect(
      seen(1.5, (_, normal) => 0.5 * normal(), 7),
      TODAY,
      BELIEVED,
    );
    const chance = chanceOf(8, 8);
    const day = TODAY + 120;
    const drawn = Array.from({ length: 4000 }, () => effect?.draw(chance.share)(day) ?? 0);
    const mean = drawn.reduce((sum, value) => sum + value, 0) / drawn.length;
    const { shift = 9 } = effect?.on(day) ?? {};
    expect(Math.abs(mean - shift)).toBeLessThan(0.02);
  });

  it("counts the batches of a month as few, however many", () => {
    const once = seen(2, (day, normal) => 0.3 * wave(day) + 0.2 * normal());
    const often = once.flatMap((one) => Array.from({ length: 50 }, () => one));
    const [few, many] = [once, often].map((all) => timeEffect(all, TODAY, BELIEVED));
    expect(many?.on(TODAY - 90).variance).toBeGreaterThan((few?.on(TODAY - 90).variance ?? 0) / 8);
  });
});
