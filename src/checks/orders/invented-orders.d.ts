import type { Order } from "../../core/orders/order";
import type { Chance } from "../calibration/chance";
import type { CheckedDay } from "./checked-days";
/**
 * Orders of as many plants as the nursery, by its records, would promise of what stands with some
 * chance between sure and hopeless, so that every tenth of the chance has orders; the truth is not
 * looked at. What earlier orders of a variety want is no longer promised. Now and then an order takes
 * another variety too.
 */
export declare function inventedOrders(
  { history, nursery: { asOf }, projection }: CheckedDay,
  chance: Chance,
): readonly Order[];
