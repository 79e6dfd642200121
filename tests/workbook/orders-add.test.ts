/*
 * Longer than most: all that can become of one order that is added, from the plain case to the
 * nasty ones.
 */
import { describe, expect, it } from "vitest";
import { ORDER_HEADER } from "../../src/core";
import * as text from "../../src/sentences/made/order-writes";
import type { AddOrderRequest } from "../../src/wire/orders";
import { dayWords } from "../../src/wording/days";
import { faultSentence } from "../../src/wording/writing";
import { day } from "../support/days";
import { escaped } from "../support/escaped";
import { refusalText } from "../support/refusal";
import { type Made, type Nursery, tab } from "./nursery";
import {
  add,
  HEADER,
  ORDER,
  one,
  opened,
  orders,
  refused,
  states,
  takeBack,
} from "./order-writing";

const outOfRange = (found: number) =>
  refusalText({ code: "wanted-out-of-range", argument: "Wanted", most: 1_000_000, found });
const unreadable = (wanted: "day" | "number", argument: string, found: string | number) =>
  refusalText({ code: "argument-unreadable", argument, wanted, found });

describe("adding an order", () => {
  it("writes a row below the last one, as text, number and day, and says which cells", () => {
    const nursery = opened(orders(one("O1"), one("O2")));
    const answer = add(nursery);
    expect(answer.written).toEqual([
      { where: "Orders!A4", header: "Order", value: "N-1" },
      { where: "Orders!B4", header: "Customer", value: "Ana" },
      { where: "Orders!C4", header: "Variety", value: "Amberlow" },
      { where: "Orders!D4", header: "Wanted", value: "40" },
      { where: "Orders!E4", header: "By", value: "2027-10-01" },
    ]);
    expect(nursery.values("Orders")[3]).toEqual([
      "N-1",
      "Ana",
      "Amberlow",
      40,
      "2027-10-01",
      "",
      "",
    ]);
    const day = nursery.sheet("Orders").getRange("E4").getValue();
    expect(Object.prototype.toString.call(day)).toBe("[object Date]");
    expect(states(nursery)).toEqual(Array(5).fill("written"));
    expect(nursery.ask("sidebarOrders", null).orders.at(-1)).toMatchObject({
      ...{ order: "N-1", customer: "Ana", wanted: 40, by: "2027-10-01" },
    });
  });

  it("shows the day as the one above is shown, unless that is text", () => {
    const nursery = opened(orders(one("O1"), one("O2")));
    const format = (cell: string) => nursery.sheet("Orders").getRange(cell).getNumberFormat();
    add(nursery);
    nursery.sheet("Orders").getRange("E4").setNumberFormat("yyyy-mm-dd");
    add(nursery, { order: "N-2" });
    expect(format("E5")).toBe("yyyy-mm-dd");
    nursery.sheet("Orders").getRange("E5").setNumberFormat("@").setValue("2027-09-01");
    add(nursery, { order: "N-3" });
    expect(format("E6")).not.toBe("@");
    expect(nursery.ask("sidebarOrders", null).orders).toHaveLength(5);
  });

  it("follows the person's own headers and their order, below a title, in a tab that ends there", () => {
    const nursery = opened(
      tab(
        "Pedidos",
        [
          ["Temporada"],
          ["Fecha de entrega", "Notas", "Cantidad", "Cliente", "Pedido", "Variedad"],
          ["2027-09-01", "call first", 10, "Bo", "P-09", ""],
        ],
        3,
      ),
    );
    const answer = add(nursery, { order: "" });
    expect(answer.written.map(({ where, header }) => [where, header])).toEqual([
      ["Pedidos!E4", "Pedido"],
      ["Pedidos!D4", "Cliente"],
      ["Pedidos!F4", "Variedad"],
      ["Pedidos!C4", "Cantidad"],
      ["Pedidos!A4", "Fecha de entrega"],
    ]);
    expect(nursery.values("Pedidos")[3]).toEqual(["2027-10-01", "", 40, "Ana", "P-10", "Amberlow"]);
  });

  it("goes into the empty tab that we made, and above unticked boxes", () => {
    const nursery = opened();
    expect(refused(nursery)).toBe(text.noTab());
    nursery.ask("sidebarMakeOrders", null);
    nursery.sheet("Orders").getRange("G3:G20").insertCheckboxes();
    expect(add(nursery, { order: "", customer: "", variety: "" }).written).toMatchObject([
      { where: "Orders!A3", value: "Order 1" },
      { where: "Orders!D3" },
      { where: "Orders!E3" },
    ]);
    expect(add(nursery, { order: "" }).written[0]).toMatchObject({
      where: "Orders!A4",
      value: "Order 2",
    });
  });

  it.each([
    [["O-08", "O-09", "for the fair"], "O-10"],
    [["2026-099", "2026-007"], "2026-100"],
    [[101, 103, 102], 104],
    [["Ana's", "Bo's", "Cato's"], "Order 4"],
    [["Order 2", "Ana's", "Bo's"], "Order 4"],
    [["Ana's", "order 3", "ORDER 4", "x", "y"], "Order 6"],
    [["12345678901234567890"], "12345678901234567891"],
  ])("names one without a name after %j: %s", (names, name) => {
    const nursery = opened(orders(...names.map(one)));
    add(nursery, { order: "" });
    expect(nursery.values("Orders").at(-1)?.[0]).toBe(name);
  });
});

