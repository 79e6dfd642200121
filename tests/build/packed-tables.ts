/** The tables that are packed together, as pack-methods.ts has them. */

export { ICCO_HARVEST_MONTHS } from "../../src/core/orders/icco-harvest-months.table";
export { builtInMethods } from "../../src/core/timetable/built-in-methods";
export { CALENDAR_NAMES } from "../../src/core/words/calendar-names.table";
