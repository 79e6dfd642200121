import { describe, expect, it } from "vitest";
import { dayForecaster } from "../../../src/core/projection/forecast-days";
import { plantForecaster } from "../../../src/core/projection/forecast-plants";
import { timetableForecaster } from "../../../src/core/projection/forecaster";
import { day, iso } from "../../support/days";
import { COCOA, stateOf, stepNumber } from "./states";

const AS_OF = "2026-11-25";
const forecaster = timetableForecaster();

function rangeOf(facts: Parameters<typeof stateOf>[0], step: string, level = 0.8, asOf = AS_OF) {
  const days = dayForecaster(forecaster, day(asOf), level);
  const range = days.range(stateOf(facts, asOf), stepNumber(step));
  return range === null ? null : [range.from, range.likely, range.by].map(iso);
}

describe("days forecast", () => {
  it("are the recorded day where it is recorded, and the planned one where it is planned", () => {
    expect(rangeOf({ "Grafted on": "2026-10-01" }, "Grafting")).toEqual([
      ...["2026-10-01", "2026-10-01", "2026-10-01"],
    ]);
    expect(rangeOf({ "Grafted on": "2026-12-10" }, "Grafting")).toEqual([
      ...["2026-12-10", "2026-12-10", "2026-12-10"],
    ]);
  });

  it("count on from a planned day", () => {
    const planned = rangeOf({ Sown: "2026-09-01", "Grafted on": "2026-12-10" }, "Ready");
    const done = rangeOf({ "Grafted on": "2026-12-10" }, "Ready", 0.8, "2026-12-10");
    expect(planned).toEqual(done);
  });

  it("are none where no step on the line of After has a day", () => {
    expect(rangeOf({}, "Ready")).toBeNull();
    expect(rangeOf({ Takes: 80 }, "Ready")).toBeNull();
    // Germination hangs on sowing alone, and nothing hangs on germination.
    expect(rangeOf({ "Germination day": "2026-09-10" }, "Ready")).toBeNull();
  });

  it("lie in the timetable's window for a step that has just begun", () => {
    const [from, likely, by] = rangeOf({ "Grafted on": AS_OF }, "Ready") as string[];
    expect(day(from as string) - day(AS_OF)).toBeGreaterThanOrEqual(105);
    expect(day(by as string) - day(AS_OF)).toBeLessThanOrEqual(122);
    expect(Math.abs(day(likely as string) - day(AS_OF) - 112)).toBeLessThanOrEqual(1);
  });

  it("never lie before tomorrow for a step that is still waiting, however late it is", () => {
    for (const grafted of ["2026-11-24", "2026-08-01", "2026-03-01", "2020-01-01", "2012-01-01"]) {
      for (const step of ["First release", "Ready"]) {
        const days = rangeOf({ "Grafted on": grafted }, step) as string[];
        for (const text of days) expect(day(text)).toBeGreaterThan(day(AS_OF));
        expect(days).toEqual([...days].sort());
      }
    }
  });

  it("lie on the as-of day at the latest for a step passed without a record", () => {
    for (const grafted of ["2026-11-01", "2026-11-11", "2026-11-13"]) {
      const days = rangeOf({ "Grafted on": grafted, Takes: 90 }, "First release", 0.99) as string[];
      for (const text of days) expect(day(text)).toBeLessThanOrEqual(day(AS_OF));
      expect(day(days[0] as string)).toBeGreaterThan(day(grafted));
    }
  });

  it("don't stop at records that can't be: a step passed before it could be", () => {
    expect(rangeOf({ "Grafted on": AS_OF, Takes: 90 }, "First release")).toEqual([
      ...[AS_OF, AS_OF, AS_OF],
    ]);
  });

  it("widen with the level", () => {
    const widths = [0.5, 0.8, 0.95].map((level) => {
      const days = rangeOf({ Sown: AS_OF }, "Ready", level) as string[];
      return day(days[2] as string) - day(days[0] as string);
    });
    expect(widths).toEqual([...widths].sort((a, b) => a - b));
    expect(new Set(widths).size).toBe(3);
  });

  it("are the same for two batches that wait alike, whichever is asked first", () => {
    const forecast = dayForecaster(forecaster, day(AS_OF), 0.8);
    const facts = { "Grafted on": "2026-11-01" };
    const first = forecast.range(stateOf(facts), stepNumber("Ready"));
    forecast.range(stateOf({ "Grafted on": "2026-11-02" }), stepNumber("Ready"));
    forecast.range(stateOf({ ...facts, Takes: 3 }), stepNumber("First flush"));
    forecast.range(stateOf(facts), stepNumber("First flush"));
    expect(forecast.range(stateOf(facts), stepNumber("Ready"))).toEqual(first);
    const flush = (batch: Parameters<typeof stateOf>[0]) =>
      dayForecaster(forecaster, day(AS_OF), 0.8).range(stateOf(batch), stepNumber("First flush"));
    expect(forecast.range(stateOf(facts), stepNumber("First flush"))).toEqual(flush(facts));
    expect(forecast.range(stateOf({ ...facts, Takes: 3 }), stepNumber("First flush"))).toEqual(
      flush({ ...facts, Takes: 3 }),
    );
  });
});

describe("plants forecast", () => {
  const range = (facts: Parameters<typeof stateOf>[0], step: string, level = 0.8) =>
    plantForecaster(forecaster, level)(stateOf(facts), stepNumber(step));

  it("are those counted where no counted step lies between", () => {
    expect(range({ "Grafts made": 90 }, "Bud break")).toEqual({ fewest: 90, likely: 90, most: 90 });
    expect(range({ "Ready plants": 70 }, "Ready")).toEqual({ fewest: 70, likely: 70, most: 70 });
  });

  it("are none where none were ever counted", () => {
    expect(range({ "Grafted on": "2026-11-01" }, "Ready")).toBeNull();
  });

  it("are 0 to the plants standing, in order, and widen with the level", () => {
    for (const plants of [1, 2, 9, 250, 4999, 5001, 200_000]) {
      const narrow = range({ "Grafts made": plants }, "Ready", 0.5);
      const wide = range({ "Grafts made": plants }, "Ready", 0.95);
      const order = [
        0,
        wide?.fewest,
        narrow?.fewest,
        narrow?.likely,
        narrow?.most,
        wide?.most,
        plants,
      ];
      expect(order).toEqual([...order].sort((a, b) => (a as number) - (b as number)));
      expect(order.every(Number.isInteger)).toBe(true);
    }
  });

  it("count from what stands: dispatched plants are not forecast again", () => {
    expect(range({ Takes: 100, Dispatched: 40 }, "Ready")).toEqual(range({ Takes: 60 }, "Ready"));
  });

  it("follow the timetable's shares: the likely count lies near their product", () => {
    const likely = range({ "Seeds sown": 1000 }, "Ready")?.likely as number;
    const kept = COCOA.steps.reduce((all, step) => all * (step.kept ?? 1), 1);
    expect(Math.abs(likely - 1000 * kept)).toBeLessThan(10);
  });
});
