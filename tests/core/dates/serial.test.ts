import { describe, expect, it } from "vitest";
import { dayOfSerial, serialOfDay } from "../../../src/core/dates/serial";
import { day } from "../../support/days";
import { fixture } from "../../support/fixtures";

interface SerialCase {
  readonly day: string;
  readonly serial: number;
  readonly daysFrom1970: number;
}
const { expected } = fixture<unknown, { days: readonly SerialCase[] }>("serials");

describe("published values: spreadsheet serials from 1899-12-30, with R (tests/fixtures/serials)", () => {
  it.each(expected.days)("$day is $serial", ({ day: text, serial, daysFrom1970 }) => {
    expect(dayOfSerial(serial)).toBe(daysFrom1970);
    expect(serialOfDay(day(text))).toBe(serial);
  });

  it("2024-07-01 is 45474", () => {
    expect(dayOfSerial(45474)).toBe(day("2024-07-01"));
  });
});

describe("dayOfSerial", () => {
  it("drops the time of day", () => {
    expect(dayOfSerial(45474.999)).toBe(day("2024-07-01"));
    expect(dayOfSerial(-0.25)).toBe(day("1899-12-29"));
  });
});
