import { describe, expect, it } from "vitest";
import * as controlsText from "../../src/sentences/made/controls";
import * as headers from "../../src/sentences/made/order-columns";
import * as text from "../../src/sentences/made/orders-page";
import { countText } from "../../src/sidebar/controls/count-words";
import { dayText } from "../../src/sidebar/controls/day-words";
import { ofTen } from "../../src/sidebar/orders/chance-words";
import { orderAction } from "../../src/wording/orders";
import { axeViolations } from "./axe-violations";
import { expectGolden, markupOf } from "./golden";
import { onceMade } from "./once-made";
import { noOrders, orders } from "./order-answers";
import { sidebarTestsAt } from "./sidebar-tests";

const { open, sidebar, page } = sidebarTestsAt((opened) => opened.section("orders"));
const order = (name: string) => page().getByRole("article").filter({ hasText: name });
const toDo = (name: string) => {
  const action = orders.orders.find((one) => one.order === name)?.whatToDo;
  const words = action === undefined ? "" : orderAction(action);
  return words.charAt(0).toUpperCase() + words.slice(1);
};
const panel = () => page().locator("#section-orders");
const focused = () => page().evaluate(() => document.activeElement?.textContent ?? "");
const reads = () => sidebar().asked.filter(({ name }) => name === "sidebarOrders").length;

describe("the outlook of the orders", () => {
  it("says first how many need something done, and shows those by day before the ones that are fine", async () => {
    await open();
    expect(await panel().locator("h2, h2 ~ p").allTextContents()).toEqual([
      text.title(),
      text.pressing({ pressing: 5, all: 8 }),
      text.fromTab({ tab: "Orders", asOf: dayText("2026-11-25") }),
    ]);
    expect(await panel().locator(".order h4").allTextContents()).toEqual([
      "O-03 · Growers' table C",
      "O-04 · Order desk A",
      "O-07 · Order desk B",
      "O-11 · Growers' table C",
      "O-09 · Order desk A",
      "O-06 · Growers' table C",
      "O-10",
      "O-08 · Order desk D",
    ]);
    expect(await panel().locator("h3").allTextContents()).toEqual([
      text.planNew(),
      `${text.somethingToDo()} ${countText(5)}`,
      `${text.fine()} ${countText(3)}`,
    ]);
    expect(await panel().locator(".note").textContent()).toContain(orders.remark);
  });

  it("says of an order what to do, how many of what by when, and the chance in words", async () => {
    await open();
    expect(await order("O-11").locator(".to-do").textContent()).toBe(toDo("O-11"));
    const words = await order("O-11").textContent();
    expect(words).toContain(`Ellowen · ${text.stillToDeliver({ left: 460, wanted: 500 })}`);
    expect(words).toContain(
      text.byAway({
        by: dayText("2027-08-15"),
        away: controlsText.away({ days: 263, when: "ahead" }),
      }),
    );
    expect(words).toContain(
      `${text.fullByThen()} ${text.of100({ word: text.ratherLikely(), chance: 75 })}`,
    );
    expect(await order("O-03").textContent()).toContain(
      text.stillToDeliver({ left: 120, wanted: 180 }) +
        text.wasDue({ day: dayText("2026-11-20") }) +
        `${text.fullByThen()} ${text.lateBy({ days: 5 })}`,
    );
    expect(await order("O-10").textContent()).toContain(text.allDelivered());
    // The group says that they are fine; a chance that never failed is still none that is sure.
    expect(await order("O-06").locator(".to-do").count()).toBe(0);
    expect(await order("O-06").textContent()).toContain(text.over99({ word: text.almostSure() }));
  });

  it("opens an order to show what is set aside, what is short and when it is full", async () => {
    await open();
    await order("O-07").locator("summary").click();
    await order("O-07").locator(".pairs").waitFor();
    expect(await order("O-07").locator(".pairs > *").allTextContents()).toEqual([
      headers.likely(),
      text.likelyOf({ likely: 260, left: 260 }),
      text.shortBy(),
      text.shortPlants({ plants: 24 }),
      headers.fullBy(),
      dayText("2027-03-04"),
    ]);
    expect(await order("O-07").locator(".behind").textContent()).toContain(
      text.lastTwoHold({ cases: ofTen(0.8) }),
    );
    await order("O-09").locator("summary").click();
    await order("O-09").getByText(text.neverFull()).waitFor();
  });

  it("is read anew whenever the section is chosen, and on demand", async () => {
    await open();
    await sidebar().section("today");
    await sidebar().section("orders");
    expect(reads()).toBe(2);
    await panel().getByRole("button", { name: text.readAgain() }).click();
    await expect.poll(reads).toBe(3);
  });

  it("says that there are no open orders", async () => {
    await open({ sidebarOrders: () => ({ ...orders, orders: [], remark: null }) });
    expect(await panel().textContent()).toContain(text.noOrders());
    expect(await panel().locator("h3").allTextContents()).toEqual([text.planNew()]);
  });

  it("folds those that are fine where there are many, and shows a long list by and by", async () => {
    const many = Array.from({ length: 300 }, (_, at) => {
      const [pressing, , , fine] = orders.orders;
      return { ...(at < 100 ? pressing : fine), order: `N-${at}` } as (typeof orders.orders)[0];
    });
    await open({
      sidebarOrders: () => ({
        ...orders,
        orders: many.map((one, at) => ({ ...one, isFine: at >= 100 })),
      }),
    });
    expect(await panel().textContent()).toContain(text.pressing({ pressing: 100, all: 300 }));
    expect(await page().getByRole("article").count()).toBe(40);
    await page()
      .getByRole("button", { name: controlsText.showMore({ next: 40, left: 60 }) })
      .click();
    expect(await page().getByRole("article").count()).toBe(80);
    await page()
      .getByText(`${text.fine()} ${countText(200)}`)
      .click();
    await order("N-100").waitFor();
  });

  it("tells what goes wrong, keeps what was shown, and works again", async () => {
    let fails = false;
    await open({
      sidebarOrders: () => {
        if (fails) throw new Error("orders row 3, By, is still loading");
        return orders;
      },
    });
    fails = true;
    await panel().getByRole("button", { name: text.readAgain() }).click();
    await page().getByText("orders row 3, By, is still loading").waitFor();
    expect(await order("O-11").count()).toBe(1);
    fails = false;
    await panel().getByRole("button", { name: text.readAgain() }).click();
    await expect.poll(() => page().locator(".status").getAttribute("data-kind")).toBe("idle");
  });
});

describe("without a tab of orders", () => {
  it("says what is needed, makes one on demand, and goes on by keyboard", async () => {
    const tab = onceMade(noOrders, { ...noOrders, ordersTab: "Orders" });
    await open({ sidebarOrders: tab.read, sidebarMakeOrders: tab.make({ tab: "Orders" }) });
    expect(await panel().textContent()).toContain(text.keepOrders({ columns: orders.orderHeader }));
    expect(await axeViolations(page())).toEqual([]);
    expectGolden("orders-none", await markupOf(page(), "#section-orders"));
    await page().getByRole("button", { name: text.makeOrders() }).press("Enter");
    await page()
      .getByText(text.madeOrders({ tab: "Orders" }))
      .waitFor();
    expect(await panel().textContent()).toContain(text.noOrders());
    expect(await focused()).toContain(`${text.title()}${text.noOrders()}`);
    expect(await page().getByRole("button", { name: text.makeOrders() }).count()).toBe(0);
    await page().keyboard.press("Tab");
    expect(await focused()).toBe(text.planNew());
  });
});
