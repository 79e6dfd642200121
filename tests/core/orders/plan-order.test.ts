import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { chanceWithin, daysToReady } from "../../../src/core/orders/days-to-ready";
import { type OrderToPlan, planOrder } from "../../../src/core/orders/plan-order";
import { chanceOfAtLeast } from "../../../src/core/orders/smallest-start";
import { timetableForecaster } from "../../../src/core/projection/forecaster";
import { builtInTimetable } from "../../../src/core/timetable/read-timetable";
import type { Method } from "../../../src/core/timetable/timetable";
import { day, iso } from "../../support/days";
import { learnedFrom } from "../projection/nursery";
import { timetableOf } from "../timetable/typed-timetable";

const COCOA = builtInTimetable().methods[0] as Method;
const order: OrderToPlan = {
  wanted: 100,
  readyBy: day("2027-09-01"),
  method: COCOA,
  assurance: 0.8,
  forecaster: timetableForecaster(),
  variety: "",
  asOf: null,
};

function methodOf(text: string): Method {
  const { timetable, faults } = timetableOf(text);
  expect(faults).toEqual([]);
  return timetable.methods[0] as Method;
}

const at = (plan: ReturnType<typeof planOrder>, name: string) => {
  const found = plan.steps.find(({ step }) => step.name === name);
  if (found === undefined) throw new Error(`no step ${name}`);
  return found;
};

describe("a plan", () => {
  const plan = planOrder(order);

  it("makes enough plants and the day hold together with the assurance", () => {
    const { forecaster } = order;
    const share = forecaster.kept({
      method: COCOA,
      after: 0,
      upTo: COCOA.ready,
      variety: "",
      from: null,
    });
    const { plants, doBy } = at(plan, "Sowing");
    const enough = chanceOfAtLeast(100, plants as number, share);
    const inTime = chanceWithin(
      daysToReady(COCOA, 0, { forecaster, from: null }),
      order.readyBy - (doBy as number),
    );
    expect(plan.plantChance * plan.dayChance).toBeCloseTo(0.8, 12);
    expect(plan.dayChance).toBeCloseTo(inTime, 12);
    expect(inTime).toBeGreaterThanOrEqual(Math.sqrt(0.8) - 1e-9);
    expect(enough * inTime).toBeGreaterThanOrEqual(0.8);
    // And with one seed fewer both together would not hold, nor the days alone a day later.
    const fewer = chanceOfAtLeast(100, (plants as number) - 1, share);
    expect(fewer * inTime).toBeLessThan(0.8);
    const dayLater = order.readyBy - (doBy as number) - 1;
    expect(chanceWithin(daysToReady(COCOA, 0, { forecaster, from: null }), dayLater)).toBeLessThan(
      Math.sqrt(0.8),
    );
  });

  it("never lets the plants have less than the chance of a day fewer", () => {
    const days = daysToReady(COCOA, 0, { forecaster: order.forecaster, from: null });
    let shared = 0;
    for (let assurance = 0.5; assurance < 0.97; assurance += 0.002) {
      const { plantChance, dayChance } = planOrder({ ...order, assurance });
      expect(plantChance * dayChance).toBeGreaterThanOrEqual(assurance - 1e-12);
      expect(plantChance).toBeLessThanOrEqual(Math.sqrt(assurance) + 1e-12);
      let before = 0;
      for (let day = days.first; chanceWithin(days, day) < dayChance - 1e-9; day += 1) {
        before = chanceWithin(days, day);
      }
      expect(plantChance).toBeGreaterThanOrEqual(before - 1e-12);
      if (plantChance * dayChance < assurance + 1e-9) shared += 1;
    }
    expect(shared).toBeGreaterThan(50);
  });

  it("never needs fewer plants at a step than at the next, nor fewer than the plain division", () => {
    const sizes = plan.steps.map(({ plants }) => plants as number);
    expect(sizes).toEqual([...sizes].sort((a, b) => b - a));
    expect(at(plan, "Ready").plants).toBe(100);
    for (const { plants, plainly } of plan.steps) {
      if (plainly !== null) expect(plants).toBeGreaterThanOrEqual(plainly);
    }
    // 100 ÷ 0.9, ÷ 0.75, ÷ 0.8, ÷ 0.85, each rounded up.
    expect(
      ["Take count", "Grafting", "Germination", "Sowing"].map((name) => at(plan, name).plainly),
    ).toEqual([112, 149, 186, 218]);
  });

  it("has the plants of the last count at a step that counts none", () => {
    expect(at(plan, "First release").plants).toBe(at(plan, "Grafting").plants);
    expect(at(plan, "Branching").plants).toBe(at(plan, "Take count").plants);
    expect(at(plan, "Branching").plainly).toBeNull();
  });

  it("does the steps that ready waits for in their order, ready last on the day asked", () => {
    const days = plan.steps.filter(({ onLine }) => onLine).map(({ doBy }) => doBy as number);
    expect(days).toEqual([...days].sort((a, b) => a - b));
    expect(at(plan, "Ready").doBy).toBe(order.readyBy);
    expect(plan.steps.filter(({ onLine }) => onLine).map(({ step }) => step.name)).toEqual([
      ...["Sowing", "Grafting", "Ready"],
    ]);
  });

  it("does other steps by the timetable's latest day after the step before them", () => {
    const grafting = at(plan, "Grafting").doBy as number;
    expect(at(plan, "First release").doBy).toBe(grafting + 18);
    expect(at(plan, "Bud break").doBy).toBe(grafting + 28);
  });

  it("gives the days the whole assurance where every plant is certain to be kept", () => {
    const method = methodOf(`
      Step  | After  | From day | Usual day | By day | Counted | Kept of 100
      Start |        |          |           |        | yes     |
      Ready | Start  | 30       | 40        | 60     | yes     | 100`);
    const sure = planOrder({ ...order, method });
    const days = daysToReady(method, 0, { forecaster: order.forecaster, from: null });
    const given = order.readyBy - (at(sure, "Start").doBy as number);
    expect(sure.dayChance).toBeCloseTo(chanceWithin(days, given), 12);
    expect(sure.dayChance).toBeGreaterThanOrEqual(0.8);
    expect(chanceWithin(days, given - 1)).toBeLessThan(0.8);
    expect(sure.plantChance).toBe(1);
    expect(at(sure, "Start").plants).toBe(100);
  });

  it("goes by hand where the days are certain but for lateness", () => {
    // 95 of 100 after 30 days exactly, the others a day late, nearly all: PERT of one day.
    const method = methodOf(`
      Step  | After  | From day | Usual day | By day | Counted | Kept of 100
      Start |        |          |           |        | yes     |
      Half  | Start  | 10       | 10        | 10     | yes     | 80
      Ready | Half   | 20       | 20        | 20     | yes     | 100`);
    const planned = planOrder({ ...order, method });
    expect(iso(at(planned, "Start").doBy)).toBe("2027-08-02");
    expect(iso(at(planned, "Half").doBy)).toBe("2027-08-12");
    expect(at(planned, "Start").plainly).toBe(125);
    expect(at(planned, "Half").plants).toBe(100);
  });
});

