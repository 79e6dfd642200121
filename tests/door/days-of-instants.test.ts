import fc from "fast-check";
import { afterEach, describe, expect, it } from "vitest";
import { daysOfInstants } from "../../src/door/days-of-instants";
import { day, iso } from "../support/days";
import { firstInstantBySearch, hostIn, wallTime } from "../support/host";

const MINUTE = 60_000;
/** Zones with halves and quarters of an hour, both sides of the date line, and odd changes. */
const ZONES = [
  ...["Etc/UTC", "Europe/London", "America/New_York", "America/Los_Angeles", "America/Sao_Paulo"],
  ...["America/St_Johns", "America/Havana", "America/Caracas", "Asia/Kolkata", "Asia/Kathmandu"],
  ...["Asia/Beirut", "Asia/Tehran", "Asia/Jakarta", "Asia/Manila", "Africa/Abidjan"],
  ...["Africa/Casablanca", "Africa/Cairo", "Atlantic/Azores", "Australia/Lord_Howe"],
  ...["Pacific/Auckland", "Pacific/Chatham", "Pacific/Apia", "Pacific/Kiritimati"],
  ...["Pacific/Marquesas", "Pacific/Honolulu", "America/Asuncion", "America/Santiago"],
];

/** Days on which the clocks of one zone or another change, and the days about them. */
const ODD_DAYS = [
  ...["2018-02-17", "2018-02-18", "2018-11-03", "2018-11-04", "2018-11-05"],
  ...["2011-12-29", "2011-12-31", "2012-01-01", "2011-04-02", "2011-09-24"],
  ...["2026-03-08", "2026-03-28", "2026-03-29", "2026-04-05", "2026-09-27", "2026-10-24"],
  ...["2026-10-25", "2026-11-01", "2026-01-01", "2026-12-31", "2024-02-29", "2016-05-01"],
  ...["2018-09-22", "2018-03-22", "2022-10-30", "2023-03-26", "2023-04-28", "2018-08-12"],
  ...["1999-12-31", "1970-01-01"],
];

describe.each(ZONES)("days in %s", (zone) => {
  const days = daysOfInstants(hostIn(zone));

  it("start at the first instant that the wall shows them (searched by the quarter hour)", () => {
    const wrong = ODD_DAYS.filter((text) => {
      const expected = firstInstantBySearch(zone, text);
      return expected !== null && days.instantOf(day(text)) !== expected;
    });
    expect(wrong).toEqual([]);
  });

  it("come back from their first instant, and from the last minute before the next", () => {
    for (const text of ODD_DAYS) {
      const first = firstInstantBySearch(zone, text);
      if (first === null) continue;
      expect(iso(days.dayOf(days.instantOf(day(text))))).toBe(text);
      const next = days.instantOf((day(text) + 1) as never);
      expect(days.dayOf(next - MINUTE)).toBeLessThanOrEqual(day(text));
      expect(days.dayOf(first)).toBe(day(text));
    }
  });
});

