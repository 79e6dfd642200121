import type { CivilDay } from "../dates";
import { comingBatches, drawPlants, type Projection, sharesOfRoutes } from "../projection";
import { seededDraws } from "../statistics";
import type { Method } from "../timetable";
import { batchCaller, grants, type Wish } from "./wishes";

const DRAWS = 1000;
const SEED = 2;

export interface Promised {
  readonly method: Method;
  /** What will do; none where any plant will. */
  readonly wishes: readonly Wish[];
  readonly by: CivilDay;
  /** Chance with which the number is reached, strictly between 0 and 1. */
  readonly assurance: number;
}

/**
 * How many plants of what stands will, with the assurance, be ready by a day.
 *
 * Method: seeded draws that share what is unknown of the shares, as in BATCH_READY.
 */
export function promiseFromStanding(projection: Projection, promised: Promised): number {
  const { method, by, assurance, wishes } = promised;
  const { batches, routes } = comingBatches(projection);
  const calledOf = batchCaller();
  const own = batches.filter(
    (batch) => batch.method === method && grants(wishes, calledOf(batch.state.batch, method)),
  );
  if (own.length === 0) return 0;
  const random = seededDraws(SEED);
  const totals = new Float64Array(DRAWS);
  for (let draw = 0; draw < DRAWS; draw += 1) {
    const shares = sharesOfRoutes(routes, projection.forecaster.draw(random.uniform));
    let total = 0;
    for (const { plants, toCome } of own) {
      if (toCome === null) total += plants;
      else if (random.day(toCome.days) <= by) {
        total += drawPlants(plants, shares[toCome.route] ?? [], random);
      }
    }
    totals[draw] = total;
  }
  totals.sort();
  return totals[Math.floor((1 - assurance) * DRAWS + 1e-9)] ?? 0;
}
