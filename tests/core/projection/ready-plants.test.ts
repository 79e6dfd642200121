/* Longer than most: rows, and the same rows against draws of the whole model. */
import { describe, expect, it } from "vitest";
import { stagesOf } from "../../../src/core/projection/batch-stages";
import { timetableForecaster } from "../../../src/core/projection/forecaster";
import { type ReadyRow, readyPlants } from "../../../src/core/projection/ready-plants";
import { day, iso } from "../../support/days";
import { seededDraws } from "../../support/draws";
import { drawBeta, drawNursery } from "../../support/prior-draws";
import { reading } from "../records/reading";
import { timetableOf } from "../timetable/typed-timetable";
import { AS_OF, type Facts, later, questionOf } from "./nursery";

/** Two methods whose days hardly vary, all or some of the plants kept. */
function shortMethod(kept: string) {
  return timetableOf(`
    Method | Step     | After    | From day | Usual day | By day | Counted | Kept of 100
    Plum   | Grafting |          |          |           |        | yes     |
    Plum   | Ready    | Grafting | 30       | 30        | 30     | yes     | ${kept}
    Pear   | Grafting |          |          |           |        | yes     |
    Pear   | Ready    | Grafting | 90       | 90        | 90     | yes     | ${kept}`).timetable;
}
const COLUMNS = [
  ...[
    "Batch",
    "Variety",
    "Method",
    "Place",
    "Grafted on",
    "Grafts made",
    "Ready on",
    "Ready plants",
  ],
  ...["Dispatched", "Closed"],
];

function ready(batches: readonly Facts[], kept = "100", level = 0.8) {
  const question = questionOf(batches, { columns: COLUMNS, timetable: shortMethod(kept), level });
  return readyPlants(question).rows;
}
/** The rows of one time after the other; those of all times stand last. */
const before = (rows: readonly ReadyRow[]) => rows.filter(({ month }) => month !== "all");
/** All together is called All here. */
const short = (rows: readonly ReadyRow[]) =>
  before(rows).map(({ month, variety, batches, fewest, likely, most }) =>
    [month, variety ?? "All", batches, fewest, likely, most].join(" "),
  );
const batch = (name: string, graftedAgo: number, plants: number, variety = "Alba"): Facts => ({
  ...{ Batch: name, Variety: variety, Method: "Plum", Place: "Bay 1", "Grafts made": plants },
  "Grafted on": later(AS_OF, -graftedAgo),
});

