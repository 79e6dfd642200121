import { describe, expect, it } from "vitest";
import { readPrice } from "../../../src/core/costs/read-price";

describe("readPrice", () => {
  it.each([
    [3.5, null, 3.5],
    [0, null, 0],
    ["", null, null],
    ["3.50", null, 3.5],
    ["€ 3,50", null, 3.5],
    ["5 000 F", null, 5000],
    ["Rs. 500", null, 500],
    ["500/-", null, 500],
    ["Rp 5.000", ",", 5000],
    ["5.000", ".", 5],
    ["1,234.50", null, 1234.5],
    ["1.234.567", null, 1234567],
    ["1.234.567,8", null, 1234567.8],
    ["0.125", ",", 0.125],
    ["0,125", ".", 0.125],
    ["0.125", null, 0.125],
  ] as const)("reads %j, decimals written %j, as %j", (cell, mark, price) => {
    expect(readPrice(cell, mark)).toBe(price);
  });

  it.each(["5.000", "-3", "free", "3 or 4", "12.34.5", "3..5", -1, true])(
    "does not guess at %j",
    (cell) => {
      const code = cell === -1 ? "price-out-of-range" : "not-a-price";
      expect(readPrice(cell, null)).toMatchObject({ code });
    },
  );
});
