/**
 * Civil days as whole numbers, counted from 1970-01-01 (day 0).
 */

const millisecondsADay = 86_400_000;

/** Days between 1899-12-30, the epoch of spreadsheet serials, and 1970-01-01. */
const serialOfDayZero = 25_569;

/**
 * The day of an ISO text.
 *
 * @param {string} iso `yyyy-mm-dd`
 * @returns {number} whole days from 1970-01-01
 */
export function dayFromIso(iso) {
  return Date.parse(`${iso}T00:00:00Z`) / millisecondsADay;
}

/**
 * The ISO text of a day.
 *
 * @param {number} day whole days from 1970-01-01
 * @returns {string} `yyyy-mm-dd`
 */
export function isoFromDay(day) {
  return new Date(day * millisecondsADay).toISOString().slice(0, 10);
}

/**
 * The spreadsheet serial of a day.
 *
 * @param {number} day whole days from 1970-01-01
 * @returns {number} whole days from 1899-12-30
 */
export function serialFromDay(day) {
  return day + serialOfDayZero;
}

/**
 * The day itself, or the Monday after it when it is a Sunday: nobody writes the
 * book on Sundays.
 *
 * @param {number} day whole days from 1970-01-01
 * @returns {number} whole days from 1970-01-01
 */
export function workingDay(day) {
  // 1970-01-01 was a Thursday, so day 3 was the first Sunday.
  return day % 7 === 3 ? day + 1 : day;
}

/**
 * How far the year has run.
 *
 * @param {number} day whole days from 1970-01-01
 * @returns {number} share of the year, 0 to below 1
 */
export function shareOfYear(day) {
  const year = isoFromDay(day).slice(0, 4);
  return (day - dayFromIso(`${year}-01-01`)) / 366;
}
