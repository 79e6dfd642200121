import { types } from "node:util";
import { type WallClock, wallClock } from "./wall-clock";

/** The two time zones and the locale that a script can ask for. */
export interface ScriptSettings {
  /** The zone of the spreadsheet: a date cell is midnight there. */
  readonly spreadsheetZone: string;
  /** The zone of the script: what `Date` getters use. On this host it is that of the process. */
  readonly scriptZone: string;
  /** Such as "en_GB". */
  readonly locale: string;
}

/**
 * The services that a custom function of this add-in may call: which spreadsheet zone and locale
 * it runs in, and formatting a date in a zone. Nothing here can read a cell or write one.
 */
export function scriptServices(settings: ScriptSettings): Record<string, object> {
  const spreadsheet = Object.freeze({
    getSpreadsheetTimeZone: () => settings.spreadsheetZone,
    getSpreadsheetLocale: () => settings.locale,
  });
  const clocks = new Map<string, WallClock>();
  const clockOf = (zone: string) => {
    const clock = clocks.get(zone) ?? wallClock(zone);
    clocks.set(zone, clock);
    return clock;
  };
  return {
    SpreadsheetApp: Object.freeze({
      getActive: () => spreadsheet,
      getActiveSpreadsheet: () => spreadsheet,
    }),
    Session: Object.freeze({ getScriptTimeZone: () => settings.scriptZone }),
    Utilities: Object.freeze({
      formatDate: (date: unknown, zone: unknown, pattern: unknown) => {
        if (!types.isDate(date) || typeof zone !== "string" || typeof pattern !== "string") {
          throw serviceException(
            "The parameters don't match the method signature for Utilities.formatDate.",
          );
        }
        return formatDate(date, clockOf(zone), pattern);
      },
    }),
  };
}

/** Only the letters that mean the same to everyone; another letter is refused, not guessed. */
function formatDate(date: Date, clock: WallClock, pattern: string): string {
  const at = clock.fieldsOf(date.getTime());
  const digits = (value: number, width: number) => String(value).padStart(width, "0");
  return pattern.replace(/'([^']*)'|([A-Za-z])\2*/g, (run, literal: string | undefined) => {
    if (literal !== undefined) return literal === "" ? "'" : literal;
    switch (run[0]) {
      case "y":
        return run.length === 2 ? digits(at.year % 100, 2) : digits(at.year, run.length);
      case "M":
        if (run.length > 2) break;
        return digits(at.month, run.length);
      case "d":
        return digits(at.day, run.length);
      case "H":
        return digits(at.hour, run.length);
      case "m":
        return digits(at.minute, run.length);
      case "s":
        return digits(at.second, run.length);
      case "S":
        return digits(at.millisecond, run.length);
    }
    throw serviceException(`This host does not format "${run}" in a date pattern.`);
  });
}

function serviceException(message: string): Error {
  const error = new Error(message);
  error.name = "Exception";
  return error;
}
