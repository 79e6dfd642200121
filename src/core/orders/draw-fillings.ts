import type { CivilDay } from "../dates";
import { comingBatches, drawPlants, type Projection, sharesOfRoutes } from "../projection";
import { drawCount, seededDraws } from "../statistics";
import type { KnownVarieties, Order } from "./order";
import { type Asked, type Filling, settingAside } from "./set-aside";
import { batchCaller, type Called, grants, wishesOf } from "./wishes";

const SEED = 3;
/** Orders by batches drawn in all: some dozens of each, a thousand times. */
const PAIR_DRAWS = 2_000_000;

/** How an order fared in each draw. */
export interface OrderFillings {
  /** Plants still to be delivered. */
  readonly left: number;
  /** Rising. */
  readonly inTime: readonly number[];
  /** Days on which it is full, rising; Infinity for never. */
  readonly fullOn: readonly number[];
}

/** What an order still asks of the batches. */
export function askedOf(
  order: Order,
  {
    asOf,
    batches,
    known,
  }: {
    readonly asOf: CivilDay;
    readonly batches: readonly Called[];
    readonly known: KnownVarieties;
  },
): Asked {
  const wishes = wishesOf(order, known);
  return {
    plants: Math.max(0, order.wanted - order.delivered),
    // An order whose day is past is served first, with what is ready now.
    by: Math.max(order.by, asOf),
    takes: batches.map((batch) => grants(wishes, batch)),
  };
}

/**
 * Draws possible courses of all batches and sets their plants aside for the orders in each.
 *
 * Method: seeded draws; each draws once what is unknown of the shares and uses it for every batch,
 *   as in BATCH_READY, so that an order filled from several batches is not falsely sure. In a draw
 *   the courses are known when plants are set aside: where substitutes are taken, the chances are
 *   those of a nursery that sees a little ahead.
 *
 * @param orders in the order in which they are served
 * @param known the varieties that the records name
 */
export function drawFillings(
  projection: Projection,
  orders: readonly Order[],
  { asOf, known }: { readonly asOf: CivilDay; readonly known: KnownVarieties },
): readonly OrderFillings[] {
  const { batches, routes } = comingBatches(projection);
  const calledOf = batchCaller();
  const called = batches.map(({ state, method }) => calledOf(state.batch, method));
  const asked = orders.map((order) => askedOf(order, { asOf, batches: called, known }));
  const draws = drawCount(asked.length * batches.length, PAIR_DRAWS);
  const random = seededDraws(SEED);
  const aside = settingAside(asked);
  const fillings: (readonly Filling[])[] = [];
  for (let draw = 0; draw < draws; draw += 1) {
    const shares = sharesOfRoutes(routes, projection.forecaster.draw(random.uniform));
    const supplies = batches.map(({ plants, toCome }) => {
      if (toCome === null) return { plants, day: asOf };
      const day = Math.max(asOf, random.day(toCome.days));
      return { plants: drawPlants(plants, shares[toCome.route] ?? [], random), day };
    });
    fillings.push(aside(supplies));
  }
  const rising = (a: number, b: number) => (a === b ? 0 : a - b);
  return asked.map(({ plants }, order) => {
    const own = fillings.map((all) => all[order] as Filling);
    return {
      left: plants,
      inTime: own.map(({ inTime }) => inTime).sort(rising),
      fullOn: own.map(({ fullOn }) => fullOn ?? Number.POSITIVE_INFINITY).sort(rising),
    };
  });
}
