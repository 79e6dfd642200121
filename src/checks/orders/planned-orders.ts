import type { CivilDay } from "../../core";
import { type OrderPlan, planOrder } from "../../core/orders/plan-order";
import type { Method } from "../../core/timetable/timetable";
import { batchCourse } from "../calibration/batch-course";
import { chanceOf } from "../calibration/chance";
import { ASSURANCE, type CheckedDay } from "./checked-days";

const ORDERS_A_DAY = 6;
/** Numbers of batches raised for orders; the nursery's own never come so far. */
const FIRST_NUMBER = 50_000;
/** Orders are for so many days ahead, so that their sowing never lies before the as-of day. */
const LEAST_AHEAD = 300;
const MOST_AHEAD = 420;

/** How orders fared that were planned, and raised as planned. */
export interface PlannedTally {
  readonly orders: number;
  readonly met: number;
  readonly enough: number;
  readonly inTime: number;
  /** Batches lost to a mishap, or emptied. */
  readonly lost: number;
}

/**
 * Plans orders in an invented nursery by what its records teach, sows as many seeds as planned on the
 * day planned, and sees what becomes of them.
 */
export function plannedOrders(days: readonly CheckedDay[]): PlannedTally {
  const tally = { orders: 0, met: 0, enough: 0, inTime: 0, lost: 0 };
  for (const { history, nursery, projection, day } of days) {
    const { truth } = history;
    const { timetable, asOf } = nursery;
    const { forecaster } = projection;
    const method = timetable.methods[0] as Method;
    const chance = chanceOf(truth.seed, 11, day);
    for (let order = 0; order < ORDERS_A_DAY; order += 1) {
      const number = FIRST_NUMBER + day * ORDERS_A_DAY + order;
      const wanted = Math.round(Math.exp(chance.between(Math.log(20), Math.log(400))));
      const readyBy = (asOf + chance.whole(LEAST_AHEAD, MOST_AHEAD)) as CivilDay;
      // Which variety the batch is of does not depend on its day or its seeds.
      const { variety } = batchCourse(truth, { number, sownOn: asOf });
      const { sownOn, seeds } = start(
        planOrder({
          wanted,
          readyBy,
          method,
          assurance: ASSURANCE,
          forecaster,
          variety,
          asOf,
        }),
      );
      const { readyDay, readyPlants, lostAt } = batchCourse(truth, { number, sownOn, seeds });
      const enough = readyPlants >= wanted;
      const inTime = readyDay !== null && readyDay <= readyBy;
      tally.orders += 1;
      tally.met += enough && inTime ? 1 : 0;
      tally.enough += enough ? 1 : 0;
      tally.inTime += inTime ? 1 : 0;
      tally.lost += lostAt === null ? 0 : 1;
    }
  }
  return tally;
}

function start({ steps, past }: OrderPlan): { sownOn: number; seeds: number } {
  const first = steps[0];
  const sownOn = first?.doBy ?? null;
  const seeds = first?.plants ?? null;
  if (past !== null || sownOn === null || seeds === null) {
    throw new Error("an order of the check could not be planned ahead");
  }
  return { sownOn, seeds };
}
