import * as text from "../../sentences/made/takes-page";
import type { TrendRow } from "../../wire/takes";
import { TREND_WORDS } from "../../wording/takes";
import { periodText } from "../controls/day-words";

/** Whether a period is counted and out of the ordinary. */
export function isSignal({ reading }: TrendRow): boolean {
  return reading !== null && reading !== "usual";
}

/** How a period stands beside the usual up and down; empty where nothing is counted. */
export function readingWords({ reading }: TrendRow): string {
  return reading === null ? "" : TREND_WORDS[reading]();
}

/** The last month's takes, for paper. */
export function lastMonthSentence(month: TrendRow): string {
  const { period, isOpen, rate, usual, grafted } = month;
  if (rate === null || usual === null || grafted === null) return "";
  const counted = isOpen ? "open" : "all";
  const facts = { period: periodText(period), rate, usual, grafted, counted } as const;
  return isSignal(month)
    ? text.lastMonthSignal({ ...facts, reading: readingWords(month) })
    : text.lastMonthUsual(facts);
}
