/* Longer than most: what is judged, and what may not be seen, are asked of the same batches. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Cell } from "../../../src/core/cells/cell";
import { STAGE_COLUMNS, stagesOf } from "../../../src/core/projection/batch-stages";
import {
  LOOKBACK_COLUMNS,
  type LookbackQuestion,
  lookback,
} from "../../../src/core/projection/lookback";
import { withIsoDays } from "../../support/answers";
import { day } from "../../support/days";
import { reading } from "../records/reading";
import { AS_OF, type Facts, later, questionOf } from "./nursery";

const DAYS_BEFORE = 120;
const THEN = later(AS_OF, -DAYS_BEFORE);

const listedBy = (question: LookbackQuestion) =>
  withIsoDays(LOOKBACK_COLUMNS, lookback(question).rows);

function look(batches: readonly Facts[], daysBefore = DAYS_BEFORE) {
  return listedBy({ ...questionOf(batches), daysBefore });
}

/** The same day looked back to, from so late that the range of every batch is past. */
function lookFromLater(batches: readonly Facts[]) {
  const question = questionOf(batches, { asOf: later(AS_OF, DAYS_BEFORE) });
  return listedBy({ ...question, daysBefore: 2 * DAYS_BEFORE });
}

/** A batch on its way, grafted so many days before the day that is looked back to. */
function underWay(name: string, graftedAgo: number, more: Facts = {}): Facts {
  return {
    ...{ Batch: name, Variety: "Alba", Place: "Bay 1", "Grafts made": 120 },
    ...{ "Grafted on": later(THEN, -graftedAgo), ...more },
  };
}

/** Finished batches of long ago, from which the shares and days are learned. */
const PAST: readonly Facts[] = Array.from({ length: 12 }, (_, at) => ({
  ...{ Batch: `P-${at}`, Variety: "Alba", Place: "Bay 1", "Grafts made": 100 },
  ...{ "Grafted on": later("2025-01-06", 7 * at), Takes: 60 + at, "Ready plants": 50 + at },
  "Take count day": later("2025-02-05", 7 * at),
  "Ready on": later("2025-04-21", 7 * at + ((5 * at) % 16)),
}));

