import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Cell } from "../../../src/core/cells/cell";
import { daysLater, isoDay } from "../../../src/core/dates";
import { dueTasks } from "../../../src/core/due/due-tasks";
import { day } from "../../support/days";
import { reading } from "../records/reading";
import { timetableOf } from "../timetable/typed-timetable";

// A second release hangs on the first, a look on the grafting, the cut back on nothing but the grafting.
const { timetable } = timetableOf(`
  Method | Step          | After         | From day | Usual day | By day | Counted | Kept of 100
  Plum   | Grafting      |               |          |           |        | yes     |
  Plum   | First release | Grafting      | 12       | 14        | 18     |         |
  Plum   | Bud break     | Grafting      | 10       | 14        | 21     |         |
  Plum   | Take count    | Grafting      | 28       | 30        | 35     | yes     | 80
  Plum   | Last untying  | First release | 30       | 35        | 40     |         |
  Plum   | Ready         | Grafting      | 100      | 110       | 120    | yes     | 90`);
const HEADER = [
  ...[
    "Batch",
    "Grafted on",
    "Grafts made",
    "First release",
    "Bud break",
    "Take count day",
    "Takes",
  ],
  ...["Last untying", "Ready on", "Ready plants", "Closed"],
];
/** A batch that was released, so that the column is in use. */
const RELEASED = {
  ...{ Batch: "B1", "Grafted on": "2026-03-01", "Grafts made": 100 },
  ...{ "First release": "2026-03-15", "Take count day": "2026-03-31", Takes: 80 },
};
const FORGOTTEN = {
  ...{ Batch: "B2", "Grafted on": "2026-03-01", "Grafts made": 120 },
  ...{ "Take count day": "2026-03-31", Takes: 90 },
};

function due(rows: Record<string, Cell>[], asOf: string) {
  const table = rows.map((facts) => HEADER.map((name) => facts[name] ?? ""));
  const records = reading([HEADER, ...table], {
    stepNames: timetable.methods.flatMap(({ steps }) => steps.map(({ name }) => name)),
    asOf: day(asOf),
  });
  return dueTasks({ records, timetable, asOf: day(asOf), daysAhead: 7 });
}
function dueOf(rows: Cell[][], asOf: string) {
  const records = reading(rows, {
    stepNames: timetable.methods.flatMap(({ steps }) => steps.map(({ name }) => name)),
    asOf: day(asOf),
  });
  return dueTasks({ records, timetable, asOf: day(asOf), daysAhead: 0 }).rows;
}
const lines = (rows: Record<string, Cell>[], asOf: string) =>
  due(rows, asOf).rows.map(
    ({ batch, step, status, daysLate, plants }) =>
      `${batch} ${step.name} ${status} ${daysLate} ${plants}`,
  );

describe("a job that was skipped", () => {
  // The wrap stays on and binds, and nothing said so once the takes were counted.
  it("stays due until it is recorded, whatever came later, with the plants that stand", () => {
    expect(lines([RELEASED, FORGOTTEN], "2026-04-02")).toEqual(["B2 First release late 14 90"]);
    expect(lines([RELEASED, FORGOTTEN], "2026-05-02")).toContain("B2 First release late 44 90");
    const looked = { ...FORGOTTEN, "Bud break": "2026-03-20" };
    expect(lines([RELEASED, looked], "2026-04-02")).toEqual(["B2 First release late 14 90"]);
    const done = { ...FORGOTTEN, "First release": "2026-04-01" };
    expect(lines([RELEASED, done], "2026-04-02")).toEqual([]);
  });

  it("is done where a job or a count that hangs on it is recorded", () => {
    const untied = { ...FORGOTTEN, "Last untying": "2026-04-20" };
    expect(lines([RELEASED, untied], "2026-04-22")).toEqual(["B1 Last untying due 0 80"]);
    // Takes are counted of grafts, though their day was not noted.
    const undated = { Batch: "B3", "Take count day": "2026-03-31", Takes: 90 };
    expect(lines([RELEASED, undated], "2026-04-02")).toEqual([]);
  });

  it.each([
    "n/a",
    "not needed",
    "Skipped",
    "pas nécessaire",
    "no hace falta",
    "não precisa",
    "tidak perlu",
  ])("is not due where its cell says %s, and no other batch's is gone", (word) => {
    const skipped = { ...FORGOTTEN, "First release": word };
    expect(lines([RELEASED, skipped], "2026-04-02")).toEqual([]);
    const other = { ...FORGOTTEN, Batch: "B3" };
    expect(lines([RELEASED, skipped, other], "2026-04-02")).toEqual([
      "B3 First release late 14 90",
    ]);
    // Nor in its own days.
    const young = { Batch: "B4", "Grafted on": "2026-03-20", "Grafts made": 50 };
    expect(lines([RELEASED, young], "2026-04-02")).toContain("B4 First release due 0 50");
    expect(lines([RELEASED, { ...young, "First release": word }], "2026-04-02")).toEqual([
      "B4 Bud break due 0 50",
    ]);
  });

  // "Not done" may be said of what is still to do: the wrap would bind.
  it.each(["not done", "no", "-", "not yet"])("stays due where its cell says %s", (word) => {
    expect(lines([RELEASED, { ...FORGOTTEN, "First release": word }], "2026-04-02")).toEqual([
      "B2 First release late 14 90",
    ]);
  });

  it.each(["First release: not needed", "wrap opened, skipped", "Not needed: first release"])(
    "is not due where a log says %s",
    (what) => {
      const log = [
        ["Batch", "Job", "Date", "Plants"],
        ["B1", "Grafting", "2026-03-01", 100],
        ["B1", "First release", "2026-03-15", ""],
        ["B2", "Grafting", "2026-03-01", 120],
        ["B2", "Take count", "2026-03-31", 90],
      ];
      const inLog = (rows: Cell[][]) => dueOf(rows, "2026-04-02").map(({ batch }) => batch);
      expect(inLog(log)).toContain("B2");
      expect(inLog([...log, ["B2", what, "2026-03-15", ""]])).toEqual(["B1"]);
    },
  );

  it("is no job any more once the plants are gone or the batch is closed", () => {
    expect(lines([RELEASED, { ...FORGOTTEN, Takes: 0 }], "2026-04-02")).toEqual([]);
    expect(lines([RELEASED, { ...FORGOTTEN, Closed: "yes" }], "2026-04-02")).toEqual([]);
  });

  it("is asked about once where the records never had it in any batch", () => {
    const other = { ...FORGOTTEN, Batch: "B3" };
    const { rows, remarks } = due([FORGOTTEN, other], "2026-04-02");
    expect(rows).toEqual([]);
    expect(remarks).toEqual([{ code: "job-never-recorded", step: "First release", batches: 2 }]);
  });
});

