import { describe, expect, it } from "vitest";
import { nearAlike } from "../../../src/core/names";

// The first four are seen words of tests/checks/office-words, which its SOURCE.md tells of.
describe("names that may be another's with a word left out or cut short", () => {
  it.each([
    ["Ella", "Sweet Ella"],
    ["Nubia", "Nubia 3"],
    ["Pl. 10", "Planche 10"],
    ["Sr Ilo", "Sister Ilo"],
    ["Pell and Sons", "Pell & Sons"],
    ["Bay 2 N", "Bay 2 north"],
    // Seen in practice, by others, and never asked about.
    ["Dorée", "Dorée du Lac"],
    ["Nave 2", "Nave 2B"],
    ["Puebla X", "Puebla X2"],
    ["Naungan 3", "Naungan 3 blkg"],
    ["Boa Lua", "Faz. Boa Lua"],
    ["KT Sari Mukti", "Kel. Tani Sari Mukti"],
    ["Bu Lenggo", "Ibu Lenggo"],
    ["T. Rathi", "T. Rathi + Bhomu"],
    ["B. Tally", "Mrs Tally"],
    ["Rugo", "Rugoso"],
    ["Ste Rose", "Sainte Rose"],
  ])("%s and %s", (one, other) => {
    expect(nearAlike([one, other])).toEqual([[one, other].sort()]);
  });

  it.each([
    // Two numbers: Bed 1 is a bed, and Bed 1-1 another.
    [["Bed 1", "Bed 1-1"]],
    [["Bay 2 north", "Bay 2 south"]],
    [["1-1", "1-11"]],
    // A selection of its own.
    [["Sweet Ella", "Sweet Ella Late"]],
    [["1-1", "Bed 1-1"]],
    // A way of naming, in which the short name is a name.
    [["Bay", "Bay 1", "Bay 2", "Bay 3"]],
    // Less than half of a name is its beginning only where a point says so.
    [["Amb", "Amberlow"]],
  ])("are none of %j", (names) => {
    expect(nearAlike(names)).toEqual([]);
  });

  it.each([
    [["Rasa", "Rasamani"]],
    [["K. Asantor", "Kofi A. Asantor"]],
    [["Asantor", "Kofi A. Asantor"]],
    [["Local seedling", "local sdlg"]],
    [["híb. vega", "híbrido vega"]],
    [["Tumaini Growers", "Tumaini Growers (Upper)"]],
  ])("may be one: %j", (names) => {
    expect(nearAlike(names)).toEqual([names]);
  });

  it("are one of those with a point", () => {
    expect(nearAlike(["Amb.", "Amberlow"])).toEqual([["Amb.", "Amberlow"]]);
  });
});
