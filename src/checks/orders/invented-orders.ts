import type { CivilDay } from "../../core";
import type { Order } from "../../core/orders/order";
import { comingBatches, drawPlants, sharesOfRoutes } from "../../core/projection/coming-batches";
import type { Projection } from "../../core/projection/project";
import { seededDraws } from "../../core/statistics/draws";
import type { Chance } from "../calibration/chance";
import type { CheckedDay } from "./checked-days";

const SUBSTITUTES = 0.3;
const ORDERS_A_VARIETY = 2;
const DRAWS = 300;
const SEED = 4;

/**
 * Orders of as many plants as the nursery, by its records, would promise of what stands with some
 * chance between sure and hopeless, so that every tenth of the chance has orders; the truth is not
 * looked at. What earlier orders of a variety want is no longer promised. Now and then an order takes
 * another variety too.
 */
export function inventedOrders(
  { history, nursery: { asOf }, projection }: CheckedDay,
  chance: Chance,
): readonly Order[] {
  const varieties = history.truth.varieties.map(({ name }) => name);
  const promise = promiser(projection);
  const days = varieties.flatMap((first) =>
    Array.from({ length: ORDERS_A_VARIETY }, () => ({
      first,
      second: chance.pick(varieties),
      both: chance.happens(SUBSTITUTES),
      by: (asOf + chance.whole(5, 230)) as CivilDay,
      boldness: chance.share(),
    })),
  );
  days.sort((a, b) => a.by - b.by || (a.first < b.first ? -1 : 1));
  const promised = new Map<string, number>();
  return days.flatMap(({ first, second, both, by, boldness }, number): readonly Order[] => {
    const left = (variety: string) => promise(variety, by, boldness) - (promised.get(variety) ?? 0);
    const isEither = both && second !== first;
    const wanted = Math.round(left(first) + (isEither ? 0.5 * Math.max(0, left(second)) : 0));
    if (wanted < 1) return [];
    promised.set(first, (promised.get(first) ?? 0) + wanted);
    const variety = isEither ? `${first} or ${second}` : first;
    const name = `O-${String(number).padStart(2, "0")}`;
    return [{ name, customer: "", variety, wanted, by, delivered: 0 }];
  });
}

/** How many plants of a variety may be promised by a day; the bolder, the less sure. */
function promiser(
  projection: Projection,
): (variety: string, by: number, boldness: number) => number {
  const { batches, routes } = comingBatches(projection);
  const random = seededDraws(SEED);
  const courses = Array.from({ length: DRAWS }, () => {
    const shares = sharesOfRoutes(routes, projection.forecaster.draw(random.uniform));
    return batches.map(({ plants, toCome }) =>
      toCome === null
        ? { plants, day: Number.NEGATIVE_INFINITY }
        : {
            plants: drawPlants(plants, shares[toCome.route] ?? [], random),
            day: random.day(toCome.days),
          },
    );
  });
  return (variety, by, boldness) => {
    const totals = courses.map((course) =>
      course.reduce(
        (sum, { plants, day }, batch) =>
          batches[batch]?.variety === variety && day <= by ? sum + plants : sum,
        0,
      ),
    );
    totals.sort((a, b) => a - b);
    return totals[Math.floor(boldness * DRAWS)] as number;
  };
}
