import { type CivilDay, daysLater } from "../dates";
import type { Forecaster } from "../projection";
import { type DayDistribution, dayQuantile } from "../statistics";
import type { Method, Step } from "../timetable";
import { chanceWithin, daysToReady, lineToReady } from "./days-to-ready";
import { plainStart, smallestStart } from "./smallest-start";

export interface OrderToPlan {
  /** Whole number, 1 or more. */
  readonly wanted: number;
  readonly readyBy: CivilDay;
  readonly method: Method;
  /** Chance with which the order is to be met, strictly between 0 and 1. */
  readonly assurance: number;
  readonly forecaster: Forecaster;
  /** Empty where none is named. */
  readonly variety: string;
  /** The day it is planned on; null when not known. */
  readonly asOf: CivilDay | null;
}

/** A step of a plan. Whoever has its plants by its day meets the order with the assurance. */
export interface PlannedStep {
  readonly step: Step;
  /** Null for a step that is counted from none of ready's. */
  readonly doBy: CivilDay | null;
  /** Plants at the step: seeds sown, grafts made …; null when no start is large enough. */
  readonly plants: number | null;
  /** The plain division by the shares kept; at a step where plants are counted. */
  readonly plainly: number | null;
  /** Whether ready waits for it. */
  readonly onLine: boolean;
}

/** What can still be done when the start should have been made before the as-of day. */
export interface PastStart {
  /** The first day for which the order can be planned from a start on the as-of day. */
  readonly earliest: CivilDay;
  /** A start on the as-of day that still meets the order by its day, only larger; null when none does. */
  readonly stillEnough: number | null;
}

export interface OrderPlan {
  /** Up to and with ready, in the method's order. */
  readonly steps: readonly PlannedStep[];
  /** Chance of enough plants asked for, and of being ready by the day; their product is at least the assurance. */
  readonly plantChance: number;
  readonly dayChance: number;
  /** Null when the start lies ahead, or no as-of day is known. */
  readonly past: PastStart | null;
}

/** A start on the last possible day is given no more plants than make this sure. */
const SUREST = 0.99;

/**
 * Plans an order backwards: how many plants are needed at each step and by which day each is to be
 * done, so that with the assurance there are enough plants by the day.
 *
 * The order is raised as one batch. What can go wrong is shared evenly between plants and days: both
 * hold with about the square root of the assurance, so that both together hold with the assurance.
 * (With the assurance for each by itself, orders planned at 0.8 would be met in 64 of 100.) Where all
 * plants are certain to be kept, the days alone have all of it.
 *
 * Days of a step that ready does not wait for are the timetable's latest after the step before it.
 */
export function planOrder(order: OrderToPlan): OrderPlan {
  const { wanted, readyBy, method, assurance, forecaster, variety, asOf } = order;
  const line = lineToReady(method);
  const start = line[0] as number;
  const usual = usualDaysBefore(order, line);
  const from = (index: number) => daysLater(readyBy, -(usual[index] as number));
  const shareFrom = (index: number) =>
    forecaster.kept({ method, after: index, upTo: method.ready, variety, from: from(index) });
  const daysFrom = (index: number) => daysToReady(method, index, { forecaster, from: from(index) });
  const certain = shareFrom(start).mean === 1;
  const days = daysFrom(start);
  const { dayChance, plantChance } = certain
    ? { dayChance: wholeDays(days, assurance).chance, plantChance: 1 }
    : shared(days, assurance);
  const doBy = daysToDoBy({
    method,
    line,
    readyBy,
    daysNeeded: (index) => dayQuantile(daysFrom(index), dayChance),
  });

  // From the end: a step never needs fewer plants than the next.
  const plants: (number | null)[] = [];
  const plainly: (number | null)[] = [];
  let later: number | null = wanted;
  for (let index = method.ready; index >= 0; index -= 1) {
    const counted = index === start || method.steps[index]?.counted === true;
    plainly[index] = null;
    if (counted) {
      const needed: number | null = smallestStart(wanted, shareFrom(index), plantChance);
      later = needed === null || later === null ? null : Math.max(needed, later);
      plainly[index] = plainStart(wanted, shareFrom(index).mean);
    }
    plants[index] = later;
  }
  // Between two counts stand the plants of the first of them.
  let standing = plants[0] ?? null;
  const steps = method.steps.slice(0, method.ready + 1).map((step, index): PlannedStep => {
    if (index === start || step.counted) standing = plants[index] ?? null;
    return {
      step,
      doBy: doBy[index] ?? null,
      plants: standing,
      plainly: plainly[index] ?? null,
      onLine: line.includes(index),
    };
  });

  const startBy = doBy[start] ?? null;
  const isPast = asOf !== null && startBy !== null && startBy < asOf;
  const past = isPast ? pastStart(order, { asOf, dayChance, start }) : null;
  return { steps, plantChance, dayChance, past };
}

