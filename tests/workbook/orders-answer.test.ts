import { describe, expect, it } from "vitest";
import { ORDER_HEADER } from "../../src/core";
import type { SheetDraft } from "../../src/local/workbook-data";
import { rowLoading } from "../../src/sentences/made/table-faults";
import { tabThere } from "../../src/sentences/made/writing-faults";
import { COUNTS_ON } from "../support/small-orders";
import { type Made, type Nursery, openNursery, smallRecords, tab } from "./nursery";

const HEADER = ["Order", "Customer", "Variety", "Wanted", "By", "Delivered", "Closed"];
const orders = (...rows: readonly (readonly Made[])[]): SheetDraft =>
  tab("Orders", [HEADER, ...rows]);
const opened = (...drafts: readonly SheetDraft[]): Nursery =>
  openNursery([smallRecords(), ...drafts]).ready();
const asked = (...drafts: readonly SheetDraft[]) => opened(...drafts).ask("sidebarOrders", null);

describe("the sample nursery's orders", () => {
  const nursery = openNursery().ready();
  const answer = nursery.ask("sidebarOrders", null);

  it("are the open ones, the earliest first, each with its customer", () => {
    expect(answer).toMatchObject({ asOf: "2026-11-25", ordersTab: "Orders", assurance: 0.8 });
    expect(answer.orderHeader).toEqual(HEADER);
    const days = answer.orders.map(({ by }) => by);
    expect(days.length).toBeGreaterThan(1);
    expect(days).toEqual([...days].sort());
    expect(answer.orders[0]).toMatchObject({
      ...{ order: "O-03", customer: "Growers' table C", variety: "Brindlecap" },
      ...{ wanted: 180, delivered: 60, by: "2026-11-20", isFine: false },
    });
    for (const { chance, shortBy, wanted, delivered } of answer.orders) {
      expect(chance).toBeGreaterThanOrEqual(0);
      expect(chance).toBeLessThanOrEqual(1);
      expect(shortBy).toBeLessThanOrEqual(wanted - delivered);
    }
  });

  it("say the same as ORDER_OUTLOOK in a cell", async () => {
    const live = openNursery(undefined, { live: true }).ready();
    live.w.type(
      "Settings",
      "F1",
      "=ORDER_OUTLOOK(Orders!A1:G20, Records!A:AB, 'Nursery timetable'!A:L, 'Nursery settings'!B4)",
    );
    await live.w.settled();
    const rows = live
      .values("Settings")
      .map((row) => row.slice(5))
      .slice(1, 1 + answer.orders.length);
    expect(
      rows.map(([order, , wanted, by, likely, chance]) => [order, wanted, by, likely, chance]),
    ).toEqual(
      answer.orders.map(({ order, wanted, by, likely, chance }) => [
        order,
        wanted,
        by,
        likely,
        chance,
      ]),
    );
  });

  it("offer the varieties and the methods, the usual one first", () => {
    expect(answer.varieties).toEqual([...new Set(answer.varieties)].sort());
    expect(answer.varieties).toEqual(expect.arrayContaining(["Amberlow", "Brindlecap", "Corvane"]));
    expect(answer.methods[0]).toBe("Cocoa cleft graft");
    expect(new Set(answer.methods).size).toBe(answer.methods.length);
  });
});

describe("the tab of orders", () => {
  it("may be missing", () => {
    expect(asked()).toMatchObject({
      ordersTab: null,
      orders: [],
      orderHeader: HEADER,
      remark: null,
    });
  });

  it("may be empty", () => {
    expect(asked(orders())).toMatchObject({ ordersTab: "Orders", orders: [], remark: null });
  });

  it("is found in French, below a title, in any order of columns, its header merged over two rows", () => {
    const commandes = tab("Commandes", [
      ["Commandes de la saison"],
      [],
      ["Pour le", "Quantité", "Client", "Variété", "Commande"],
      [],
      ["2027-10-01", 40, "Ana", "Amberlow", "C-1"],
    ]);
    const merges = [0, 1, 2, 3, 4].map((column) => ({
      ...{ startRow: 2, endRow: 3, startColumn: column, endColumn: column },
    }));
    const answer = asked({ ...commandes, merges });
    expect(answer).toMatchObject({ ordersTab: "Commandes", remark: COUNTS_ON });
    expect(answer.orders).toMatchObject([
      { order: "C-1", customer: "Ana", variety: "Amberlow", wanted: 40, by: "2027-10-01" },
    ]);
  });

  it.each([
    ["Qté", "Avant le"],
    ["Nb plants", "Échéance"],
    ["Cant.", "Plazo"],
    ["Qtd.", "Prazo"],
  ])("is found by the short headers %s and %s", (wanted, by) => {
    const commandes = tab("Commandes", [
      [by, wanted, "Variété"],
      ["2027-10-01", 40, "Amberlow"],
    ]);
    expect(asked(commandes)).toMatchObject({
      ordersTab: "Commandes",
      orders: [{ wanted: 40, by: "2027-10-01" }],
    });
  });

  it("is the one called so, though another has more columns; else the one with most", () => {
    const short = tab("Pedidos", [
      ["Wanted", "By"],
      [5, "2027-10-01"],
    ]);
    const long = { ...orders(["L", "", "", 7, "2027-10-01"]), name: "Sales" };
    const longer = tab("More", [
      [...HEADER.slice(0, 3), "Wanted"],
      ["x", "", "", 1],
    ]);
    expect(asked(long, short)).toMatchObject({ ordersTab: "Pedidos", orders: [{ wanted: 5 }] });
    expect(asked(longer, long)).toMatchObject({ ordersTab: "Sales", orders: [{ order: "L" }] });
    const called = tab("Orders", [["Notes on orders"]]);
    expect(asked(called, long)).toMatchObject({ ordersTab: "Sales" });
  });

  it("is not taken from numbers and days alone, from the records, or from one of ours", () => {
    expect(
      asked(
        tab("Purchases", [
          ["Date", "Quantity", "Price"],
          ["2026-01-01", 3, 4],
        ]),
      ),
    ).toMatchObject({ ordersTab: null });
    const sold = ["Date", "Customer", "Variety", "Quantity"];
    expect(asked(tab("Sold", [sold, ["2026-01-01", "Ana", "Amberlow", 4]]))).toMatchObject({
      ordersTab: null,
    });
    const nursery = opened();
    nursery
      .sheet("Records")
      .getRange("Q1:S1")
      .setValues([["Order", "Wanted", "By"]]);
    expect(nursery.ask("sidebarOrders", null).ordersTab).toBeNull();
    const plan = {
      variety: "",
      wanted: 20,
      by: "2027-10-01",
      assurance: 0.8,
      method: "",
      harvest: "",
    };
    nursery.ask("sidebarOrderTab", { ...plan, order: "O1" });
    expect(nursery.ask("sidebarOrders", null).ordersTab).toBeNull();
  });
});

