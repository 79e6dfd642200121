import { formatDate } from "./format-date";
import { isDate } from "./value-kind";
import { type WallClock, wallClock } from "./wall-clock";

/** The two time zones and the locale that a script can ask for. */
export interface ScriptSettings {
  /** The zone of the spreadsheet: a date cell is midnight there. */
  readonly spreadsheetZone: string;
  /** The zone of the script: what `Date` getters use. On this host it is that of the process. */
  readonly scriptZone: string;
  /** Such as "en_GB". */
  readonly locale: string;
  /** Rows of a tab that a script adds; as many as the spreadsheet gives if left out. */
  readonly newRows?: number;
  /** True to refuse `TODAY()` to custom functions, as `NOW()` always is; nobody has seen which is so. */
  readonly refusesToday?: boolean;
  /** True where rows that a filter hides take nothing that a script writes; nobody has seen which is so. */
  readonly keepsFiltered?: boolean;
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
        if (!isDate(date) || typeof zone !== "string" || typeof pattern !== "string") {
          throw serviceException(
            "The parameters don't match the method signature for Utilities.formatDate.",
          );
        }
        try {
          return formatDate(date, clockOf(zone), pattern);
        } catch (error) {
          throw serviceException((error as Error).message);
        }
      },
    }),
  };
}

function serviceException(message: string): Error {
  const error = new Error(message);
  error.name = "Exception";
  return error;
}
