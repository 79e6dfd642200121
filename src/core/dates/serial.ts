import type { CivilDay } from "./civil-day";

/** The serial number of 1970-01-01 in sheets whose day 0 is 1899-12-30. */
const SERIAL_OF_1970 = 25569;

/**
 * The day of a sheet's serial number; a fraction is a time of day and is dropped.
 *
 * @example dayOfSerial(45474) // civilDay(2024, 7, 1)
 */
export function dayOfSerial(serial: number): CivilDay {
  return (Math.floor(serial) - SERIAL_OF_1970) as CivilDay;
}

/** The serial number of a day. @example serialOfDay(civilDay(2024, 7, 1)) // 45474 */
export function serialOfDay(day: CivilDay): number {
  return day + SERIAL_OF_1970;
}
