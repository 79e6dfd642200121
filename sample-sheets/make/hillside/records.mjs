/**
 * The Records sheet: every sowing followed to the as-of day, and the batches
 * grafted on plants from a lot, in the order in which they were started.
 */
import { createChance } from "../chance.mjs";
import { workingDay } from "../days.mjs";
import { recordsHeader } from "../sheet-headers.mjs";
import { graftCells, lastCells, lastWrittenDay, recordsRow, seedlingCells } from "./book.mjs";
import { graftCourse, seedlingCourse } from "./course.mjs";
import { asOf } from "./scenario.mjs";
import { batchFacts, batchNames, sowings } from "./started.mjs";

/**
 * @typedef {import("../sheet-files.mjs").Cell} Cell
 * @typedef {import("../chance.mjs").Chance} Chance
 *
 * @typedef {object} Entry
 * @property {number} started day of sowing, or of grafting when taken from a lot
 * @property {Chance} chance
 * @property {Record<string, Cell>} cells
 * @property {Entry | null} lot
 */

/**
 * The rows of the Records sheet, header first.
 *
 * @param {number} seed whole number
 * @returns {Cell[][]}
 */
export function recordsRows(seed) {
  const entries = sowings(seed)
    .flatMap((sowing) => (sowing.isLot ? lotAndItsBatches(sowing) : [sownBatch(sowing)]))
    .sort((one, other) => one.started - other.started);
  const names = batchNames(entries.map((entry) => entry.started));
  const nameOf = new Map(entries.map((entry, place) => [entry, names[place] ?? null]));
  return [
    recordsHeader,
    ...entries.map((entry) =>
      recordsRow(entry.chance, {
        ...entry.cells,
        Batch: nameOf.get(entry) ?? null,
        "From lot": entry.lot ? (nameOf.get(entry.lot) ?? null) : null,
      }),
    ),
  ];
}

/** @param {import("./started.mjs").Started} sowing @returns {Entry} */
function sownBatch(sowing) {
  const chance = createChance(sowing.seed);
  const writtenTo = lastWrittenDay(chance);
  const course = seedlingCourse(chance, sowing);
  const cells = {
    ...factCells(sowing),
    ...seedlingCells(chance, { ...sowing, writtenTo }, course),
  };
  const grafted = {
    ...sowing,
    writtenTo,
    graftingDay: course.graftingDay,
    grafts: course.graftable,
  };
  if (course.graftingDay <= writtenTo) {
    Object.assign(cells, graftCells(chance, grafted, graftCourse(chance, grafted)));
  } else {
    // Nobody knows yet who will graft it, or with whose scions.
    Object.assign(cells, { Grafter: null, "Scion source": null });
  }
  return finished(chance, sowing.started, cells, null);
}

/** @param {import("./started.mjs").Started} sowing @returns {Entry[]} */
function lotAndItsBatches(sowing) {
  const chance = createChance(sowing.seed);
  const course = seedlingCourse(chance, sowing);
  /** @type {Record<string, Cell>} */
  const cells = {
    Rootstock: sowing.rootstock,
    Place: sowing.place,
    ...seedlingCells(chance, { ...sowing, writtenTo: asOf }, course),
    Note: "seedling lot",
  };
  /** @type {Entry} */
  const lot = { started: sowing.started, chance, cells, lot: null };

  const parts = chance.whole(2, 3);
  const batches = [];
  let day = course.graftingDay;
  let given = 0;
  for (let part = 0; part < parts; part += 1) {
    if (day > asOf) break;
    const grafts = Math.floor(course.graftable / parts);
    batches.push(graftedFromLot(sowing, lot, { part, graftingDay: day, grafts }));
    given += grafts;
    if (part === parts - 1) {
      Object.assign(cells, { Culled: sowing.seeds - given, Closed: { day } });
    }
    day = workingDay(day + chance.whole(3, 12));
  }
  return [lot, ...batches];
}

/**
 * @param {import("./started.mjs").Started} sowing
 * @param {Entry} lot
 * @param {{ part: number, graftingDay: number, grafts: number }} taken
 * @returns {Entry}
 */
function graftedFromLot(sowing, lot, { part, graftingDay, grafts }) {
  const chance = createChance(sowing.seed + 10_000 * (part + 1));
  const facts = { ...batchFacts(chance), rootstock: sowing.rootstock };
  const batch = { ...facts, graftingDay, grafts, isLost: false, writtenTo: asOf };
  const cells = { ...factCells(facts), ...graftCells(chance, batch, graftCourse(chance, batch)) };
  return finished(chance, graftingDay, cells, lot);
}

/** @param {Chance} chance @param {number} started @param {Record<string, Cell>} cells @param {Entry | null} lot @returns {Entry} */
function finished(chance, started, cells, lot) {
  return { started, chance, cells: { ...cells, ...lastCells(chance, cells) }, lot };
}

/** @param {{ variety: string, rootstock: string, place: string, grafter: string, scionSource: string }} facts @returns {Record<string, Cell>} */
function factCells(facts) {
  return {
    Variety: facts.variety,
    Rootstock: facts.rootstock,
    Place: facts.place,
    Grafter: facts.grafter,
    "Scion source": facts.scionSource,
  };
}