describe("a plan whose start is past", () => {
  const startBy = at(planOrder(order), "Sowing").doBy as number;

  it("is none on the last day for it, nor where no day is known", () => {
    expect(planOrder({ ...order, asOf: startBy as typeof order.readyBy }).past).toBeNull();
    expect(planOrder(order).past).toBeNull();
  });

  it("can be met the day after from a larger start, and by a day one later from the same", () => {
    const asOf = (startBy + 1) as typeof order.readyBy;
    const { past } = planOrder({ ...order, asOf });
    expect(past?.earliest).toBe(order.readyBy + 1);
    expect(past?.stillEnough).toBeGreaterThan(at(planOrder(order), "Sowing").plants as number);
    const again = planOrder({ ...order, asOf, readyBy: past?.earliest as typeof order.readyBy });
    expect(again.past).toBeNull();
  });

  it("can't be met any more from any start once the days alone are less sure than asked", () => {
    const late = planOrder({ ...order, asOf: (startBy + 20) as typeof order.readyBy });
    expect(late.past?.stillEnough).toBeNull();
    expect(late.past?.earliest).toBe(order.readyBy + 20);
  });
});

describe("a plan on records", () => {
  const batch = (at: number, takes: number) => ({
    ...{ Batch: `B-${at}`, Variety: "Alba", "Seeds sown": 200, Germinated: 180 },
    ...{ "Grafts made": 150, Takes: takes, "Ready plants": takes },
  });

  it("needs fewer plants where the nursery keeps more than the timetable says, more where less", () => {
    const size = (takes: number) => {
      const { method, learned } = learnedFrom(
        Array.from({ length: 12 }, (_, index) => batch(index, takes)),
      );
      return at(planOrder({ ...order, method, forecaster: learned }), "Sowing").plants as number;
    };
    expect(size(145)).toBeLessThan(at(planOrder(order), "Sowing").plants as number);
    expect(size(60)).toBeGreaterThan(at(planOrder(order), "Sowing").plants as number);
  });
});

describe("a plan, for any order", () => {
  const start = (over: Partial<OrderToPlan>) => planOrder({ ...order, ...over }).steps[0];

  it("never starts fewer, nor later, for more plants or to be surer", () => {
    const wanted = fc.integer({ min: 1, max: 600 });
    const sure = fc.double({ min: 0.1, max: 0.97, noNaN: true });
    fc.assert(
      fc.property(wanted, wanted, sure, sure, (w1, w2, a1, a2) => {
        const less = start({ wanted: Math.min(w1, w2), assurance: Math.min(a1, a2) });
        const more = start({ wanted: Math.max(w1, w2), assurance: Math.max(a1, a2) });
        expect(more?.plants).toBeGreaterThanOrEqual(less?.plants as number);
        expect(more?.doBy).toBeLessThanOrEqual(less?.doBy as number);
      }),
      { numRuns: 40 },
    );
  });

  it("never starts fewer, nor later, however little surer it is to be", () => {
    let before = start({ wanted: 37, assurance: 0.7 });
    for (let assurance = 0.7; assurance < 0.95; assurance += 0.0007) {
      const now = start({ wanted: 37, assurance });
      expect(now?.plants).toBeGreaterThanOrEqual(before?.plants as number);
      expect(now?.doBy).toBeLessThanOrEqual(before?.doBy as number);
      before = now;
    }
  });

  it("never starts fewer where a step keeps less", () => {
    const method = (kept: number) =>
      methodOf(`
        Step  | After  | From day | Usual day | By day | Counted | Kept of 100
        Start |        |          |           |        | yes     |
        Half  | Start  | 10       | 12        | 20     | yes     | ${kept}
        Ready | Half   | 20       | 22        | 30     | yes     | 90`);
    const sizes = Array.from(
      { length: 20 },
      (_, at) => start({ method: method(5 + 5 * at) })?.plants,
    );
    expect(sizes).toEqual([...sizes].sort((a, b) => (b as number) - (a as number)));
  });
});
