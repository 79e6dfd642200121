import { type Amount, addUp, bought, needsFor } from "../amounts";
import type { Kinds } from "../answer";
import { shortened } from "../cells";
import type { CivilDay } from "../dates";
import { nearestNames } from "../names";
import { type GeneralShare, generalShare, project, timetableForecaster } from "../projection";
import { type Records, timetableLeftOut } from "../records";
import { leftOutByMethod, type Method, methodOrRefuse, type Timetable } from "../timetable";
import { normalText, wordSet } from "../words";
import { type HarvestMonths, isHarvestDay, lastHarvestDayBefore } from "./harvest-months";
import type { OrdersRemark, PlanFact, PlanWarning } from "./order-remark";
import { type OrderPlan, type PlannedStep, planOrder } from "./plan-order";
import { promiseFromStanding } from "./promise-from-standing";
import { varietiesInDoubt } from "./varieties-in-doubt";
import { firstVariety, type KnownNames, namesKnown, unknownWishes, wishesOf } from "./wishes";

/** The columns of a step's row. */
export const PLAN_COLUMNS = {
  step: "text",
  doBy: "day",
  plants: "count",
  needs: "text",
  remarks: "text",
} as const satisfies Kinds;

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
  /** The needs of all steps together; none where none are known. */
  readonly needs: readonly Amount[];
  /** What in the records could not be used. */
  readonly remarks: readonly OrdersRemark[];
}

/** A step of the plan with what it needs and what there is to say of it. */
export interface PlannedOrderLine extends Pick<PlannedStep, "step" | "doBy" | "plants"> {
  readonly needs: readonly Amount[];
  readonly facts: readonly PlanFact[];
  readonly warnings: readonly PlanWarning[];
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
  const known = namesKnown(records ?? { batches: [] }, timetable);
  const wishes = wishesOf(question, known.varieties);
  const variety = firstVariety(question, known.varieties);
  // A slip in the name would else go unheard, and the plan be by other varieties' takes.
  const [unknown] = unknownWishes(wishes.slice(0, 1), known);
  const forecaster = projection?.forecaster ?? timetableForecaster();
  const plan = planOrder({ wanted, readyBy, method, assurance, forecaster, variety, asOf });
  const standing =
    plan.past === null || projection === null
      ? null
      : promiseFromStanding(projection, { method, wishes, by: readyBy, assurance });
  const start = plan.steps.findIndex(({ onLine }) => onLine);
  const last = plan.steps.length - 1;
  const steps = plan.steps.map((planned, index): PlannedOrderLine => {
    const { step, doBy, plants } = planned;
    const isStart = index === start;
    return {
      step,
      doBy,
      plants,
      needs: plants === null ? [] : bought(needsOf(planned)),
      facts: [
        ...sizeFact(planned, plan.plantChance),
        // Every order counts on these, whatever its crop: half of what is started for it may be for them.
        ...shareFact(generalShare({ method, upTo: index, variety }, forecaster)),
        ...(index === last ? [chanceFact(plan)] : []),
      ],
      warnings: [
        ...(plants === null ? [{ code: "no-start-large-enough" } as const] : []),
        ...(isStart && wishes.length > 1
          ? [
              {
                code: "first-variety",
                variety: shortened(variety || (wishes[0]?.written ?? "")),
              } as const,
            ]
          : []),
        ...(isStart && unknown !== undefined
          ? [unknownVariety(shortened(unknown.written), known)]
          : []),
        ...(isStart && harvest !== null ? harvestWarning(planned, harvest) : []),
        ...(isStart ? pastWarnings(plan, question, { asOf, standing }) : pastDay(planned, asOf)),
      ],
      isPast: asOf !== null && doBy !== null && doBy < asOf,
    };
  });
  return {
    method,
    steps,
    needs: bought(addUp(plan.steps.flatMap(needsOf))),
    remarks:
      records === null
        ? timetableLeftOut(timetable.leftOut?.faults)
        : [
            ...(standing === null ? [] : varietiesInDoubt([question], records, known.varieties)),
            ...leftOutByMethod({ records, timetable }),
          ],
  };
}

function unknownVariety(variety: string, { varieties }: KnownNames): PlanWarning {
  const nearest = nearestNames(variety, [...varieties.values()]);
  return { code: "unknown-variety", variety, nearest };
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

function sizeFact({ plants, plainly }: PlannedStep, chance: number): readonly PlanFact[] {
  if (plants === null || plainly === null) return [];
  const more = plants - plainly;
  if (more === 0) return [{ code: "plain-division", plants: plainly }];
  return [{ code: "more-than-plain", plants: plainly, more, chance }];
}

function shareFact(share: GeneralShare | null): readonly PlanFact[] {
  return share === null ? [] : [{ code: "general-share", ...share }];
}

/** Words in what a step needs that say it takes seed. */
const SEED_ITEMS = wordSet((words) => words.seedItems);

function harvestWarning(
  { step, doBy }: PlannedStep,
  harvest: HarvestMonths,
): readonly PlanWarning[] {
  const takesSeed = step.needs.some(({ item }) =>
    normalText(item)
      .split(" ")
      .some((word) => SEED_ITEMS.has(word)),
  );
  if (!takesSeed || doBy === null || isHarvestDay(harvest, doBy)) return [];
  const last = lastHarvestDayBefore(harvest, doBy);
  return [{ code: "outside-harvest", months: shortened(harvest.written), last }];
}

function pastWarnings(
  { past, steps }: OrderPlan,
  { wanted, readyBy }: PlanQuestion,
  { asOf, standing }: { readonly asOf: CivilDay | null; readonly standing: number | null },
): readonly PlanWarning[] {
  const startBy = steps.find(({ onLine }) => onLine)?.doBy ?? null;
  if (past === null || asOf === null || startBy === null) return [];
  const { earliest, stillEnough } = past;
  const startedNow = { code: "started-now", asOf, wanted, earliest } as const;
  if (readyBy < asOf) return [{ code: "asked-day-past" }, startedNow];
  return [
    { code: "start-was-due", day: startBy },
    startedNow,
    stillEnough !== null
      ? { code: "larger-start", by: readyBy, wanted, start: stillEnough }
      : standing === null
        ? { code: "new-start-none", by: readyBy }
        : { code: "standing-can", by: readyBy, plants: Math.min(wanted, standing) },
  ];
}

function pastDay({ doBy, onLine }: PlannedStep, asOf: CivilDay | null): readonly PlanWarning[] {
  return asOf !== null && doBy !== null && onLine && doBy < asOf ? [{ code: "day-past" }] : [];
}

function chanceFact({ plantChance, dayChance }: OrderPlan): PlanFact {
  return { code: "chances", ofPlants: plantChance, ofDays: dayChance };
}
