import type { BalanceRemark, DueStatus, StageRemark } from "../core";
import * as text from "../sentences/made/batches";
import { dayWords } from "./days";
import type { SentencesOf } from "./sentence-of";

/** What is to be said of where a batch stands. */
export const STAGE_REMARKS: SentencesOf<StageRemark> = {
  "set-aside": ({ since }) => text.setAside({ since: dayWords(since) }),
  planned: text.planned,
  "no-day-yet": text.noDayYet,
  "no-dates": text.noDates,
  "next-late": ({ step, by, since }) =>
    text.nextLate({ step, by: dayWords(by), since: dayWords(since) }),
  "no-plants-counted": text.noPlantsCounted,
  "no-such-method": text.noSuchMethod,
  "several-methods": text.severalMethods,
};

/** What is to be said of a batch's balance. */
export const BALANCE_REMARKS: SentencesOf<BalanceRemark> = {
  "no-plants-counted": text.noPlantsCounted,
  "more-left-than-came": text.moreLeft,
  "more-stand-than-should": text.moreStand,
  "left-after-count": text.leftAfterCount,
  "closed-with": text.closedWith,
};

/** How a task stands on the day. */
export const DUE_WORDS: Readonly<Record<DueStatus, () => string>> = {
  late: text.late,
  due: text.due,
  coming: text.coming,
};
