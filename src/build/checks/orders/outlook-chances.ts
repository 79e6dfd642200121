import type { CivilDay } from "../../../core";
import { askedOf } from "../../../core/orders/draw-fillings";
import type { Order } from "../../../core/orders/order";
import { orderOutlooks } from "../../../core/orders/outlook-answer";
import { type Asked, setAside } from "../../../core/orders/set-aside";
import { normalText } from "../../../core/words/normal-text";
import { type Chance, chanceOf } from "../calibration/chance";
import { nurseryAsRead } from "../calibration/nursery-as-read";
import type { SimulatedBatch } from "../calibration/nursery-history";
import { type NurseryJob, nurseryOf } from "../calibration/nursery-jobs";
import { lastCount, recordsOnDay, type SeenBatch } from "../calibration/records-on-day";
import { STEP } from "../calibration/simulated-steps";
import { ASSURANCE } from "./planned-orders";

const SUBSTITUTES = 0.3;

/** A chance that was stated for an order, and whether it came true. */
export interface StatedChance {
  readonly stated: number;
  readonly filled: boolean;
}

/**
 * Asks the outlook of invented orders in an invented nursery, and fills them with what truly becomes
 * of the batches that stand there on that day.
 */
export function statedChances(job: NurseryJob): readonly StatedChance[] {
  const { history, asOfDays } = nurseryOf(job);
  const batchNamed = new Map(history.batches.map((batch) => [batch.name, batch]));
  return asOfDays.flatMap((asOf, day) => {
    const state = recordsOnDay(history, asOf);
    const rows = state.seen.flatMap((seen): readonly Row[] => {
      const batch = batchNamed.get(seen.name);
      return batch === undefined || seen.closed ? [] : [{ seen, batch }];
    });
    const varieties = history.truth.varieties.map(({ name }) => name);
    const open = inventedOrders(rows, varieties, asOf, chanceOf(history.truth.seed, 12, day));
    const filled = trulyFilled(rows, open, asOf as CivilDay);
    const orders = { open, closed: 0, remark: null };
    return orderOutlooks({ ...nurseryAsRead(state), orders, assurance: ASSURANCE }).map(
      ({ chance }, place) => ({ stated: chance, filled: filled[place] === true }),
    );
  });
}

/** A row that is not closed, and the batch it is about. */
interface Row {
  readonly seen: SeenBatch;
  readonly batch: SimulatedBatch;
}

/** About so many of 100 plants counted at a step become ready, and about so many days after sowing. */
const ROUGHLY_KEPT: ReadonlyMap<number, number> = new Map([
  [STEP.sowing, 0.47],
  [STEP.germination, 0.55],
  [STEP.grafting, 0.69],
  [STEP.takeCount, 0.9],
]);
const ROUGH_DAYS = 207;

/**
 * Orders of about as many plants as one would guess from the table to be there by their days, so
 * that few are plainly safe or hopeless; the truth is not looked at. Each variety has one order of
 * its own, and now and then another also takes it.
 */
function inventedOrders(
  rows: readonly Row[],
  varieties: readonly string[],
  asOf: number,
  chance: Chance,
): readonly Order[] {
  const guess = (variety: string, by: number) =>
    rows.reduce((sum, { seen, batch }) => {
      const counted = lastCount(seen);
      const sownOn = seen.days[STEP.sowing] ?? null;
      if (batch.course.variety !== variety || counted === null) return sum;
      if (sownOn !== null && sownOn + ROUGH_DAYS > by) return sum;
      return sum + (seen.counts[counted] as number) * (ROUGHLY_KEPT.get(counted) ?? 1);
    }, 0);
  const orders = varieties.flatMap((first, number): readonly Order[] => {
    const second = chance.pick(varieties);
    const both = chance.happens(SUBSTITUTES) && second !== first;
    const by = (asOf + chance.whole(5, 230)) as CivilDay;
    const wanted = Math.round(guess(first, by) * chance.between(0.6, both ? 1.4 : 1.2));
    const variety = both ? `${first} or ${second}` : first;
    return wanted < 1 ? [] : [{ name: `O-${number}`, variety, wanted, by, delivered: 0 }];
  });
  return orders.sort((a, b) => a.by - b.by || (a.name < b.name ? -1 : 1));
}

/** Whether each order is filled by its day. Plants that left long ago without a word fill none. */
function trulyFilled(
  rows: readonly Row[],
  orders: readonly Order[],
  asOf: CivilDay,
): readonly boolean[] {
  const there = rows.filter(
    ({ batch }) => batch.course.settledOn > asOf || batch.outcomeTypedOn !== null,
  );
  const supplies = there.map(({ batch: { course } }) => ({
    plants: course.readyPlants,
    day: Math.max(asOf, course.readyDay ?? asOf),
  }));
  const varieties = there.map(({ batch }) => normalText(batch.course.variety));
  const asked = orders.map((order) => askedOf(order, asOf, varieties, new Set(varieties)));
  return setAside(asked, supplies).map(
    ({ inTime }, order) => inTime === (asked[order] as Asked).plants,
  );
}
