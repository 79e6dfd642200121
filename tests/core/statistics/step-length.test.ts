import { describe, expect, it } from "vitest";
import {
  lateDays,
  longerThan,
  type StepWindow,
  windowLength,
} from "../../../src/core/statistics/step-length";
import { fixture } from "../../support/fixtures";

interface PertWindow extends StepWindow {
  readonly days: readonly number[];
  readonly cumulated: readonly number[];
}
const pert = fixture<unknown, { windows: readonly PertWindow[] }>("pert");

const WINDOWS: StepWindow[] = [
  { from: 7, usual: 10, by: 14 },
  { from: 75, usual: 90, by: 120 },
  { from: 12, usual: 14, by: 18 },
  { from: 5, usual: 5, by: 12 },
  { from: 10, usual: 20, by: 20 },
  { from: 30, usual: 30, by: 30 },
  { from: 0, usual: 0, by: 0 },
];
const added = (chances: ArrayLike<number>) => Array.from(chances).reduce((a, b) => a + b, 0);

describe("window lengths against R 4.2.2 pbeta (PERT: Malcolm et al. 1959; tests/fixtures/pert)", () => {
  // R's shape runs from the first day's start to the last day's end. A step's whole days reach half
  // a day to either side, so the window that fills R's shape starts half a day in and ends so.
  it.each(pert.expected.windows)("$from / $usual / $by", ({ from, usual, by, days, cumulated }) => {
    const { first, mass } = windowLength({ from: from + 0.5, usual, by: by - 0.5 });
    expect(first).toBe(from + 0.5);
    for (let day = from; day < by; day += 1) {
      const share = (at: number) => cumulated[days.indexOf(at)] as number;
      expect(mass[day - from]).toBeCloseTo(0.95 * (share(day + 1) - share(day)), 12);
    }
  });
});

describe("windowLength", () => {
  it.each(WINDOWS)(
    "$from / $usual / $by holds 95 of 100 inside, 5 late, all together 1",
    (window) => {
      const { first, mass } = windowLength(window);
      const span = window.by - window.from + 1;
      expect(first).toBe(window.from);
      expect(added(mass.slice(0, span))).toBeCloseTo(0.95, 12);
      expect(added(mass.slice(span))).toBeCloseTo(0.05, 12);
      expect(mass.every((chance) => chance > 0)).toBe(true);
    },
  );

  it.each(WINDOWS)(
    "$from / $usual / $by has the PERT density of whole days by integration",
    (window) => {
      const { from, usual, by } = window;
      const [low, span] = [from - 0.5, by - from + 1];
      const [a, b] = [1 + (4 * (usual - low)) / span, 1 + (4 * (by + 0.5 - usual)) / span];
      const density = (x: number) => x ** (a - 1) * (1 - x) ** (b - 1);
      const slices = 4000;
      const area = (start: number, end: number) => {
        // The midpoint rule, since at an end the density may bend without bound.
        const width = (end - start) / slices;
        let all = 0;
        for (let slice = 0; slice < slices; slice += 1)
          all += density(start + (slice + 0.5) * width);
        return all * width;
      };
      const whole = Array.from({ length: span }, (_, day) => area(day / span, (day + 1) / span));
      const { mass } = windowLength(window);
      whole.forEach((part, day) => {
        expect(mass[day]).toBeCloseTo((0.95 * part) / added(whole), 5);
      });
    },
  );

  it("is likeliest on the usual day", () => {
    for (const window of WINDOWS) {
      const inside = windowLength(window).mass.slice(0, window.by - window.from + 1);
      expect(window.from + inside.indexOf(Math.max(...inside))).toBe(window.usual);
    }
  });

  it("is late by half the window on average, a day at least", () => {
    for (const window of WINDOWS) {
      const span = window.by - window.from + 1;
      const late = windowLength(window).mass.slice(span);
      const mean = late.reduce((all, chance, index) => all + chance * (index + 1), 0) / 0.05;
      // The tail is cut at 1 in 100,000, which shortens the mean a little.
      expect(mean).toBeCloseTo(Math.max(1, (window.by - window.from) / 2), 2);
    }
  });
});

describe("longerThan", () => {
  const window = { from: 7, usual: 10, by: 14 };
  const length = windowLength(window);

  it("leaves the days after, in proportion", () => {
    const left = longerThan(length, 9);
    expect(left.first).toBe(10);
    const after = length.mass.slice(3);
    left.mass.forEach((chance, index) => {
      expect(chance).toBeCloseTo((after[index] as number) / added(after), 12);
    });
  });

  it("changes nothing before the first day", () => {
    const left = longerThan(length, 6);
    expect(left.first).toBe(7);
    left.mass.forEach((chance, index) => {
      expect(chance).toBeCloseTo(length.mass[index] as number, 12);
    });
  });

  it("waits on at its own rate however late a batch is already", () => {
    for (const waited of [15, 60, 500, 100_000]) {
      const left = longerThan(length, waited);
      expect(left.first).toBe(waited + 1);
      expect(added(left.mass)).toBeCloseTo(1, 12);
      // A geometric tail forgets how long it has waited: the next day has 1 chance in 3.5.
      if (waited < 20 || waited > 100) expect(left.mass[0]).toBeCloseTo(1 / 3.5, 3);
    }
  });
});

describe("lateDays", () => {
  it.each([1, 2, 10, 40])("of mean %s adds up to 1 and has its mean", (meanDays) => {
    const days = lateDays(1 - 1 / meanDays);
    expect(added(days)).toBeCloseTo(1, 12);
    const mean = days.reduce((all, chance, index) => all + chance * (index + 1), 0);
    expect(Math.abs(mean - meanDays)).toBeLessThan(0.001 * meanDays);
    // Each day ends the lateness with the same chance.
    for (let at = 0; at + 2 < days.length; at += 1) {
      expect((days[at + 1] as number) / (days[at] as number)).toBeCloseTo(1 - 1 / meanDays, 9);
    }
  });
});
