import { describe, expect, it } from "vitest";
import { resultRows } from "../../src/local/results";

describe("resultRows", () => {
  it("takes one value or rows of equal length", () => {
    const day = new Date(0);
    expect(resultRows("F", 1.5)).toEqual([[1.5]]);
    expect(resultRows("F", "")).toEqual([[""]]);
    expect(resultRows("F", [[1, "a"], [true, day]])).toEqual([[1, "a"], [true, day]]); // biome-ignore format: two rows
  });

  it.each([
    [[1, 2], "a list whose item 1 is not a row"],
    [[[1, 2], [3]], "rows of unequal length: row 2 has 1 cells, row 1 has 2"],
    [[], "an empty array"],
    [[[]], "an empty row 1"],
    [undefined, "undefined"],
    [null, "null"],
    [Number.NaN, "NaN"],
    [Number.POSITIVE_INFINITY, "Infinity"],
    [[["a"], [Number.NaN]], "NaN in row 2, column 1"],
    [[["a", undefined]], "undefined in row 1, column 2"],
    [[new Array(2)], "undefined in row 1, column 1"],
    [{}, "an object"],
    [[[["deep"]]], "an array inside a row"],
    [Promise.resolve(1), "a Promise"],
    [new Date(Number.NaN), "an invalid Date"],
    [Symbol("s"), "a symbol"],
    [() => 1, "a function"],
    ["x".repeat(50_001), "limit of 50000 characters"],
  ])("refuses case %#: %s", (result, words) => {
    expect(() => resultRows("F", result)).toThrow(words);
  });
});