/** Days from each step until ready, by the timetable's usual days: near enough to know the season. */
function usualDaysBefore({ method }: OrderToPlan, line: readonly number[]): readonly number[] {
  const usualSince = (index: number): number => {
    const step = method.steps[index] as Step;
    return step.after === null ? 0 : usualSince(step.after) + step.usual;
  };
  const inAll = usualSince(line[line.length - 1] as number);
  return method.steps.map((_, index) => Math.max(0, inAll - usualSince(index)));
}

/**
 * The assurance shared between days and plants. Days are whole, so the day on which both would have
 * the square root is surer than that; what it has more, the plants need not have. They never need
 * less than the chance of a day fewer: so to be surer never takes fewer plants, nor a later day.
 */
function shared(days: DayDistribution, assurance: number) {
  const { chance, dayBefore } = wholeDays(days, Math.sqrt(assurance));
  return { dayChance: chance, plantChance: Math.max(dayBefore, assurance / chance) };
}

/** The chance of the fewest days that are enough with at least some chance, and of a day fewer. */
function wholeDays(days: DayDistribution, least: number) {
  const enough = dayQuantile(days, least);
  // Beyond the last day listed nothing is surer, whatever the chances add up to.
  const chance = Math.max(least, chanceWithin(days, enough));
  return { chance, dayBefore: Math.min(least, chanceWithin(days, enough - 1)) };
}

function daysToDoBy({
  method,
  line,
  readyBy,
  daysNeeded,
}: {
  readonly method: Method;
  readonly line: readonly number[];
  readonly readyBy: CivilDay;
  readonly daysNeeded: (index: number) => number;
}): readonly (CivilDay | null)[] {
  const doBy: (CivilDay | null)[] = method.steps.map(() => null);
  let later = readyBy;
  for (const index of [...line].reverse()) {
    const day = daysLater(readyBy, -daysNeeded(index));
    // What is learned straight from two steps may differ by a day or two from their own order.
    later = Math.min(day, later) as CivilDay;
    doBy[index] = later;
  }
  method.steps.forEach((step, index) => {
    if (line.includes(index) || step.after === null) return;
    const before = doBy[step.after] ?? null;
    const day = before === null ? null : daysLater(before, step.by);
    doBy[index] = day !== null && day > readyBy ? readyBy : day;
  });
  return doBy;
}

function pastStart(
  { wanted, readyBy, method, assurance, forecaster, variety }: OrderToPlan,
  {
    asOf,
    dayChance,
    start,
  }: { readonly asOf: CivilDay; readonly dayChance: number; readonly start: number },
): PastStart {
  const days: DayDistribution = daysToReady(method, start, { forecaster, from: asOf });
  const inTime = chanceWithin(days, readyBy - asOf);
  const neededOfPlants = inTime > 0 ? assurance / inTime : 1;
  return {
    earliest: daysLater(asOf, dayQuantile(days, dayChance)),
    stillEnough:
      neededOfPlants > SUREST
        ? null
        : smallestStart(
            wanted,
            forecaster.kept({ method, after: start, upTo: method.ready, variety, from: asOf }),
            neededOfPlants,
          ),
  };
}
