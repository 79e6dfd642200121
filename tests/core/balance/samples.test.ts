import { describe, expect, it } from "vitest";
import { cleanTable } from "../../../src/checks/records/clean-sheet";
import { readGrid } from "../../../src/checks/records/reading";
import { laidOut } from "../../../src/checks/records/sheet";
import { balances, builtInTimetable, type Records } from "../../../src/core";
import { MESSY_SAMPLES, messySample } from "../../samples/messy-sample";
import { balanceIn, lostAtStages } from "./lots-table";

function hillside(): Records {
  const { columns, rows } = cleanTable(".");
  const { grid } = laidOut({
    ...{ tables: [{ above: [], columns, rows }], below: [] },
    ...{ locale: "en_GB", dayOrder: null, mergedColumn: null },
  });
  return readGrid(grid, "en_GB");
}

const SAMPLES: readonly (readonly [string, () => Records])[] = [
  ["hillside-nursery", hillside],
  ...MESSY_SAMPLES.map((folder) => {
    const { grid, expected } = messySample(folder);
    return [folder, () => readGrid(grid, expected.locale)] as const;
  }),
];

describe("BATCH_BALANCE of the sample sheets", () => {
  it.each(SAMPLES)("accounts for every plant of %s", (_, read) => {
    const records = read();
    let balanced = 0;
    for (const batch of records.batches) {
      const balance = balanceIn(records, batch);
      if (balance === null) continue;
      balanced += 1;
      const { started, standing, given, dispatched, culled, unexplained } = balance;
      const lost = lostAtStages(balance);
      expect([batch.name, standing + given + dispatched + culled + lost + unexplained]).toEqual([
        batch.name,
        started,
      ]);
      const children = records.batches.filter(({ fromLot }) => fromLot === batch.name);
      const taken = children.reduce(
        (sum, child) => sum + (balanceIn(records, child)?.started ?? 0),
        0,
      );
      if (children.length > 0) expect([batch.name, given]).toEqual([batch.name, taken]);
    }
    expect(balanced).toBeGreaterThan(10);
    expect(balances(records, builtInTimetable()).rows).toHaveLength(records.batches.length);
  });

  // Worked out by hand from sample-sheets/lots-and-grafts/*.csv.
  it.each([
    // 900 seeds, 742 came up; 170 + 150 + 160 + 140 taken since, 31 thrown out.
    [
      "RL-1",
      {
        started: 900,
        culled: 31,
        given: 620,
        shouldStand: 249,
        standing: 122,
        unexplained: 0,
        lost: { "not-come-up": 127 },
      },
    ],
    // 448 taken where 410 came up: none can be left, and 38 are more than there were.
    [
      "RL-4",
      {
        started: 500,
        culled: 10,
        given: 448,
        shouldStand: 42,
        standing: 0,
        unexplained: -38,
        lost: { "not-come-up": 80 },
      },
    ],
    // 170 grafts, 114 ready, 80 of them sold since; 56 went before, 45 of them written down.
    [
      "G-01",
      { started: 170, culled: 45, dispatched: 80, shouldStand: 45, standing: 34, unexplained: 0 },
    ],
    [
      "G-14",
      { started: 190, culled: 46, dispatched: 0, shouldStand: 144, standing: 133, unexplained: 0 },
    ],
  ])("balances %s of lots and grafts as by hand", (name, wanted) => {
    const { grid, expected } = messySample("lots-and-grafts");
    const records = readGrid(grid, expected.locale);
    const balance = balanceIn(
      records,
      records.batches.find((one) => one.name === name),
    );
    const lost = Object.fromEntries(
      (balance?.losses ?? []).flatMap((one) => (one.lost > 0 ? [[one.stage, one.lost]] : [])),
    );
    expect({ ...balance, lost }).toMatchObject(wanted);
  });
});
