import { beforeAll, describe, expect, it } from "vitest";
import type { RangesOf } from "../../src/checks/calibration/batch-ranges";
import { chanceOf } from "../../src/checks/calibration/chance";
import { nurseryHistory } from "../../src/checks/calibration/nursery-history";
import { nurseryOf } from "../../src/checks/calibration/nursery-jobs";
import { plainSpread } from "../../src/checks/calibration/plain-rivals";
import { RANGES_OF } from "../../src/checks/calibration/ranges";
import {
  type NurseryScore,
  scoreNursery,
  sumsKey,
} from "../../src/checks/calibration/score-nursery";
import { KINDS } from "../../src/checks/calibration/settings";
import { coverLine } from "../../src/checks/calibration/tally";
import { coverVerdict, limitsOf, widthVerdict } from "../../src/checks/calibration/verdict";

const SOME = { pastBatches: 30, varieties: "unlike" } as const;

describe("the plain rivals", () => {
  it("give the quantiles that spreadsheets give", () => {
    // Source: the example of PERCENTILE in the spreadsheets' own help (from memory): the 30th
    // percentile of 1, 3, 2, 4 is 1.9. By level 0.4 the ends are the 30th and the 70th.
    expect(plainSpread([1, 3, 2, 4], "quantiles", 0.4)?.[0]).toBeCloseTo(1.9, 12);
    expect(plainSpread([1, 3, 2, 4], "quantiles", 0.4)?.[1]).toBeCloseTo(3.1, 12);
  });

  it("give the mean and 1.28 or 1.96 standard deviations", () => {
    // By hand: 2, 4, 9 have mean 5 and squares 9 + 1 + 16 = 26, so sd √13.
    const sd = Math.sqrt(13);
    const near = ([low, high]: readonly [number, number]) => [low.toFixed(9), high.toFixed(9)];
    const said = (level: number) => near(plainSpread([2, 4, 9], "mean and sd", level) ?? [0, 0]);
    expect(said(0.8)).toEqual(near([5 - 1.28 * sd, 5 + 1.28 * sd]));
    expect(said(0.95)).toEqual(near([5 - 1.96 * sd, 5 + 1.96 * sd]));
    expect(plainSpread([7], "mean and sd", 0.8)).toBeNull();
  });

  it("cover as theory says of three past batches", () => {
    // Normal lengths, three past: (new - mean) ÷ (sd √(1 + 1/3)) is Student's t on 2 degrees of
    // freedom, and P(|t| < a) = a ÷ √(2 + a²). a = 1.28 ÷ √(4/3) = 1.1085 gives 0.617, not 0.8.
    // Quantiles 0.2 of the way in from both ends of three exchangeable lengths hold less than the
    // 2/4 that smallest to largest hold.
    const chance = chanceOf(5);
    const draws = 20_000;
    const held = { "mean and sd": 0, quantiles: 0, ends: 0 };
    for (let draw = 0; draw < draws; draw += 1) {
      const past = [chance.normal(), chance.normal(), chance.normal()];
      const next = chance.normal();
      for (const way of ["mean and sd", "quantiles"] as const) {
        const [low, high] = plainSpread(past, way, 0.8) as readonly [number, number];
        if (next >= low && next <= high) held[way] += 1;
      }
      if (next >= Math.min(...past) && next <= Math.max(...past)) held.ends += 1;
    }
    const error = 4 * Math.sqrt((0.617 * 0.383) / draws);
    expect(Math.abs(held["mean and sd"] / draws - 0.617)).toBeLessThan(error);
    expect(Math.abs(held.ends / draws - 0.5)).toBeLessThan(error);
    expect(held.quantiles).toBeLessThan(held.ends);
  });
});

