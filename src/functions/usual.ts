/** What functions take where an argument is left out, each with its reason. */

/** Of 100 ranges of a forecast so many should hold: wide enough to plan by, narrow enough to be of use. */
export const FORECAST_LEVEL = 0.8;
/** Of take rates so many: the level of most published tables, as no plan waits for these. */
export const TAKES_LEVEL = 0.95;
/** A working week ahead, as foremen go round. */
export const DAYS_AHEAD = 7;
/** Two weeks of work: as far as persons can be told what they will do. */
export const PLANNED_DAYS = 14;
/** A month, within which most that is needed can be bought. */
export const NEEDS_DAYS = 30;
