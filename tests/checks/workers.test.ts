import { describe, expect, it } from "vitest";
import { coresAsked } from "../../src/checks/workers";

describe("the cores of a check", () => {
  it("are those asked for, else at least one and at most four", () => {
    expect(coresAsked(["--tenth", "--cores", "1"])).toBe(1);
    const usual = coresAsked(["--tenth"]);
    expect(usual).toBeGreaterThanOrEqual(1);
    expect(usual).toBeLessThanOrEqual(4);
  });

  it.each([["0"], ["-1"], ["1.5"], ["two"], [""]])("are not %j", (asked) => {
    expect(() => coresAsked(["--cores", asked])).toThrow("--cores asks for a whole number");
  });

  it("are not left unsaid after the word", () => {
    expect(() => coresAsked(["--cores"])).toThrow("--cores asks for a whole number");
  });
});
