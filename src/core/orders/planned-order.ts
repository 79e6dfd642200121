import { shortened } from "../cells/quoted";
import type { CivilDay } from "../dates/civil-day";
import { sentenceDay } from "../dates/day-text";
import { foldName } from "../names/fold-name";
import { timetableForecaster } from "../projection/forecaster";
import { project } from "../projection/project";
import { leftOutRemark, type Records } from "../records/records";
import { methodOrRefuse } from "../timetable/method-of-batch";
import type { Method, Timetable } from "../timetable/timetable";
import { wordSet } from "../words/all-languages";
import { normalText } from "../words/normal-text";
import { knownVarieties } from "./draw-fillings";
import { type HarvestMonths, isHarvestDay, lastHarvestDayBefore } from "./harvest-months";
import { addUp, amountsText, needsFor } from "./needs-for";
import { firstVariety, varietiesOf } from "./order";
import { type OrderPlan, type PlannedStep, planOrder } from "./plan-order";
import { promiseFromStanding } from "./promise-from-standing";

export interface PlanQuestion {
  /** Plants, whole number, 1 or more. */
  readonly wanted: number;
  readonly readyBy: CivilDay;
  readonly timetable: Timetable;
  /** Null for the timetable's first. */
  readonly methodName: string | null;
  /** Strictly between 0 and 1. */
  readonly assurance: number;
  /** What the nursery's shares and days are learned from; null to plan by the timetable alone. */
  readonly records: Records | null;
  /** The day that is planned on; the latest day in the records if null. */
  readonly asOf: CivilDay | null;
  /** Such as "Amberlow or Corvane", planned for the first; empty for one like the others. */
  readonly variety: string;
  readonly harvest: HarvestMonths | null;
}

export interface PlannedOrder {
  readonly method: Method;
  readonly steps: readonly PlannedOrderLine[];
  /** The needs of all steps together; empty where none are known. */
  readonly needs: string;
  /** What in the records could not be used; null where all was. */
  readonly remark: string | null;
}

/** A step of the plan with what it needs and what there is to say of it; empty where nothing. */
export interface PlannedOrderLine extends Pick<PlannedStep, "step" | "doBy" | "plants"> {
  readonly needs: string;
  /** Sentences that only say how a number came about. */
  readonly facts: readonly string[];
  /** Sentences that ask for care. */
  readonly warnings: readonly string[];
  /** Whether its day lies before the day it is planned on. */
  readonly isPast: boolean;
}

/**
 * An order planned backwards, step by step: by which day, from how many plants, with what needs; and
 * what is amiss with it.
 *
 * @throws InputError "unknown-method" | "timetable-unusable" when the timetable is empty
 */
export function plannedOrder(question: PlanQuestion): PlannedOrder {
  const { timetable, records, assurance, wanted, readyBy, harvest } = question;
  const method = methodOrRefuse(timetable, question.methodName);
  const asOf = question.asOf ?? (records === null ? null : latestDay(records));
  const projection =
    records === null || asOf === null
      ? null
      : project({ records, timetable, asOf, level: assurance });
  const known = projection === null ? new Map<string, string>() : knownVarieties(projection);
  const varieties = varietiesOf(question, known);
  const variety = firstVariety(question, known);
  // A slip in the name would else go unheard, and the plan be by other varieties' takes.
  const isUnknown = variety !== "" && known.size > 0 && !known.has(foldName(variety));
  const forecaster = projection?.forecaster ?? timetableForecaster();
  const plan = planOrder({ wanted, readyBy, method, assurance, forecaster, variety, asOf });
  const standing =
    plan.past === null || projection === null
      ? null
      : promiseFromStanding(projection, { method, varieties, by: readyBy, assurance });
  const start = plan.steps.findIndex(({ onLine }) => onLine);
  const last = plan.steps.length - 1;
  const steps = plan.steps.map((planned, index): PlannedOrderLine => {
    const { step, doBy, plants } = planned;
    const isStart = index === start;
    return {
      step,
      doBy,
      plants,
      needs: plants === null ? "" : amountsText(needsOf(planned)),
      facts: [
        ...sizeFact(planned, plan.plantChance),
        ...(index === last ? [chanceFact(plan)] : []),
      ].map(sentence),
      warnings: [
        ...(plants === null ? ["No start is large enough to be so sure of it"] : []),
        ...(isStart && varieties.length > 1
          ? [`Planned for ${shortened(variety)}, the first of those that will do`]
          : []),
        ...(isStart && isUnknown
          ? [`The records have no batch of ${shortened(variety)}: planned as for any variety`]
          : []),
        ...(isStart && harvest !== null ? harvestWarning(planned, harvest) : []),
        ...(isStart ? pastWarnings(plan, question, { asOf, standing }) : pastDay(planned, asOf)),
      ].map(sentence),
      isPast: asOf !== null && doBy !== null && doBy < asOf,
    };
  });
  return {
    method,
    steps,
    needs: amountsText(addUp(plan.steps.flatMap(needsOf))),
    remark: records === null ? null : leftOutRemark(records),
  };
}

