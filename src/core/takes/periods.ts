import { type CivilDay, isoMonth, isoWeek, isoWeekText, monthOf, yearMonthDay } from "../dates";
import { InputError } from "../faults";

export const PERIODS = ["week", "month", "quarter"] as const;
export type Period = (typeof PERIODS)[number];

/** @throws InputError "no-such-period" */
export function periodNamed(text: string): Period {
  const wanted = text.trim().toLowerCase();
  const period = PERIODS.find((one) => one === wanted);
  if (period !== undefined) return period;
  throw new InputError({ code: "no-such-period", found: text });
}

/**
 * The period that a day lies in, as text that sorts by time.
 *
 * @example periodText("quarter", civilDay(2026, 11, 25)) // "2026-Q4"
 */
export function periodText(period: Period, day: CivilDay): string {
  if (period === "week") return isoWeekText(isoWeek(day));
  if (period === "month") return isoMonth(monthOf(day));
  const { year, month } = yearMonthDay(day);
  return `${year}-Q${Math.ceil(month / 3)}`;
}
