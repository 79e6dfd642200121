import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  type Asked,
  type Filling,
  type Supply,
  setAside,
} from "../../../src/core/orders/set-aside";

const asks = (plants: number, by: number, ...takes: boolean[]): Asked => ({ plants, by, takes });

describe("plants set aside", () => {
  it("go to the earlier day first", () => {
    const supplies = [{ plants: 50, day: 5 }];
    expect(setAside([asks(40, 10, true), asks(40, 20, true)], supplies)).toEqual([
      { inTime: 40, fullOn: 10 },
      { inTime: 10, fullOn: null },
    ]);
  });

  it("of an order that takes either leave the one that another order must have", () => {
    const supplies = [
      { plants: 10, day: 1 },
      { plants: 10, day: 2 },
    ];
    expect(setAside([asks(10, 5, true, true), asks(10, 5, true, false)], supplies)).toEqual([
      { inTime: 10, fullOn: 5 },
      { inTime: 10, fullOn: 5 },
    ]);
  });

  it("that come late fill an order, but not with plants that another needs in time", () => {
    const late = { plants: 10, day: 8 };
    const orders = [asks(10, 5, true, true), asks(10, 20, true, true)];
    expect(setAside(orders, [late, { plants: 0, day: 9 }])).toEqual([
      { inTime: 0, fullOn: null },
      { inTime: 10, fullOn: 20 },
    ]);
    // With a second batch the later order can wait for it.
    expect(setAside(orders, [late, { plants: 10, day: 15 }])).toEqual([
      { inTime: 0, fullOn: 8 },
      { inTime: 10, fullOn: 20 },
    ]);
  });
});

/** Every way in which single plants may go to orders, or to none (-1). */
function* everyWay(orders: readonly Asked[], units: readonly (Supply & { at: number })[]) {
  const goes: number[] = units.map(() => -1);
  for (;;) {
    const fits = orders.every(
      ({ plants }, order) => goes.filter((one) => one === order).length <= plants,
    );
    if (
      fits &&
      goes.every((order, unit) => order === -1 || orders[order]?.takes[units[unit]?.at ?? -1])
    )
      yield [...goes];
    let unit = 0;
    while (unit < goes.length && goes[unit] === orders.length - 1) goes[unit++] = -1;
    if (unit === goes.length) return;
    goes[unit] = (goes[unit] as number) + 1;
  }
}

/** The best of all ways, looked for by trying them all. */
function bestOfAll(orders: readonly Asked[], supplies: readonly Supply[]) {
  const units = supplies.flatMap(({ plants, day }, at) =>
    Array.from({ length: plants }, () => ({ plants: 1, day, at })),
  );
  let ways = [...everyWay(orders, units)].map((goes) => {
    return orders.map(({ by }, order) => {
      const days = units.flatMap(({ day }, unit) => (goes[unit] === order ? [day] : []));
      const late = days.filter((day) => day > by);
      return { inTime: days.length - late.length, all: days.length, last: Math.max(by, ...late) };
    });
  });
  const mostInTime = Math.max(
    ...ways.map((way) => way.reduce((sum, { inTime }) => sum + inTime, 0)),
  );
  const keep = (score: (way: (typeof ways)[number]) => number) => {
    const best = Math.max(...ways.map(score));
    ways = ways.filter((way) => score(way) === best);
  };
  orders.forEach((_, order) => {
    keep((way) => way[order]?.inTime as number);
  });
  orders.forEach((_, order) => {
    keep((way) => way[order]?.all as number);
    keep((way) => -(way[order]?.last as number));
  });
  const best = ways[0] as (typeof ways)[number];
  const fillings = orders.map(({ plants }, order): Filling => {
    const { inTime, all, last } = best[order] as (typeof best)[number];
    return { inTime, fullOn: all < plants ? null : last };
  });
  return { mostInTime, fillings };
}

const smallCase = fc
  .tuple(
    fc.array(fc.record({ plants: fc.nat({ max: 2 }), day: fc.integer({ min: 1, max: 6 }) }), {
      minLength: 1,
      maxLength: 4,
    }),
    fc.integer({ min: 1, max: 3 }),
  )
  .chain(([supplies, count]) =>
    fc.tuple(
      fc.constant(supplies),
      fc
        .array(
          fc.record({
            plants: fc.nat({ max: 4 }),
            by: fc.integer({ min: 1, max: 6 }),
            takes: fc.array(fc.boolean(), {
              minLength: supplies.length,
              maxLength: supplies.length,
            }),
          }),
          { minLength: count, maxLength: count },
        )
        .map((orders) => orders.sort((a, b) => a.by - b.by)),
    ),
  );