/** The latest day written in the records; null when none is. */
function latestDay({ batches }: Records): CivilDay | null {
  let latest: CivilDay | null = null;
  for (const { days } of batches) {
    for (const day of days) if (day !== null && (latest === null || day > latest)) latest = day;
  }
  return latest;
}

function needsOf({ step, plants }: PlannedStep) {
  return needsFor(step.needs, plants ?? 0);
}

function sentence(text: string): string {
  return `${text}.`;
}

function sizeFact({ plants, plainly }: PlannedStep, chance: number): readonly string[] {
  if (plants === null || plainly === null) return [];
  const more = plants - plainly;
  const plain = `Plain division by what is kept: ${plainly}`;
  return [more === 0 ? plain : `${plain}; ${more} more to have enough in ${of100(chance)}`];
}

/** Words in what a step needs that say it takes seed. */
const SEED_ITEMS = wordSet((words) => words.seedItems);

function harvestWarning({ step, doBy }: PlannedStep, harvest: HarvestMonths): readonly string[] {
  const takesSeed = step.needs.some(({ item }) =>
    normalText(item)
      .split(" ")
      .some((word) => SEED_ITEMS.has(word)),
  );
  if (!takesSeed || doBy === null || isHarvestDay(harvest, doBy)) return [];
  const before = sentenceDay(lastHarvestDayBefore(harvest, doBy));
  return [
    `Seed would be taken outside the harvest months (${harvest.written}); the last day inside is ${before}`,
  ];
}

function pastWarnings(
  { past, steps }: OrderPlan,
  { wanted, readyBy }: PlanQuestion,
  { asOf, standing }: { readonly asOf: CivilDay | null; readonly standing: number | null },
): readonly string[] {
  const startBy = steps.find(({ onLine }) => onLine)?.doBy ?? null;
  if (past === null || asOf === null || startBy === null) return [];
  const earliest = `Started on ${sentenceDay(asOf)}, ${wanted} can be met by ${sentenceDay(past.earliest)}`;
  if (readyBy < asOf) return ["The day asked for is past", earliest];
  const by = sentenceDay(readyBy);
  const late = `Too late: the start was due by ${sentenceDay(startBy)}`;
  const number =
    past.stillEnough !== null
      ? `By ${by} all ${wanted} can still be met from a larger start of ${past.stillEnough}`
      : standing === null
        ? `By ${by} a new start can meet none`
        : `By ${by} a new start can meet none; what stands can meet ${Math.min(wanted, standing)}, if not promised to others`;
  return [late, earliest, number];
}

function pastDay({ doBy, onLine }: PlannedStep, asOf: CivilDay | null): readonly string[] {
  return asOf !== null && doBy !== null && onLine && doBy < asOf ? ["The day is past"] : [];
}

function chanceFact({ plantChance, dayChance }: OrderPlan): string {
  return `Both together in ${of100(plantChance * dayChance)}: enough plants in ${of100(plantChance)}, ready by the day in ${of100(dayChance)}`;
}

function of100(chance: number): string {
  const rounded = Math.round(chance * 1000) / 10;
  // 99.99 of 100 must not be said to be all.
  return `${chance < 1 && rounded === 100 ? 99.9 : rounded} of 100`;
}
