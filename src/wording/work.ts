import type { CivilDay, NeedingStep, PartRemark, Proof } from "../core";
import * as text from "../sentences/made/work";
import { dayWords } from "./days";
import { type SentencesOf, sentenceOf } from "./sentence-of";

const PART_REMARKS: SentencesOf<PartRemark> = {
  "does-not-fit": text.noFit,
  "not-before": ({ day }) => text.notBefore({ day: dayWords(day) }),
  "days-late": text.daysLate,
  "part-of": text.partOf,
  "no-plants": text.noPlants,
  "not-counted": text.notCounted,
  "no-work-rate": text.noRate,
};

/**
 * What there is to say of a part of a task; empty where nothing.
 *
 * @example partRemarks([{ code: "days-late", days: 7 }, { code: "part-of", plants: 400 }]) // "7 days late, part of 400"
 */
export function partRemarks(remarks: readonly PartRemark[]): string {
  return remarks.map((one) => sentenceOf(PART_REMARKS, one)).join(", ");
}

/** Which days ask for too much. */
export function tooMuchDays({ from, to }: { readonly from: CivilDay; readonly to: CivilDay }) {
  const [first, last] = [dayWords(from), dayWords(to)];
  return text.tooMuch({ days: from === to ? first : text.dayRange({ from: first, to: last }) });
}

/** The sum that proves it, and what mends it. */
export function tooMuchSum(
  proof: Pick<Proof, "tasks" | "persons" | "asked" | "there" | "short" | "lacksWho">,
): string {
  const [asked, there, short] = [proof.asked, proof.there, proof.short].map(String) as [
    string,
    string,
    string,
  ];
  const { tasks, persons } = proof;
  if (persons.length === 0) return text.tooMuchNobody({ asked, tasks });
  if (proof.lacksWho) return text.tooMuchOnly({ asked, there, tasks, persons });
  return text.tooMuchSum({ asked, there, short });
}

/**
 * What an item is needed for.
 *
 * @example neededForWords([{ step: "Grafting", batches: 3, plants: 412 }, { step: "Potting", batches: 1, plants: 20 }]) // "Grafting (3 batches, 412 plants); Potting (1 batch, 20 plants)"
 */
export function neededForWords(steps: readonly NeedingStep[]): string {
  return steps.map(text.neededFor).join("; ");
}
