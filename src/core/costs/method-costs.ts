import { totalOf } from "../mathematics";
import { likeName } from "../records";
import type { Method, Timetable } from "../timetable";
import type { BatchCost } from "./batch-costs";

/** The batches of one method together; null where nothing is known. */
export interface MethodCost {
  readonly method: string;
  readonly materials: number | null;
  readonly hours: number | null;
  readonly cost: number | null;
  /** The cost of those batches whose ready plants can be told, and these plants. */
  readonly costOfReady: number | null;
  readonly ready: number;
  /** Plants begun with; null where lots and the batches taken from them are of different methods. */
  readonly started: number | null;
}

/** Sums by method, in the order of the timetable; methods without a batch are left out. */
export function methodCosts(
  costs: readonly BatchCost[],
  { methods }: Timetable,
): readonly MethodCost[] {
  const methodOf = new Map<string, Method>();
  for (const { state } of costs) {
    const name = likeName(state.batch.name);
    if (!methodOf.has(name)) methodOf.set(name, state.method);
  }
  const mixed = new Set<Method>();
  for (const { state, started } of costs) {
    const lot = started === null ? methodOf.get(likeName(state.batch.fromLot)) : undefined;
    if (lot === undefined || lot === state.method) continue;
    mixed.add(lot).add(state.method);
  }
  return methods.flatMap((method): MethodCost[] => {
    const own = costs.filter(({ state }) => state.method === method);
    if (own.length === 0) return [];
    const told = own.filter(({ ready, cost }) => ready !== null && cost !== null);
    return [
      {
        method: method.name,
        materials: total(own.map(({ materials }) => materials)),
        hours: total(own.map(({ hours }) => hours)),
        cost: total(own.map(({ cost }) => cost)),
        costOfReady: total(told.map(({ cost }) => cost)),
        ready: total(told.map(({ ready }) => ready)) ?? 0,
        started: mixed.has(method) ? null : total(own.map(({ started }) => started)),
      },
    ];
  });
}

/** From the smallest on, so that the order of the rows does not show in the last digit. */
function total(amounts: readonly (number | null)[]): number | null {
  const known = Float64Array.from(amounts.filter((one) => one !== null)).sort();
  return known.length === 0 ? null : totalOf(known);
}
