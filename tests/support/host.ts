import type { Host } from "../../src/door/host";
import { day } from "./days";

const MINUTE = 60_000;
const DAY = 1440 * MINUTE;

const clocks = new Map<string, Intl.DateTimeFormat>();

/** Wall-clock time in a zone as "yyyy-MM-dd HH:mm:ss", by the runtime's time zone data. */
export function wallTime(zone: string, milliseconds: number): string {
  let clock = clocks.get(zone);
  if (clock === undefined) {
    // Sweden writes dates as ISO 8601 does.
    clock = new Intl.DateTimeFormat("sv-SE", {
      timeZone: zone,
      dateStyle: "short",
      timeStyle: "medium",
    });
    clocks.set(zone, clock);
  }
  const [date, time] = clock.format(milliseconds).split(" ") as [string, string];
  return `${date.padStart(10, "0")} ${time}`;
}

/** A spreadsheet in a zone, whatever the zone of this process. */
export function hostIn(zone: string, locale = "en_GB"): Host {
  return { wallTime: (milliseconds) => wallTime(zone, milliseconds), locale: () => locale };
}

/**
 * The first instant of a day in a zone, found by looking at every quarter of an hour around it and
 * then stepping back: slow and plain, to hold the door's own way against. Null where the zone never
 * had the day.
 */
export function firstInstantBySearch(zone: string, isoDay: string): number | null {
  const shows = (instant: number) => wallTime(zone, instant).startsWith(isoDay);
  const middle = day(isoDay) * DAY;
  for (let instant = middle - 16 * 60 * MINUTE; instant < middle + DAY; instant += 15 * MINUTE) {
    if (!shows(instant)) continue;
    let first = instant;
    while (shows(first - MINUTE)) first -= MINUTE;
    while (shows(first - 1000)) first -= 1000;
    return first;
  }
  return null;
}

/** A date cell as a spreadsheet in a zone hands it over: midnight there. */
export function dateCell(zone: string, isoDay: string): Date {
  const instant = firstInstantBySearch(zone, isoDay);
  if (instant === null) throw new Error(`${zone} has no ${isoDay}`);
  return new Date(instant);
}
