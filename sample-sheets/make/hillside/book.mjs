/**
 * What the nursery's book shows of one batch on the as-of day: nothing that
 * lies after that day, some steps never written, some cells left blank.
 */

import { recordsHeader } from "../sheet-headers.mjs";
import { method } from "../timetable-sheet.mjs";
import { asOf, poorTape, unwritten } from "./scenario.mjs";

/**
 * @typedef {import("../sheet-files.mjs").Cell} Cell
 */

const dayColumns = {
  "First release": "First release",
  "Bud break": "Bud break",
  "Take count": "Take count day",
  "First flush": "First flush",
  "Flush hardening": "Flush hardening",
  Branching: "Branching",
  "Union closed": "Union closed",
  Ready: "Ready on",
};

/**
 * The last day up to which the book of a batch is written: most are up to date,
 * some wait for a quiet evening.
 *
 * @param {import("../chance.mjs").Chance} chance
 * @returns {number} whole days from 1970-01-01
 */
export function lastWrittenDay(chance) {
  return chance.happens(0.25) ? asOf - chance.whole(5, 18) : asOf;
}

/**
 * The sowing and germination cells.
 *
 * @param {import("../chance.mjs").Chance} chance
 * @param {{ started: number, seeds: number, writtenTo: number }} batch
 * @param {import("./course.mjs").SeedlingCourse} course
 * @returns {Record<string, Cell>}
 */
export function seedlingCells(chance, { started, seeds, writtenTo }, course) {
  const cells = { Sown: { day: started }, "Seeds sown": seeds };
  if (course.germinationDay > writtenTo || chance.happens(unwritten.Germination)) return cells;
  return {
    ...cells,
    "Germination day": { day: course.germinationDay },
    // Looked at, but not counted.
    Germinated: chance.happens(0.02) ? null : course.germinated,
  };
}

/**
 * The cells from grafting on, for a batch whose grafting is written.
 *
 * @param {import("../chance.mjs").Chance} chance
 * @param {{ graftingDay: number, grafts: number, writtenTo: number }} batch
 * @param {import("./course.mjs").GraftCourse} course
 * @returns {Record<string, Cell>}
 */
export function graftCells(chance, { graftingDay, grafts, writtenTo }, course) {
  /** @type {Record<string, Cell>} */
  const cells = { "Grafted on": { day: graftingDay }, "Grafts made": grafts };
  for (const [step, column] of Object.entries(dayColumns)) {
    const day = course.days[step];
    const isUnwritten = chance.happens(
      unwritten[/** @type {keyof typeof unwritten} */ (step)] ?? 0,
    );
    if (day === undefined || day > writtenTo || isUnwritten) continue;
    if (course.takes === 0 && step !== "First release" && step !== "Take count") continue;
    cells[column] = { day };
  }
  if (cells["Take count day"]) cells.Takes = course.takes;
  if (cells["Ready on"]) cells["Ready plants"] = course.readyPlants;
  return cells;
}

/**
 * Culled, dispatched and closed, from what is written so far.
 *
 * @param {import("../chance.mjs").Chance} chance
 * @param {Record<string, Cell>} cells
 * @returns {Record<string, Cell>}
 */
export function lastCells(chance, cells) {
  const first = [cells["Seeds sown"], cells["Grafts made"]].find((count) => isCount(count));
  const counts = ["Seeds sown", "Germinated", "Grafts made", "Takes", "Ready plants"]
    .map((column) => cells[column])
    .filter(isCount);
  const standing = counts[counts.length - 1] ?? 0;
  const lost = isCount(first) ? first - standing : 0;

  if (cells.Takes === 0) {
    return {
      Culled: lost,
      Closed: cells["Take count day"] ?? null,
      Note: "cover left shut, all dead",
    };
  }
  if (!cells["Ready on"]) return { Culled: counts.length > 1 ? written(chance, lost) : null };

  const readyDay = /** @type {{ day: number }} */ (cells["Ready on"]).day;
  const firstLoad = readyDay + 3 + chance.delay(8);
  const lastLoad = firstLoad + chance.delay(16);
  const rejected = chance.happens(0.4) ? chance.betaBinomial(standing, 0.03, 0.02) : 0;
  if (lastLoad <= asOf) {
    return {
      Culled: written(chance, lost + rejected),
      Dispatched: standing - rejected,
      // At times nobody writes that the batch is gone.
      Closed: chance.happens(0.015) ? null : { day: lastLoad },
    };
  }
  const share = firstLoad <= asOf ? 0.3 + 0.4 * chance.share() : 0;
  return {
    Culled: written(chance, lost),
    Dispatched: share > 0 ? Math.floor(standing * share) : null,
    Closed: null,
  };
}

/**
 * One row of Records.
 *
 * @param {import("../chance.mjs").Chance} chance
 * @param {Record<string, Cell>} cells
 * @returns {Cell[]}
 */
export function recordsRow(chance, cells) {
  /** @type {Record<string, Cell>} */
  const shown = { Method: method, ...cells };
  const oftenBlank = { Grafter: 0.03, "Scion source": 0.04, Place: 0.015, Rootstock: 0.03 };
  for (const [column, probability] of Object.entries(oftenBlank)) {
    if (chance.happens(probability)) shown[column] = null;
  }
  shown.Note ??= note(chance, shown);
  return recordsHeader.map((column) => shown[column] ?? null);
}

/** Losses as written: at times not at all, at times a few plants short. @param {import("../chance.mjs").Chance} chance @param {number} lost */
function written(chance, lost) {
  if (chance.happens(0.07)) return null;
  return chance.happens(0.08) ? Math.max(0, lost - chance.whole(1, 6)) : lost;
}

/** @param {import("../chance.mjs").Chance} chance @param {Record<string, Cell>} cells */
function note(chance, cells) {
  const grafted = cells["Grafted on"];
  if (grafted && typeof grafted === "object") {
    if (grafted.day >= poorTape.from && grafted.day <= poorTape.to && chance.happens(0.5)) {
      return "tape came loose on some";
    }
    if (chance.happens(0.04)) return "grafted in rain";
  }
  if (chance.happens(0.04)) return "shade net moved";
  return chance.happens(0.03) ? "counted twice, same number" : null;
}

/** @param {Cell | undefined} cell @returns {cell is number} */
function isCount(cell) {
  return typeof cell === "number";
}
