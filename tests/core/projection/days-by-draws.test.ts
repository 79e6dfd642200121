import { describe, expect, it } from "vitest";
import { dayForecaster } from "../../../src/core/projection/forecast-days";
import { timetableForecaster } from "../../../src/core/projection/forecaster";
import type { Method, Step } from "../../../src/core/timetable/timetable";
import { day } from "../../support/days";
import { type Draws, seededDraws } from "../../support/draws";
import { COCOA, stateOf, stepNumber } from "./states";

interface Window {
  readonly from: number;
  readonly usual: number;
  readonly by: number;
}

/**
 * A step's days drawn as the timetable is meant: 95 of 100 batches inside the window by the PERT
 * shape, half a day out at both ends, cut to whole days; the rest late by a geometric number of
 * days whose mean is half the window, one day at least.
 */
function drawDays(draws: Draws, { from, usual, by }: Window): number {
  const span = by - from + 1;
  if (draws.uniform() < 0.95) {
    const a = 1 + (4 * (usual - from + 0.5)) / span;
    const b = 1 + (4 * (by - usual + 0.5)) / span;
    return from + Math.floor(draws.beta(a, b) * span);
  }
  const stillLate = 1 - 1 / Math.max(1, (by - from) / 2);
  let late = 1;
  while (draws.uniform() < stillLate) late += 1;
  return by + late;
}

const AS_OF = "2026-11-25";

/** The built-in method, but for two looks that wait for the first release, as a nursery's own may. */
const WAITING: Readonly<Record<string, readonly [from: number, usual: number, by: number]>> = {
  "Bud break": [10, 14, 21],
  "First flush": [21, 28, 35],
};
const METHOD: Method = {
  ...COCOA,
  steps: COCOA.steps.map((step): Step => {
    const days = WAITING[step.name];
    if (days === undefined) return step;
    const [from, usual, by] = days;
    return { ...step, after: stepNumber("First release"), from, usual, by };
  }),
};

/** Days that are tried; those that don't fit what is known of the batch are thrown away. */
const TRIES = 400_000;

interface Case {
  readonly what: string;
  readonly facts: Parameters<typeof stateOf>[0];
  readonly step: string;
  /** The day from which the first length counts. */
  readonly anchor: string;
  readonly line: readonly string[];
  /** Which running totals fit what is known, with the days waited so far. */
  readonly fits: (totals: readonly number[], waited: number) => boolean;
}

/** The release passed without a record, and the flush behind it is waited for. */
const FLUSH_TO_COME: Pick<Case, "step" | "line" | "fits"> = {
  step: "First flush",
  line: ["First release", "First flush"],
  fits: ([released = 0, flush = 0], waited) => released <= waited && flush > waited,
};

const CASES: Case[] = [
  {
    what: "grafted today",
    facts: { "Grafted on": AS_OF },
    step: "Ready",
    anchor: AS_OF,
    line: ["Ready"],
    fits: () => true,
  },
  {
    what: "sown, in its grafting window, not grafted yet",
    facts: { Sown: "2026-08-21", "Germination day": "2026-09-01" },
    step: "Ready",
    anchor: "2026-08-21",
    line: ["Grafting", "Ready"],
    fits: ([grafted = 0], waited) => grafted > waited,
  },
  {
    what: "sown, grafting already late",
    facts: { Sown: "2026-07-21", "Germination day": "2026-08-01" },
    step: "Grafting",
    anchor: "2026-07-21",
    line: ["Grafting"],
    fits: ([grafted = 0], waited) => grafted > waited,
  },
  {
    what: "grafted, first release due, flush two steps off",
    facts: { "Grafted on": "2026-11-11" },
    step: "First flush",
    anchor: "2026-11-11",
    line: ["First release", "First flush"],
    fits: ([released = 0], waited) => released > waited,
  },
  {
    what: "takes counted, first release passed without a record",
    facts: { "Grafted on": "2026-10-16", "Take count day": "2026-11-16", Takes: 80 },
    anchor: "2026-10-16",
    ...FLUSH_TO_COME,
  },
  {
    what: "takes counted early, the release passed in the middle of its window",
    facts: { "Grafted on": "2026-11-12", "Take count day": "2026-11-24", Takes: 80 },
    anchor: "2026-11-12",
    ...FLUSH_TO_COME,
  },
  {
    what: "the day of a release that passed without a record",
    facts: { "Grafted on": "2026-11-11", "Take count day": "2026-11-24", Takes: 80 },
    step: "First release",
    anchor: "2026-11-11",
    line: ["First release"],
    fits: ([released = 0], waited) => released <= waited,
  },
  {
    what: "three steps from a sowing of today",
    facts: { Sown: AS_OF },
    step: "Bud break",
    anchor: AS_OF,
    line: ["Grafting", "First release", "Bud break"],
    fits: ([grafted = 0], waited) => grafted > waited,
  },
];

