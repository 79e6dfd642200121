/**
 * Which batches were started: seedling lots, batches sown for themselves, and
 * batches grafted on plants taken from a lot.
 */
import { createChance } from "../chance.mjs";
import { isoFromDay, workingDay } from "../days.mjs";
import {
  asOf,
  firstSowing,
  grafterWeights,
  placeWeights,
  rootstockWeights,
  scionSourceEffect,
  varietyWeights,
} from "./scenario.mjs";

/**
 * @typedef {object} Started
 * @property {number} seed seed of everything that happens to this batch
 * @property {number} started day of sowing
 * @property {number} seeds
 * @property {boolean} isLot seedlings that other batches are taken from
 * @property {boolean} isLost no graft of it will take
 * @property {string} variety
 * @property {string} rootstock
 * @property {string} place
 * @property {string} grafter
 * @property {string} scionSource
 */

/** One sowing in so many is a lot. */
const lotEvery = 14;

/** The sowing, counted from 0, whose grafts all die. */
const lostTurn = 67;

/**
 * The sowings, oldest first.
 *
 * @param {number} seed whole number
 * @returns {Started[]}
 */
export function sowings(seed) {
  const chance = createChance(seed);
  const found = [];
  let day = firstSowing;
  for (let turn = 0; day <= asOf; turn += 1) {
    const isLot = turn % lotEvery === lotEvery - 4;
    found.push({
      seed: seed + 1000 + turn,
      started: day,
      seeds: isLot ? chance.whole(32, 44) * 10 : chance.whole(9, 22) * 10,
      isLot,
      isLost: turn === lostTurn,
      ...batchFacts(chance),
    });
    day = workingDay(day + chance.days(3, 6, 9));
  }
  return found;
}

/**
 * Variety, rootstock, place, grafter and scion source of one batch.
 *
 * @param {import("../chance.mjs").Chance} chance
 */
export function batchFacts(chance) {
  const variety = chance.pick(varietyWeights);
  return {
    variety,
    rootstock: chance.pick(rootstockWeights),
    place: chance.pick(placeWeights),
    grafter: chance.pick(grafterWeights[variety]),
    scionSource: chance.pick(equalWeights(scionSourceEffect)),
  };
}

/**
 * Names the batches of a year in the order in which they were started.
 *
 * @param {readonly number[]} days day of the start of each batch, oldest first
 * @returns {string[]} `H24-001` …
 */
export function batchNames(days) {
  /** @type {Record<string, number>} */
  const used = {};
  return days.map((day) => {
    const year = isoFromDay(day).slice(2, 4);
    used[year] = (used[year] ?? 0) + 1;
    return `H${year}-${String(used[year]).padStart(3, "0")}`;
  });
}

/**
 * @template {string} Name
 * @param {Readonly<Record<Name, number>>} effects
 * @returns {Record<Name, number>}
 */
function equalWeights(effects) {
  return /** @type {Record<Name, number>} */ (
    Object.fromEntries(Object.keys(effects).map((name) => [name, 1]))
  );
}