describe("looking back", () => {
  it("says what would have been said then, and what came of it", () => {
    const batches = [
      ...PAST,
      underWay("B-1", 20, { "Ready on": later(THEN, 92), "Ready plants": 66 }),
    ];
    const listed = look(batches);
    expect(listed.map(({ batch }) => batch)).toEqual(["B-1"]);
    const known = [...PAST, underWay("B-1", 20)];
    const stages = stagesOf(questionOf(known, { asOf: THEN })).rows;
    const [stage] = withIsoDays(STAGE_COLUMNS, stages).filter(({ batch }) => batch === "B-1");
    expect(listed[0]).toEqual({
      ...{ batch: "B-1", readyFrom: stage?.readyFrom, readyBy: stage?.readyBy },
      ...{ wasReady: later(THEN, 92), were: 66 },
      ...{ fewest: stage?.fewestReady, most: stage?.mostReady },
      ...{ dayHeld: true, countHeld: true },
    });
  });

  it("holds the ranges to what was, at their very ends too", () => {
    const [first] = look([
      ...PAST,
      underWay("B-1", 20, { "Ready on": later(THEN, 92), "Ready plants": 66 }),
    ]);
    const held = (readyOn: string, plants: number) => {
      const listed = look([
        ...PAST,
        underWay("B-1", 20, { "Ready on": readyOn, "Ready plants": plants }),
      ]);
      return [listed[0]?.dayHeld, listed[0]?.countHeld];
    };
    const [from, by] = [String(first?.readyFrom), String(first?.readyBy)];
    const [fewest, most] = [first?.fewest as number, first?.most as number];
    expect(held(from, fewest)).toEqual([true, true]);
    expect(held(by, most)).toEqual([true, true]);
    expect(held(later(from, -1), fewest - 1)).toEqual([false, false]);
    expect(held(later(by, 1), most + 1)).toEqual([false, false]);
  });

  it("judges batches that died: of 14 with 4 dead all 14 are judged, and the dead as missed", () => {
    const dead: readonly Facts[] = [
      { Closed: "yes" },
      { Closed: "yes", "Ready plants": 0 },
      { "Take count day": later(THEN, 10), Takes: 0 },
      { "Ready plants": 0 },
    ];
    const fates = [
      ...dead,
      ...Array.from({ length: 10 }, () => ({ "Ready on": later(THEN, 72), "Ready plants": 66 })),
    ];
    const found = lookback({
      ...questionOf([...PAST, ...fates.map((fate, at) => underWay(`B-${at}`, 40, fate))]),
      daysBefore: DAYS_BEFORE,
    });
    expect(found.rows).toHaveLength(14);
    expect(found.notYet).toBe(0);
    const missed = { wasReady: null, were: 0, dayHeld: false, countHeld: false };
    expect(found.rows.slice(0, 4)).toEqual(Array(4).fill(expect.objectContaining(missed)));
    expect(found.rows.slice(4).every(({ dayHeld, countHeld }) => dayHeld && countHeld)).toBe(true);
  });

  it("judges no batch before its whole range is past, not even one that was early", () => {
    const early = underWay("early", 2, { "Ready on": later(THEN, 60), "Ready plants": 66 });
    const found = (ago: number) =>
      lookback({
        ...questionOf([...PAST, early], { asOf: later(THEN, ago) }),
        daysBefore: ago,
      });
    const [row] = found(DAYS_BEFORE + 60).rows;
    const lasted = (row?.readyBy ?? 0) - day(THEN);
    expect(found(lasted)).toMatchObject({ rows: [], notYet: 1 });
    expect(found(lasted + 1)).toMatchObject({ rows: [{ batch: "early" }], notYet: 0 });
  });

  it("knows no day of plants that were counted as ready or sold without one", () => {
    const [counted, sold, going] = look([
      ...PAST,
      underWay("counted", 40, { "Ready plants": 66 }),
      underWay("sold", 40, { Dispatched: 70, Closed: "yes" }),
      underWay("some sold", 40, { Dispatched: 20 }),
    ]);
    expect(counted).toMatchObject({ wasReady: null, were: 66, dayHeld: null, countHeld: true });
    expect(sold).toMatchObject({ wasReady: null, were: 70, dayHeld: null, countHeld: true });
    expect(going).toMatchObject({ wasReady: null, were: null, dayHeld: false, countHeld: null });
  });

  it("counts apart a lot whose plants all went on as other batches", () => {
    const child = {
      ...{ Batch: "C-1", "From lot": "L-1", Variety: "Alba", Place: "Bay 1" },
      ...{ "Grafted on": later(THEN, 10), "Grafts made": 90 },
    };
    const lot = { Batch: "L-1", Variety: "Alba", Place: "Bay 1", "Seeds sown": 90 };
    const question = questionOf([...PAST, { ...lot, Sown: later(THEN, -100) }, child], {
      asOf: later(AS_OF, DAYS_BEFORE),
    });
    expect(lookback({ ...question, daysBefore: 2 * DAYS_BEFORE })).toMatchObject({
      ...{ rows: [], notYet: 0, goneOn: 1 },
    });
  });

  it("lists a batch once its whole range is past", () => {
    // Some days slower, so that a batch of 122 days is still within its range.
    const past = PAST.map((row) => ({ ...row, "Ready on": later(String(row["Ready on"]), 4) }));
    const listed = look([
      ...past,
      underWay("ready", 20, { "Ready on": later(THEN, 92), "Ready plants": 66 }),
      // Forecast for about 116 days after grafting, which lies beyond the as-of day.
      underWay("not yet", -1),
      underWay("on its way still", 2),
      underWay("should be ready", 60),
      underWay("ready, not counted", 25, { "Ready on": later(THEN, 88) }),
      underWay("early, its range still to come", 2, { "Ready on": later(THEN, 90) }),
      underWay("ready after the as-of day", 60, { "Ready on": later(AS_OF, 3) }),
    ]);
    expect(
      listed.map((row) => [row.batch, row.wasReady, row.were, row.dayHeld, row.countHeld]),
    ).toEqual([
      ["ready", later(THEN, 92), 66, true, true],
      ["should be ready", null, null, false, null],
      ["ready, not counted", later(THEN, 88), null, true, null],
      ["ready after the as-of day", null, null, false, null],
    ]);
  });

  it("leaves out batches that were ready, not begun or forgotten then", () => {
    const listed = look([
      ...PAST,
      underWay("ready then", 120, { "Ready on": later(THEN, -3), "Ready plants": 66 }),
      underWay("not begun then", -5, { "Ready on": later(AS_OF, -1), "Ready plants": 66 }),
      underWay("forgotten then", 400, { "Ready on": later(AS_OF, -5), "Ready plants": 6 }),
    ]);
    expect(listed).toEqual([]);
  });

  it("finds nothing where there are no batches at all", () => {
    expect(look([])).toEqual([]);
  });
});