describe("plants ready by month and variety", () => {
  it("add up over batches, varieties and then all, months in order", () => {
    // Ready 30 days after grafting, on 10, 11 and 12 December; and after 90, on 14 January.
    const rows = ready([
      { ...batch("B-3", 40, 40, "Nera"), Method: "Pear" },
      batch("B-1", 15, 100),
      batch("B-2", 13, 60, "Nera"),
      batch("B-4", 14, 7),
    ]);
    const certain = short(rows).filter((line) => !line.startsWith("2027-02"));
    expect(certain.map((line) => line.split(" ").slice(0, 3).join(" "))).toEqual([
      ...["2026-12 Alba 2", "2026-12 Nera 1", "2026-12 All 3", "2027-01 Nera 1", "2027-01 All 1"],
    ]);
    const at = (month: string, variety: string | null) =>
      rows.find((row) => row.month === month && row.variety === variety);
    expect(at("2026-12", "Alba")).toMatchObject({ fewest: 107, likely: 107, most: 107 });
    expect(at("2026-12", "Nera")).toMatchObject({ fewest: 60, likely: 60, most: 60 });
    expect(at("2026-12", null)).toMatchObject({ fewest: 167, likely: 167, most: 167 });
    expect(at("2027-01", null)).toMatchObject({ fewest: 40, likely: 40, most: 40 });
  });

  it("show a month without plants as 0, between months that have some", () => {
    const coming = { ...batch("B-2", 10, 30, "Nera"), Method: "Pear" };
    const rows = ready([batch("B-1", 5, 50), coming]);
    expect(short(rows).filter((line) => line.includes("All"))).toEqual([
      ...["2026-12 All 1 50 50 50", "2027-01 All 0 0 0 0", "2027-02 All 1 30 30 30"],
    ]);
  });

  it("stand ready in a row of their own, before the months and within their running totals", () => {
    // The grafts were never counted, so nothing is learned of what is kept.
    const stock = { Batch: "B-1", Variety: "Alba", Method: "Plum", "Ready on": "2026-11-01" };
    const coming = { ...batch("B-2", 10, 30, "Nera"), Method: "Pear" };
    const rows = ready([{ ...stock, "Ready plants": 50 }, coming]);
    const byEnd = rows.map(({ month, variety, fewestByEnd, likelyByEnd, mostByEnd }) =>
      [month, variety ?? "All", fewestByEnd, likelyByEnd, mostByEnd].join(" "),
    );
    expect(byEnd).toEqual([
      ...["now Alba 50 50 50", "now All 50 50 50"],
      ...["2027-02 Nera 30 30 30", "2027-02 All 80 80 80"],
      ...["all Alba   ", "all Nera   ", "all All   "],
    ]);
    expect(short(rows)).toEqual([
      ...["now Alba 1 50 50 50", "now All 1 50 50 50"],
      ...["2027-02 Nera 1 30 30 30", "2027-02 All 1 30 30 30"],
    ]);
  });

  it("are ready now once they are ready, less those that left", () => {
    const stock = { ...batch("B-1", 200, 50), "Ready on": "2026-05-01", "Ready plants": 45 };
    expect(short(ready([{ ...stock, Dispatched: 20 }]))).toEqual([
      ...["now Alba 1 25 25 25", "now All 1 25 25 25"],
    ]);
  });

  it.each<[string, Facts]>([
    ["is closed", { Closed: "yes" }],
    ["has gone", { Dispatched: 100 }],
    ["was never counted", { "Grafts made": "" }],
    ["has no day", { "Grafted on": "" }],
    ["was forgotten long ago", { "Grafted on": later(AS_OF, -300) }],
  ])("leave out a batch that %s", (_, facts) => {
    const other = batch("B-2", 15, 60, "Nera");
    const own = { ...batch("B-1", 15, 100), ...facts };
    expect(ready([own, other])).toEqual(ready([other]));
  });

  it("are none where no batch is under way", () => {
    expect(ready([])).toEqual([]);
    expect(ready([{ ...batch("B-1", 15, 100), Closed: "yes" }])).toEqual([]);
  });

  it("leave the variety blank where none is named", () => {
    const rows = ready([batch("B-1", 15, 100, "")]);
    expect(rows.map(({ variety }) => variety)).toEqual(["", null, "", null]);
  });

  it("keep a variety of any name apart from all together", () => {
    const rows = ready([batch("B-1", 15, 100, "All"), batch("B-2", 15, 60, "(blank)")]);
    expect(before(rows).map(({ variety, likely }) => [variety, likely])).toEqual([
      ...[["(blank)", 60] as const, ["All", 100] as const],
      [null, 160],
    ]);
  });

  it("are for all what they are for the only variety", () => {
    const rows = ready([batch("B-1", 15, 100), batch("B-2", 3, 80)], "75");
    for (const { month, variety, ...numbers } of rows.filter((row) => row.variety !== null)) {
      const all = rows.find((row) => row.month === month && row.variety === null);
      expect(all).toMatchObject(numbers);
    }
  });

  it("come out the same in any order of the rows, and twice", () => {
    const batches = Array.from({ length: 24 }, (_, at) =>
      batch(`B-${at}`, (at * 7) % 60, 40 + at, ["Alba", "Nera", "Rossa"][at % 3]),
    );
    const finished = Array.from({ length: 12 }, (_, at) => ({
      ...batch(`F-${at}`, 300 + at, 100, ["Alba", "Nera"][at % 2]),
      ...{ "Ready on": later(AS_OF, -260 - at), "Ready plants": 50 + 3 * at, Closed: "yes" },
    }));
    const rows = [...batches, ...finished];
    const plain = ready(rows, "75");
    expect(ready(rows, "75")).toEqual(plain);
    expect(ready([...rows].reverse(), "75")).toEqual(plain);
    const turned = rows.map((_, at) => rows[(at * 25 + 7) % rows.length] as Facts);
    expect(ready(turned, "75")).toEqual(plain);
  });

  it("have whole numbers of plants, fewest up to most, wider for a higher level", () => {
    const rows = [batch("B-1", 15, 300), batch("B-2", 13, 200, "Nera")];
    const [narrow, wide] = [ready(rows, "75", 0.5), ready(rows, "75", 0.95)];
    for (const [at, { fewest, likely, most }] of wide.entries()) {
      const inner = narrow[at];
      if (inner === undefined || inner.month !== "2026-12") continue;
      const order = [fewest, inner.fewest, likely, inner.most, most];
      expect(order).toEqual([...order].sort((a, b) => a - b));
      expect(order.every(Number.isInteger)).toBe(true);
      expect(fewest).toBeLessThan(inner.fewest);
    }
  });

  it("end with a remark when lines of the records could not be used", () => {
    const records = reading([
      ["Day", "Batch", "Step", "Count"],
      ["2026-11-10", "B1", "Grafting", 100],
      ["2026-11-10", "B1", "Sweeping", ""],
    ]);
    const question = { ...questionOf([]), records };
    expect(readyPlants(question).remarks[0]).toEqual({ code: "rows-left-out", rows: 1 });
  });
});

