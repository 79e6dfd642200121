import { describe, expect, it } from "vitest";
import { plainSpread } from "../../../src/checks/calibration/plain-rivals";
import { type Duel, plainRule, plainRuleTally } from "../../../src/core/projection/plain-rule";
import { plainQuantile } from "../../../src/core/statistics/plain-quantile";
import { day, iso } from "../../support/days";
import { type Facts, later, learnedFrom } from "./nursery";

const AS_OF = "2026-11-25";

/** Finished batches that took 100, 101, 103 … days from grafting, and kept 60, 63 … of 100 grafts. */
const LASTED = [100, 101, 103, 108, 112, 116];
const KEPT = [60, 63, 64, 70, 71, 80];
const finished: readonly Facts[] = LASTED.map((days, at) => ({
  ...{ Batch: `P-${at}`, Variety: "Alba", "Grafts made": 100, "Grafted on": "2026-02-02" },
  ...{ "Ready on": later("2026-02-02", days), "Ready plants": KEPT[at] ?? 0 },
}));
const open: Facts = { Batch: "B-1", "Grafts made": 150, "Grafted on": later(AS_OF, -20) };

function said(batches: readonly Facts[], level = 0.8) {
  const { states } = learnedFrom([...batches, open], { asOf: AS_OF });
  const state = states.at(-1);
  if (state === undefined) throw new Error("no batch");
  return plainRule(states, level)(state);
}

describe("a plain rule", () => {
  it("takes the quantiles that spreadsheets give", () => {
    // Source: the example of PERCENTILE in the spreadsheets' own help (from memory).
    expect(plainQuantile([1, 3, 2, 4], 0.3)).toBeCloseTo(1.9, 12);
    expect(plainQuantile([7], 0.1)).toBe(7);
  });

  it("says what finished batches took and kept from the same last step, as the check's rival does", () => {
    for (const level of [0.8, 0.95]) {
      const [days, plants] = [LASTED, KEPT].map((values) =>
        plainSpread(values, "quantiles", level),
      );
      const from = (length: number) => iso(day(AS_OF) - 20 + Math.round(length));
      const { days: ends, plants: range } = said(finished, level);
      expect([iso(ends?.low as number), iso(ends?.high as number)]).toEqual((days ?? []).map(from));
      expect(range).toEqual({
        low: Math.round((150 * (plants?.[0] ?? 0)) / 100),
        high: Math.round((150 * (plants?.[1] ?? 0)) / 100),
      });
    }
  });

  it("says nothing where few batches are finished, nor of what they did not record", () => {
    expect(said(finished.slice(0, 4))).toEqual({ days: null, plants: null });
    const uncounted = finished.map((facts) => ({ ...facts, "Ready plants": "" }));
    expect(said(uncounted)).toMatchObject({ days: { low: expect.any(Number) }, plants: null });
  });
});

describe("who did better", () => {
  const duel = (ours: readonly [number, number], plain: readonly [number, number], truth: number) =>
    ({
      ours: { low: ours[0], high: ours[1] },
      plain: { low: plain[0], high: plain[1] },
      ...{ truth, unit: 1 },
    }) satisfies Duel;

  it("is told by width and by how far a miss missed", () => {
    // By hand at 0.8: a miss costs 10 a day. Ours 20 wide and right: 20. Theirs 10 wide, 2 days out: 30.
    const narrow = duel([0, 20], [0, 10], 12);
    expect(plainRuleTally([narrow], 0.8)).toEqual({ held: 0, all: 1, did: "worse" });
    // Ours 20; theirs 10 wide and right.
    const right = duel([0, 20], [0, 10], 9);
    expect(plainRuleTally([right], 0.8)).toEqual({ held: 1, all: 1, did: "better" });
    // 40 against 40.
    expect(plainRuleTally([narrow, right], 0.8)).toEqual({ held: 1, all: 2, did: "alike" });
  });

  it("is not told by days that never came, which both missed", () => {
    const never: Duel = { ...duel([0, 20], [0, 10], 0), truth: null };
    expect(plainRuleTally([never, never], 0.8)).toEqual({ held: 0, all: 2, did: "alike" });
    expect(plainRuleTally([], 0.8)).toBeNull();
  });
});
