import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { likeName, nameShape } from "../../../src/core/records/batch-names";

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

describe("a batch's name made comparable", () => {
  it("is the same letter by letter as by the signs that are left out", () => {
    const bySigns = (name: string) =>
      name
        .normalize("NFKC")
        .toLowerCase()
        .replace(/[\s\-–_./]+/g, "")
        .replace(/(?<=\d)o|o(?=\d)/g, "0");
    const signs = fc.constantFrom(..."oO0159aZ -–_./,;|~{é　Ⅳ\t");
    const names = [fc.string({ unit: "grapheme" }), fc.string({ unit: "binary-ascii" })];
    for (const some of [...names, fc.array(signs).map((all) => all.join(""))]) {
      fc.assert(
        fc.property(some, (name) => {
          expect(likeName(name)).toBe(bySigns(name));
        }),
      );
    }
  });
});
