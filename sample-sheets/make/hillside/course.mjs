/**
 * The true course of one batch: the day of every step and the plants at every
 * counted step, whether or not anybody wrote them down, and also those that lie
 * after the as-of day.
 */
import { shareOfYear, workingDay } from "../days.mjs";
import {
  grafterEffect,
  keptShare,
  lateness,
  noise,
  ordinaryTake,
  poorTape,
  scionSourceEffect,
  seasonEffect,
  varietyEffect,
} from "./scenario.mjs";

/**
 * @typedef {object} SeedlingCourse
 * @property {number} germinationDay
 * @property {number} germinated
 * @property {number} graftable plants fit to be grafted, when they are grafted
 * @property {number} graftingDay
 *
 * @typedef {object} GraftCourse
 * @property {Record<string, number>} days by step, from First release to Ready
 * @property {number} takes
 * @property {number} readyPlants
 */

/**
 * From sowing to grafting.
 *
 * @param {import("../chance.mjs").Chance} chance
 * @param {{ started: number, seeds: number }} batch
 * @returns {SeedlingCourse}
 */
export function seedlingCourse(chance, { started, seeds }) {
  const germinated = chance.betaBinomial(seeds, keptShare.Germinated, noise.Germinated);
  return {
    germinationDay: stepDay(chance, started, [7, 10, 14]),
    germinated,
    graftable: chance.betaBinomial(germinated, keptShare.Grafted, noise.Grafted),
    graftingDay: stepDay(chance, started, [78, 92, 118]),
  };
}

/**
 * From grafting to ready. This nursery is a little slower than the built-in
 * timetable at the take count and at ready.
 *
 * @param {import("../chance.mjs").Chance} chance
 * @param {{ graftingDay: number, grafts: number, isLost: boolean, variety: string, grafter: string, scionSource: string }} batch
 * @returns {GraftCourse}
 */
export function graftCourse(chance, batch) {
  const { graftingDay, grafts } = batch;
  // Growth is slower in the cool part of the year.
  const slow = Math.cos(2 * Math.PI * (shareOfYear(graftingDay) - 0.54)) > 0.5 ? 2 : 0;
  const after = (/** @type {number} */ from, /** @type {[number, number, number]} */ window) =>
    stepDay(chance, from, window) + slow;

  const takes = batch.isLost ? 0 : chance.betaBinomial(grafts, takeShare(batch), noise.Takes);
  const firstRelease = stepDay(chance, graftingDay, [12, 14, 18]);
  const budBreak = after(firstRelease, [10, 14, 21]);
  const firstFlush = Math.max(after(firstRelease, [21, 28, 35]), budBreak + 2);
  const flushHardening = Math.max(after(graftingDay, [41, 46, 56]), firstFlush + 3);
  const branching = Math.max(after(graftingDay, [50, 61, 75]), flushHardening + 3);
  return {
    days: {
      "First release": firstRelease,
      "Bud break": workingDay(budBreak),
      "Take count": stepDay(chance, graftingDay, [28, 31, 36]),
      "First flush": workingDay(firstFlush),
      "Flush hardening": workingDay(flushHardening),
      Branching: workingDay(branching),
      "Union closed": workingDay(Math.max(after(graftingDay, [80, 91, 105]), branching + 3)),
      Ready: workingDay(Math.max(after(graftingDay, [105, 114, 123]), branching + 10)),
    },
    takes,
    readyPlants: chance.betaBinomial(takes, keptShare.Ready, noise.Ready),
  };
}

/** @param {{ graftingDay: number, variety: string, grafter: string, scionSource: string }} batch */
function takeShare({ graftingDay, variety, grafter, scionSource }) {
  const tape = graftingDay >= poorTape.from && graftingDay <= poorTape.to ? poorTape.effect : 0;
  const logOdds =
    Math.log(ordinaryTake / (1 - ordinaryTake)) +
    effect(varietyEffect, variety) +
    effect(grafterEffect, grafter) +
    effect(scionSourceEffect, scionSource) +
    seasonEffect(shareOfYear(graftingDay)) +
    tape;
  return 1 / (1 + Math.exp(-logOdds));
}

/** @param {Readonly<Record<string, number>>} effects @param {string} name */
function effect(effects, name) {
  const found = effects[name];
  if (found === undefined) throw new Error(`no effect for ${name}`);
  return found;
}

/**
 * @param {import("../chance.mjs").Chance} chance
 * @param {number} from
 * @param {readonly [number, number, number]} window
 */
function stepDay(chance, from, [first, usual, last]) {
  const waits = chance.happens(lateness.chance) ? 3 + chance.delay(lateness.meanDays) : 0;
  return workingDay(from + chance.days(first, usual, last) + waits);
}
