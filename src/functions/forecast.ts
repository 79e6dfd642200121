import { asOf, columns, records, share, timetable } from "./parameter";
import { FORECAST_LEVEL } from "./usual";

/** The parameters of every function that forecasts from the records alone. */
export const forecast = { records, timetable, asOf, level: share(FORECAST_LEVEL), columns };
