/**
 * What is true of the invented nursery: the differences that a good reading of
 * its records should find, and the ones that it should not find.
 *
 * Effects are added to the log odds of a take. None of these figures comes from
 * a real nursery.
 */
import { dayFromIso } from "../days.mjs";

export const asOf = dayFromIso("2026-11-25");
export const firstSowing = dayFromIso("2024-05-02");

/** Take rate of an ordinary batch: no effect added. */
export const ordinaryTake = 0.78;

/** Batch-to-batch noise: the intra-batch correlation of a beta-binomial. */
export const noise = { Germinated: 0.03, Grafted: 0.03, Takes: 0.045, Ready: 0.03 };

/** Shares kept at the other counted steps. */
export const keptShare = { Germinated: 0.87, Grafted: 0.83, Ready: 0.91 };

export const varietyEffect = {
  Amberlow: 0.4,
  Brindlecap: 0.15,
  Corvane: 0,
  Duskpod: -0.75,
  Ellowen: 0.25,
};

/** Kesto is the weaker grafter; Mirel is as good as the rest but has the hard variety. */
export const grafterEffect = { Orrin: 0.15, Tavi: 0.1, Mirel: 0.1, Kesto: -0.6 };

/** Who grafts what, as weights: uneven on purpose. */
export const grafterWeights = {
  Amberlow: { Orrin: 3, Tavi: 3, Mirel: 1, Kesto: 3 },
  Brindlecap: { Orrin: 3, Tavi: 4, Mirel: 1, Kesto: 2 },
  Corvane: { Orrin: 3, Tavi: 3, Mirel: 2, Kesto: 2 },
  Duskpod: { Orrin: 1, Tavi: 1, Mirel: 6, Kesto: 1 },
  Ellowen: { Orrin: 2, Tavi: 2, Mirel: 1, Kesto: 4 },
};

export const varietyWeights = {
  Amberlow: 25,
  Brindlecap: 20,
  Corvane: 20,
  Duskpod: 18,
  Ellowen: 17,
};

export const scionSourceEffect = {
  "Scion garden east": 0.1,
  "Scion garden west": 0,
  "Old terrace trees": -0.3,
};

/** No difference at all. */
export const rootstockWeights = { "Stonewell seedling": 3, "Riverbank seedling": 2 };

/** No difference at all. */
export const placeWeights = {
  "Bay 1 north": 3,
  "Bay 1 south": 3,
  "Bay 2 north": 2,
  "Bay 2 south": 2,
};

/**
 * The part of the season: best at the middle of the wet months (August), worst
 * in the dry ones (February).
 *
 * @param {number} share share of the year, 0 to below 1
 */
export function seasonEffect(share) {
  return 0.35 * Math.cos(2 * Math.PI * (share - 0.63));
}

/** Some weeks with tape that did not hold. */
export const poorTape = {
  from: dayFromIso("2026-02-09"),
  to: dayFromIso("2026-03-21"),
  effect: -0.9,
};

/** Chance that a step was done and never written, by step. */
export const unwritten = {
  Germination: 0.02,
  "First release": 0.05,
  "Bud break": 0.1,
  "Take count": 0.015,
  "First flush": 0.12,
  "Flush hardening": 0.1,
  Branching: 0.12,
  "Union closed": 0.08,
};

/** Chance that a step waits beyond its window, and the mean days that it then waits. */
export const lateness = { chance: 0.11, meanDays: 7 };
