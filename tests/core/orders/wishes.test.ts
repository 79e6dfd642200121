import { describe, expect, it } from "vitest";
import { foldName } from "../../../src/core/names/fold-name";
import { grants, wishesOf } from "../../../src/core/orders/wishes";

/**
 * What a customer's cell means, written down before the code as orders are taken on the phone (invented,
 * from memory, no source).
 */
const KNOWN = new Map(
  ["Amberlow", "Amel 3", "Any Day", "Mango"].map((name) => [foldName(name), name]),
);
const of = (variety: string, crop = "", known: ReadonlyMap<string, string> = KNOWN) =>
  wishesOf({ variety, crop }, known).map((wish) => [wish.variety, wish.crops.join("+")]);

describe("what an order takes", () => {
  it.each([
    ["any cocoa"],
    ["Cocoa"],
    ["ANY COCOA."],
    ["cocoa, any variety"],
    ["any variety of cocoa"],
    ["cocoa - any"],
    ["cocoa (any clone)"],
    ["cacao (cualquiera)"],
    ["cualquier variedad de cacao"],
    ["cacao, n'importe laquelle"],
    ["cacao, toute variété"],
    ["qualquer cacau"],
    ["cacau (tanto faz)"],
    ["kakao apa saja"],
    ["grafted cocoa"],
  ])("of %j is any of the crop", (variety) => {
    expect(of(variety)).toEqual([[null, "cocoa"]]);
  });

  it.each([
    [""],
    ["any"],
    ["Any variety"],
    ["cualquiera"],
    ["-"],
    ["peu importe"],
    ["no preference"],
  ])("of %j is any, of the crop that stands beside it", (variety) => {
    expect(of(variety)).toEqual([]);
    expect(of(variety, "Cacao")).toEqual([[null, "cocoa"]]);
  });

  it.each([
    [
      "any cocoa or Zulu",
      [
        [null, "cocoa"],
        ["zulu", ""],
      ],
    ],
    [
      "any cocoa or any avocado",
      [
        [null, "cocoa"],
        [null, "avocado"],
      ],
    ],
    [
      "Amberlow or any avocado",
      [
        ["amberlow", ""],
        [null, "avocado"],
      ],
    ],
    ["cocoa Amel-3", [["amel3", "cocoa"]]],
    ["Amel 3 (cocoa)", [["amel3", "cocoa"]]],
    // What batches are called goes before what words mean.
    ["Any Day", [["any day", ""]]],
    ["Mango", [["mango", ""]]],
    // A crop that no language knows, and a slip of a variety.
    ["any guava", [[null, "guava"]]],
    ["Amberlo", [["amberlo", ""]]],
    // A kind is not the whole of its crop: lemons for an order of limes would be a false promise.
    ["Lime", [["lime", ""]]],
    ["Robusta", [["robusta", ""]]],
  ])("of %j is %j", (variety, wishes) => {
    expect(of(variety)).toEqual(wishes);
  });

  it("is a variety of the crop that stands beside it", () => {
    expect(of("Amberlow", "mango")).toEqual([["amberlow", "mango"]]);
    expect(of("Lime", "Citrus")).toEqual([["lime", "citrus"]]);
  });

  it("is granted by batches that are called so", () => {
    const wish = (variety: string, crop = "") => wishesOf({ variety, crop }, KNOWN);
    const batch = (variety: string, ...crops: string[]) => ({ variety: foldName(variety), crops });
    expect(grants(wish("any cocoa"), batch("Amberlow", "cocoa"))).toBe(true);
    expect(grants(wish("any cocoa"), batch("", "cocoa"))).toBe(true);
    expect(grants(wish("any cocoa"), batch("Amberlow", "mango"))).toBe(false);
    expect(grants(wish("any cocoa"), batch("Amberlow"))).toBe(false);
    expect(grants(wish("Amberlow", "mango"), batch("Amberlow", "cocoa"))).toBe(false);
    expect(grants(wish(""), batch("Amberlow", "mango"))).toBe(true);
    // A crop that only the records know, by their own word.
    expect(grants(wish("Guava"), batch("Kew", "guava"))).toBe(true);
    // A variety that is called like a crop is itself alone.
    expect(grants(wish("Mango"), batch("Kew", "mango"))).toBe(false);
    expect(grants(wish("Mango"), batch("Mango", "mango"))).toBe(true);
  });
});