describe("days and instants", () => {
  it("go round in every zone on any day of two centuries", () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...ZONES),
        fc.integer({ min: day("1900-01-01"), max: day("2100-12-31") }),
        (zone, civilDay) => {
          const days = daysOfInstants(hostIn(zone));
          const back = days.dayOf(days.instantOf(civilDay as never));
          const skipped = firstInstantBySearch(zone, iso(civilDay) as string) === null;
          expect(back).toBe(skipped ? civilDay + 1 : civilDay);
        },
      ),
      { numRuns: 150 },
    );
  });

  it("skip the day that Samoa skipped: 2011-12-30 is shown as the day after", () => {
    const days = daysOfInstants(hostIn("Pacific/Apia"));
    expect(firstInstantBySearch("Pacific/Apia", "2011-12-30")).toBeNull();
    const instant = days.instantOf(day("2011-12-30"));
    expect(instant).toBe(firstInstantBySearch("Pacific/Apia", "2011-12-31"));
    expect(iso(days.dayOf(instant))).toBe("2011-12-31");
    expect(iso(days.dayOf(instant - MINUTE))).toBe("2011-12-29");
  });

  it("start at 01:00 where the clocks skip midnight: São Paulo, 2018-11-04", () => {
    const days = daysOfInstants(hostIn("America/Sao_Paulo"));
    expect(days.instantOf(day("2018-11-04"))).toBe(Date.UTC(2018, 10, 4, 3));
  });

  it("start at the first of two midnights: Havana, 2018-11-04", () => {
    const days = daysOfInstants(hostIn("America/Havana"));
    expect(days.instantOf(day("2018-11-04"))).toBe(Date.UTC(2018, 10, 4, 4));
  });

  it.each([
    ["Asia/Amman", "2000-09-29"],
    ["Antarctica/Casey", "2019-03-17"],
  ])("start at the first of two midnights, however the clocks went: %s, %s", (zone, text) => {
    const days = daysOfInstants(hostIn(zone));
    expect(days.instantOf(day(text))).toBe(firstInstantBySearch(zone, text));
  });

  // Source: the time zone data of IANA, as this process has it (Intl).
  it("are as the wall shows them at any instant of a century, in every zone there is", () => {
    const zones = Intl.supportedValuesOf("timeZone");
    expect(zones.length).toBeGreaterThan(400);
    fc.assert(
      fc.property(
        fc.constantFrom(...zones),
        fc.integer({ min: 0, max: Date.UTC(2100, 0) / MINUTE }),
        (zone, minute) => {
          const shown = iso(daysOfInstants(hostIn(zone)).dayOf(minute * MINUTE));
          expect(shown).toBe(wallTime(zone, minute * MINUTE).slice(0, 10));
        },
      ),
      { numRuns: 3000 },
    );
  });

  it.each(["Africa/Casablanca", "Africa/Cairo", "Asia/Gaza", "Asia/Hebron"])(
    "are as the wall shows them on every day of the years in which clocks changed most: %s",
    (zone) => {
      const days = daysOfInstants(hostIn(zone));
      const wrong: string[] = [];
      for (let one: number = day("2008-01-01"); one < day("2026-01-01"); one += 1) {
        // In the last hour of the day there, an hour of change shows.
        const late = days.instantOf((one + 1) as never) - MINUTE;
        const shown = iso(days.dayOf(late)) as string;
        if (shown !== wallTime(zone, late).slice(0, 10)) wrong.push(shown);
      }
      expect(wrong).toEqual([]);
    },
  );

  it("refuse a clock that does not say the time", () => {
    const days = daysOfInstants({ wallTime: () => "noon", locale: () => "" });
    expect(() => days.dayOf(0)).toThrow("wall time not understood: noon");
  });
});

describe("the zone of this process", () => {
  const before = process.env.TZ;
  afterEach(() => {
    if (before === undefined) delete process.env.TZ;
    else process.env.TZ = before;
  });

  it("changes nothing, west or east of the spreadsheet's", () => {
    const seen = new Set<string>();
    const offsets = new Set<number>();
    for (const script of ["Pacific/Honolulu", "Etc/UTC", "Pacific/Auckland", "Pacific/Apia"]) {
      process.env.TZ = script;
      offsets.add(new Date(Date.UTC(2026, 6, 1)).getTimezoneOffset());
      for (const sheet of ["America/New_York", "Asia/Kolkata", "Pacific/Auckland"]) {
        const days = daysOfInstants(hostIn(sheet));
        const instant = firstInstantBySearch(sheet, "2026-03-14") as number;
        seen.add(`${sheet} ${iso(days.dayOf(new Date(instant).getTime()))}`);
        expect(days.instantOf(day("2026-03-14"))).toBe(instant);
      }
    }
    // The zones must really have been different, or nothing was shown.
    expect([...offsets].sort((a, b) => a - b)).toEqual([-780, -720, 0, 600]);
    expect([...seen].sort()).toEqual([
      "America/New_York 2026-03-14",
      "Asia/Kolkata 2026-03-14",
      "Pacific/Auckland 2026-03-14",
    ]);
  });
});