describe("what can hardly be meant", () => {
  it("is asked first: a name that stands there, a day in the past, a text too long", () => {
    const nursery = opened(orders(one("n-1 ")));
    const before = nursery.snapshot("Orders");
    const doubtful = { by: "2026-11-24", customer: "x".repeat(60_000) };
    const { written, asked, logId } = add(nursery, doubtful);
    expect([written, logId]).toEqual([[], null]);
    expect(asked.map(({ ask }) => ask)).toEqual([
      { code: "nameAlready", order: "N-1", row: "2", tab: "Orders" },
      {
        code: "beforeToday",
        day: dayWords(day("2026-11-24")),
        today: dayWords(day("2026-11-25")),
      },
      { code: "tooLong", what: "customer", length: 60_000, most: 49_999 },
    ]);
    const questions = asked.map(({ id }) => id);
    expect(nursery.snapshot("Orders")).toBe(before);
    expect(add(nursery, { ...doubtful, sure: questions.slice(0, 2) }).asked).toHaveLength(3);
    expect(add(nursery, { ...doubtful, sure: questions }).written).toHaveLength(5);
    expect(String(nursery.values("Orders")[2]?.[1])).toHaveLength(49_999);
  });

  const unread = (name: string) => faultSentence({ code: "unreadable", name });
  it.each<[string, Partial<Record<keyof AddOrderRequest, unknown>>, RegExp | string]>([
    ["no number", { wanted: "40" }, outOfRange(0)],
    ["half a plant", { wanted: 1.5 }, unreadable("number", "Wanted", 1.5)],
    ["none", { wanted: 0 }, outOfRange(0)],
    ["fewer than none", { wanted: -3 }, unreadable("number", "Wanted", -3)],
    ["too many", { wanted: 1_000_001 }, outOfRange(1_000_001)],
    ["a list", { wanted: [40] }, outOfRange(0)],
    ["no day", { by: "" }, refusalText({ code: "argument-missing", argument: "By", needs: "day" })],
    ["a day that is none", { by: "2027-02-30" }, unreadable("day", "By", "2027-02-30")],
    [
      "a day of another age",
      { by: "1027-02-03" },
      new RegExp(
        escaped(text.farAway({ column: ORDER_HEADER.by, day: dayWords(day("1027-02-03")) })),
      ),
    ],
    ["a record as a name", { order: { name: "x" } }, unread("Order")],
    ["yes as a customer", { customer: true }, unread("Customer")],
  ])("is refused in a sentence: %s", (_, more, sentence) => {
    expect(refused(opened(orders(one("O1"))), more as Partial<AddOrderRequest>)).toMatch(sentence);
  });

  it("is a row below the orders that is none, such as a sum: nothing is written", () => {
    const sum: Made[] = ["Total", "", "", { f: "=SUM(D2:D3)", v: 20, t: 2 }];
    expect(refused(opened(orders(one("O1"), one("O2"), sum)))).toBe(
      text.below({ row: "4", tab: "Orders", shown: '"Total"' }),
    );
    expect(refused(opened(orders(one("O1"), [], ["", "", "", "", "", "", "paid"])))).toBe(
      text.below({ row: "4", tab: "Orders", shown: '"paid"' }),
    );
  });

  it("is not what stands in a table of its own beside", () => {
    const beside = (row: readonly Made[], note: string): Made[] => {
      const filled = [...row, ...Array<Made>(8 - row.length).fill(null)];
      return [...filled, note];
    };
    const nursery = opened(
      tab("Orders", [
        beside(HEADER, "Prices"),
        beside(one("O1"), "a"),
        beside([], "b"),
        beside([], "c"),
      ]),
    );
    expect(add(nursery).written[0]?.where).toBe("Orders!A3");
    expect(nursery.values("Orders").map((row) => row[8])).toEqual(["Prices", "a", "b", "c"]);
  });

  it("is a table that lacks a column: the header to add is named", () => {
    const nursery = opened(
      tab("Orders", [["Orders of mine"], ["Order", "Wanted", "By"], ["O1", 10, "2027-09-01"]]),
    );
    expect(refused(nursery)).toBe(
      text.noColumn({ tab: "Orders", column: ORDER_HEADER.customer, row: "2" }),
    );
    expect(add(nursery, { customer: "", variety: "" }).written).toHaveLength(3);
    const nameless = opened(tab("Orders", [["Customer", "Wanted", "By"]]));
    expect(refused(nameless, { variety: "" })).toContain(
      text.noColumn({ tab: "Orders", column: ORDER_HEADER.order, row: "1" }),
    );
  });
});

