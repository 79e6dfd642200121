import type { CivilDay } from "../../core";
import { foldName } from "../../core/names/fold-name";
import { askedOf } from "../../core/orders/draw-fillings";
import type { Order } from "../../core/orders/order";
import { orderOutlooks } from "../../core/orders/order-outlooks";
import { type Asked, setAside } from "../../core/orders/set-aside";
import { chanceOf } from "../calibration/chance";
import type { SimulatedBatch } from "../calibration/nursery-history";
import type { SeenBatch } from "../calibration/records-on-day";
import { ASSURANCE, type CheckedDay } from "./checked-days";
import { inventedOrders } from "./invented-orders";

/** A chance that was stated for an order, and whether it came true. */
export interface StatedChance {
  readonly stated: number;
  readonly filled: boolean;
}

/**
 * Asks the outlook of invented orders in an invented nursery, and fills them with what truly becomes
 * of the batches that stand there on that day.
 */
export function statedChances(days: readonly CheckedDay[]): readonly StatedChance[] {
  return days.flatMap((checked) => {
    const { history, state, nursery, day } = checked;
    const batchNamed = new Map(history.batches.map((batch) => [batch.name, batch]));
    const rows = state.seen.flatMap((seen): readonly Row[] => {
      const batch = batchNamed.get(seen.name);
      return batch === undefined || seen.closed ? [] : [{ seen, batch }];
    });
    const open = inventedOrders(checked, chanceOf(history.truth.seed, 12, day));
    const filled = trulyFilled(rows, open, nursery.asOf);
    const orders = { open, rows: [], remarks: [] };
    return orderOutlooks({ ...nursery, orders, assurance: ASSURANCE }).map(({ chance }, index) => ({
      stated: chance,
      filled: filled[index] === true,
    }));
  });
}

/** A row that is not closed, and the batch it is about. */
interface Row {
  readonly seen: SeenBatch;
  readonly batch: SimulatedBatch;
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
  const varieties = there.map(({ batch }) => foldName(batch.course.variety));
  const asked = orders.map((order) =>
    askedOf(order, {
      asOf,
      batches: varieties.map((variety) => ({ variety, crops: [] })),
      known: new Map(varieties.map((one) => [one, one])),
    }),
  );
  return setAside(asked, supplies).map(
    ({ inTime }, order) => inTime === (asked[order] as Asked).plants,
  );
}
