const DAY_MS = 86_400_000;
/** Day 0 of a spreadsheet. UTC is used only to count days: no time zone takes part. */
const EPOCH_MS = Date.UTC(1899, 11, 30);

/**
 * The serial number of a day, or of a day and a time, written as ISO 8601 text.
 * @param text such as "2026-05-01", "2026-05-01 14:30" or "2026-05-01T14:30:05"
 * @returns days since 30 December 1899, or null when the text is no such day
 * @example serialOfIso("2026-05-01") // 46143
 */
export function serialOfIso(text: string): number | null {
  const parts = /^(\d{4})-(\d{2})-(\d{2})(?:[T ](\d{2}):(\d{2})(?::(\d{2}))?)?$/.exec(text);
  if (!parts) return null;
  const [year = 0, month = 0, day = 0, hour = 0, minute = 0, second = 0] = parts
    .slice(1)
    .map((part) => Number(part ?? 0));
  const midnight = new Date(Date.UTC(year, month - 1, day));
  // Date.UTC would turn 30 February into 2 March.
  if (midnight.getUTCMonth() !== month - 1 || midnight.getUTCDate() !== day || year < 1900) {
    return null;
  }
  if (hour > 23 || minute > 59 || second > 59) return null;
  return (midnight.getTime() - EPOCH_MS) / DAY_MS + (hour * 3600 + minute * 60 + second) / 86_400;
}

/** The last serial number that is a day of the calendar: 31 December 9999. */
const LAST_DAY = 2_958_465;

/**
 * A serial number as ISO 8601 text: the day, and the time to the minute if there is one; the number
 * itself where it lies beyond the calendar.
 * @example isoOfSerial(46143) // "2026-05-01"
 */
export function isoOfSerial(serial: number): string {
  if (Math.abs(serial) > LAST_DAY) return String(serial);
  const text = new Date(EPOCH_MS + Math.round(serial * 1440) * 60_000).toISOString();
  return Number.isInteger(serial)
    ? text.slice(0, 10)
    : `${text.slice(0, 10)} ${text.slice(11, 16)}`;
}
