import * as help from "../sentences/made/parameter-help";

/** Sentences of parameters that many functions share. The built file leaves them out. */
export const RECORDS = help.records;
export const TIMETABLE = help.timetable;
export const AS_OF = help.asOf;
export const AS_OF_OR_NONE = help.asOfOrNone;
export const LEVEL = help.level;
export const COLUMNS = help.columns;

/** Those of what is asked of a forecast; see forecast.ts. */
export const FORECAST = {
  records: RECORDS,
  timetable: TIMETABLE,
  asOf: AS_OF,
  level: LEVEL,
  columns: COLUMNS,
};
