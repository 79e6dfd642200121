import { type CivilDay, civilDay, madeOnce } from "../core";
import type { Host } from "./host";

const SECOND = 1000;
const DAY = 86_400_000;
const WEEK = 7 * DAY;
/** 1970 to about 2100: further off, every instant is asked for. */
const LAST_WEEK = 6800;

/** Turns the Dates of a spreadsheet into civil days and back, in the spreadsheet's own zone. */
export interface DaysOfInstants {
  dayOf(milliseconds: number): CivilDay;
  /** The first instant of a day. */
  instantOf(day: CivilDay): number;
}

/**
 * A date cell is the instant of 00:00 in the spreadsheet's zone, which is often not the script's;
 * so days are read off the wall clock there. Sheets repeat the same days thousands of times, and
 * asking for wall-clock time is slow, so a week at whose two ends the clock is equally far off is not
 * asked further.
 *
 * Source: in the time zone data of IANA no zone changes its clocks and changes them back within a week
 *   from 1970 on; of those that change them for Ramadan, for a month. Held by the tests against Intl.
 */
export function daysOfInstants(host: Host): DaysOfInstants {
  const instants = new Map<CivilDay, number>();
  const offsets = new Map<number, number>();
  const steadyOffsets = new Map<number, number | null>();
  const off = (instant: number) => onTheWall(host.wallTime(instant)) - instant;
  const offAt = (week: number) => madeOnce(offsets, week, () => off(week * WEEK));
  /** How far off the clock is in the whole week of an instant; null where it changes, or far from our time. */
  const offAllWeek = (instant: number): number | null => {
    const week = Math.floor(instant / WEEK);
    const known = steadyOffsets.get(week);
    if (known !== undefined) return known;
    const before = week < 0 || week > LAST_WEEK ? null : offAt(week);
    const steady = before !== null && before === offAt(week + 1) ? before : null;
    steadyOffsets.set(week, steady);
    return steady;
  };
  const dayAt = (milliseconds: number) =>
    Math.floor((milliseconds + (offAllWeek(milliseconds) ?? off(milliseconds))) / DAY) as CivilDay;
  const startOf = (day: CivilDay) => {
    const isOff = offAllWeek(day * DAY);
    if (isOff === null) return firstInstant(day, host);
    const midnight = day * DAY - isOff;
    // The day before, too: clocks that are set back at midnight show it twice.
    const isSteady = offAllWeek(midnight) === isOff && offAllWeek(midnight - DAY) === isOff;
    return isSteady ? midnight : firstInstant(day, host);
  };
  return {
    dayOf: dayAt,
    instantOf: (day) => madeOnce(instants, day, () => startOf(day)),
  };
}

/**
 * Method: take UTC midnight, see how far off the wall clock is, correct, twice (the correction may
 * cross a change of the clocks). Where the clocks skip midnight the day's first instant is later;
 * where they are set back over it, the first of two midnights is as much earlier.
 */
function firstInstant(day: CivilDay, host: Host): number {
  const wanted = day * DAY;
  let instant = wanted;
  for (let turn = 0; turn < 2; turn += 1) instant -= onTheWall(host.wallTime(instant)) - wanted;
  const shown = onTheWall(host.wallTime(instant));
  if (shown < wanted) return instant + (wanted - shown);
  const before = onTheWall(host.wallTime(instant - SECOND));
  return before < wanted ? instant : instant - SECOND - (before - wanted);
}

/** Wall-clock text as milliseconds, as if the wall hung at Greenwich. */
function onTheWall(text: string): number {
  const match = /^(\d+)-(\d\d)-(\d\d) (\d\d):(\d\d):(\d\d)$/.exec(text);
  const day = match && civilDay(Number(match[1]), Number(match[2]), Number(match[3]));
  if (!match || day === null) throw new Error(`wall time not understood: ${text}`);
  return day * DAY + ((Number(match[4]) * 60 + Number(match[5])) * 60 + Number(match[6])) * SECOND;
}
