import { columns } from "../answer";

export type TimetableField =
  | "method"
  | "step"
  | "after"
  | "from"
  | "usual"
  | "by"
  | "counted"
  | "kept"
  | "perPersonHour"
  | "needs"
  | "caution"
  | "source";

/** The columns of a timetable, as TIMETABLE writes them. */
export const TIMETABLE_COLUMNS = columns({
  Method: "text",
  Step: "text",
  After: "text",
  "From day": "count",
  "Usual day": "count",
  "By day": "count",
  Counted: "text",
  "Kept of 100": "number",
  "Per person-hour": "number",
  Needs: "text",
  Caution: "text",
  Source: "text",
});

/** Headers by which each column of a timetable is known, in normal form. */
export const TIMETABLE_WORDS: Readonly<Record<TimetableField, readonly string[]>> = {
  method: ["method", "crop", "crop and method"],
  step: ["step", "stage", "task"],
  after: ["after", "after step", "counted from", "days after"],
  from: ["from day", "from", "earliest", "earliest day"],
  usual: ["usual day", "usual", "usually", "days", "day"],
  by: ["by day", "by", "latest", "latest day"],
  counted: ["counted", "count"],
  kept: ["kept of 100", "kept", "kept per cent", "kept percent"],
  perPersonHour: ["per person hour", "per hour", "plants per person hour", "plants per hour"],
  needs: ["needs", "materials", "needs per plant"],
  caution: ["caution", "cautions", "safety"],
  source: ["source", "sources"],
};
