import { describe, expect, it } from "vitest";
import { stateFinder } from "../../../src/core/projection/batch-state";
import { timetableForecaster, timetableShare } from "../../../src/core/projection/forecaster";
import { product, WHOLE } from "../../../src/core/statistics/beta-moments";
import type { Method } from "../../../src/core/timetable/timetable";
import { day } from "../../support/days";
import { fixture } from "../../support/fixtures";
import { reading } from "../records/reading";
import { timetableOf } from "../timetable/typed-timetable";

interface Data {
  readonly methods: readonly { readonly method: string; readonly lossesOf100: readonly number[] }[];
  readonly chain: { readonly planned: number; readonly lossesOf100: readonly number[] };
}
interface Expected {
  readonly methods: readonly {
    readonly method: string;
    readonly yieldOf100: number;
    readonly ratioPrinted: number;
  }[];
  readonly chain: readonly number[];
}
const { data, expected } = fixture<Data, Expected>("siyag-2014");
const certain = (loss: number) => {
  const mean = 1 - loss / 100;
  return { mean, meanSquare: mean * mean };
};

describe("published values: Siyag (2014) Table 2.3, losses of tree nurseries stage by stage", () => {
  it.each(data.methods)(
    "method $method yields the printed part of 100",
    ({ method, lossesOf100 }) => {
      const printed = expected.methods.find((one) => one.method === method);
      const share = lossesOf100.map(certain).reduce(product, WHOLE);
      expect(100 * share.mean).toBeCloseTo(printed?.yieldOf100 as number, 9);
      expect(share.meanSquare).toBeCloseTo(share.mean ** 2, 14);
      // The ratios are cut or rounded unevenly in print: 1.645 stands as 1.64.
      expect(Math.abs(1 / share.mean - (printed?.ratioPrinted as number))).toBeLessThanOrEqual(
        0.006,
      );
    },
  );
});

describe("published values: Siyag (2014) Fig. 2.9, 10,000 planned, 6,000, 5,400, 5,400, 5,130", () => {
  const { planned, lossesOf100 } = data.chain;
  // A whole timetable whose kept shares are the figure's, read as a nursery's own is.
  const names = ["Germinated in bed", "Pricked out", "Shifted", "Graded"];
  const rows = names.map(
    (name, at) =>
      `Tree seedlings | ${name} | ${names[at - 1] ?? "Sowing"} | 30 | yes | ${100 - (lossesOf100[at] as number)}`,
  );
  const { timetable, faults } = timetableOf(
    [
      "Method | Step | After | Usual day | Counted | Kept of 100",
      "Tree seedlings | Sowing | | | yes |",
      ...rows,
    ].join("\n"),
  );
  const method = timetable.methods[0] as Method;
  const records = reading(
    [
      ["Batch", "Sown", "Seeds sown"],
      ["B1", "2026-11-01", planned],
    ],
    { stepNames: method.steps.map(({ name }) => name) },
  );
  const state = stateFinder(records, day("2026-11-25"))(records.batches[0] as never, method);

  it("is a timetable without faults, and 10,000 plants stand", () => {
    expect(faults).toEqual([]);
    expect(state.plants).toBe(10_000);
  });

  it.each(expected.chain.map((plants, at) => ({ step: names[at], plants })))(
    "$plants are expected at $step",
    ({ step, plants }) => {
      const index = method.steps.findIndex(({ name }) => name === step);
      const counted = state.lastCounted as number;
      const kept = timetableForecaster().kept({
        method,
        after: counted,
        upTo: index,
        variety: "",
        from: null,
      });
      expect(timetableShare(method, counted, index)).toBeCloseTo(plants / planned, 12);
      expect(planned * kept.mean).toBeCloseTo(plants, 6);
    },
  );
});
