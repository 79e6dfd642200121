import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { learnedLength } from "../../../src/core/statistics/censored-lengths";
import { type StepLength, windowLength } from "../../../src/core/statistics/step-length";
import { fixture } from "../../support/fixtures";

interface Patient {
  readonly weeks: number;
  readonly relapsed: boolean;
}
interface CurvePoint {
  readonly weeks: number;
  readonly survival: number;
}
type Arm = "sixMp" | "placebo";
const { data, expected } = fixture<
  Readonly<Record<Arm, readonly Patient[]>>,
  Readonly<Record<Arm, readonly CurvePoint[]>>
>("freireich-1963");

function recordedIn(arm: Arm) {
  const weeksOf = (relapsed: boolean) =>
    data[arm].filter((patient) => patient.relapsed === relapsed).map(({ weeks }) => weeks);
  return { done: weeksOf(true), waiting: weeksOf(false) };
}

const PRIOR = windowLength({ from: 10, usual: 20, by: 40 });
const added = (chances: ArrayLike<number>) => Array.from(chances).reduce((a, b) => a + b, 0);

/** Chance that a length is above so many days. */
function survivalAt({ first, mass }: StepLength, days: number): number {
  return added(mass.slice(Math.max(0, days - first + 1)));
}

describe("published values: Freireich et al. (1963), Kaplan-Meier curves by R 4.2.2 survival::survfit", () => {
  it.each(["sixMp", "placebo"] as const)("a prior of no weight gives the curve of %s", (arm) => {
    for (const weight of [1e-9, 1e-12]) {
      const length = learnedLength(PRIOR, weight, recordedIn(arm));
      for (const { weeks, survival } of expected[arm]) {
        expect([weeks, survivalAt(length, weeks)]).toEqual([weeks, expect.closeTo(survival, 8)]);
      }
    }
  });

  it("prints as the curve of 6-mercaptopurine has been printed", () => {
    const length = learnedLength(PRIOR, 1e-9, recordedIn("sixMp"));
    const printed = [6, 7, 10, 13, 16, 22, 23].map((weeks) => survivalAt(length, weeks).toFixed(3));
    expect(printed).toEqual(["0.857", "0.807", "0.753", "0.690", "0.627", "0.538", "0.448"]);
  });

  it("steps down on the days of relapses alone", () => {
    const { first, mass } = learnedLength(PRIOR, 1e-9, recordedIn("sixMp"));
    const days = Array.from(mass.keys())
      .filter((at) => (mass[at] as number) > 1e-6)
      .map((at) => first + at);
    expect(days.slice(0, 7)).toEqual([6, 7, 10, 13, 16, 22, 23]);
    // Those still in remission at the end have no day yet: all after week 35, the last one seen.
    expect(days[7]).toBeGreaterThan(35);
  });
});

describe("the length of a step, learned,", () => {
  it("is the timetable's own, to the last bit, with nothing recorded", () => {
    expect(learnedLength(PRIOR, 3, { done: [], waiting: [] })).toBe(PRIOR);
  });

  it("stays the timetable's where the records say what it says", () => {
    const length = learnedLength(PRIOR, 1e9, { done: [10, 60], waiting: [5] });
    for (let day = 0; day < 80; day += 1) {
      expect(survivalAt(length, day)).toBeCloseTo(survivalAt(PRIOR, day), 7);
    }
  });

  it("mixes the timetable and finished batches by their weights when none waits", () => {
    const done = [12, 12, 18, 45];
    const length = learnedLength(PRIOR, 3, { done, waiting: [] });
    for (let day = 0; day < 120; day += 1) {
      const share = done.filter((one) => one > day).length;
      expect(survivalAt(length, day)).toBeCloseTo(
        (3 * survivalAt(PRIOR, day) + share) / (3 + done.length),
        9,
      );
    }
  });

  it("takes a batch waiting from before its first day as telling nothing of later days", () => {
    const done = [12, 18, 25];
    const length = learnedLength(PRIOR, 3, { done, waiting: [0, 3, 5] });
    const without = learnedLength(PRIOR, 3, { done, waiting: [] });
    for (let day = 5; day < 90; day += 1) {
      expect(survivalAt(length, day)).toBeCloseTo(survivalAt(without, day), 9);
    }
  });

  it("gives a waiting batch's chance to the days after, in proportion", () => {
    // One batch waiting after 15 days: Susarla and Van Ryzin's estimate by hand.
    const done = [12, 18];
    const length = learnedLength(PRIOR, 3, { done, waiting: [15] });
    for (const day of [15, 16, 20, 30, 45]) {
      const left = 3 * survivalAt(PRIOR, day) + done.filter((one) => one > day).length;
      const at15 = 3 * survivalAt(PRIOR, 15) + 1;
      expect(survivalAt(length, day)).toBeCloseTo((left / 6) * ((at15 + 1) / at15), 9);
    }
    for (const day of [5, 11, 12, 14]) {
      const left = 3 * survivalAt(PRIOR, day) + done.filter((one) => one > day).length + 1;
      expect(survivalAt(length, day)).toBeCloseTo(left / 6, 9);
    }
  });

  it("goes on late, a day at a time, for a batch that waits beyond all that is known", () => {
    const beyond = PRIOR.first + PRIOR.mass.length + 100;
    const length = learnedLength(PRIOR, 3, { done: [12, 18], waiting: [beyond] });
    expect(added(length.mass)).toBeCloseTo(1, 9);
    expect(survivalAt(length, beyond)).toBeCloseTo(1 / 6, 6);
    const after = length.mass.slice(beyond + 1 - length.first);
    expect(added(after)).toBeCloseTo(1 / 6, 6);
    // The very next day may be the one.
    expect(after[0]).toBeCloseTo((1 / 6) * (1 - PRIOR.lateness), 6);
    for (let at = 0; at < 20; at += 1) {
      expect((after[at + 1] as number) / (after[at] as number)).toBeCloseTo(PRIOR.lateness, 9);
    }
  });

  it("has no day yet where every batch waits and the prior has no weight", () => {
    const length = learnedLength(PRIOR, 1e-12, { done: [], waiting: [90, 90] });
    expect(survivalAt(length, 90)).toBeCloseTo(1, 9);
    expect(added(length.mass)).toBeCloseTo(1, 9);
  });

  it("is a distribution whatever is recorded, in any order", () => {
    const days = fc.array(fc.integer({ min: 0, max: 400 }), { maxLength: 12 });
    fc.assert(
      fc.property(days, days, fc.constantFrom(0.001, 1, 3, 50), (done, waiting, weight) => {
        const length = learnedLength(PRIOR, weight, { done, waiting });
        expect(added(length.mass)).toBeCloseTo(1, 8);
        expect(length.mass.every((chance) => chance >= 0 && chance <= 1)).toBe(true);
        expect(length.lateness).toBe(PRIOR.lateness);
        expect(
          learnedLength(PRIOR, weight, {
            done: [...done].reverse(),
            waiting: [...waiting].reverse(),
          }),
        ).toEqual(length);
      }),
      { numRuns: 300 },
    );
  });

  it("does not change what it is given", () => {
    const before = { first: PRIOR.first, mass: Array.from(PRIOR.mass) };
    const recorded = Object.freeze({
      done: Object.freeze([5, 9]),
      waiting: Object.freeze([7]),
    });
    learnedLength(PRIOR, 3, recorded);
    expect({ first: PRIOR.first, mass: Array.from(PRIOR.mass) }).toEqual(before);
    expect(recorded).toEqual({ done: [5, 9], waiting: [7] });
  });
});
