import type { Amount, PlanFact, PlanWarning } from "../core";
import * as text from "../sentences/made/order-plan";
import { dayWords } from "./days";
import { unlessNear } from "./names";
import { type SentencesOf, sentenceOf } from "./sentence-of";

/** A chance, 0 to 1, as "89.2 of 100". */
function of100(chance: number): string {
  const rounded = Math.round(chance * 1000) / 10;
  // 99.99 of 100 must not be said to be all.
  return text.of100({ chance: String(chance < 1 && rounded === 100 ? 99.9 : rounded) });
}

const FACTS: SentencesOf<PlanFact> = {
  "plain-division": text.plain,
  "more-than-plain": ({ plants, more, chance }) =>
    text.plainAndMore({ plants, more, chance: of100(chance) }),
  "general-share": ({ kept, mean }) =>
    text.generalShare({ kept, mean: mean ?? kept, own: mean === null ? "no" : "yes" }),
  chances: ({ ofPlants, ofDays }) =>
    text.chances({ plants: of100(ofPlants), days: of100(ofDays), both: of100(ofPlants * ofDays) }),
};

const WARNINGS: SentencesOf<PlanWarning> = {
  "no-start-large-enough": text.noStart,
  "first-variety": text.firstVariety,
  "unknown-variety": unlessNear(text.unknownVariety, text.unknownVarietyMeant),
  "outside-harvest": ({ months, last }) => text.outsideHarvest({ months, last: dayWords(last) }),
  "start-was-due": ({ day }) => text.startWasDue({ day: dayWords(day) }),
  "asked-day-past": text.askedPast,
  "started-now": ({ asOf, wanted, earliest }) =>
    text.startedNow({ asOf: dayWords(asOf), wanted, earliest: dayWords(earliest) }),
  "larger-start": ({ by, wanted, start }) => text.largerStart({ by: dayWords(by), wanted, start }),
  "new-start-none": ({ by }) => text.newStartNone({ by: dayWords(by) }),
  "standing-can": ({ by, plants }) => text.standingCan({ by: dayWords(by), plants }),
  "day-past": text.dayPast,
};

/** How a number of a plan came about. */
export function planFact(one: PlanFact): string {
  return sentenceOf(FACTS, one);
}

/** What asks for care in a plan. */
export function planWarning(one: PlanWarning): string {
  return sentenceOf(WARNINGS, one);
}

/** So much of an item. @example needWords({ item: "strip", amount: 57.2, unit: "m" }) // "strip 57.2 m" */
export function needWords({ item, amount, unit }: Amount): string {
  const facts = { item, amount: String(amount), unit };
  return unit === "" ? text.needPieces(facts) : text.need(facts);
}

/**
 * What is needed, one after another; an item without a unit is counted.
 *
 * @example needsWords([{ item: "strip", amount: 57.2, unit: "m" }, { item: "bag", amount: 150, unit: "" }]) // "strip 57.2 m; bag 150"
 */
export function needsWords(needs: readonly Amount[]): string {
  return needs.map(needWords).join("; ");
}
