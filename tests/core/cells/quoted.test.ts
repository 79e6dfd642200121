import { describe, expect, it } from "vitest";
import { nameList, quoted, shortened } from "../../../src/core/cells/quoted";

describe("somebody's text in a sentence", () => {
  it.each([
    ["Amberlow", "Amberlow"],
    ["  Bay 2\n north ", "Bay 2 north"],
    ["", ""],
    ["x".repeat(60), "x".repeat(60)],
    ["x".repeat(61), `${"x".repeat(59)}…`],
    ["x".repeat(50_000), `${"x".repeat(59)}…`],
    [`x${" ".repeat(300)}y`, "x…"],
    // A letter of two places is left out whole.
    [`${"x".repeat(58)}🌱${"x".repeat(9)}`, `${"x".repeat(58)}…`],
  ])("%j is %j", (text, said) => {
    expect(shortened(text)).toBe(said);
    expect(quoted(text)).toBe(`"${said}"`);
  });

  it("of many names says how many more there are", () => {
    expect(nameList(["b", "a"])).toBe("b, a");
    expect(nameList(Array.from({ length: 32 }, (_, at) => `n${at}`))).toMatch(
      /^n0, .*n29 and 2 more$/,
    );
  });
});
