import type { ChartReading, FairReading, RatedGroup, ReasonReading, TakesRemark } from "../core";
import * as text from "../sentences/made/takes";
import { RECORDS_REMARKS } from "./records";
import { type SentencesOf, sentenceOf, together, type Where } from "./sentence-of";

const REMARKS: SentencesOf<TakesRemark> = {
  ...RECORDS_REMARKS,
  "not-counted-yet": text.notCountedYet,
  "more-taken-than-grafted": text.moreTakenThanGrafted,
  "no-grafting-day": text.noGraftingDay,
  "one-batch-each": text.oneBatchEach,
  "usual-batch": text.usualBatch,
  "not-cause": text.notCause,
  "people-not-named": text.peopleNotNamed,
};

/** Remarks beside takes as sentences; null where there are none. */
export function takesRemarks(remarks: readonly TakesRemark[], where: Where): string | null {
  return together(remarks.map((one) => sentenceOf(REMARKS, one, where)));
}

/** How a group stands beside the others. */
export const COMPARED_WORDS: Readonly<Record<FairReading, () => string>> = {
  above: text.compareAbove,
  below: text.compareBelow,
  alike: text.compareAlike,
  "too few": text.compareTooFew,
};

/** How a period stands beside the usual up and down. */
export const TREND_WORDS: Readonly<Record<ChartReading, () => string>> = {
  usual: text.trendUsual,
  low: text.trendLow,
  high: text.trendHigh,
  "drifting down": text.trendDriftingDown,
  "drifting up": text.trendDriftingUp,
};

/** How a column goes with takes. */
export const REASON_WORDS: Readonly<Record<ReasonReading, () => string>> = {
  stays: text.reasonStays,
  "others may be behind": text.reasonOthers,
  "not told apart": text.reasonNotToldApart,
  alone: text.reasonAlone,
  "only beside": text.reasonOnlyBeside,
  "no clear link": text.reasonNoClearLink,
  "too few to tell": text.reasonTooFew,
};

/** A period, and whether its takes are all counted. */
export function periodWords(one: { readonly period: string; readonly isOpen: boolean }): string {
  return one.isOpen ? text.periodOpen(one) : one.period;
}

/** Groups with nobody to compare with that are named before the rest are counted. */
const MOST_NAMED = 6;

/**
 * Whose batches are counted but not judged, each as it is called; null where there is nobody.
 *
 * @param batches how many these are together
 */
export function aloneSentence(
  alone: readonly { readonly group: string; readonly stratum: string }[],
  batches: number,
): string | null {
  if (alone.length === 0) return null;
  const more = alone.length - MOST_NAMED;
  const groups = [
    ...alone.slice(0, MOST_NAMED).map(text.groupAlone),
    ...(more > 0 ? [text.groupsMore({ groups: more })] : []),
  ];
  return text.nobodyToCompareWith({ groups, batches });
}

/** A group with its rate. @example ratedWords({ name: "Kesto", takeRate: 0.64 }) // "Kesto (64\u00a0%)" */
export function ratedWords(one: RatedGroup): string {
  return text.groupRated(one);
}

/** What a group is called that is made of these texts' columns; a blank text says so. */
export function groupText(name: string): string {
  return name === "" ? text.blank() : name;
}
