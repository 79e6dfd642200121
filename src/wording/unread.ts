import type { ReadAs, Unread } from "../core";
import * as trouble from "../sentences/made/troubles";
import * as text from "../sentences/made/unread";
import { dayWords } from "./days";
import { type SentencesOf, sentenceOf } from "./sentence-of";

const UNREAD: SentencesOf<Unread> = {
  "cell-shows": text.cellShows,
  "not-a-count": text.notACount,
  "tick-box-for-count": text.tickBoxForCount,
  "date-for-count": text.dateForCount,
  "part-of-a-plant": text.aPartOfAPlant,
  "below-zero": text.belowZero,
  "too-many-plants": text.tooManyPlants,
  "percent-of-nothing": text.percentOfNothing,
  "over-100-percent": text.over100Percent,
  "not-a-day": text.notADay,
  "tick-box-for-day": text.tickBoxForDay,
  "number-for-day": text.numberForDay,
  "no-such-day": text.noSuchDay,
  "day-or-month-first": text.dayOrMonthFirst,
  "no-year": text.noYear,
  "neither-day-nor-yes": text.neitherDayNorYes,
  "either-day": ({ days: [one, other] }) =>
    text.eitherDay({ one: dayWords(one), other: dayWords(other) }),
  "too-far-away": ({ day }) => text.tooFarAway({ day: dayWords(day) }),
};

/** Why a cell can't be read, within a sentence. */
export function unreadWords(why: Unread): string {
  return sentenceOf(UNREAD, why);
}

const READ_AS: SentencesOf<ReadAs> = {
  count: ({ count }) => trouble.readAs({ readAs: count }),
  many: trouble.readAsPlants,
  nobody: trouble.readAsNobody,
  "not-to-be-done": trouble.readAsNotDone,
  share: trouble.readAsShare,
  day: ({ day }) => trouble.readAs({ readAs: dayWords(day) }),
};

/** How a cell was read that is not plainly written. */
export function readAsSentence(readAs: ReadAs): string {
  return sentenceOf(READ_AS, readAs);
}
