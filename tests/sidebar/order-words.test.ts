import { describe, expect, it } from "vitest";
import { awayText, daysBetween } from "../../src/sidebar/controls/day-words";
import { chanceWords, ofTen } from "../../src/sidebar/orders/chance-words";
import {
  byWords,
  plantsToDeliver,
  standingWords,
  tallyWords,
} from "../../src/sidebar/orders/order-words";
import { byTrouble, wantedTrouble } from "../../src/sidebar/orders/plan/form-checks";
import { orders } from "./order-answers";

const AS_OF = "2026-11-25";

describe("a chance", () => {
  it.each([
    [0, "hardly: under 1 of 100"],
    [0.004, "hardly: under 1 of 100"],
    [0.01, "hardly: 1 of 100"],
    [0.06, "unlikely: 6 of 100"],
    [0.2, "rather unlikely: 20 of 100"],
    [0.48, "even chance: 48 of 100"],
    [0.607, "rather likely: 61 of 100"],
    [0.86, "likely: 86 of 100"],
    [0.95, "almost sure: 95 of 100"],
    // Found by trying out: that it never failed does not make it sure.
    [0.998, "almost sure: over 99 of 100"],
    [1, "almost sure: over 99 of 100"],
  ])("of %d is %s", (chance, words) => expect(chanceWords(chance)).toBe(words));

  it.each([
    [0.5, "5 of 10"],
    [0.8, "8 of 10"],
    [0.95, "9.5 of 10"],
    [0.999, "9.99 of 10"],
    [0.99999, "over 9.9 of 10"],
  ])("asked for, %d is %s", (share, words) => expect(ofTen(share)).toBe(words));
});

describe("how far a day is away", () => {
  it.each([
    ["2026-11-25", "today"],
    ["2026-11-26", "tomorrow"],
    ["2026-11-24", "yesterday"],
    ["2027-01-15", "in 51 days"],
    ["2026-11-20", "5 days ago"],
    ["2036-11-25", "in 3,653 days"],
    ["soon", ""],
    ["2026-13-01", ""],
  ])("%s is %s", (day, words) => expect(awayText(daysBetween(AS_OF, day))).toBe(words));
});

describe("an order in words", () => {
  const [first] = orders.orders;
  const order = { ...first, wanted: 180, delivered: 60, by: "2027-01-15", chance: 0.86 } as const;
  const of = (more: object) => ({ ...(order as (typeof orders.orders)[number]), ...more });

  it("says what is still to be delivered, and none of what is delivered already", () => {
    expect(plantsToDeliver(of({}))).toBe("120 of 180 still to deliver");
    expect(plantsToDeliver(of({ delivered: 0 }))).toBe("180 plants to deliver");
    expect(plantsToDeliver(of({ delivered: 180 }))).toBe("180 delivered");
    expect(plantsToDeliver(of({ delivered: 190 }))).toBe("180 delivered");
  });

  it("says a chance only where it is not known already", () => {
    expect(standingWords(of({}), AS_OF)).toBe("likely: 86 of 100");
    expect(standingWords(of({ by: "2026-11-24", chance: 0 }), AS_OF)).toBe("no, late by 1 day");
    expect(standingWords(of({ by: "2026-11-24", delivered: 180 }), AS_OF)).toBe("all delivered");
    expect(byWords(of({ by: "2026-11-25" }), AS_OF)).toBe("by 25 Nov 2026, today");
    expect(byWords(of({ by: "2026-11-20" }), AS_OF)).toBe("was due 20 Nov 2026");
  });

  it("counts those that need something done", () => {
    const fine = of({ isFine: true });
    const pressing = of({ isFine: false });
    expect([[], [fine], [pressing], [fine, fine], [fine, pressing]].map(tallyWords)).toEqual([
      "No open orders.",
      "One open order: it is fine.",
      "One open order: it needs something done.",
      "All 2 orders are fine.",
      "1 of 2 orders needs something done.",
    ]);
    expect(tallyWords(orders.orders)).toBe("5 of 8 orders need something done.");
  });
});

describe("what is entered of a new order", () => {
  const typed = (value: string, badInput = false) => ({ value, badInput });

  it.each([
    ["", "Say how many plants are wanted."],
    ["0", "A whole number, 1 or more."],
    ["-3", "A whole number, 1 or more."],
    ["1.5", "A whole number, 1 or more."],
    ["1e7", "More than 1,000,000: is a nought too many there?"],
    ["1000000", null],
    ["1", null],
  ])("%s plants wanted: %s", (value, trouble) => expect(wantedTrouble(typed(value))).toBe(trouble));

  it.each([
    ["", "Say by which day they are to be ready."],
    ["2026-11-24", "That day is past: today counts as 25 Nov 2026."],
    ["2026-11-25", null],
    ["2047-01-01", "Is the year right?"],
    ["20270-01-01", "Is the year right?"],
  ])("ready by %s: %s", (value, trouble) => expect(byTrouble(typed(value), AS_OF)).toBe(trouble));

  it("takes what is half typed for no entry left blank", () => {
    expect(wantedTrouble(typed("", true))).toBe("A whole number, 1 or more.");
    expect(byTrouble(typed("", true), AS_OF)).toContain("not complete");
    expect(byTrouble(typed("2020-01-01"), null)).toBeNull();
  });
});