describe("plants ready against draws", () => {
  const TIMES = 40_000;

  /** Sums drawn of so many batches of one variety of one unknown nursery. */
  function drawnSums(batches: number, plants: number): Int32Array {
    const draws = seededDraws(77);
    return Int32Array.from({ length: TIMES }, () => {
      const { varieties, correlation } = drawNursery(draws, 0.75, 1);
      let sum = 0;
      for (let one = 0; one < batches; one += 1) {
        sum += draws.binomial(plants, drawBeta(draws, varieties[0] as number, correlation));
      }
      return sum;
    }).sort();
  }

  it.each([
    [1, 300],
    [12, 100],
  ])("%d batches of %d plants of one variety, all better or worse together", (count, plants) => {
    const batches = Array.from({ length: count }, (_, at) => batch(`B-${at}`, 15, plants));
    const sums = drawnSums(count, plants);
    const shareUpTo = (value: number) => sums.filter((one) => one <= value).length / TIMES;
    const shareBelow = (value: number) => sums.filter((one) => one < value).length / TIMES;
    for (const level of [0.8, 0.5]) {
      const all = ready(batches, "75", level).find(
        ({ month, variety }) => month === "2026-12" && variety === null,
      );
      for (const [value, chance] of [
        [all?.fewest, (1 - level) / 2],
        [all?.likely, 0.5],
        [all?.most, (1 + level) / 2],
      ] as const) {
        // Four standard errors of a share of the 1,000 draws that the answer is made of; the few
        // batches that are late by a month move it by as little as they are.
        const error = 4 * Math.sqrt((chance * (1 - chance)) / 1000);
        expect(shareUpTo(value as number)).toBeGreaterThan(chance - error);
        expect(shareBelow(value as number)).toBeLessThan(chance + error);
      }
    }
  });

  it.each([
    ["the records teach", undefined],
    ["the timetable alone says", timetableForecaster()],
  ])("agree with what the stages say of a single batch, by what %s", (_, believing) => {
    const question = questionOf([batch("B-1", 15, 300)], {
      columns: COLUMNS,
      timetable: shortMethod("75"),
    });
    const [stage] = stagesOf(question, believing).rows;
    const [month] = readyPlants(question, believing).rows;
    for (const [ours, theirs] of [
      [month?.fewest, stage?.fewestReady],
      [month?.likely, stage?.likelyReady],
      [month?.most, stage?.mostReady],
    ] as const) {
      // The shape of the beta and a thousand draws: 5 of 100 plants at most.
      expect(Math.abs((ours as number) - (theirs as number))).toBeLessThanOrEqual(15);
    }
  });

  it("put a batch into months by the chances of its days", () => {
    // Ready 105 to 122 days after grafting, 112 as a rule, by the built-in method.
    const grafted = "2026-09-12";
    const question = questionOf([
      ...[{ Batch: "B-1", Variety: "Alba", Place: "Bay 1", "Grafted on": grafted }].map((one) => ({
        ...one,
        "Grafts made": 400,
      })),
    ]);
    const [stage] = stagesOf(question).rows;
    const rows = before(readyPlants(question).rows).filter(({ variety }) => variety === null);
    const likely = iso(stage?.readyLikely ?? null) ?? "";
    expect(rows.map(({ month, batches }) => [month, batches])).toEqual(
      rows.map(({ month }) => [month, likely.startsWith(month) ? 1 : 0]),
    );
    // 112 days after 12 September is 2 January; some chance lies before the new year.
    expect(day(likely)).toBeGreaterThanOrEqual(day("2027-01-01"));
    expect(rows.map(({ month }) => month).slice(0, 2)).toEqual(["2026-12", "2027-01"]);
    expect(rows[0]?.most).toBeGreaterThan(0);
    expect(rows[0]?.fewest).toBe(0);
  });
});
