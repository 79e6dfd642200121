import { type CivilDay, daysLater } from "../dates";
import type { Forecaster } from "../projection";
import { type DayDistribution, meanDay, pointAt, sum } from "../statistics";
import type { Method, Step } from "../timetable";

/** The indexes of the steps that ready is counted from, one after the other, ready itself last. */
export function lineToReady({ steps, ready }: Method): readonly number[] {
  const line: number[] = [];
  for (let at: number | null = ready; at !== null; at = steps[at]?.after ?? null) line.unshift(at);
  return line;
}

/**
 * Days from a step on ready's line until ready, for a batch to come: straight, where the nursery has
 * seen enough batches go that way, else the lengths of the steps between, each independent.
 *
 * @param index of a step on the line
 * @param from  about the day on which the batch stands there; null for no day of the year
 */
export function daysToReady(
  method: Method,
  index: number,
  { forecaster, from }: { readonly forecaster: Forecaster; readonly from: CivilDay | null },
): DayDistribution {
  if (index === method.ready) return pointAt(0);
  const straight = forecaster.straight({ method, after: index, upTo: method.ready, from });
  if (straight !== null) return straight;
  const line = lineToReady(method);
  return line.slice(line.indexOf(index) + 1).reduce<DayDistribution>((days, step) => {
    const start = from === null ? null : daysLater(from, Math.round(meanDay(days)));
    return sum(days, forecaster.length(method, method.steps[step] as Step, start));
  }, pointAt(0));
}

/** The chance that so many days are enough, 0 to 1. */
export function chanceWithin({ first, mass }: DayDistribution, days: number): number {
  let chance = 0;
  for (let i = 0; i < mass.length && first + i <= days; i += 1) chance += mass[i] as number;
  return Math.min(1, chance);
}
