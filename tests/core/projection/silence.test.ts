import { describe, expect, it } from "vitest";
import { dueTasks } from "../../../src/core/due/due-tasks";
import { stagesOf } from "../../../src/core/projection/batch-stages";
import { stepsOf } from "../../../src/core/projection/batch-steps";
import { isSilent } from "../../../src/core/projection/silence";
import { day } from "../../support/days";
import { AS_OF, type Facts, later, learnedFrom, questionOf } from "./nursery";

/** Grafted so many days ago; the first release is due by day 18. */
const grafted = (ago: number, more: Facts = {}): Facts => ({
  ...{ Batch: "B-1", Variety: "Alba", Place: "Bay 1", "Grafts made": 100 },
  ...{ "Grafted on": later(AS_OF, -ago), ...more },
});
const silent = (facts: Facts, options = {}) =>
  isSilent(learnedFrom([facts], options).states[0] as never);

describe("a batch of which nothing is written any more", () => {
  it.each([
    [18, false],
    [18 + 120, false],
    [18 + 121, true],
    [1000, true],
  ])("grafted %d days ago, next step due by day 18: %s", (ago, expected) => {
    expect(silent(grafted(ago))).toBe(expected);
  });

  it("is not silent while something later is written, or planned", () => {
    expect(silent(grafted(150, { "Bud break": later(AS_OF, -100) }))).toBe(false);
    expect(silent(grafted(150, { "First release": later(AS_OF, 5) }))).toBe(false);
  });

  it("is not called silent once it is ready, or where no day was ever written", () => {
    expect(silent(grafted(900, { "Ready on": later(AS_OF, -700), "Ready plants": 50 }))).toBe(
      false,
    );
    expect(
      silent({ Batch: "B-1", Variety: "Alba", Place: "Bay 1", "Grafts made": 50, Takes: 40 }),
    ).toBe(false);
  });

  it("waits for the steps that the table has columns for only", () => {
    const columns = ["Batch", "Variety", "Place", "Grafted on", "Grafts made", "Ready on"];
    // Ready is due by day 122.
    expect(silent(grafted(122 + 120), { columns })).toBe(false);
    expect(silent(grafted(122 + 121), { columns })).toBe(true);
  });

  it("gets no forecast, and a remark that says since when", () => {
    const question = questionOf([grafted(200), { ...grafted(20), Batch: "B-2" }]);
    const [first, second] = stagesOf(question).rows;
    expect(first).toMatchObject({
      ...{ batch: "B-1", lastStep: "Grafting", plants: 100, nextStep: "First release" },
      ...{ nextFrom: null, nextLikely: null, nextBy: null },
      ...{ readyFrom: null, readyLikely: null, readyBy: null },
      ...{ fewestReady: null, likelyReady: null, mostReady: null },
      remark: { code: "set-aside", since: day("2026-05-09") },
    });
    expect(second?.likelyReady).not.toBeNull();
    const steps = stepsOf(question).rows.filter(({ batch }) => batch === "B-1");
    expect(steps.find(({ step }) => step === "Grafting")?.recordedOn).toBe(day("2026-05-09"));
    for (const { from, likely, by, fewest, most } of steps) {
      expect([from, likely, by, fewest, most]).toEqual([null, null, null, null, null]);
    }
  });

  it("stays on the due list: nobody has said that it is done", () => {
    const { rows: tasks } = dueTasks({ ...questionOf([grafted(200)]), daysAhead: 7 });
    expect(tasks.find(({ step }) => step.name === "First release")).toMatchObject({
      ...{ batch: "B-1", status: "late", daysLate: 182 },
    });
  });
});
