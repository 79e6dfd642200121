import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { isoOfSerial, serialOfIso } from "../../src/local/serial-day";
import { wallClock } from "../../src/local/wall-clock";

const serial = (text: string) => serialOfIso(text) as number;
const instant = (zone: string, text: string) =>
  new Date(wallClock(zone).instantOf(serial(text))).toISOString();

describe("wallClock", () => {
  // Offsets from the IANA time zone database: Auckland UTC+13 in its summer, London UTC+1 in
  // summer, Kolkata UTC+5:30.
  it("puts a day at midnight of the zone, whatever zone the process has", () => {
    expect(instant("Pacific/Auckland", "2026-03-14")).toBe("2026-03-13T11:00:00.000Z");
    expect(instant("Europe/London", "2026-07-01")).toBe("2026-06-30T23:00:00.000Z");
    expect(instant("Europe/London", "2026-01-01")).toBe("2026-01-01T00:00:00.000Z");
    expect(instant("Asia/Kolkata", "2026-05-01 12:30")).toBe("2026-05-01T07:00:00.000Z");
  });

  it("moves a midnight that the zone skips on by the skipped hour", () => {
    // IANA time zone database: Santiago went from 24:00 on 5 September 2026 to 01:00.
    expect(instant("America/Santiago", "2026-09-06")).toBe("2026-09-06T04:00:00.000Z");
  });

  it("takes a wall time that comes twice the first time", () => {
    // London, 25 October 2026: 01:30 comes at UTC+1 and an hour later at UTC+0.
    expect(instant("Europe/London", "2026-10-25 01:30")).toBe("2026-10-25T00:30:00.000Z");
  });

  it("gives back every day that it turned into a moment", () => {
    const zones = ["UTC", "Europe/Lisbon", "America/New_York", "Asia/Kathmandu", "Pacific/Apia"];
    fc.assert(
      fc.property(
        fc.constantFrom(...zones),
        fc.integer({ min: serial("2015-01-01"), max: serial("2040-12-31") }),
        (zone, day) => {
          const clock = wallClock(zone);
          expect(clock.serialOf(clock.instantOf(day))).toBe(day);
        },
      ),
    );
  });

  it("refuses a zone that does not exist", () => {
    expect(() => wallClock("Nowhere/Else")).toThrow(RangeError);
  });
});

describe("serialOfIso", () => {
  it("counts days from 30 December 1899", () => {
    // 46095 for 14 March 2026: 2026-03-14 is 126 years, 2 months and 15 days on; by hand
    // 126 * 365 + 31 leap days (1904 to 2024) + 31 + 28 + 14 - 1 + 2 = 46095.
    expect(serialOfIso("2026-03-14")).toBe(46095);
    expect(serialOfIso("2026-03-14 06:00")).toBe(46095.25);
  });

  it("knows the days that a calendar has", () => {
    expect(serialOfIso("2024-02-29")).not.toBeNull();
    for (const no of ["2026-02-29", "2026-13-01", "2026-00-10", "2026-1-1", "1 May", ""]) {
      expect(serialOfIso(no)).toBeNull();
    }
  });

  it("comes back as the same text", () => {
    for (const text of ["2026-03-14", "2024-02-29", "2026-03-14 23:59", "1999-12-31"]) {
      expect(isoOfSerial(serial(text))).toBe(text);
    }
  });
});
