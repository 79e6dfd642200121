import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { learnedLength } from "../../../src/core/statistics/censored-lengths";
import { withLateTail } from "../../../src/core/statistics/late-tail";
import {
  longerThan,
  type StepLength,
  windowLength,
} from "../../../src/core/statistics/step-length";

const PRIOR = windowLength({ from: 10, usual: 20, by: 40 });
const added = (chances: ArrayLike<number>) => Array.from(chances).reduce((a, b) => a + b, 0);

function learned(done: readonly number[], waiting: readonly number[] = []) {
  const recorded = { done, waiting };
  const length = learnedLength(PRIOR, 3, recorded);
  return { length, tailed: withLateTail(length, { length: PRIOR, weight: 3 }, recorded) };
}

describe("a late end drawn smooth", () => {
  it("changes nothing where nothing was finished", () => {
    const length = learnedLength(PRIOR, 3, { done: [], waiting: [30, 50] });
    expect(
      withLateTail(length, { length: PRIOR, weight: 3 }, { done: [], waiting: [30, 50] }),
    ).toBe(length);
  });

  it("keeps every day up to the fifth-last finished batch", () => {
    const done = Array.from({ length: 30 }, (_, batch) => 15 + batch);
    const { length, tailed } = learned(done);
    const from = 15 + 25;
    for (let day = 0; day <= from; day += 1) {
      expect(tailed.mass[day - tailed.first] ?? 0).toBe(length.mass[day - length.first] ?? 0);
    }
    expect(added(tailed.mass)).toBeCloseTo(1, 9);
  });

  it("ends at one daily chance: batches ended over days spent late, the timetable's by its worth", () => {
    const done = Array.from({ length: 30 }, (_, batch) => 15 + batch);
    const waiting = [20, 52];
    const { tailed } = learned(done, waiting);
    const from = 40;
    // Of the timetable 5 of 100 lie beyond 40 days, 15 days on the mean; it is worth 3 batches.
    const priorMean = 1 / (1 - PRIOR.lateness);
    expect(priorMean).toBeCloseTo(15, 9);
    // Four ended 1, 2, 3, 4 days late, one still waits after 12.
    const mean = (1 + 2 + 3 + 4 + 12 + 0.15 * priorMean) / (4 + 0.15);
    // The timetable's listed tail ends where its chance is 1 in 100,000.
    expect(tailed.lateness).toBeCloseTo(1 - 1 / mean, 5);
    const tail = tailed.mass.slice(from + 1 - tailed.first);
    const left = added(tail);
    const daily = 1 - tailed.lateness;
    expect(tail[0]).toBeCloseTo(left * daily, 9);
    for (let at = 0; at + 2 < Math.min(40, tail.length); at += 1) {
      expect((tail[at + 1] as number) / (tail[at] as number)).toBeCloseTo(1 - daily, 9);
    }
  });

  it("keeps the mean of what was learned where nothing waits, whatever the timetable is worth", () => {
    const done = Array.from({ length: 12 }, (_, batch) => 30 + 2 * batch);
    const mean = ({ first, mass }: StepLength) =>
      mass.reduce((sum, chance, at) => sum + chance * (first + at), 0);
    for (const weight of [0, 0.25, 3, 20]) {
      const recorded = { done, waiting: [] };
      const length = learnedLength(PRIOR, weight, recorded);
      const tailed = withLateTail(length, { length: PRIOR, weight }, recorded);
      // A tail cut at 1 in 100,000 loses some hundredths of a day.
      expect(mean(tailed)).toBeCloseTo(mean(length), 1);
    }
  });

  it("takes the timetable's lateness where no batch ended beyond the handful", () => {
    const recorded = { done: [50, 50, 50, 50, 50, 50], waiting: [] };
    const length = learnedLength(PRIOR, 0.25, recorded);
    const tailed = withLateTail(length, { length: PRIOR, weight: 0.25 }, recorded);
    expect(tailed.lateness).toBeCloseTo(PRIOR.lateness, 3);
  });

  it("counts a batch as late no longer than the latest seen done, or the timetable's lateness", () => {
    const done = Array.from({ length: 30 }, (_, batch) => 15 + batch);
    const ofWaiting = (days: number) => learned(done, [days]).tailed.lateness;
    expect(ofWaiting(40 + 14)).toBeLessThan(ofWaiting(40 + 15));
    expect(ofWaiting(40 + 100)).toBeCloseTo(ofWaiting(40 + 15), 12);
    // One done 30 days late: then a row may wait that long before it counts as forgotten.
    const late = [...done.slice(0, -1), 40 + 30];
    const ofLate = (days: number) => learned(late, [days]).tailed.lateness;
    expect(ofLate(40 + 29)).toBeLessThan(ofLate(40 + 30));
    expect(ofLate(40 + 100)).toBeCloseTo(ofLate(40 + 30), 12);
  });

  it("does not promise a late batch for the very day of the one that was later still", () => {
    const done = [...Array.from({ length: 60 }, (_, batch) => 15 + (batch % 20)), 200];
    const { length, tailed } = learned(done);
    const waited = 150;
    // Without the tail nearly all that is left stands on one day.
    const alone = longerThan(length, waited);
    expect(Math.max(...alone.mass)).toBeGreaterThan(0.5);
    const smooth = longerThan(tailed, waited);
    expect(smooth.first).toBe(waited + 1);
    expect(Math.max(...smooth.mass)).toBeLessThan(0.1);
    expect(smooth.mass.indexOf(Math.max(...smooth.mass))).toBe(0);
  });

  it("is a distribution whatever was recorded, in any order", () => {
    const days = fc.array(fc.integer({ min: 0, max: 400 }), { maxLength: 15 });
    fc.assert(
      fc.property(days, days, (done, waiting) => {
        const { tailed } = learned(done, waiting);
        expect(added(tailed.mass)).toBeCloseTo(1, 8);
        expect(tailed.mass.every((chance) => chance >= 0)).toBe(true);
        expect(tailed.lateness >= 0 && tailed.lateness < 1).toBe(true);
        const turned = learned([...done].reverse(), [...waiting].reverse()).tailed;
        expect(turned.first).toBe(tailed.first);
        turned.mass.forEach((chance, at) => {
          expect(chance).toBeCloseTo(tailed.mass[at] as number, 12);
        });
      }),
      { numRuns: 300 },
    );
  });
});
