import { type CivilDay, yearMonthDay } from "../dates";
import type { UndatedDay } from "./read-day-text";

/** What is known around a day whose year is not written. */
export interface YearHints {
  /** Other days of the same row. */
  readonly neighbours: readonly CivilDay[];
  /** A year named above the row ("Season 2024"). */
  readonly sectionYear: number | null;
  /** The day that the answer is asked for. */
  readonly asOf: CivilDay | null;
}

/**
 * Settles the year of a day: the one nearest to the days beside it; else the one named above it;
 * else the last that is not after the as-of day.
 *
 * @returns null when nothing tells
 */
export function settleYear(
  undated: UndatedDay,
  { neighbours, sectionYear, asOf }: YearHints,
): CivilDay | null {
  const nearest = nearestTo(neighbours, undated);
  if (nearest !== null) return nearest;
  if (sectionYear !== null) return undated.inYear(sectionYear);
  if (asOf === null) return null;
  return lastUpTo(undated, asOf);
}

/** Leap days come every fourth year, or every eighth around most centuries. */
const YEARS_BETWEEN_LEAP_DAYS = 8;

function lastUpTo(undated: UndatedDay, asOf: CivilDay): CivilDay | null {
  const { year } = yearMonthDay(asOf);
  for (let back = 0; back <= YEARS_BETWEEN_LEAP_DAYS; back += 1) {
    const day = undated.inYear(year - back);
    if (day !== null && day <= asOf) return day;
  }
  return null;
}

function nearestTo(neighbours: readonly CivilDay[], undated: UndatedDay): CivilDay | null {
  if (neighbours.length === 0) return null;
  const distance = (day: CivilDay) =>
    Math.min(...neighbours.map((neighbour) => Math.abs(day - neighbour)));
  const years = neighbours.map((day) => yearMonthDay(day).year);
  // A month with a two-digit number behind it: where the number is the year of the days beside
  // it, it is the year.
  if (undated.orElse !== null && years.includes(yearMonthDay(undated.orElse).year)) {
    return undated.orElse;
  }
  let best: CivilDay | null = null;
  for (let year = Math.min(...years) - 1; year <= Math.max(...years) + 1; year += 1) {
    const day = undated.inYear(year);
    if (day !== null && (best === null || distance(day) < distance(best))) best = day;
  }
  return best;
}
