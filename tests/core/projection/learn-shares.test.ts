import { describe, expect, it } from "vitest";
import { stagesOf } from "../../../src/core/projection/batch-stages";
import { plantForecaster } from "../../../src/core/projection/forecast-plants";
import { timetableOf } from "../timetable/typed-timetable";
import { AS_OF, type Facts, later, learnedFrom, questionOf } from "./nursery";
import { stepNumber } from "./states";

const GRAFTING = stepNumber("Grafting");
const TAKES = stepNumber("Take count");
const READY = stepNumber("Ready");

/** Closed batches, each with its own counts. */
function counted(counts: readonly Facts[], variety = "Alba"): Facts[] {
  return counts.map((facts, at) => ({
    ...{ Batch: `${variety}-${at}`, Variety: variety, Place: "Bay 1", Method: "" },
    ...{ "Grafted on": later("2025-01-06", at), Closed: "yes", ...facts },
  }));
}

const takes = (kept: number, times: number, variety = "Alba") =>
  counted(Array<Facts>(times).fill({ "Grafts made": 200, Takes: kept }), variety);

function keptOf(batches: readonly Facts[], after: number, upTo: number, variety = "Alba") {
  const { method, learned } = learnedFrom(batches);
  return learned.kept({ method, after, upTo, variety, from: null });
}

describe("shares learned", () => {
  it("are the timetable's where nothing is recorded", () => {
    const { method, learned, plain } = learnedFrom([]);
    for (const [after, upTo] of [
      [GRAFTING, TAKES],
      [TAKES, READY],
      [0, stepNumber("Germination")],
    ] as const) {
      expect(learned.kept({ method, after, upTo, variety: "Alba", from: null }).mean).toBeCloseTo(
        plain.kept({ method, after, upTo, variety: "Alba", from: null }).mean,
        12,
      );
    }
    expect(
      learned.kept({ method, after: READY, upTo: READY, variety: "Alba", from: null }),
    ).toEqual({
      mean: 1,
      meanSquare: 1,
    });
  });

  it("come nearer to the nursery's own with every batch", () => {
    // The timetable keeps 75 of 100 grafts.
    const means = [0, 1, 3, 30].map((times) => keptOf(takes(90, times), GRAFTING, TAKES).mean);
    expect(means[0]).toBeCloseTo(0.75, 12);
    expect(means).toEqual([...means].sort((a, b) => b - a));
    expect(means[2]).toBeLessThan(0.6);
    expect(Math.abs((means[3] as number) - 0.45)).toBeLessThan(0.015);
  });

  it("tell varieties apart, and lean on the others for one that is new", () => {
    const batches = [...takes(90, 20), ...takes(180, 20, "Nera")];
    const of = (variety: string) => keptOf(batches, GRAFTING, TAKES, variety).mean;
    expect(Math.abs(of("Alba") - 0.45)).toBeLessThan(0.03);
    expect(Math.abs(of("Nera") - 0.9)).toBeLessThan(0.03);
    expect(of("Rossa") > of("Alba") && of("Rossa") < of("Nera")).toBe(true);
  });

  it.each<[string, Facts]>([
    ["has more takes than grafts", { "Grafts made": 200, Takes: 201 }],
    ["was not counted at the takes", { "Grafts made": 200 }],
    ["was not counted at the grafting", { Takes: 30 }],
    ["had no grafts", { "Grafts made": 0, Takes: 0 }],
  ])("say nothing of a batch that %s", (_, facts) => {
    const batches = takes(150, 5);
    expect(keptOf([...batches, ...counted([facts], "Alba")], GRAFTING, TAKES)).toEqual(
      keptOf(batches, GRAFTING, TAKES),
    );
  });

  it("take 0 takes for what it is, not for a count that was not made", () => {
    const batches = takes(150, 5);
    const failed = keptOf(
      [...batches, ...counted([{ "Grafts made": 200, Takes: 0 }])],
      GRAFTING,
      TAKES,
    );
    expect(failed.mean).toBeLessThan(keptOf(batches, GRAFTING, TAKES).mean - 0.02);
  });

  it("say nothing of plants that went to another batch between the counts", () => {
    const batches = takes(150, 5);
    const lot = counted([{ "Grafts made": 200, Takes: 40 }], "Alba").map((facts) => ({
      ...facts,
      Batch: "lot",
    }));
    const child = { Batch: "child", "From lot": "lot", Variety: "Alba", Place: "Bay 1" };
    const taken = { ...child, "Grafts made": 100, "Grafted on": "2025-03-01", Closed: "yes" };
    const [with_, without] = [
      keptOf([...batches, ...lot, taken], GRAFTING, TAKES),
      keptOf(batches, GRAFTING, TAKES),
    ];
    expect(with_).toEqual(without);
  });

  it("are learned across a step at which the nursery never counts", () => {
    const batches = counted(Array<Facts>(30).fill({ "Grafts made": 200, "Ready plants": 80 }));
    // The timetable: 75 of 100 take, 90 of 100 of those are ready.
    expect(Math.abs(keptOf(batches, GRAFTING, READY).mean - 0.4)).toBeLessThan(0.015);
    expect(keptOf([], GRAFTING, READY).mean).toBeCloseTo(0.675, 12);
    // From the takes on nothing was seen: the timetable's share stands for that stretch.
    expect(keptOf(batches, TAKES, READY).mean).toBeCloseTo(0.9, 12);
  });

  it("multiply along the steps", () => {
    const batches = counted(
      Array<Facts>(10).fill({ "Grafts made": 200, Takes: 120, "Ready plants": 100 }),
    );
    const part = (after: number, upTo: number) => keptOf(batches, after, upTo);
    const [first, second, whole] = [
      part(GRAFTING, TAKES),
      part(TAKES, READY),
      part(GRAFTING, READY),
    ];
    expect(whole.mean).toBeCloseTo(first.mean * second.mean, 12);
    expect(whole.meanSquare).toBeCloseTo(first.meanSquare * second.meanSquare, 12);
  });

  it("narrow the range of plants as batches are recorded", () => {
    const widths = [0, 3, 30].map((times) => {
      const { learned, states } = learnedFrom([
        { Batch: "own", Variety: "Alba", Place: "Bay 1", "Grafted on": AS_OF, "Grafts made": 300 },
        ...takes(150, times),
      ]);
      const range = plantForecaster(learned, 0.8)(states[0] as never, TAKES);
      return (range?.most as number) - (range?.fewest as number);
    });
    expect(widths[0]).toBeGreaterThan(widths[1] as number);
    expect(widths[1]).toBeGreaterThan(widths[2] as number);
  });
});

