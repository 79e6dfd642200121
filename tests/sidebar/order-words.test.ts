import { describe, expect, it } from "vitest";
import * as controlsText from "../../src/sentences/made/controls";
import * as text from "../../src/sentences/made/orders-page";
import { awayText, daysBetween, dayText } from "../../src/sidebar/controls/day-words";
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
    [0, text.under1({ word: text.hardly() })],
    [0.004, text.under1({ word: text.hardly() })],
    [0.01, text.of100({ word: text.hardly(), chance: 1 })],
    [0.06, text.of100({ word: text.unlikely(), chance: 6 })],
    [0.2, text.of100({ word: text.ratherUnlikely(), chance: 20 })],
    [0.48, text.of100({ word: text.evenChance(), chance: 48 })],
    [0.607, text.of100({ word: text.ratherLikely(), chance: 61 })],
    [0.86, text.of100({ word: text.likely(), chance: 86 })],
    [0.95, text.of100({ word: text.almostSure(), chance: 95 })],
    // Found by trying out: that it never failed does not make it sure.
    [0.998, text.over99({ word: text.almostSure() })],
    [1, text.over99({ word: text.almostSure() })],
  ])("of %d is %s", (chance, words) => expect(chanceWords(chance)).toBe(words));

  it.each([
    [0.5, "5"],
    [0.8, "8"],
    [0.95, "9.5"],
    [0.999, "9.99"],
    [0.99999, text.over99Tenths()],
  ])("asked for, %d is %s of 10", (share, tenths) =>
    expect(ofTen(share)).toBe(text.ofTen({ tenths })),
  );
});

describe("how far a day is away", () => {
  it.each([
    ["2026-11-25", controlsText.away({ days: 0, when: "ahead" })],
    ["2026-11-26", controlsText.away({ days: 1, when: "ahead" })],
    ["2026-11-24", controlsText.away({ days: 1, when: "ago" })],
    ["2027-01-15", controlsText.away({ days: 51, when: "ahead" })],
    ["2026-11-20", controlsText.away({ days: 5, when: "ago" })],
    ["2036-11-25", controlsText.away({ days: 3653, when: "ahead" })],
    ["soon", ""],
    ["2026-13-01", ""],
  ])("%s is %s", (day, words) => expect(awayText(daysBetween(AS_OF, day))).toBe(words));
});

describe("an order in words", () => {
  const [first] = orders.orders;
  const order = { ...first, wanted: 180, delivered: 60, by: "2027-01-15", chance: 0.86 } as const;
  const of = (more: object) => ({ ...(order as (typeof orders.orders)[number]), ...more });

  it("says what is still to be delivered, and none of what is delivered already", () => {
    expect(plantsToDeliver(of({}))).toBe(text.stillToDeliver({ left: 120, wanted: 180 }));
    expect(plantsToDeliver(of({ delivered: 0 }))).toBe(text.toDeliver({ wanted: 180 }));
    expect(plantsToDeliver(of({ delivered: 180 }))).toBe(text.delivered({ wanted: 180 }));
    expect(plantsToDeliver(of({ delivered: 190 }))).toBe(text.delivered({ wanted: 180 }));
  });

  it("says a chance only where it is not known already", () => {
    expect(standingWords(of({}), AS_OF)).toBe(text.of100({ word: text.likely(), chance: 86 }));
    expect(standingWords(of({ by: "2026-11-24", chance: 0 }), AS_OF)).toBe(
      text.lateBy({ days: 1 }),
    );
    expect(standingWords(of({ by: "2026-11-24", delivered: 180 }), AS_OF)).toBe(
      text.allDelivered(),
    );
    expect(byWords(of({ by: "2026-11-25" }), AS_OF)).toBe(
      text.byAway({
        by: dayText("2026-11-25"),
        away: controlsText.away({ days: 0, when: "ahead" }),
      }),
    );
    expect(byWords(of({ by: "2026-11-20" }), AS_OF)).toBe(
      text.wasDue({ day: dayText("2026-11-20") }),
    );
  });

  it("counts those that need something done", () => {
    const fine = of({ isFine: true });
    const pressing = of({ isFine: false });
    expect([[], [fine], [pressing], [fine, fine], [fine, pressing]].map(tallyWords)).toEqual([
      text.noOrders(),
      text.oneFine(),
      text.onePressing(),
      text.allFine({ all: 2 }),
      text.pressing({ pressing: 1, all: 2 }),
    ]);
    expect(tallyWords(orders.orders)).toBe(text.pressing({ pressing: 5, all: 8 }));
  });
});

describe("what is entered of a new order", () => {
  const typed = (value: string, badInput = false) => ({ value, badInput });

  it.each([
    ["", text.sayWanted()],
    ["0", text.wholeNumber()],
    ["-3", text.wholeNumber()],
    ["1.5", text.wholeNumber()],
    ["1e7", text.tooManyZeros({ most: 1_000_000 })],
    ["1000000", null],
    ["1", null],
  ])("%s plants wanted: %s", (value, trouble) => expect(wantedTrouble(typed(value))).toBe(trouble));

  it.each([
    ["", text.sayBy()],
    ["2026-11-24", text.dayIsPast({ asOf: dayText("2026-11-25") })],
    ["2026-11-25", null],
    ["2047-01-01", text.yearRight()],
    ["20270-01-01", text.yearRight()],
  ])("ready by %s: %s", (value, trouble) => expect(byTrouble(typed(value), AS_OF)).toBe(trouble));

  it("takes what is half typed for no entry left blank", () => {
    expect(wantedTrouble(typed("", true))).toBe(text.wholeNumber());
    expect(byTrouble(typed("", true), AS_OF)).toBe(text.dayIncomplete());
    expect(byTrouble(typed("2020-01-01"), null)).toBeNull();
  });
});
