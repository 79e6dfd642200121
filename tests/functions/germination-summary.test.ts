import { describe, expect, it } from "vitest";
import type { Unread } from "../../src/core/cells/unread";
import type { InputFault } from "../../src/core/faults/input-error";
import * as text from "../../src/sentences/made/germination";
import * as headers from "../../src/sentences/made/germination-columns";
import { askRows } from "../support/ask";
import { refusal } from "../support/refusal";

const DAYS = [[4], [5], [6], [7], [8], [9], [11]];
const COUNTS = [[0], [4], [17], [10], [7], [1], [1]];

const notACount = (argument: string, why: Unread): InputFault => ({
  code: "not-a-count",
  argument,
  why,
});

describe("GERMINATION_SUMMARY", () => {
  it("has a row for each measure with its unit (worked example of germinationmetrics, 50 seeds)", () => {
    const [header, ...rows] = askRows("GERMINATION_SUMMARY", [DAYS, COUNTS, 50]);
    expect(header).toEqual([headers.measure(), headers.value(), headers.unit()]);
    expect(
      rows.map(([measure, value, unit]) => [measure, Number(Number(value).toPrecision(7)), unit]),
    ).toEqual([
      [text.sown(), 50, text.seeds()],
      [text.cameUp(), 40, text.seeds()],
      [text.germination(), 80, text.percent()],
      [text.firstCameUp(), 5, text.days()],
      [text.lastCameUp(), 11, text.days()],
      [text.halfPlusOne(), 5.970588, text.days()],
      [text.half(), 5.941176, text.days()],
      [text.meanTime(), 6.7, text.days()],
      [text.variance(), 1.446154, text.daysSquared()],
      [text.standardError(), 0.1901416, text.days()],
      [text.speed(), 6.138925, text.seedsADay()],
      [text.velocity(), 14.92537, text.percentADay()],
    ]);
  });

  it("adds samples sown alike together, and says whether they agree", () => {
    const two = [[7], [14]];
    const counts = [
      [40, 38],
      [50, 40],
    ];
    const rows = askRows("GERMINATION_SUMMARY", [two, counts, 200]);
    expect(rows[2]).toEqual([text.cameUp(), 168, text.seeds()]);
    const differ = text.samplesDiffer({ samples: "2", range: 12, mean: 84, allowed: 11 });
    expect(rows.at(-1)).toEqual([differ, "", ""]);
  });

  it("takes a blank inspection as one that saw nothing come up", () => {
    const blank = COUNTS.map(([count]) => [count === 0 ? "" : count]);
    expect(askRows("GERMINATION_SUMMARY", [DAYS, blank, 50])).toEqual(
      askRows("GERMINATION_SUMMARY", [DAYS, COUNTS, 50]),
    );
  });

  it("leaves blank what can't be measured where nothing came up", () => {
    const rows = askRows("GERMINATION_SUMMARY", [[[4], [7]], [[0], [0]], 50]);
    const value = (name: string) => rows.find(([measure]) => measure === name)?.[1];
    expect([value(text.cameUp()), value(text.germination()), value(text.meanTime())]).toEqual([
      0,
      0,
      "",
    ]);
  });

  it.each<[unknown, unknown, unknown, InputFault]>([
    [[[4], [7]], [[1]], 50, { code: "inspections-differ", days: 2, counts: 1 }],
    [[[7], [4]], [[1], [2]], 50, { code: "days-not-rising", day: 4, before: 7 }],
    [[[7], [7]], [[1], [2]], 50, { code: "days-not-rising", day: 7, before: 7 }],
    [[[7]], [[51]], 50, { code: "more-up-than-sown", up: 51, sown: 50 }],
    [[[7]], [["many"]], 50, notACount("counts", { code: "not-a-count" })],
    [[["soon"]], [[1]], 50, notACount("days", { code: "not-a-count" })],
    [[[7]], [["#N/A"]], 50, notACount("counts", { code: "cell-shows", shown: "#N/A" })],
    [[[7]], [[1]], 0, { code: "nothing-sown", sown: 0 }],
    [[[7]], [[1]], "", { code: "nothing-sown", sown: 0 }],
    [
      [[7]],
      [[1]],
      2.5,
      { code: "argument-unreadable", argument: "sown", wanted: "number", found: 2.5 },
    ],
  ])(
    "refuses the days %j, the counts %j and %j sown in one sentence",
    (days, counts, sown, fault) => {
      expect(() => askRows("GERMINATION_SUMMARY", [days, counts, sown])).toThrow(
        refusal("GERMINATION_SUMMARY", fault),
      );
    },
  );
});

describe("GERMINATION_SUMMARY of a table of samples", () => {
  const TABLE = [
    ["Batch", "Sample", "Seeds sown", "Day", "Came up"],
    ["A", 1, 50, 14, 40],
    ["A", 2, 50, 14, 41],
    ["B", 1, 50, 14, 12],
    ["B", 2, 50, 14, 31],
  ];

  it("has a row for each batch, and says which comes up poorly and whose samples differ", () => {
    const [header, a, b, remark] = askRows("GERMINATION_SUMMARY", [TABLE]);
    expect(header?.slice(0, 5)).toEqual([
      headers.batch(),
      headers.samples(),
      headers.seedsSown(),
      headers.up(),
      headers.germination(),
    ]);
    expect(a?.slice(0, 5)).toEqual(["A", 2, 100, 81, 0.81]);
    expect(b?.slice(0, 5)).toEqual(["B", 2, 100, 43, 0.43]);
    expect(remark?.[0]).toBe(
      [
        text.batchSamples({
          batch: "B",
          samples: text.samplesDifferByChance({ samples: 2, range: 19, oneOf: 6325 }),
        }),
        text.batchPoor({ batch: "B", share: 0.43, others: 0.81, day: 14 }),
      ].join(" "),
    );
  });

  it("asks for what it lacks", () => {
    expect(() =>
      askRows("GERMINATION_SUMMARY", [
        [
          ["Tray", "Up"],
          [1, 2],
        ],
      ]),
    ).toThrow(
      refusal("GERMINATION_SUMMARY", {
        code: "no-header-row",
        argument: "samples",
        columns: ["Batch", "Day", "Came up"],
      }),
    );
  });
});
