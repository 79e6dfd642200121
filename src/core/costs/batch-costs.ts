import { type BatchState, isSilent, type Projection, startOfForecast } from "../projection";
import { lotIndexes, startedWith } from "../records";
import { type OwnCost, ownCost } from "./own-cost";
import type { PricesReading } from "./read-prices";

/** What a batch carries, in the money of the prices; null where nothing of it is known. */
export interface BatchCost {
  readonly state: BatchState;
  readonly materials: number | null;
  readonly hours: number | null;
  readonly cost: number | null;
  /** Plants counted as ready, else likely to be; null where neither can be told. */
  readonly ready: number | null;
  /** Plants begun with, where they did not come from a lot in the records; null where unknown. */
  readonly started: number | null;
  readonly own: OwnCost;
}

/**
 * What each begun batch has cost so far. Its own steps, see own-cost.ts; and of the lot that it was
 * taken from the part that its plants are of all that came out of the lot: those given to begun
 * batches, those standing and those dispatched. What passes on leaves the lot, so that materials,
 * hours and cost add up over all batches to what was used; plants that a lot lost are paid by the
 * others. Lots in a circle, or not in the records, pass nothing on.
 */
export function batchCosts(projection: Projection, prices: PricesReading): readonly BatchCost[] {
  const states = projection.batches.map(({ state }) =>
    state === null || !hasBegun(state) ? null : state,
  );
  const lots = lotIndexes(projection.batches.map(({ batch }) => batch));
  const taken = states.map((state, index) =>
    state === null || lots[index] === null ? 0 : (startedWith(state.batch) ?? 0),
  );
  const given = states.map(() => 0);
  lots.forEach((lot, index) => {
    if (lot !== null) given[lot] = (given[lot] as number) + (taken[index] as number);
  });
  const owns = states.map((state) => (state === null ? null : ownCost(state, prices)));
  const materials = owns.map((own) => own?.materials ?? null);
  const hours = owns.map((own) => own?.hours ?? null);
  for (const index of lotsFirst(lots)) {
    const lot = lots[index] ?? null;
    const from = lot === null ? null : (states[lot] ?? null);
    if (lot === null || from === null || (taken[index] as number) === 0) continue;
    const out = (given[lot] as number) + stillThere(from);
    const share = (taken[index] as number) / out;
    materials[index] = add(materials[index], part(materials[lot], share));
    hours[index] = add(hours[index], part(hours[lot], share));
  }
  return states.flatMap((state, index): BatchCost[] => {
    const own = owns[index] ?? null;
    if (state === null || own === null) return [];
    const gave = given[index] as number;
    const left = gave === 0 ? 1 : 1 - gave / (gave + stillThere(state));
    const kept = { materials: part(materials[index], left), hours: part(hours[index], left) };
    return [
      {
        state,
        own,
        ...kept,
        cost: add(kept.materials, prices.hour === null ? null : part(kept.hours, prices.hour)),
        ready: readyPlants(state, projection),
        started: lots[index] === null ? startedWith(state.batch) : null,
      },
    ];
  });
}

/** Plants planned for a day to come have cost nothing yet. */
function hasBegun({ reached, batch, planned }: BatchState): boolean {
  return reached >= 0 || (batch.received !== null && planned === null);
}

/** Plants of a lot that are nobody else's: standing, or dispatched. */
function stillThere({ batch, plants }: BatchState): number {
  return (batch.closed ? 0 : (plants ?? 0)) + (batch.dispatched ?? 0);
}

/** Every batch behind the lot it was taken from. There are no circles. */
function lotsFirst(lots: readonly (number | null)[]): readonly number[] {
  const children = lots.map((): number[] => []);
  const order: number[] = [];
  lots.forEach((lot, index) => {
    if (lot === null) order.push(index);
    else children[lot]?.push(index);
  });
  for (let at = 0; at < order.length; at += 1) {
    for (const child of children[order[at] as number] ?? []) order.push(child);
  }
  return order;
}

function readyPlants(state: BatchState, projection: Projection): number | null {
  const { batch, counts, method, plants } = state;
  const counted = counts[method.ready] ?? null;
  if (counted !== null) return Math.max(0, counted - (batch.given - batch.givenBeforeCount));
  if (batch.closed) return plants === 0 ? (batch.dispatched ?? 0) : batch.dispatched;
  if (!state.open) return batch.dispatched ?? 0;
  if (isSilent(state) || startOfForecast(state) === null) return null;
  const likely = projection.plants(state, method.ready)?.likely ?? null;
  return likely === null ? null : likely + (batch.dispatched ?? 0);
}

function part(amount: number | null | undefined, share: number): number | null {
  return amount === null || amount === undefined ? null : amount * share;
}

function add(a: number | null | undefined, b: number | null | undefined): number | null {
  if (a === null || a === undefined) return b ?? null;
  return a + (b ?? 0);
}