describe("a look", () => {
  const grafted = { Batch: "B1", "Grafted on": "2026-03-01", "Grafts made": 100 };

  it("is over with its days, is never late, and comes after jobs and counts", () => {
    expect(lines([grafted], "2026-03-11")).toEqual([
      "B1 First release coming 0 100",
      "B1 Bud break due 0 100",
    ]);
    expect(lines([grafted], "2026-03-23")).toEqual([
      "B1 First release late 4 100",
      "B1 Take count coming 0 100",
    ]);
  });
});

describe("recording a later step", () => {
  const steps = ["First release", "Bud break", "Take count day", "Last untying", "Ready on"];
  // The jobs are seldom done, so that there is something to vanish.
  const someDays = fc.record(
    Object.fromEntries(
      steps.map((name) => {
        const isJob = name === "First release" || name === "Last untying";
        const after = fc.integer({ min: 1, max: 150 });
        const never = { weight: isJob ? 4 : 1, arbitrary: fc.constant(null) };
        return [name, fc.oneof(never, { weight: 1, arbitrary: after })];
      }),
    ),
  );

  // By hand: what proves a job is that a job or a count which hangs on it is recorded; and the days of the
  // last untying are counted anew once the release is.
  const EXCEPT: Readonly<Record<string, readonly string[]>> = {
    "First release": ["Last untying"],
    "Last untying": ["First release"],
  };

  // A counted step is done once its count is written.
  const COUNT_OF: Readonly<Record<string, Record<string, number>>> = {
    "Take count day": { Takes: 50 },
    "Ready on": { "Ready plants": 40 },
  };
  const counts = (names: readonly string[]) =>
    Object.assign({}, ...names.map((name) => COUNT_OF[name]));

  it("makes no job vanish that it does not prove done", () => {
    const atStake = new Map<string, number>();
    fc.assert(
      fc.property(someDays, fc.constantFrom(...steps), (days, later) => {
        const done = Object.entries(days).flatMap(([name, after]) =>
          after === null ? [] : [[name, isoDay(daysLater(day("2026-03-01"), after))] as const],
        );
        const used = {
          ...{ ...RELEASED, Batch: "B0", "Last untying": "2026-04-20", "Ready on": "2026-06-20" },
          ...{ "Bud break": "2026-03-14", "Ready plants": 70, Closed: "yes" },
        };
        const mine = {
          ...{ Batch: "B9", "Grafted on": "2026-03-01", "Grafts made": 60 },
          ...{ ...Object.fromEntries(done), ...counts(done.map(([name]) => name)) },
        };
        const jobs = (facts: Record<string, Cell>) =>
          new Set(
            due([used, facts], "2026-08-15")
              .rows.map(({ step }) => step.name)
              .filter((name) => name in EXCEPT),
          );
        const after = jobs({ ...mine, [later]: "2026-08-10", ...counts([later]) });
        for (const job of jobs(mine)) {
          if (job === later || EXCEPT[job]?.includes(later)) continue;
          const stake = `${job}, ${later}`;
          atStake.set(stake, (atStake.get(stake) ?? 0) + 1);
          expect(after).toContain(job);
        }
      }),
      { numRuns: 300, seed: 20261129 },
    );
    for (const job of Object.keys(EXCEPT))
      for (const later of ["Bud break", ...Object.keys(COUNT_OF)])
        expect([job, later, (atStake.get(`${job}, ${later}`) ?? 0) > 5]).toEqual([
          job,
          later,
          true,
        ]);
  });
});
