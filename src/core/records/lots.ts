import type { CivilDay } from "../dates";
import { totalOf } from "../mathematics";
import type { Batch } from "./batch";
import { likeName } from "./batch-names";
import type { BatchesFound } from "./gather-events";
import { FACT_NAMES } from "./target-names";
import type { Trouble } from "./trouble";

/**
 * Links batches to the lots that they were taken from: how many plants each lot gave, and whether
 * it had them. A batch that has no lot of its own but lines of plants split off gave them away.
 *
 * @returns the batches with what they gave; those in a circle of lots give nothing
 */
export function linkLots(batches: readonly Batch[]): BatchesFound {
  const hasLots = batches.some(({ fromLot, received }) => fromLot !== "" || received !== null);
  if (!hasLots) return { batches, troubles: [] };
  const troubles: Trouble[] = [];
  const indexByName = indexesByName(batches);
  const parents = batches.map((batch) => {
    if (batch.fromLot === "") return null;
    const index = indexByName.get(likeName(batch.fromLot));
    if (index === undefined) troubles.push({ ...whereLot(batch), code: "no-such-lot" });
    return index ?? null;
  });
  const inCircle = circles(parents);
  const children = batches.map((): Batch[] => []);
  parents.forEach((parent, child) => {
    const batch = batches[child] as Batch;
    if (parent === null) return;
    if (inCircle[child]) troubles.push({ ...whereLot(batch), code: "lots-in-a-circle" });
    else children[parent]?.push(batch);
  });
  const linkedBatches = batches.map((batch, index) => {
    const own = batch.fromLot === "" ? (batch.received ?? 0) : 0;
    const taken = (children[index] ?? []).map((child) => ({
      plants: startedWith(child) ?? 0,
      day: firstDay(child),
      reason: "",
    }));
    const given = own + totalOf(taken.map(({ plants }) => plants));
    const lot = parents[index] ?? null;
    const spelt = lot === null ? batch.fromLot : (batches[lot] as Batch).name;
    if (given === 0 && spelt === batch.fromLot) return batch;
    const counted = lastCountDay(batch);
    const before = taken
      .filter(({ day }) => counted !== null && day !== null && day < counted)
      .reduce((sum, { plants }) => sum + plants, 0);
    const linked = { ...batch, fromLot: spelt, given, givenBeforeCount: before, givings: taken };
    if (given > mostToGive(linked)) troubles.push(overdrawn(linked, children[index] ?? []));
    return linked;
  });
  return { batches: linkedBatches, troubles };
}

/** Index of the lot that each batch was taken from; null where it has none, or the lots go in a circle. */
export function lotIndexes(batches: readonly Batch[]): readonly (number | null)[] {
  const indexByName = indexesByName(batches);
  const parents = batches.map(({ fromLot }) =>
    fromLot === "" ? null : (indexByName.get(likeName(fromLot)) ?? null),
  );
  const inCircle = circles(parents);
  return parents.map((parent, index) => (inCircle[index] ? null : parent));
}

function indexesByName(batches: readonly Batch[]): ReadonlyMap<string, number> {
  const indexByName = new Map<string, number>();
  batches.forEach((batch, index) => {
    const key = likeName(batch.name);
    if (!indexByName.has(key)) indexByName.set(key, index);
  });
  return indexByName;
}

/** The first count of a batch, or what came to it from a lot by a line of its own. */
export function startedWith(batch: Batch): number | null {
  if (batch.fromLot !== "" && batch.received !== null) return batch.received;
  return batch.counts.find((count) => count !== null) ?? null;
}

/** Index of the latest counted step, by the order of the records' steps; null when none. */
export function lastCounted(batch: Batch): number | null {
  for (let index = batch.counts.length - 1; index >= 0; index -= 1) {
    if ((batch.counts[index] ?? null) !== null) return index;
  }
  return null;
}

function mostToGive(batch: Batch): number {
  const index = lastCounted(batch);
  const last = index === null ? startedWith(batch) : (batch.counts[index] ?? null);
  if (last === null) return Number.POSITIVE_INFINITY;
  const left = (startedWith(batch) ?? last) - (batch.culled ?? 0) - (batch.dispatched ?? 0);
  return Math.min(left, last + batch.givenBeforeCount);
}

function lastCountDay(batch: Batch): CivilDay | null {
  const index = lastCounted(batch);
  return index === null ? null : (batch.days[index] ?? null);
}

function firstDay(batch: Batch): CivilDay | null {
  return batch.days.find((day) => day !== null) ?? null;
}

/** Which batches lie on a circle of lots. */
function circles(parents: readonly (number | null)[]): boolean[] {
  const state = new Uint8Array(parents.length); // 0 not seen, 1 on the path, 2 done
  const inCircle = parents.map(() => false);
  for (let start = 0; start < parents.length; start += 1) {
    const path: number[] = [];
    let index: number | null = start;
    while (index !== null && state[index] === 0) {
      state[index] = 1;
      path.push(index);
      index = parents[index] ?? null;
    }
    if (index !== null && state[index] === 1) {
      for (const one of path.slice(path.indexOf(index))) inCircle[one] = true;
    }
    for (const one of path) state[one] = 2;
  }
  return inCircle;
}

function whereLot(batch: Batch): Pick<Trouble, "row" | "column" | "found"> {
  return { row: batch.row, column: FACT_NAMES.fromLot, found: batch.fromLot };
}

function overdrawn(lot: Batch, children: readonly Batch[]): Trouble {
  return {
    row: lot.row,
    column: FACT_NAMES.batch,
    found: lot.name,
    code: "lot-overdrawn",
    taken: lot.given,
    there: Math.max(0, mostToGive(lot)),
    batches: children.map(({ name }) => name),
  };
}