describe("what stands in the cells", () => {
  it("is used, or said in a sentence: errors, days as text, nasty text", () => {
    const error: Made = { v: "#N/A", t: 1 };
    const answer = asked(
      orders(
        [
          "<img src=x onerror=alert(1)>",
          '"quoted"',
          "Amberlow ou Corvane",
          "40 plants",
          "1 Oct 2027",
        ],
        ["O2", "", "", error, "2027-10-01"],
        ["O3", "", error, 10, "2027-10-01"],
        ["O4", "", "", 10, "soon"],
        ["O5", "", "", 10, "2027-10-01", "", "yes"],
      ),
    );
    expect(answer.orders).toMatchObject([
      { order: "<img src=x onerror=alert(1)>", customer: '"quoted"', wanted: 40, by: "2027-10-01" },
    ]);
    expect(answer.remark).toMatch(/\b3\b.*\b4\b.*\b5\b/s);
    expect(answer.varieties).toEqual(["Amberlow", "Corvane"]);
  });

  it("may be unticked boxes down to the last row", () => {
    const answer = asked(
      orders(
        ["O1", "", "", 10, "2027-10-01", null, false],
        [null, null, null, null, null, null, false],
        [null, null, null, null, null, null, false],
      ),
    );
    expect(answer).toMatchObject({ orders: [{ order: "O1" }], remark: COUNTS_ON });
  });

  it("is asked for again while it is being calculated", () => {
    expect(
      opened(orders(["O1", "", "", "Loading...", "2027-10-01"])).refusal("sidebarOrders", null),
    ).toBe(rowLoading({ argument: "orders", row: "2" }));
  });
});

describe("an empty tab of orders", () => {
  it("is made once, is read, and is never swept or replaced once it is filled", () => {
    const nursery = opened();
    expect(nursery.ask("sidebarMakeOrders", null)).toEqual({ tab: "Orders" });
    expect(nursery.values("Orders")[1]).toEqual(HEADER);
    expect(nursery.sheet("Orders").getRange("E40").getNumberFormat()).toBe("d mmm yyyy");
    expect(nursery.ask("sidebarOrders", null)).toMatchObject({ ordersTab: "Orders", orders: [] });
    nursery
      .sheet("Orders")
      .getRange("A3:E3")
      .setValues([["O1", "Ana", "", 7, "1 Oct 2027"]]);
    const filled = nursery.snapshot("Orders");
    expect(nursery.ask("sidebarMakeOrders", null)).toEqual({ tab: "Orders" });
    nursery.ask("sidebarSetUp", { tab: "Records", columns: [], methods: [] });
    expect(nursery.snapshot("Orders")).toBe(filled);
    expect(nursery.ask("sidebarOrders", null).orders).toMatchObject([{ order: "O1", wanted: 7 }]);
    expect(nursery.ask("sidebarOpen", null).candidates.map((one) => one.tab)).toEqual(["Records"]);
    // Put away under a name that our own leftovers bear, and found there all the same.
    for (const name of ["Orders (being replaced)", "Orders (being made)"]) {
      nursery.sheet(nursery.tabs().find((one) => one.startsWith("Orders")) as string).setName(name);
      nursery.ask("sidebarSetUp", { tab: "Records", columns: [], methods: [] });
      expect(nursery.snapshot(name)).toBe(filled);
      expect(nursery.ask("sidebarOrders", null)).toMatchObject({ ordersTab: name });
      expect(nursery.ask("sidebarMakeOrders", null)).toEqual({ tab: name });
    }
  });

  it("is not made where the person has one, and never over a tab of that name", () => {
    const own = opened({ ...orders(["O1", "", "", 7, "2027-10-01"]), name: "Sales" });
    expect(own.ask("sidebarMakeOrders", null)).toEqual({ tab: "Sales" });
    expect(own.tabs()).not.toContain("Orders");
    const other = opened(tab("orders", [["What to buy"]]));
    const before = other.snapshot("orders");
    expect(other.refusal("sidebarMakeOrders", null)).toBe(
      tabThere({ tab: "orders", columns: Object.values(ORDER_HEADER) }),
    );
    expect(other.snapshot("orders")).toBe(before);
  });
});
