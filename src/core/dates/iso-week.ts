import { type CivilDay, civilDay, daysLater, isoWeekday, yearMonthDay } from "./civil-day";

export interface IsoWeek {
  /** The year that the week belongs to, which is not always the day's own year. */
  readonly year: number;
  /** 1 to 53. */
  readonly week: number;
}

/**
 * The ISO 8601 week of a day: weeks run Monday to Sunday, week 1 holds the year's first Thursday.
 *
 * @example isoWeek(civilDay(2005, 1, 1)) // { year: 2004, week: 53 }
 */
export function isoWeek(day: CivilDay): IsoWeek {
  const thursday = daysLater(day, 4 - isoWeekday(day));
  const { year } = yearMonthDay(thursday);
  const firstOfYear = civilDay(year, 1, 1) as CivilDay;
  return { year, week: Math.floor((thursday - firstOfYear) / 7) + 1 };
}

/** A week as ISO 8601 text. @example isoWeekText({ year: 2004, week: 53 }) // "2004-W53" */
export function isoWeekText({ year, week }: IsoWeek): string {
  return `${year}-W${String(week).padStart(2, "0")}`;
}

/** The Monday that a week starts with. */
export function mondayOf({ year, week }: IsoWeek): CivilDay {
  const fourthOfJanuary = civilDay(year, 1, 4) as CivilDay;
  return daysLater(fourthOfJanuary, 1 - isoWeekday(fourthOfJanuary) + (week - 1) * 7);
}