describe("nasty text", () => {
  it.each([
    "=1+1",
    "+cmd",
    "-2",
    "@x",
    "007",
    "3/4",
    "'quoted'",
    '<img src=x onerror="alert(1)">',
    "TRUE",
  ])("%s stays what it is, and is taken back", (text) => {
    const nursery = opened(orders(one("O1")));
    const before = nursery.snapshot("Orders");
    const answer = add(nursery, { order: text, customer: text, variety: text });
    expect(nursery.values("Orders")[2]?.slice(0, 3)).toEqual([text, text, text]);
    expect(nursery.sheet("Orders").getRange("A3:C3").getFormulas()).toEqual([["", "", ""]]);
    expect(takeBack(nursery, answer).restored).toHaveLength(5);
    expect(nursery.snapshot("Orders")).toBe(before);
  });
});

describe("another person meanwhile", () => {
  const meanwhile = (action: (nursery: Nursery) => void) => {
    const nursery = opened(orders(one("O1"), one("O2")));
    nursery.w.meter.before("Utilities.getUuid", () => action(nursery));
    const answer = add(nursery);
    expect(answer.written).toEqual([]);
    expect(answer.asked).toHaveLength(1);
    expect(new Set(states(nursery))).toEqual(new Set(["not written"]));
    expect(JSON.stringify(nursery.values("Orders"))).not.toMatch(/N-1|Ana|Amberlow/);
    return nursery.values("Orders");
  };

  it.each(["A4", "D4", "F4"])("who fills %s of the same row has the row", (cell) => {
    meanwhile(({ w }) => w.type("Orders", cell, "7"));
  });

  it("who moves a column, puts a row in, or takes the header away stops it", () => {
    meanwhile((nursery) => nursery.sheet("Orders").insertColumnsAfter(1, 1));
    meanwhile((nursery) => nursery.sheet("Orders").insertRowsAfter(2, 1));
    meanwhile((nursery) => nursery.w.type("Orders", "D1", "Price"));
  });

  it("who acts while it is written gets all of it put back", () => {
    const nursery = opened(orders(one("O1")));
    nursery.w.meter.before("SpreadsheetApp.flush", () => nursery.w.type("Orders", "D3", "7"));
    expect(add(nursery).written).toEqual([]);
    expect(nursery.values("Orders")[2]).toEqual(["", "", "", 7, "", "", ""]);
  });

  it("who holds the lock makes the other wait", () => {
    const nursery = opened(orders(one("O1")));
    const other = nursery.w.begin();
    // biome-ignore lint/suspicious/noExplicitAny: a script has no types either
    (other.globals as any).LockService.getDocumentLock().tryLock(1);
    const before = nursery.snapshot("Orders");
    const busy = { code: "busy" };
    expect(nursery.fault("sidebarAddOrder", ORDER)).toEqual(busy);
    expect(nursery.fault("sidebarMakeOrders", null)).toEqual(busy);
    const plan = { ...ORDER, assurance: 0.8, method: "", harvest: "" };
    expect(nursery.fault("sidebarOrderTab", plan)).toEqual(busy);
    expect(nursery.snapshot("Orders")).toBe(before);
    other.end();
    expect(add(nursery).written).toHaveLength(5);
  });
});
