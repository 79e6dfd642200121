import { describe, expect, it } from "vitest";
import { nurseryJobs } from "../../src/checks/calibration/nursery-jobs";
import { checkedDays } from "../../src/checks/orders/checked-days";
import { metShare, ordersTable, tenths } from "../../src/checks/orders/orders-table";
import { statedChances } from "../../src/checks/orders/outlook-chances";
import { plannedOrders } from "../../src/checks/orders/planned-orders";

const tally = (orders: number, met: number) => ({
  ...{ orders, met, enough: met, inTime: met, lost: 0 },
});
const stated = (chance: number, filled: number, of: number) =>
  Array.from({ length: of }, (_, one) => ({ stated: chance, filled: one < filled }));

describe("the tally of orders", () => {
  it("counts shares over all orders, and their error from how nurseries differ", () => {
    const score = (met: number) => ({ kind: 0, planned: tally(10, met), chances: [] });
    const share = metShare([score(7), score(9)]);
    expect(share.met).toBeCloseTo(0.8, 12);
    // By hand: deviations 0.1 and 0.1; √0.02 ÷ 2.
    expect(share.error).toBeCloseTo(Math.sqrt(0.02) / 2, 12);
  });

  it("puts a chance into its tenth, 1 into the last", () => {
    const filled = tenths([...stated(0.3, 1, 2), ...stated(1, 3, 3)]);
    expect(filled[3]).toEqual({ tenth: 3, orders: 2, stated: 0.3, filled: 0.5 });
    expect(filled[9]).toEqual({ tenth: 9, orders: 3, stated: 1, filled: 1 });
    expect(filled[0]?.orders).toBe(0);
  });

  it("names what lies outside its limit", () => {
    const chances = stated(0.85, 300, 400);
    const { outside } = ordersTable([{ kind: 0, planned: tally(100, 70), chances }]);
    expect(outside).toEqual([
      "orders planned at 0.8 are met in 70.0 of 100",
      "0.8 to 0.9: stated 85.0, filled 75.0 of 100",
    ]);
    const honest = stated(0.85, 340, 400);
    expect(ordersTable([{ kind: 0, planned: tally(100, 80), chances: honest }]).outside).toEqual(
      [],
    );
  });
});

describe("some invented nurseries of 30 past batches", () => {
  const nurseries = nurseryJobs(5, 30).map((job) => ({ kind: job.kind, days: checkedDays(job) }));

  it("meet about the share of orders that they planned for", () => {
    const { met, orders } = metShare(
      nurseries.map(({ kind, days }) => ({ kind, planned: plannedOrders(days), chances: [] })),
    );
    expect(orders).toBe(180);
    // 180 orders of ten nurseries: a standard error of about 4 in 100.
    expect(met).toBeGreaterThan(0.7);
    expect(met).toBeLessThan(0.93);
  });

  it("fill more orders the higher the chance that was stated", () => {
    const all = nurseries.flatMap(({ days }) => statedChances(days));
    const low = all.filter((one) => one.stated < 0.3);
    const high = all.filter((one) => one.stated >= 0.8);
    const share = (some: typeof all) => some.filter(({ filled }) => filled).length / some.length;
    expect(Math.min(low.length, high.length)).toBeGreaterThan(15);
    expect(share(low)).toBeLessThan(0.25);
    expect(share(high)).toBeGreaterThan(0.75);
  });
});