describe("a timetable that says nothing of a loss", () => {
  const finished = Array.from({ length: 20 }, (_, at) => ({
    ...{ Batch: `P-${at}`, Variety: "Alba", Place: "Bay 1", "Grafted on": later("2025-01-06", at) },
    ...{ "Grafts made": 200, "Ready on": later("2025-01-06", at + 30), "Ready plants": 100 },
    Closed: "yes",
  }));
  const own = { Batch: "P-99", Variety: "Alba", Place: "Bay 1", "Grafted on": AS_OF };
  const columns = ["Batch", "Variety", "Place", "Grafted on", "Grafts made", "Ready on"];

  it.each(["", "100", "99.9"])(
    "with Kept of 100 as '%s' is set right by what the nursery counted: half",
    (kept) => {
      const { timetable, faults } = timetableOf(`
        Method | Step     | After    | From day | Usual day | By day | Counted | Kept of 100
        Plum   | Grafting |          |          |           |        | yes     |
        Plum   | Ready    | Grafting | 20       | 30        | 45     | yes     | ${kept}`);
      expect(faults).toEqual([]);
      const asked = questionOf([...finished, { ...own, "Grafts made": 200 }], {
        columns: [...columns, "Ready plants", "Closed"],
        timetable,
      });
      const [only] = stagesOf(asked).rows;
      expect(Math.abs((only?.likelyReady as number) - 100)).toBeLessThan(10);
    },
  );
});
