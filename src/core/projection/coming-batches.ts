import type { CivilDay } from "../dates";
import { madeOnce } from "../made-once";
import type { DayDistribution, Draws } from "../statistics";
import type { Method } from "../timetable";
import { type BatchState, startOfForecast } from "./batch-state";
import { dayAbout } from "./changes";

import type { DrawnShare, Passage, SharesDrawn } from "./forecaster";

import type { Projection } from "./project";
import { isSilent } from "./silence";

/** A batch whose plants are ready or will be. */
export interface ComingBatch {
  readonly state: BatchState;
  readonly name: string;
  readonly plants: number;
  /** Empty where none is named. */
  readonly variety: string;
  readonly method: Method;
  /** What is still to come for it; null when it is ready already. */
  readonly toCome: {
    /** Which of the routes its plants still have to go. */
    readonly route: number;
    /** Chances of the civil days on which it may be ready. */
    readonly days: DayDistribution;
    readonly likely: CivilDay;
  } | null;
}

/** What is left to pass: many batches share one. */
export interface Route {
  readonly method: Method;
  readonly after: number;
  readonly variety: string;
  readonly from: CivilDay;
}

export interface Coming {
  readonly batches: readonly ComingBatch[];
  readonly routes: readonly Route[];
}

/**
 * The batches that plants can be promised of: open, counted, with a day, not forgotten long ago. In
 * an order of their own, so that the same batches in any order of rows get the same draws.
 */
export function comingBatches({ batches, days }: Projection): Coming {
  const states = batches
    .flatMap(({ state }) => (state?.open && !isSilent(state) ? [state] : []))
    .map((state) => ({ state, key: orderKey(state) }))
    .sort((a, b) => (a.key < b.key ? -1 : a.key > b.key ? 1 : 0));
  const coming: ComingBatch[] = [];
  const routes: Route[] = [];
  const routeOf = new Map<string, number>();
  for (const { state } of states) {
    const { batch, method } = state;
    const start = startOfForecast(state);
    if (start === null) continue;
    const facts = { state, name: batch.name, plants: start.plants, variety: batch.variety, method };
    if (state.reached >= method.ready) {
      coming.push({ ...facts, toCome: null });
      continue;
    }
    const distribution = days.distribution(state, method.ready);
    const likely = days.range(state, method.ready)?.likely;
    if (distribution === null || likely === undefined) continue;
    const { variety } = batch;
    const from = dayAbout(state.doneOn[start.at] ?? state.plannedOn[start.at] ?? state.asOf);
    const key = `${method.name}\n${start.at}\n${variety}\n${from}`;
    const route = madeOnce(
      routeOf,
      key,
      () => routes.push({ method, after: start.at, variety, from }) - 1,
    );
    coming.push({ ...facts, toCome: { route, days: distribution, likely } });
  }
  return { batches: coming, routes };
}

function orderKey({ batch, plants, doneOn }: BatchState): string {
  return `${batch.name}\n${batch.variety}\n${plants}\n${doneOn.join()}`;
}

/** Routes as ways of plants, each to the end. */
export function waysOf(routes: readonly Route[]): readonly Passage[] {
  return routes.map((route) => ({ ...route, upTo: route.method.ready }));
}

/** The shares of each route under one possible truth. */
export function sharesOfRoutes(
  routes: readonly Route[],
  truth: SharesDrawn,
): readonly (readonly DrawnShare[])[] {
  return waysOf(routes).map((way) => truth.between(way));
}

/** How many of so many plants become ready: each batch has shares of its own about the means. */
export function drawPlants(plants: number, shares: readonly DrawnShare[], random: Draws): number {
  return random.plants(plants, drawShare(shares, random));
}

/** The share of a batch's plants that passes all that is left. */
function drawShare(shares: readonly DrawnShare[], random: Draws): number {
  let share = 1;
  for (const { mean, correlation } of shares) share *= random.share(mean, correlation);
  return share;
}
