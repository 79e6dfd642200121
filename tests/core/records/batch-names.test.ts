import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { nameShape } from "../../../src/core/records/batch-names";

describe("the shape of a batch's name", () => {
  it.each([
    ["T24-01", "a9-9"],
    ["H 26--007b", "a 9--9a"],
    ["Lote nº 7", "a a 9"],
    ["", ""],
  ])("%s is %s", (name, shape) => {
    expect(nameShape(name)).toBe(shape);
  });

  it("is the same letter by letter as by the letters and digits that Unicode names", () => {
    fc.assert(
      fc.property(fc.string({ unit: "grapheme" }), (name) => {
        expect(nameShape(name)).toBe(name.replace(/\p{L}+/gu, "a").replace(/\p{N}+/gu, "9"));
      }),
    );
    fc.assert(
      fc.property(fc.string({ unit: "binary-ascii" }), (name) => {
        expect(nameShape(name)).toBe(name.replace(/\p{L}+/gu, "a").replace(/\p{N}+/gu, "9"));
      }),
    );
  });
});
