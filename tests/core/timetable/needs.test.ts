import { describe, expect, it } from "vitest";
import { inches } from "../../../src/core/timetable/lengths";
import { needsText, readNeeds } from "../../../src/core/timetable/needs";

describe("readNeeds", () => {
  it("reads the list of the contract", () => {
    expect(readNeeds("tape 38 cm; bag 1; potting mix 1.4 l")).toEqual([
      { item: "tape", amount: 38, unit: "cm" },
      { item: "bag", amount: 1, unit: "" },
      { item: "potting mix", amount: 1.4, unit: "l" },
    ]);
  });

  it.each([
    ["", []],
    [" ; \n ", []],
    ["bag 1,5", [{ item: "bag", amount: 1.5, unit: "" }]],
    ["15 cm pot 1", [{ item: "15 cm pot", amount: 1, unit: "" }]],
    ["tape 38cm", [{ item: "tape", amount: 38, unit: "cm" }]],
    [
      "bag 1\ntape 2 m",
      [
        { item: "bag", amount: 1, unit: "" },
        { item: "tape", amount: 2, unit: "m" },
      ],
    ],
  ])("reads %j", (text, needs) => {
    expect(readNeeds(text)).toEqual(needs);
  });

  it.each(["bag", "1", "bag one", "bag -1", "bag 1; tape", "bag 3 4"])(
    "does not guess at %j",
    (text) => {
      expect(readNeeds(text)).toBeNull();
    },
  );

  it("is taken back by needsText", () => {
    const text = "tape 38 cm; bag 1; potting mix 1.4 l";
    expect(needsText(readNeeds(text) ?? [])).toBe(text);
    expect(needsText([])).toBe("");
  });
});

describe("inches", () => {
  // 1 in = 2.54 cm exactly (international yard and pound agreement of 1959; NIST SP 811, app. B).
  it.each([
    [1, 2.54],
    [1.5, 3.81],
    [15, 38.1],
    [12, 30.48],
    [2, 5.08],
    [5, 12.7],
    [6, 15.24],
    [0.25, 0.635],
    [36, 91.44],
  ])("makes %s in exactly %s cm", (length, centimetres) => {
    expect(inches(length)).toBe(centimetres);
  });
});
