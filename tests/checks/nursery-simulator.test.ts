import { describe, expect, it } from "vitest";
import { chanceOf } from "../../src/checks/calibration/chance";
import { type NurseryHistory, nurseryHistory } from "../../src/checks/calibration/nursery-history";
import { RANGES_OF } from "../../src/checks/calibration/ranges";
import { recordsOnDay } from "../../src/checks/calibration/records-on-day";
import { STEP, STEPS } from "../../src/checks/calibration/simulated-steps";

const SOME = { pastBatches: 30, varieties: "unlike" } as const;

function cellsOf(history: NurseryHistory, asOf: number) {
  const { grid } = recordsOnDay(history, asOf);
  return Array.from({ length: grid.rowCount }, (_, row) =>
    Array.from({ length: grid.columnCount }, (_, column) => grid.at(row, column)),
  );
}

describe("the draws of the simulator", () => {
  const chance = chanceOf(1, 2);
  const many = <Value>(draw: () => Value) => Array.from({ length: 40_000 }, draw);
  const moments = (values: readonly number[]) => {
    const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
    const square = values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / values.length;
    return { mean, sd: Math.sqrt(square) };
  };

  // The error of a mean of 40,000 draws is sd ÷ 200; four of them are allowed, and for the sd,
  // whose error is at most about 1.5 sd ÷ 200 for these shapes, as many of those.
  it.each(["lognormal", "gamma"] as const)("have the mean and spread asked for: %s", (shape) => {
    const { mean, sd } = moments(many(() => chance.length(shape, 20, 0.3)));
    expect(Math.abs(mean - 20)).toBeLessThan((4 * 6) / 200);
    expect(Math.abs(sd - 6)).toBeLessThan((4 * 1.5 * 6) / 200);
  });

  it("have the mean and spread of a binomial", () => {
    const { mean, sd } = moments(many(() => chance.binomial(50, 0.8)));
    const exact = Math.sqrt(50 * 0.8 * 0.2);
    expect(Math.abs(mean - 40)).toBeLessThan((4 * exact) / 200);
    expect(Math.abs(sd - exact)).toBeLessThan((4 * 1.5 * exact) / 200);
  });

  it("repeat for the same seeds, and differ for others", () => {
    expect(chanceOf(3, 4).share()).toBe(chanceOf(3, 4).share());
    const firsts = [[3, 4], [4, 3], [3, 5], [3], [0], [0, 0]].map((s) => chanceOf(...s).share());
    expect(new Set(firsts).size).toBe(firsts.length);
  });
});

