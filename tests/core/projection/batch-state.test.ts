import { describe, expect, it } from "vitest";
import { day } from "../../support/days";
import { COCOA, stateOf, stepNumber } from "./states";

describe("where a batch stands", () => {
  it("is the last recorded step, and its steps up to there are past", () => {
    const state = stateOf({ Sown: "2026-05-01", "Grafted on": "2026-08-01", "Grafts made": 90 });
    expect(state.reached).toBe(stepNumber("Grafting"));
    expect(state.lastDone).toBe(stepNumber("Grafting"));
    expect(state.lastCounted).toBe(stepNumber("Grafting"));
    expect([state.plants, state.open]).toEqual([90, true]);
    expect(state.doneOn[stepNumber("Sowing")]).toBe(day("2026-05-01"));
    expect(state.doneOn[stepNumber("Germination")]).toBeNull();
  });

  it("does not know a step that is written down for a day to come", () => {
    const state = stateOf({ Sown: "2026-08-01", "Grafted on": "2026-12-01", "Grafts made": 90 });
    expect(state.reached).toBe(stepNumber("Sowing"));
    expect(state.plannedOn[stepNumber("Grafting")]).toBe(day("2026-12-01"));
    expect([state.doneOn[stepNumber("Grafting")], state.counts[stepNumber("Grafting")]]).toEqual([
      null,
      null,
    ]);
    expect(state.plants).toBeNull();
  });

  it("counts the as-of day itself as done", () => {
    const state = stateOf({ "Grafted on": "2026-11-25" });
    expect(state.lastDone).toBe(stepNumber("Grafting"));
  });

  it("is reached by a count without a day", () => {
    const state = stateOf({ Sown: "2026-05-01", Takes: 70 });
    expect(state.reached).toBe(stepNumber("Take count"));
    expect(state.lastDone).toBe(stepNumber("Sowing"));
    expect(state.plants).toBe(70);
  });

  it("has the step with the latest day as its last, though it stands earlier in the method", () => {
    const state = stateOf({ "First release": "2026-09-01", "Bud break": "2026-08-20" });
    expect(state.lastDone).toBe(stepNumber("First release"));
    expect(state.reached).toBe(stepNumber("Bud break"));
  });

  it("is nowhere with nothing recorded", () => {
    const state = stateOf({});
    expect([state.reached, state.lastDone, state.lastCounted, state.plants, state.open]).toEqual([
      ...[-1, null, null, null, true],
    ]);
    expect(state.doneOn).toEqual(COCOA.steps.map(() => null));
  });
});

describe("plants that stand", () => {
  it.each([
    // What was recorded, the plants of the last count less what is known to have gone.
    [{ "Grafts made": 100 }, 100],
    [{ "Seeds sown": 100, Germinated: 80 }, 80],
    [{ "Grafts made": 100, Takes: 0 }, 0],
    [{ "Grafts made": 100, Takes: 80, Dispatched: 30 }, 50],
    [{ "Grafts made": 100, Takes: 80, Culled: 20 }, 80],
    [{ "Grafts made": 100, Takes: 80, Culled: 35 }, 65],
    [{ "Grafts made": 100, Culled: 5, Dispatched: 10 }, 85],
    [{ "Grafts made": 100, Takes: 80, Dispatched: 80 }, 0],
    [{ "Grafts made": 100, Dispatched: 120 }, 0],
    [{ Dispatched: 10 }, null],
  ] as const)("after %o are %s", (facts, plants) => {
    expect(stateOf(facts).plants).toBe(plants);
  });
});

describe("a batch is open", () => {
  it.each([
    [{}, true],
    [{ "Grafts made": 100 }, true],
    [{ "Grafts made": 100, Closed: "yes" }, false],
    [{ "Grafts made": 100, Closed: "2026-10-01" }, false],
    [{ "Grafts made": 100, Closed: "no" }, true],
    [{ "Grafts made": 100, Takes: 0 }, false],
    [{ "Grafts made": 100, Dispatched: 100 }, false],
    [{ "Grafts made": 100, Culled: 100 }, false],
    [{ "Ready plants": 40, Dispatched: 39 }, true],
  ] as const)("with %o: %s", (facts, open) => {
    expect(stateOf(facts).open).toBe(open);
  });
});
