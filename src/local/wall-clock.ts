/** Turns a spreadsheet's day numbers into moments and back, by the wall clock of one time zone. */
export interface WallClock {
  /**
   * The moment at which the zone's wall clock shows a serial day number.
   * @param serial days since 30 December 1899, with the time of day as the fraction
   * @returns milliseconds since 1970-01-01 UTC. A wall time that the zone skips (clocks going
   *   forward) moves on by the skipped time; one that it shows twice is taken the first time.
   */
  instantOf(serial: number): number;
  /**
   * The serial day number that the zone's wall clock shows at a moment.
   * @param instant milliseconds since 1970-01-01 UTC
   */
  serialOf(instant: number): number;
  /** The wall clock's year, month, day, hour, minute, second and millisecond at a moment. */
  fieldsOf(instant: number): WallFields;
}

interface WallFields {
  readonly year: number;
  /** 1 to 12 */
  readonly month: number;
  readonly day: number;
  readonly hour: number;
  readonly minute: number;
  readonly second: number;
  readonly millisecond: number;
}

const DAY_MS = 86_400_000;
/** Day 0 of every common spreadsheet program. */
const EPOCH_MS = Date.UTC(1899, 11, 30);

/**
 * The wall clock of a time zone.
 * @param zone a name of the IANA time zone database, such as "Europe/Lisbon"
 * @throws RangeError when the zone is not known
 */
export function wallClock(zone: string): WallClock {
  const known = clocks.get(zone);
  if (known !== undefined) return known;
  const made = newClock(zone);
  clocks.set(zone, made);
  return made;
}

/** Clocks remember what they have looked up, so that one a zone serves all workbooks. */
const clocks = new Map<string, WallClock>();

function newClock(zone: string): WallClock {
  const format = new Intl.DateTimeFormat("en-US", {
    timeZone: zone,
    hourCycle: "h23",
    year: "numeric",
    month: "numeric",
    day: "numeric",
    hour: "numeric",
    minute: "numeric",
    second: "numeric",
  });
  const dayInstants = new Map<number, number>();
  const instantSerials = new Map<number, number>();

  function fieldsOf(instant: number): WallFields {
    const part: Record<string, number> = {};
    for (const { type, value } of format.formatToParts(instant)) part[type] = Number(value);
    return {
      year: part.year ?? 0,
      month: part.month ?? 0,
      day: part.day ?? 0,
      hour: part.hour ?? 0,
      minute: part.minute ?? 0,
      second: part.second ?? 0,
      millisecond: ((instant % 1000) + 1000) % 1000,
    };
  }

  /** The wall time at an instant, written as if it were UTC so that it can be subtracted. */
  function wallMs(instant: number): number {
    const at = fieldsOf(instant);
    return Date.UTC(at.year, at.month - 1, at.day, at.hour, at.minute, at.second, at.millisecond);
  }

  function findInstant(serial: number): number {
    const wall = EPOCH_MS + Math.round(serial * DAY_MS);
    const offsetAt = (instant: number) => wallMs(instant) - instant;
    const before = wall - offsetAt(wall - DAY_MS);
    const after = wall - offsetAt(wall + DAY_MS);
    const found = [before, after].filter((instant) => wallMs(instant) === wall);
    return found.length > 0 ? Math.min(...found) : before;
  }

  return {
    instantOf(serial) {
      let instant = dayInstants.get(serial);
      if (instant === undefined) {
        instant = findInstant(serial);
        dayInstants.set(serial, instant);
      }
      return instant;
    },
    serialOf(instant) {
      let serial = instantSerials.get(instant);
      if (serial === undefined) {
        serial = (wallMs(instant) - EPOCH_MS) / DAY_MS;
        instantSerials.set(instant, serial);
      }
      return serial;
    },
    fieldsOf,
  };
}
