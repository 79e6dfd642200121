import { describe, expect, it } from "vitest";
import { gridOf } from "../../../src/core/cells/cell";
import { priceOf, readPrices } from "../../../src/core/costs/read-prices";

const HEADER = ["Item", "Price", "Per"];
const pricesOf = (row: readonly (string | number)[], mark: "." | "," = ".") =>
  readPrices(gridOf([HEADER, row]), mark);

describe("what a price is for", () => {
  // A thousand bags of "1,000" were priced as one.
  it.each([
    ["1,000", 10],
    ["1 000", 10],
    [1000, 10],
    ["per 1000", 10],
    ["1000 bags", 10],
    ["bag", 10_000],
    ["bags", 10_000],
    ["piece", 10_000],
    ["", 10_000],
    ["2 dozen", 10_000 / 24],
  ])("200 bags at 50 per %j cost %d", (per, cost) => {
    expect(priceOf(pricesOf(["Bag", 50, per]), { item: "bag", amount: 200, unit: "" })).toBeCloseTo(
      cost,
      9,
    );
  });

  it("reads a thousand as the workbook's locale writes it", () => {
    expect(
      priceOf(pricesOf(["Bag", 50, "1.000"], ","), { item: "bag", amount: 200, unit: "" }),
    ).toBe(10);
    expect(
      priceOf(pricesOf(["Mix", 1, "2,5 l"], ","), { item: "mix", amount: 10, unit: "l" }),
    ).toBe(4);
    // A number is one, however the locale writes it.
    expect(priceOf(pricesOf(["Mix", 5, 1.25], ","), { item: "mix", amount: 1, unit: "l" })).toBe(4);
    expect(priceOf(pricesOf(["Mix", 5, 1.125], ","), { item: "mix", amount: 9, unit: "l" })).toBe(
      40,
    );
  });

  it.each(["m3", "m\u00b3", "1 cbm", "1,000 l", "1000-litre"])(
    "100 litres at 30 per %j cost 3",
    (per) => {
      expect(
        priceOf(pricesOf(["Mix", 30, per]), { item: "mix", amount: 100_000, unit: "ml" }),
      ).toBeCloseTo(3, 9);
    },
  );

  it.each(["2 x 50 l", "1/2 l", "0", "-1", "half"])("is not guessed at from %j", (per) => {
    expect(priceOf(pricesOf(["Mix", 30, per]), { item: "mix", amount: 1, unit: "l" })).toBeNull();
  });

  it.each([
    ["Hour", 4, ""],
    ["Hour", 4, "hour"],
    ["Hour", 4, "per hour"],
    ["Hours of work", 32, "8 h"],
    ["Main-d'\u0153uvre", 4, "heure"],
    ["Labour", 1, "15 min"],
  ])("%j at %d per %j: an hour costs 4", (item, price, per) => {
    expect(pricesOf([item, price, per]).hour).toBeCloseTo(4, 9);
  });
});