describe.each(CASES)("days against draws: $what", ({ facts, step, anchor, line, fits }) => {
  const state = stateOf(facts, AS_OF, METHOD);
  const waited = day(AS_OF) - day(anchor);
  const draws = seededDraws(1959);
  const windows = line.map((name) => METHOD.steps[stepNumber(name)] as Window);
  const drawn: number[] = [];
  for (let time = 0; time < TRIES; time += 1) {
    const totals: number[] = [];
    for (const window of windows) totals.push((totals.at(-1) ?? 0) + drawDays(draws, window));
    if (fits(totals, waited)) drawn.push(totals.at(-1) as number);
  }

  it.each([0.8, 0.95, 0.5])("the range of %s holds as it says", (level) => {
    const days = dayForecaster(timetableForecaster(), day(AS_OF), level);
    const range = days.range(state, stepNumber(step));
    if (range === null) throw new Error("no forecast");
    expect(drawn.length).toBeGreaterThan(2000);
    const side = (1 - level) / 2;
    const days_ = [range.from, range.likely, range.by].map((one) => one - day(anchor));
    const [from, likely, by] = days_ as [number, number, number];
    const below = (limit: number) => drawn.filter((one) => one < limit).length / drawn.length;
    // As far as so many draws can tell: four standard errors.
    const errorOf = (chance: number) => 4 * Math.sqrt((chance * (1 - chance)) / drawn.length);
    // Whole days can't leave exactly so many outside: no other day comes nearer to it.
    const off = (chance: number) => Math.abs(chance - side);
    const slack = 2 * errorOf(side);
    for (const other of [from - 1, from + 1].filter((one) => one <= likely)) {
      expect(off(below(from))).toBeLessThanOrEqual(off(below(other)) + slack);
    }
    for (const other of [by - 1, by + 1].filter((one) => one >= likely)) {
      expect(off(1 - below(by + 1))).toBeLessThanOrEqual(off(1 - below(other + 1)) + slack);
    }
    // The first day by which half are reached.
    expect(below(likely + 1)).toBeGreaterThan(0.5 - errorOf(0.5));
    expect(below(likely)).toBeLessThan(0.5 + errorOf(0.5));
    expect(days_).toEqual([...days_].sort((a, b) => a - b));
  });

  it("the chances of single days are those drawn, and add up to 1", () => {
    const days = dayForecaster(timetableForecaster(), day(AS_OF), 0.8);
    const distribution = days.distribution(state, stepNumber(step));
    if (distribution === null) throw new Error("no forecast");
    const { first, mass } = distribution;
    expect(mass.reduce((sum, chance) => sum + chance, 0)).toBeCloseTo(1, 9);
    const times = new Map<number, number>();
    for (const days_ of drawn) times.set(days_, (times.get(days_) ?? 0) + 1);
    let [below, drawnBelow] = [0, 0];
    mass.forEach((chance, index) => {
      const days_ = first + index - day(anchor);
      below += chance;
      drawnBelow += (times.get(days_) ?? 0) / drawn.length;
      // Five standard errors, since hundreds of days are looked at; late days are cut at 1e-5.
      const error = 5 * Math.sqrt(Math.max(below * (1 - below), 1e-6) / drawn.length);
      expect(Math.abs(drawnBelow - below)).toBeLessThan(error + 2e-5);
    });
    expect(drawnBelow).toBeGreaterThan(1 - 1e-3);
  });
});