describe("looking back sees nothing of what came later", () => {
  const RANGE = ["readyFrom", "readyBy", "fewest", "most"] as const;
  const begun: readonly Facts[] = [
    underWay("B-1", 20),
    underWay("B-2", 50, {
      "First release": later(THEN, -36),
      "Take count day": later(THEN, -20),
      Takes: 80,
    }),
    underWay("B-3", 80, { "First release": later(THEN, -66), "First flush": later(THEN, -40) }),
    { Batch: "B-4", Variety: "Nera", Place: "Bay 1", Sown: later(THEN, -60), "Seeds sown": 200 },
  ];
  const rangesOf = (batches: readonly Facts[]) =>
    new Map(lookFromLater(batches).map((row) => [row.batch, RANGE.map((name) => row[name])]));
  const done: Facts = { "Ready on": later(THEN, 110), "Ready plants": 60 };
  const plain = rangesOf([...PAST, ...begun.map((facts) => ({ ...facts, ...done }))]);

  it("and has the four batches in view", () => {
    expect([...plain.keys()]).toEqual(["B-1", "B-2", "B-3", "B-4"]);
  });

  const anyLaterDay = fc
    .integer({ min: 1, max: DAYS_BEFORE + 60 })
    .map((days) => later(THEN, days));
  const anyCount = fc.integer({ min: 0, max: 200 });
  /** Whatever is written down later: days after the day looked back to, counts with them. */
  const laterFacts = fc.record<Record<string, Cell>>(
    {
      "Bud break": anyLaterDay,
      Branching: anyLaterDay,
      "Union closed": anyLaterDay,
      "Ready on": anyLaterDay,
      "Ready plants": anyCount,
      Culled: anyCount,
      Dispatched: anyCount,
      Closed: fc.constantFrom<Cell>("yes", "no", later(THEN, 5)),
    },
    { requiredKeys: [] },
  );

  it("whatever is done to the batches then under way, and to later ones", () => {
    fc.assert(
      fc.property(
        fc.tuple(laterFacts, laterFacts, laterFacts, laterFacts),
        fc.array(fc.tuple(anyLaterDay, anyCount, anyCount), { maxLength: 4 }),
        (changes, others) => {
          const changed = begun.map((facts, at) => ({ ...facts, ...changes[at] }));
          const later_ = others.map(([grafted, plants, taken], at) => ({
            ...{ Batch: `L-${at}`, Variety: "Alba", Place: "Bay 1", "Grafted on": grafted },
            ...{ "Grafts made": plants, "Take count day": later(grafted, 30), Takes: taken },
          }));
          for (const [name, range] of rangesOf([...PAST, ...changed, ...later_])) {
            expect([name, range]).toEqual([name, plain.get(name)]);
          }
        },
      ),
      { numRuns: 60 },
    );
  });

  it("nor of batches taken from a lot later", () => {
    const child = {
      ...{ Batch: "C-1", "From lot": "B-1", Variety: "Alba", Place: "Bay 1" },
      ...{ "Grafted on": later(THEN, 10), "Grafts made": 90 },
    };
    const batches = [...PAST, ...begun.map((facts) => ({ ...facts, ...done })), child];
    expect(rangesOf(batches).get("B-1")).toEqual(plain.get("B-1"));
  });

  it("nor of plants that came from a lot by a line of a later day", () => {
    const log = (lines: Cell[][]) => {
      const records = reading([
        ["Day", "Batch", "From lot", "Step", "Count"],
        [later(THEN, -90), "B-1", "", "Sowing", 200],
        [later(THEN, -20), "B-2", "B-1", "Grafting", ""],
        ...lines,
        [later(THEN, 92), "B-2", "", "Ready", ""],
      ]);
      return listedBy({ ...questionOf([]), records, daysBefore: DAYS_BEFORE })[0];
    };
    const unknown = log([]);
    expect(unknown).toMatchObject({ batch: "B-2", fewest: null, most: null });
    expect(log([[later(THEN, 30), "B-2", "B-1", "Split off", 50]])).toEqual(unknown);
  });

  it("nor of what older batches came to after that day", () => {
    const slow = { Batch: "S-1", Variety: "Alba", Place: "Bay 1", "Grafts made": 100 };
    const older = { ...slow, "Grafted on": later(THEN, -90) };
    const withOlder = (facts: Facts) =>
      rangesOf([...PAST, ...begun.map((one) => ({ ...one, ...done })), { ...older, ...facts }]);
    const unknown = withOlder({});
    for (const facts of [
      { "Ready on": later(THEN, 1), "Ready plants": 1 },
      { "Ready on": later(THEN, 100), "Ready plants": 100 },
      { Closed: "yes" },
      { Dispatched: 100 },
    ]) {
      for (const name of ["B-1", "B-2", "B-3", "B-4"]) {
        expect([name, withOlder(facts).get(name)]).toEqual([name, unknown.get(name)]);
      }
    }
  });

  it("and looks no farther back than it is told", () => {
    const batches = [...PAST, ...begun.map((facts) => ({ ...facts, ...done }))];
    const known = (daysBefore: number) => {
      const { rows, notYet } = lookback({ ...questionOf(batches), daysBefore });
      return rows.length + notYet;
    };
    // Ready on day 110 of 120: on the way, by what was known, up to 10 days before the as-of day.
    expect(known(11)).toBeGreaterThan(0);
    expect(known(10)).toBe(0);
    expect(day(AS_OF) - day(later(THEN, 110))).toBe(10);
  });
});
