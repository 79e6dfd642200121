import type { TimetableField } from "../words";

/** The columns of a timetable, as TIMETABLE writes them. */
export const TIMETABLE_COLUMNS = {
  method: "text",
  step: "text",
  after: "text",
  from: "count",
  usual: "count",
  by: "count",
  counted: "text",
  kept: "number",
  perPersonHour: "number",
  needs: "text",
  caution: "text",
  source: "text",
  kind: "text",
  every: "count",
  until: "text",
} as const satisfies Readonly<Record<TimetableField, string>>;

/** Their headers as TIMETABLE writes them, which are read again. */
export const TIMETABLE_HEADER: Readonly<Record<TimetableField, string>> = {
  method: "Method",
  step: "Step",
  after: "After",
  from: "From day",
  usual: "Usual day",
  by: "By day",
  counted: "Counted",
  kept: "Kept of 100",
  perPersonHour: "Per person-hour",
  needs: "Needs",
  caution: "Caution",
  source: "Source",
  kind: "Kind",
  every: "Every days",
  until: "Until",
};
