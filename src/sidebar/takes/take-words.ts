import type { ComparedRow, TrendRow } from "../../workbook/sidebar-calls";
import { percentText } from "../controls/count-words";

/** How a group stands beside the others. */
export const COMPARED_WORDS: Readonly<Record<ComparedRow["reading"], string>> = {
  above: "above the rest",
  below: "below the rest",
  alike: "no clear difference",
  "too few": "too few to tell",
};

/** How a period stands beside the usual up and down. */
export const TREND_WORDS: Readonly<Record<NonNullable<TrendRow["reading"]>, string>> = {
  usual: "usual",
  low: "low",
  high: "high",
  "drifting down": "drifting down",
  "drifting up": "drifting up",
};

/** A period, and whether its takes are all counted. @example periodWords(row) // "2026-11, still open" */
export function periodWords({ period, isOpen }: TrendRow): string {
  return isOpen ? `${period}, still open` : period;
}

/** Whether a period is counted and out of the ordinary. */
export function isSignal({ reading }: TrendRow): boolean {
  return reading !== null && reading !== "usual";
}

/** The last month's takes, for paper. */
export function lastMonthSentence(month: TrendRow): string {
  const { period, isOpen, rate, usual, grafted, reading } = month;
  if (rate === null || usual === null || grafted === null || reading === null) return "";
  const soFar = isOpen ? " so far" : "";
  const judged = isSignal(month)
    ? `which reads ${TREND_WORDS[reading]}`
    : "nothing out of the ordinary";
  return `Takes of grafts made in ${period}${soFar}: ${percentText(rate)} of ${grafted}; usual is ${percentText(usual)}: ${judged}.`;
}