describe("the scores", () => {
  const history = nurseryHistory(SOME, 21, { finishedWanted: 30 });
  const asOf = history.finishedOn[29] as number;
  const truthOf = new Map(history.batches.map(({ name, course }) => [name, course]));
  /** Ranges so many days and plants to either side of a truth that is moved. */
  const about =
    (moved: number, side: number): RangesOf =>
    ({ seen }) =>
      new Map(
        seen.map(({ name }) => {
          const course = truthOf.get(name);
          const round = (truth: number) => ({
            low: truth + moved - side,
            high: truth + moved + side,
          });
          const ready = course?.readyDay ?? null;
          return [
            name,
            { days: ready === null ? null : round(ready), plants: round(course?.readyPlants ?? 0) },
          ];
        }),
      );
  const score = scoreNursery(history, {
    asOfDays: [asOf],
    levels: [0.8],
    rangesOf: {
      ours: about(0, 2),
      "timetable alone": about(5, 2),
      "mean and sd": about(-2, 2),
      quantiles: (state, level) =>
        new Map(
          [...about(2, 2)(state, level)].map(([name, said]) => [name, { ...said, plants: null }]),
        ),
    },
  });
  const days = (who: "ours" | "timetable alone" | "mean and sd" | "quantiles") =>
    score.sums.get(sumsKey({ level: 0.8, who, quantity: "days", stage: "all" }));

  it("tell ranges that hold, to the very ends, from those that miss", () => {
    const asked = days("ours")?.asked as number;
    expect(asked).toBeGreaterThan(10);
    expect(days("ours")).toMatchObject({ given: asked, held: asked, width: 4 * asked });
    expect(days("mean and sd")).toMatchObject({ held: asked, below: 0, above: 0 });
    // Missed by 3 days each: 4 + 2 / 0.2 × 3 = 34.
    expect(days("timetable alone")).toMatchObject({ held: 0, below: asked, oursHeld: asked });
    expect(days("timetable alone")?.score).toBeCloseTo(34 * asked, 6);
    expect(days("quantiles")).toMatchObject({ held: asked, below: 0, above: 0 });
    const plants = score.sums.get(
      sumsKey({ level: 0.8, who: "quantiles", quantity: "plants", stage: "all" }),
    );
    expect(plants).toMatchObject({ given: 0, oursGiven: 0 });
    expect(plants?.asked).toBeGreaterThanOrEqual(asked);
  });

  it("count each nursery equally, however many ranges it has", () => {
    const scored = (given: number, held: number): NurseryScore => ({
      forgotten: 0,
      forgottenGiven: 0,
      sums: new Map([
        [
          sumsKey({ level: 0.8, who: "ours", quantity: "days", stage: "all" }),
          {
            ...{ asked: 2 * given, given, held, below: given - held, above: 0 },
            ...{ width: 10 * given, score: 0, oursGiven: given, oursHeld: held, oursWidth: 0 },
          },
        ],
      ]),
    });
    const line = coverLine([scored(1, 1), scored(99, 0)], {
      ...({ level: 0.8, who: "ours", quantity: "days", stage: "all" } as const),
    });
    // Shares 1 and 0: mean 0.5, sd √0.5, standard error √0.5 ÷ √2 = 0.5.
    expect(line).toMatchObject({ cover: 0.5, error: 0.5, below: 0.5, width: 10, given: 0.5 });
  });

  it("are held against the goal, the hard limit, and the rivals that cover as well", () => {
    expect([0.8, 0.85, 0.7, 0.89].map((cover) => coverVerdict(cover, 0.8))).toEqual([
      "in goal",
      "outside goal",
      "outside hard limit",
      "outside hard limit",
    ]);
    const line = (cover: number, width: number) => ({
      ...{ nurseries: 9, ranges: 99, given: 1, error: 0, below: 0, above: 0, score: 0 },
      ...{ cover, width, oursCover: 0.8, oursWidth: 10 },
    });
    const rivals = new Map([
      ["timetable alone", line(0.9, 20)],
      ["mean and sd", line(0.79, 9)],
      ["quantiles", line(0.6, 5)],
    ] as const);
    expect(widthVerdict("days", 0.8, rivals)).toEqual({
      quantity: "days",
      asGood: ["timetable alone", "mean and sd"],
      beatenBy: ["mean and sd"],
    });
  });
});

describe("ranges of level 0.8 in some nurseries of 3 and of 30 past batches", () => {
  const NURSERIES_A_KIND = 8;
  const KINDS_ASKED = [0, 1, 2, 3];
  let scores: readonly NurseryScore[] = [];
  beforeAll(() => {
    scores = KINDS_ASKED.flatMap((kind) =>
      Array.from({ length: NURSERIES_A_KIND }, (_, number) => {
        const { history, asOfDays } = nurseryOf({ kind, number });
        return scoreNursery(history, {
          asOfDays: asOfDays.slice(1, 2),
          levels: [0.8],
          rangesOf: RANGES_OF,
        });
      }),
    );
  });
  // The hard limit of the whole check, 0.74 to 0.88, loosened by twice the binomial error of fewer
  // ranges. Ranges of one nursery hold and fail together: going by how covers differ between
  // nurseries, one is worth 7 (3 past batches) to 18 (30) independent ranges; 5 is taken. So 32
  // nurseries are worth 160, √(0.8 × 0.2 ÷ 160) = 0.032, and the limits are 0.677 to 0.943.
  const worth = 5 * NURSERIES_A_KIND * KINDS_ASKED.length;
  const loosened = 2 * Math.sqrt((0.8 * 0.2) / worth);
  const [least, most] = limitsOf(0.8).hard;
  const coverOf = (who: "ours" | "timetable alone" | "quantiles", quantity: "days" | "plants") =>
    coverLine(scores, { level: 0.8, who, quantity, stage: "all" })?.cover as number;

  it.each(["days", "plants"] as const)("hold about as often as promised: %s", (quantity) => {
    expect(KINDS_ASKED.map((kind) => KINDS[kind]?.pastBatches)).toEqual([3, 3, 30, 30]);
    const cover = coverOf("ours", quantity);
    expect(cover).toBeGreaterThan(least - loosened);
    expect(cover).toBeLessThan(most + loosened);
  });

  it("would be caught if they were the plain quantiles", () => {
    expect(coverOf("quantiles", "days")).toBeLessThan(least - loosened);
    expect(coverOf("quantiles", "plants")).toBeLessThan(least - loosened);
  });
});
