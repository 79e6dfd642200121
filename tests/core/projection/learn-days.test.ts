import { describe, expect, it } from "vitest";
import type { StepLength } from "../../../src/core/statistics/step-length";
import type { Method } from "../../../src/core/timetable";
import { AS_OF, type Facts, later, learnedFrom } from "./nursery";
import { stepNumber } from "./states";

/** Chance that a length lies between two days. */
function chanceOf({ first, mass }: StepLength, from: number, by: number): number {
  return Array.from(mass)
    .filter((_, at) => first + at >= from && first + at <= by)
    .reduce((sum, chance) => sum + chance, 0);
}

function lengthOf(batches: readonly Facts[], step: string, options = {}) {
  const { method, learned } = learnedFrom(batches, options);
  return learned.length(method, method.steps[stepNumber(step)] as never, null);
}

const graftingToReady = (method: Method) => ({
  method,
  after: stepNumber("Grafting"),
  upTo: stepNumber("Ready"),
  from: null,
});

/** Batches sown one after another, each grafted so many days later. */
function grafted(days: readonly number[], more: Facts = {}): Facts[] {
  return days.map((one, at) => {
    const sown = later("2024-01-08", at * 2);
    return {
      ...{ Batch: `G-${at}`, Variety: "Alba", Place: "Bay 1", Sown: sown, "Seeds sown": 200 },
      ...{ "Grafted on": later(sown, one), Closed: "yes", ...more },
    };
  });
}

describe("days learned", () => {
  it("are the timetable's where nothing is recorded", () => {
    const { method, learned, plain } = learnedFrom([]);
    for (const step of method.steps) {
      const [own, table] = [learned.length(method, step, null), plain.length(method, step, null)];
      expect(own.first).toBe(table.first);
      expect(Array.from(own.mass)).toEqual(Array.from(table.mass));
      expect(own.lateness).toBe(table.lateness);
    }
  });

  it("come nearer to the nursery's own with every batch, the timetable counting as three", () => {
    const inside = [0, 3, 30, 300].map((count) =>
      chanceOf(lengthOf(grafted(Array<number>(count).fill(103)), "Grafting"), 103, 103),
    );
    expect(inside[0]).toBeLessThan(0.05);
    expect(inside[1]).toBeGreaterThan(0.5);
    expect(inside[1]).toBeLessThan(0.55);
    expect(inside[2]).toBeGreaterThan(30 / 33);
    expect(inside[3]).toBeGreaterThan(300 / 303);
  });

  it("are the nursery's whatever the timetable's window says", () => {
    const slow = lengthOf(
      grafted(Array.from({ length: 60 }, (_, at) => 150 + (at % 10))),
      "Grafting",
    );
    expect(chanceOf(slow, 150, 159)).toBeGreaterThan(60 / 63 - 0.02);
  });

  it("count batches that still wait as waiting, not as done", () => {
    const done = grafted([100, 100, 100]);
    const sown = later(AS_OF, -110);
    const waiting = { Batch: "W-1", Variety: "Alba", Place: "Bay 1", Sown: sown, "Seeds sown": 99 };
    const without = lengthOf(done, "Grafting");
    const withOne = lengthOf([...done, waiting], "Grafting");
    expect(chanceOf(withOne, 111, 1000)).toBeGreaterThan(chanceOf(without, 111, 1000) + 0.05);
    expect(chanceOf(withOne, 0, 99)).toBeLessThan(chanceOf(without, 0, 99));
  });

  it.each<[string, Facts]>([
    ["is closed", { Closed: "yes" }],
    ["went on without the step being written down", { Takes: 50 }],
    ["has no plants left", { Germinated: 0 }],
    ["was forgotten long ago", { Sown: later(AS_OF, -400) }],
    ["was never sown by the table", { Sown: "", Germinated: 80 }],
    ["was grafted before it was sown", { "Grafted on": later(AS_OF, -130) }],
  ])("say nothing of a batch that %s", (_, facts) => {
    const done = grafted([100, 100, 100]);
    const own = { Batch: "W-1", Variety: "Alba", Place: "Bay 1", Sown: later(AS_OF, -110) };
    const length = lengthOf([...done, { ...own, "Seeds sown": 99, ...facts }], "Grafting");
    const plain = lengthOf(done, "Grafting");
    expect(length.first).toBe(plain.first);
    expect(Array.from(length.mass)).toEqual(Array.from(plain.mass));
  });

  it("say nothing of batches that wait for a step without a column", () => {
    const columns = ["Batch", "Variety", "Place", "Sown", "Seeds sown", "Grafted on", "Closed"];
    const batches = [
      ...grafted([90, 95]),
      ...[20, 40, 60].map((ago, at) => ({
        ...{ Batch: `W-${at}`, Variety: "Alba", Place: "Bay 1", "Seeds sown": 90 },
        ...{ Sown: later(AS_OF, -ago - 90), "Grafted on": later(AS_OF, -ago) },
      })),
    ];
    const { method, learned, plain } = learnedFrom(batches, { columns });
    const release = method.steps[stepNumber("First release")] as never;
    expect(Array.from(learned.length(method, release, null).mass)).toEqual(
      Array.from(plain.length(method, release, null).mass),
    );
  });

  it("don't know what was done after the as-of day", () => {
    const batches = grafted([100, 100, 100, 100]).map((facts) => ({ ...facts, Closed: "" }));
    const early = later("2024-01-08", 90);
    const length = lengthOf(batches, "Grafting", { asOf: early });
    expect(chanceOf(length, 100, 100)).toBeLessThan(0.06);
  });
});

describe("days learned straight from one step to a far one", () => {
  /** Batches grafted and ready, and nothing between written down. */
  const finished = (days: readonly number[]): Facts[] =>
    days.map((one, at) => ({
      ...{ Batch: `F-${at}`, Variety: "Alba", Place: "Bay 1", "Grafts made": 100 },
      ...{ "Grafted on": later("2025-01-06", at), "Ready on": later("2025-01-06", at + one) },
      Closed: "yes",
    }));
  const straight = (batches: readonly Facts[]) => {
    const { method, learned } = learnedFrom(batches);
    return learned.straight(graftingToReady(method));
  };

  it("are none before eight batches were seen to go that way", () => {
    expect(straight([])).toBeNull();
    expect(straight(finished(Array<number>(7).fill(130)))).toBeNull();
    expect(straight(finished(Array<number>(8).fill(130)))).not.toBeNull();
  });

  it("are the nursery's own, the timetable counting as one batch", () => {
    const length = straight(finished(Array<number>(19).fill(140))) as StepLength;
    expect(chanceOf(length, 140, 140)).toBeGreaterThan(0.94);
    expect(chanceOf(length, 0, 5000)).toBeCloseTo(1, 9);
  });

  it("say nothing of batches that were never grafted, by the table, or ready before", () => {
    const plain = straight(finished(Array<number>(8).fill(130))) as StepLength;
    const odd = [
      { Batch: "X-1", Place: "Bay 1", "Grafts made": 10, "Ready on": "2025-03-01" },
      { Batch: "X-2", Place: "Bay 1", "Grafted on": "2025-05-01", "Ready on": "2025-03-01" },
    ];
    const length = straight([...finished(Array<number>(8).fill(130)), ...odd]) as StepLength;
    expect(Array.from(length.mass)).toEqual(Array.from(plain.mass));
  });

  it("are none by the timetable alone", () => {
    const { method, plain } = learnedFrom(finished(Array<number>(20).fill(130)));
    expect(plain.straight(graftingToReady(method))).toBeNull();
  });
});
