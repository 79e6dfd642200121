import { expect, it } from "vitest";
import * as text from "../../src/sentences/made/days";
import { dayWords } from "../../src/wording/days";
import { day } from "../support/days";

it("writes a day as its message does, without zeros in front", () => {
  expect(dayWords(day("2026-09-03"))).toBe(
    text.day({ day: "3", month: text.monthName({ number: "9" }), year: "2026" }),
  );
  expect(dayWords(day("0987-12-01"))).toBe(
    text.day({ day: "1", month: text.monthName({ number: "12" }), year: "987" }),
  );
});