describe("the best way to set plants aside", () => {
  it("is the best of all ways, tried one by one", () => {
    let late = 0;
    fc.assert(
      fc.property(smallCase, ([supplies, orders]) => {
        const found = setAside(orders, supplies);
        const { mostInTime, fillings } = bestOfAll(orders, supplies);
        expect(found).toEqual(fillings);
        expect(found.reduce((sum, { inTime }) => sum + inTime, 0)).toBe(mostInTime);
        late += found.filter(({ fullOn }, at) => (fullOn ?? 0) > (orders[at]?.by as number)).length;
      }),
      { numRuns: 400 },
    );
    // Cases in which late plants matter must be among them.
    expect(late).toBeGreaterThan(20);
  });
});

/** The most plants that orders can have in time, by a flow found the plain way (breadth first). */
function mostInTime(orders: readonly Asked[], supplies: readonly Supply[]): number {
  const [source, sink] = [0, 1 + supplies.length + orders.length];
  const room = Array.from({ length: sink + 1 }, () => new Array<number>(sink + 1).fill(0));
  const set = (from: number, to: number, plants: number) => {
    (room[from] as number[])[to] = plants;
  };
  supplies.forEach(({ plants, day }, supply) => {
    set(source, 1 + supply, plants);
    orders.forEach(({ by, takes }, order) => {
      if (takes[supply] && day <= by) set(1 + supply, 1 + supplies.length + order, plants);
    });
  });
  orders.forEach(({ plants }, order) => {
    set(1 + supplies.length + order, sink, plants);
  });
  for (let flow = 0; ; ) {
    const before = new Array<number>(sink + 1).fill(-1);
    before[source] = source;
    const queue = [source];
    for (const at of queue) {
      room[at]?.forEach((left, to) => {
        if (left === 0 || before[to] !== -1) return;
        before[to] = at;
        queue.push(to);
      });
    }
    if (before[sink] === -1) return flow;
    const path: [number, number][] = [];
    for (let to = sink; to !== source; to = before[to] as number) {
      path.push([before[to] as number, to]);
    }
    const most = Math.min(...path.map(([from, to]) => room[from]?.[to] as number));
    for (const [from, to] of path) {
      set(from, to, (room[from]?.[to] as number) - most);
      set(to, from, (room[to]?.[from] as number) + most);
    }
    flow += most;
  }
}

describe("many orders of few varieties", () => {
  const VARIETIES = 4;
  const nursery = fc.record({
    batches: fc.array(
      fc.record({
        plants: fc.nat({ max: 60 }),
        day: fc.integer({ min: 1, max: 40 }),
        variety: fc.nat({ max: VARIETIES - 1 }),
      }),
      { minLength: 5, maxLength: 40 },
    ),
    orders: fc.array(
      fc.record({
        plants: fc.nat({ max: 150 }),
        by: fc.integer({ min: 1, max: 45 }),
        first: fc.nat({ max: VARIETIES - 1 }),
        second: fc.nat({ max: VARIETIES - 1 }),
      }),
      { minLength: 2, maxLength: 12 },
    ),
  });

  it("have each in time what it adds to the most that the orders up to it can have", () => {
    let moved = 0;
    fc.assert(
      fc.property(nursery, ({ batches, orders }) => {
        const asked = orders
          .map(({ plants, by, first, second }) => ({
            ...{ plants, by },
            takes: batches.map(({ variety }) => variety === first || variety === second),
          }))
          .sort((a, b) => a.by - b.by);
        const most = asked.map((_, order) => mostInTime(asked.slice(0, order + 1), batches));
        const found = setAside(asked, batches);
        expect(found.map(({ inTime }) => inTime)).toEqual(
          most.map((plants, order) => plants - (most[order - 1] ?? 0)),
        );
        moved += found.filter(({ inTime }, order) => inTime < (asked[order]?.plants ?? 0)).length;
      }),
      { numRuns: 150 },
    );
    expect(moved).toBeGreaterThan(50);
  });
});
