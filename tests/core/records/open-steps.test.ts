import { describe, expect, it } from "vitest";
import { builtInTimetable } from "../../../src/core/timetable/read-timetable";
import { toldWords } from "../../../src/core/timetable/told-words";
import { reading, toldAs, troublesOf } from "./reading";

const log = (step: string) => [
  ["Date", "Batch", "Step", "Count"],
  ["2026-09-03", "B1", "Grafting", 100],
  ["2026-09-24", "B1", step, ""],
];

describe("a line of a log whose word may be one step or another", () => {
  // "Tape off" was the first opening, and for three other writers it is the last (tests/checks/office-words).
  it.each([
    ["Tape off"],
    ["wrap release"],
    ["bagging"],
    ["topping"],
    ["tri"],
    ["raleo"],
    ["destape"],
  ])("%s is named, and taken for none", (step) => {
    const { lines, troubles } = reading(log(step));
    expect(lines.map(({ row }) => row)).toEqual([2]);
    expect(troublesOf({ troubles })).toEqual(["3 Step: line-without-step"]);
  });

  it("is what a person has told it to be", () => {
    const words = toldWords(toldAs("Tape off", "First release"), builtInTimetable());
    const { lines, troubles } = reading(log("tape off"), { words });
    expect(lines[1]?.what).toEqual({ kind: "step", key: "first release" });
    expect(troubles).toEqual([]);
  });

  it("is the step that a nursery's own timetable calls so", () => {
    const { lines } = reading(log("Tape off"), { stepNames: ["Grafting", "Tape off"] });
    expect(lines.map(({ row }) => row)).toEqual([2, 3]);
  });
});
