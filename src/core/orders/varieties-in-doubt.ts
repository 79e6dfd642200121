import { eachName, shortened } from "../cells";
import { madeOnce } from "../made-once";
import { foldName, nearAlike } from "../names";
import type { Records } from "../records";
import type { KnownVarieties, Order } from "./order";
import type { VarietyInDoubt } from "./order-remark";
import { varietiesOf } from "./wishes";

/**
 * Open batches that may be of a variety that orders name and are counted for none of these: their own is
 * blank, or spelt nearly so.
 *
 * @param orders those that are told of
 */
export function varietiesInDoubt(
  orders: readonly Pick<Order, "variety">[],
  { batches, words }: Pick<Records, "batches" | "words">,
  known: KnownVarieties,
): readonly VarietyInDoubt[] {
  const wanted = new Set(orders.flatMap((order) => varietiesOf(order, known)));
  if (wanted.size === 0) return [];
  const named = new Map<string, string[]>();
  for (const { name, variety, closed } of batches) {
    if (!closed) madeOnce(named, foldName(variety), () => []).push(name);
  }
  const nameless = named.get("") ?? [];
  // What to do for an order says itself where no batch has its variety.
  const near = nearAlike([...known.values()])
    .filter((pair) => words?.isApart(...pair) !== true)
    .map((pair) => pair.map(foldName) as [string, string])
    .flatMap(([one, other]) => [
      { own: one, ordered: other },
      { own: other, ordered: one },
    ])
    .filter(({ own, ordered }) => wanted.has(ordered) && !wanted.has(own) && named.has(own))
    .map(({ own, ordered }): VarietyInDoubt => {
      const spelt = (folded: string) => shortened(known.get(folded) as string);
      const called = { variety: spelt(own), ordered: spelt(ordered) };
      return { code: "variety-near", ...called, batches: eachName(named.get(own) ?? []) };
    });
  return nameless.length === 0
    ? near
    : [{ code: "variety-blank", batches: eachName(nameless) }, ...near];
}
