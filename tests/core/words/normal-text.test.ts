import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { normalText } from "../../../src/core/words/normal-text";

describe("normalText", () => {
  it("reads plain letters as it reads any others", () => {
    const plain = fc.string({
      unit: fc.integer({ min: 32, max: 126 }).map((code) => String.fromCharCode(code)),
    });
    // An accent, which is taken away again, makes a text no plain one.
    fc.assert(
      fc.property(plain, (text) => {
        expect(normalText(`${text} a`)).toBe(normalText(`${text} a\u0301`));
      }),
    );
  });
});
