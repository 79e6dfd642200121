import type { Host } from "../../door/index";

/**
 * The spreadsheet that the script is bound to. Nothing is asked of it until an answer needs it:
 * every call to a service costs time, and most formulas hold no dates of two numbers.
 */
export function workbookHost(workbook?: GoogleAppsScript.Spreadsheet.Spreadsheet): Host {
  const bound = () => workbook ?? SpreadsheetApp.getActiveSpreadsheet();
  let locale: string | null = null;
  let wall: ((milliseconds: number) => string) | null = null;
  return {
    wallTime: (milliseconds) => {
      wall ??= wallClock(bound().getSpreadsheetTimeZone());
      return wall(milliseconds);
    },
    locale: () => {
      locale ??= bound().getSpreadsheetLocale() ?? "";
      return locale;
    },
  };
}

/** Intl is many times faster than a service call; where it lacks the zone, Utilities answers. */
function wallClock(zone: string): (milliseconds: number) => string {
  let format: Intl.DateTimeFormat;
  try {
    format = new Intl.DateTimeFormat("en-US", {
      timeZone: zone,
      hourCycle: "h23",
      year: "numeric",
      month: "2-digit",
      day: "2-digit",
      hour: "2-digit",
      minute: "2-digit",
      second: "2-digit",
    });
  } catch {
    return (milliseconds) =>
      Utilities.formatDate(new Date(milliseconds), zone, "yyyy-MM-dd HH:mm:ss");
  }
  return (milliseconds) => {
    const match = /^(\d\d)\/(\d\d)\/(\d+), (\d\d:\d\d:\d\d)/.exec(format.format(milliseconds));
    if (!match) throw new Error(`the clock of ${zone} could not be read`);
    const [, month, day, year, time] = match;
    return `${(year as string).padStart(4, "0")}-${month}-${day} ${time}`;
  };
}
