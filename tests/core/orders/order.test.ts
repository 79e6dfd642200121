import { describe, expect, it } from "vitest";
import { foldName } from "../../../src/core/names/fold-name";
import { firstVariety, varietiesOf } from "../../../src/core/orders/wishes";

const KNOWN = new Map(
  ["Amberlow", "Tall or Red", "Oro o Plata", "Amel 3"].map((name) => [foldName(name), name]),
);
const of = (variety: string) => varietiesOf({ variety }, KNOWN);

describe("the varieties of an order", () => {
  it.each([
    ["Amberlow", ["amberlow"]],
    ["Amberlow or Corvane", ["amberlow", "corvane"]],
    ["Amberlow / Corvane; Ellowen", ["amberlow", "corvane", "ellowen"]],
    ["Tall or Red", ["tall or red"]],
    // The batches of "Tall or Red" were not set aside for an order that takes another one too.
    ["Amberlow or Tall or Red", ["amberlow", "tall or red"]],
    ["TALL OR RED, Corvane", ["tall or red", "corvane"]],
    ["Oro o Plata ou Tall or Red ou Amberlow", ["oro o plata", "tall or red", "amberlow"]],
    ["Tall or Blue", ["tall", "blue"]],
    ["Amberlow or Amberlow", ["amberlow"]],
    ["", []],
  ])("of %j are %j", (variety, varieties) => {
    expect(of(variety)).toEqual(varieties);
  });

  it("are read in no time from however long a cell", () => {
    expect(of("a,".repeat(20_000)).length).toBe(1);
    // A cell of 50,000 took more than a minute, where a function has half of one.
    const spaced = `x${" ".repeat(400_000)}y`;
    expect(of(spaced)).toEqual(["x y"]);
    expect(of(`${spaced} or Amberlow`)).toEqual(["x y", "amberlow"]);
  }, 10_000);

  it("are found however they are spelt, and are called as the records call them", () => {
    expect(of("AMEL-3 or amberlow")).toEqual(["amel3", "amberlow"]);
    expect(firstVariety({ variety: "amel3" }, KNOWN)).toBe("Amel 3");
  });

  it("come as they are written, for a sentence", () => {
    expect(firstVariety({ variety: "Tall or Red or Amberlow" }, KNOWN)).toBe("Tall or Red");
  });
});
