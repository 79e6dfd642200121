import { describe, expect, it } from "vitest";
import type { Nursery } from "./nursery";
import { add, one, opened, orders, states, takeBack } from "./order-writing";

describe("taking an order back", () => {
  it("blanks its row wherever it stands, and no other", () => {
    const nursery = opened(orders(one("O1")));
    const first = add(nursery);
    const second = add(nursery, { order: "N-2" });
    nursery.sheet("Orders").insertRowsAfter(1, 2);
    nursery.sheet("Orders").insertColumnsAfter(2, 1);
    expect(takeBack(nursery, first).restored.map(({ where }) => where)).toHaveLength(5);
    expect(nursery.values("Orders").map(([name]) => name)).toEqual([
      "Order",
      "",
      "",
      "O1",
      "",
      "N-2",
    ]);
    expect(nursery.fault("sidebarTakeBack", { logId: first.logId ?? "" })).toEqual({
      code: "notInLog",
    });
    takeBack(nursery, second);
    expect(nursery.values("Orders")).toHaveLength(4);
    expect(new Set(states(nursery))).toEqual(new Set(["taken back"]));
  });

  it("tells two of one name apart", () => {
    const nursery = opened(orders(one("O1")));
    add(nursery);
    const sure = add(nursery, { wanted: 60 }).asked.map(({ id }) => id);
    takeBack(nursery, add(nursery, { wanted: 60, sure }));
    expect(nursery.values("Orders").map((row) => row[3])).toEqual(["Wanted", 10, 40]);
  });

  it.each([
    ["D3", 41, { code: "changedSince", header: "Wanted", stands: "41", wrote: "40" }],
    ["F3", 5, { code: "filledSince", header: "Delivered", stands: "5" }],
  ])("is refused whole when %s was changed since", (cell, value, reason) => {
    const nursery = opened(orders(one("O1")));
    const answer = add(nursery);
    nursery.sheet("Orders").getRange(cell).setValue(value);
    const before = nursery.snapshot("Orders");
    const { restored, asked } = takeBack(nursery, answer);
    expect(restored).toEqual([]);
    expect(asked[0]?.ask).toEqual({ ...reason, cell });
    expect(nursery.snapshot("Orders")).toBe(before);
  });

  it("says when the order, a column or the tab is gone", () => {
    const faultAfter = (action: (nursery: Nursery) => void) => {
      const nursery = opened(orders(one("O1")));
      const { logId } = add(nursery);
      action(nursery);
      return nursery.fault("sidebarTakeBack", { logId: logId ?? "" });
    };
    const cells = ["A3", "B3", "C3", "D3", "E3"];
    expect(faultAfter(({ w }) => w.type("Orders", "A3", "Other"))).toEqual({
      code: "orderGone",
      order: "N-1",
      cells,
    });
    expect(faultAfter(({ w }) => w.type("Orders", "C1", "Kind"))).toEqual({
      code: "columnsGone",
      headers: ["Variety"],
      cells,
    });
    expect(faultAfter((nursery) => nursery.remove("Orders"))).toEqual({
      code: "noOrders",
      tab: "Orders",
    });
  });
});

describe("an order whose writing was cut off", () => {
  /** As a cut leaves it: some cells blank, the log still at it; and rows put in above since. */
  function cut(state: string): Nursery {
    const nursery = opened(orders(one("O1")));
    add(nursery);
    nursery
      .sheet("Orders")
      .getRange("D3:E3")
      .setValues([["", ""]]);
    const log = nursery.sheet("Write log");
    log.getRange(3, 11, 5, 1).setValues(Array(5).fill([state]));
    nursery.sheet("Orders").insertRowsAfter(1, 2);
    return nursery;
  }

  it.each([
    ["writing", "not written"],
    ["taking back", "taken back"],
  ])("while %s is undone before the next one is written", (state, then) => {
    const nursery = cut(state);
    const names = () => nursery.values("Orders").map(([name]) => name);
    expect(names()).toEqual(["Order", "", "", "O1", "N-1"]);
    expect(add(nursery, { order: "N-2" }).written[0]?.where).toBe("Orders!A5");
    expect(names()).toEqual(["Order", "", "", "O1", "N-2"]);
    expect(states(nursery)).toEqual([...Array(5).fill(then), ...Array(5).fill("written")]);
  });

  it("is left alone, and said not to be known, where somebody has gone on with it", () => {
    const nursery = cut("writing");
    nursery.w.type("Orders", "D5", "55");
    nursery.w.type("Orders", "E5", "2027-08-01");
    add(nursery, { order: "N-2" });
    expect(nursery.values("Orders")[4]?.slice(0, 4)).toEqual(["N-1", "Ana", "Amberlow", 55]);
    expect(new Set(states(nursery).slice(0, 5))).toEqual(new Set(["not known"]));
  });
});
