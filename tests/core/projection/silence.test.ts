import { describe, expect, it } from "vitest";
import { dueAnswer } from "../../../src/core/due/due-answer";
import { isSilent } from "../../../src/core/projection/silence";
import { stagesAnswer } from "../../../src/core/projection/stages-answer";
import { stepsAnswer } from "../../../src/core/projection/steps-answer";
import { rowsByName } from "../../support/answers";
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

  it("gets no forecast, and a remark that says since when and what to do", () => {
    const question = questionOf([grafted(200), { ...grafted(20), Batch: "B-2" }]);
    const [first, second] = rowsByName(stagesAnswer(question));
    expect(first).toMatchObject({
      ...{ Batch: "B-1", "Last step": "Grafting", Plants: 100, "Next step": "First release" },
      ...{ "Next from": null, "Next likely": null, "Next by": null },
      ...{ "Ready from": null, "Ready likely": null, "Ready by": null },
      ...{ "Fewest ready": null, "Likely ready": null, "Most ready": null },
      Remark: "Nothing recorded since 9 May 2026: set aside. Close it, or record what happened",
    });
    expect(second?.["Likely ready"]).not.toBeNull();
    const steps = rowsByName(stepsAnswer(question)).filter(({ Batch }) => Batch === "B-1");
    expect(steps.find(({ Step }) => Step === "Grafting")?.["Recorded on"]).toBe("2026-05-09");
    for (const { From, Likely, By, Fewest, Most } of steps) {
      expect([From, Likely, By, Fewest, Most]).toEqual([null, null, null, null, null]);
    }
  });

  it("stays on the due list: nobody has said that it is done", () => {
    const rows = rowsByName(dueAnswer({ ...questionOf([grafted(200)]), daysAhead: 7 }));
    expect(rows.find(({ Task }) => Task === "First release")).toMatchObject({
      ...{ Batch: "B-1", Status: "late", "Days late": 182 },
    });
  });
});
