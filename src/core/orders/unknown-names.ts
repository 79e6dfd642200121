import { eachName, shortened } from "../cells";
import { methodFinder } from "../timetable";
import type { OrdersRemark } from "./order-remark";
import type { OutlookQuestion } from "./outlook-question";
import { batchCaller, namesKnown, unknownWishes, wishesOf } from "./wishes";

/** Orders that take a variety which no batch has, beside others. */
export function unknownBesideKnown({
  orders,
  records,
  timetable,
}: OutlookQuestion): readonly OrdersRemark[] {
  const names = namesKnown(records, timetable);
  const unknown = orders.open.flatMap((order) => {
    const wishes = wishesOf(order, names.varieties);
    const none = unknownWishes(wishes, names);
    if (none.length === 0 || none.length === wishes.length) return [];
    return [
      { order: shortened(order.name), varieties: none.map(({ written }) => shortened(written)) },
    ];
  });
  return unknown.length === 0 ? [] : [{ code: "varieties-unknown", orders: unknown }];
}

/** Open batches of no known crop, where an order wants one; without a method they are named anyway. */
export function cropsUnknown({
  orders,
  records,
  timetable,
}: OutlookQuestion): readonly OrdersRemark[] {
  const { varieties } = namesKnown(records, timetable);
  const wishes = orders.open.flatMap((order) => wishesOf(order, varieties));
  const ofCrops = wishes.filter(({ crops }) => crops.length > 0);
  if (ofCrops.length === 0) return [];
  const methodOf = methodFinder(timetable);
  const calledOf = batchCaller();
  const unknown = records.batches.filter((batch) => {
    const method = batch.closed ? null : methodOf(batch);
    if (method === null) return false;
    const { variety, crops } = calledOf(batch, method);
    const wanted = ofCrops.some((wish) => wish.variety === null || wish.variety === variety);
    return crops.length === 0 && wanted;
  });
  const batches = eachName(unknown.map(({ name }) => name));
  return batches.length === 0 ? [] : [{ code: "crop-unknown", batches }];
}