describe("the nursery simulator", () => {
  const histories = Array.from({ length: 60 }, (_, seed) =>
    nurseryHistory(SOME, seed, { finishedWanted: 30 }),
  );
  const courses = histories.flatMap(({ batches }) => batches.map(({ course }) => course));
  const grown = courses.filter(({ lostAt }) => lostAt === null);

  it("raises batches about as the timetable's windows tell, but not just so", () => {
    // The windows of the built-in cocoa timetable. Nurseries, seasons and varieties differ, so
    // more than half of all batches lie inside, and the middle one does.
    const windows: readonly (readonly [number, number, number, number])[] = [
      [STEP.germination, STEP.sowing, 7, 14],
      [STEP.grafting, STEP.sowing, 75, 120],
      [STEP.firstRelease, STEP.grafting, 12, 18],
      [STEP.budBreak, STEP.firstRelease, 10, 21],
      [STEP.takeCount, STEP.grafting, 28, 35],
      [STEP.firstFlush, STEP.firstRelease, 21, 35],
      [STEP.flushHardening, STEP.grafting, 40, 56],
      [STEP.branching, STEP.grafting, 50, 75],
      [STEP.unionClosed, STEP.grafting, 80, 105],
      [STEP.ready, STEP.grafting, 105, 122],
    ];
    for (const [step, after, from, by] of windows) {
      const lengths = grown
        .map(({ days }) => (days[step] as number) - (days[after] as number))
        .sort((one, other) => one - other);
      const name = STEPS[step]?.name;
      const inside = lengths.filter((days) => days >= from && days <= by).length / lengths.length;
      const median = lengths[Math.floor(lengths.length / 2)] as number;
      expect(median, name).toBeGreaterThanOrEqual(from);
      expect(median, name).toBeLessThanOrEqual(by);
      expect(inside, name).toBeGreaterThan(0.6);
    }
  });

  it("keeps about the shares of the timetable", () => {
    const steps = [STEP.sowing, STEP.germination, STEP.grafting, STEP.takeCount, STEP.ready];
    const usual = [0.85, 0.8, 0.75, 0.9];
    usual.forEach((share, index) => {
      const kept = grown.map(
        ({ plants }) =>
          (plants[steps[index + 1] as number] as number) /
          (plants[steps[index] as number] as number),
      );
      const mean = kept.reduce((sum, one) => sum + one, 0) / kept.length;
      expect(Math.abs(mean - share), STEPS[steps[index + 1] as number]?.name).toBeLessThan(0.06);
    });
  });

  it("lets no step come before the one it follows, and no plants appear", () => {
    for (const { days, plants } of grown) {
      expect((days[STEP.grafting] as number) > (days[STEP.germination] as number)).toBe(true);
      expect((days[STEP.ready] as number) > (days[STEP.takeCount] as number)).toBe(true);
      const counted = plants.filter((count) => count !== null);
      expect(counted).toEqual([...counted].sort((one, other) => other - one));
    }
  });

  it("loses in-between records, types some late, and leaves some rows open or silently closed", () => {
    const batches = histories.flatMap((history) =>
      history.batches.filter(({ course }) => course.settledOn < history.lastSowing - 100),
    );
    const has = (column: string) => (batch: (typeof batches)[number]) =>
      batch.entries.some((entry) => entry.column === column);
    const ready = batches.filter(has("Ready on"));
    const share = (part: readonly unknown[], whole: readonly unknown[]) =>
      part.length / whole.length;
    const takesMissing = share(
      ready.filter((batch) => !has("Takes")(batch)),
      ready,
    );
    expect(takesMissing).toBeGreaterThan(0.08);
    expect(takesMissing).toBeLessThan(0.2);
    const closed = batches.filter(has("Closed"));
    expect(
      share(
        ready.filter((batch) => !has("Closed")(batch)),
        ready,
      ),
    ).toBeGreaterThan(0.1);
    expect(
      share(
        closed.filter((batch) => !has("Ready on")(batch)),
        closed,
      ),
    ).toBeGreaterThan(0.02);
    const late = ready.filter(({ course, readyTypedOn }) => {
      return (readyTypedOn as number) >= (course.readyDay as number) + 3;
    });
    expect(share(late, ready)).toBeGreaterThan(0.02);
    expect(share(late, ready)).toBeLessThan(0.25);
    expect(batches.some(({ outcomeTypedOn }) => outcomeTypedOn === null)).toBe(true);
  });

  it("makes unlike varieties differ more than alike ones", () => {
    const spread = (varieties: "alike" | "unlike") => {
      const takes = Array.from({ length: 60 }, (_, seed) =>
        nurseryHistory({ pastBatches: 3, varieties }, seed, {
          finishedWanted: 1,
        }).truth.varieties.map(({ take }) => take),
      ).flat();
      return Math.sqrt(takes.reduce((sum, take) => sum + take ** 2, 0) / takes.length);
    };
    expect(spread("unlike")).toBeGreaterThan(4 * spread("alike"));
  });
});

describe("the table on an earlier day", () => {
  const history = nurseryHistory(SOME, 11, { finishedWanted: 30 });
  const asOf = (history.finishedOn[9] as number) + 5;

  it("stays when everything that is typed later changes", () => {
    const changed: NurseryHistory = {
      ...history,
      batches: history.batches.map((batch) => ({
        ...batch,
        entries: batch.entries.map((entry) =>
          entry.typedOn > asOf ? { ...entry, value: "changed" } : entry,
        ),
      })),
    };
    expect(cellsOf(changed, asOf)).toEqual(cellsOf(history, asOf));
    expect(cellsOf(changed, asOf + 60)).not.toEqual(cellsOf(history, asOf + 60));
    for (const who of ["ours", "mean and sd"] as const) {
      const said = (of: NurseryHistory) => [...RANGES_OF[who](recordsOnDay(of, asOf), 0.8)];
      expect(said(changed)).toEqual(said(history));
    }
  });

  it("stays when the nursery is run for longer", () => {
    expect(cellsOf(nurseryHistory(SOME, 11, { finishedWanted: 60 }), asOf)).toEqual(
      cellsOf(history, asOf),
    );
  });

  it("holds no day that has not come yet, and only gains cells with time", () => {
    const now = cellsOf(history, asOf);
    const later = new Map(cellsOf(history, asOf + 45).map((row) => [row[0], row]));
    const culled = now[0]?.indexOf("Culled");
    for (const row of now.slice(1)) {
      row.forEach((cell, column) => {
        if (typeof cell === "object") expect(cell.day).toBeLessThanOrEqual(asOf);
        // The number culled is written over as it grows.
        if (cell !== "" && column !== culled) expect(later.get(row[0])?.[column]).toEqual(cell);
      });
    }
  });
});
