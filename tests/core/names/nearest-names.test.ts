import { describe, expect, it } from "vitest";
import { nearestNames, slipsBetween } from "../../../src/core/names/nearest-names";

describe("slipsBetween", () => {
  // Levenshtein's own measure; the first two pairs and their numbers are those of Wagner and Fischer's
  // successors in every textbook (from memory): kitten → sitting 3, Saturday → Sunday 3.
  it.each([
    ["kitten", "sitting", 3],
    ["saturday", "sunday", 3],
    ["", "abc", 3],
    ["abc", "abc", 0],
  ])("counts from %s to %s %i", (one, other, slips) => {
    expect(slipsBetween(one, other)).toBe(slips);
    expect(slipsBetween(other, one)).toBe(slips);
  });
});

describe("nearestNames", () => {
  const known = ["Amberlow", "Corvane", "Nera", "Amel 3"];
  it("gives the names that a slip may have meant, the nearest first", () => {
    expect(nearestNames("Corvnae", known)).toEqual(["Corvane"]);
    expect(nearestNames("Amberlov", known)).toEqual(["Amberlow"]);
    expect(nearestNames("AMEL 8", known)).toEqual(["Amel 3"]);
    expect(nearestNames("nora", known)).toEqual(["Nera"]);
  });

  it("gives none where all are far off, and three at most", () => {
    expect(nearestNames("Zulu", known)).toEqual([]);
    expect(nearestNames("V05", ["V01", "V02", "V03", "V04"])).toEqual(["V01", "V02", "V03"]);
  });
});
