import { type CivilDay, civilDay } from "../core";
import type { Host } from "./host";

const DAY = 86_400_000;

/** Turns the Dates of a spreadsheet into civil days and back, in the spreadsheet's own zone. */
export interface DaysOfInstants {
  dayOf(milliseconds: number): CivilDay;
  /** The first instant of a day. */
  instantOf(day: CivilDay): number;
}

/**
 * A date cell is the instant of 00:00 in the spreadsheet's zone, which is often not the script's;
 * so days are read off the wall clock there. Sheets repeat the same days thousands of times, and
 * asking for wall-clock time is slow, so each instant is asked for once.
 */
export function daysOfInstants(host: Host): DaysOfInstants {
  const days = new Map<number, CivilDay>();
  const instants = new Map<CivilDay, number>();
  const dayOf = (milliseconds: number) => {
    let day = days.get(milliseconds);
    if (day === undefined) {
      day = dayOnTheWall(host.wallTime(milliseconds));
      days.set(milliseconds, day);
    }
    return day;
  };
  const instantOf = (day: CivilDay) => {
    let instant = instants.get(day);
    if (instant === undefined) {
      instant = firstInstant(day, host);
      instants.set(day, instant);
    }
    return instant;
  };
  return { dayOf, instantOf };
}

/**
 * Method: take UTC midnight, see how far off the wall clock is, correct, twice (the correction may
 * cross a change of the clocks). Where the clocks skip midnight the day's first instant is later.
 */
function firstInstant(day: CivilDay, host: Host): number {
  const wanted = day * DAY;
  let instant = wanted;
  for (let turn = 0; turn < 2; turn += 1) instant -= onTheWall(host.wallTime(instant)) - wanted;
  const shown = onTheWall(host.wallTime(instant));
  return shown < wanted ? instant + (wanted - shown) : instant;
}

function dayOnTheWall(text: string): CivilDay {
  return Math.floor(onTheWall(text) / DAY) as CivilDay;
}

/** Wall-clock text as milliseconds, as if the wall hung at Greenwich. */
function onTheWall(text: string): number {
  const match = /^(\d+)-(\d\d)-(\d\d) (\d\d):(\d\d):(\d\d)$/.exec(text);
  const day = match && civilDay(Number(match[1]), Number(match[2]), Number(match[3]));
  if (!match || day === null) throw new Error(`wall time not understood: ${text}`);
  return day * DAY + ((Number(match[4]) * 60 + Number(match[5])) * 60 + Number(match[6])) * 1000;
}
