import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { initialsOf } from "../../../src/core/people/initials";

const all = (...names: readonly string[]) => names.map(initialsOf(names));

describe("initialsOf", () => {
  it("calls people by their initials, each told from the others", () => {
    expect(all("Kesto", "Ana Paula", "Kay", "Kesto", "Kito")).toEqual([
      ...["K.", "A. P.", "K. 2", "K.", "K. 3"],
    ]);
    expect(all("Mary Ann", "Ann", "Mirel Ando")).toEqual(["M. A.", "A.", "M. A. 2"]);
  });

  it("takes capitals, accents and outer blanks for the same person", () => {
    expect(all("kesto", "KESTO", "Késto ", "Kay")).toEqual(["K.", "K.", "K.", "K. 2"]);
  });

  it("reads names however they are put together", () => {
    expect(all("Orla-Jo O'Reed", "o. reed", "K.A.", "(Kesto)", "éva", "ßen")).toEqual([
      ...["O. J. O. R.", "O. R.", "K. A.", "K.", "É.", "SS."],
    ]);
    expect(all("王芳", "Кира Орлова")).toEqual(["王.", "К. О."]);
  });

  it("keeps numbers, and never calls two alike for that", () => {
    expect(all("Hand 1", "Hand 2", "Hand", "Hugo")).toEqual(["H. 1", "H. 2", "H.", "H. 3"]);
    expect(all("12", "Team 3b")).toEqual(["12", "T. 3 B."]);
  });

  it("calls each of several people in one text as on their own", () => {
    expect(all("Kesto", "Ana", "Kito", "Kito / Kesto, Ana & Mirel")).toEqual([
      ...["K.", "A.", "K. 2", "K. 2 / K., A. & M."],
    ]);
  });

  it("keeps blank text blank, and has a sign for what holds no letter", () => {
    expect(all("", " ", "***")).toEqual(["", " ", "?"]);
  });

  it("does not change whoever came first when others come later", () => {
    const before = all("Kesto", "Kay", "Kito");
    expect(all("Kesto", "Kay", "Kito", "Karo", "Ana").slice(0, 3)).toEqual(before);
    const initials = initialsOf(["Kesto"]);
    expect([initials("Karo"), initials("Kesto"), initials("Karo")]).toEqual(["K. 2", "K.", "K. 2"]);
  });

  it("never shows a name of two letters or more, and tells any two people apart", () => {
    const name = fc.stringMatching(/^[A-Za-zéßж]{2,8}( [A-Za-zéßж]{2,8}){0,2}$/);
    fc.assert(
      fc.property(fc.array(name, { maxLength: 20 }), (names) => {
        const initials = initialsOf(names);
        const people = new Set(names.map((one) => one.toLowerCase()));
        expect(new Set(names.map(initials)).size).toBe(people.size);
        for (const one of names) {
          for (const word of one.split(" ")) expect(initials(one)).not.toContain(word);
        }
      }),
    );
  });
});
