import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { axeViolations } from "./axe-violations";
import { expectGolden, markupOf } from "./golden";
import type { OpenSidebar } from "./open-sidebar";
import { noOrders, orders } from "./order-answers";
import type { Answers } from "./script-runner";
import { sidebarTests } from "./sidebar-tests";

const openSidebar = sidebarTests();
let sidebar: OpenSidebar;
let page: Page;

async function open(answers: Answers = {}): Promise<void> {
  sidebar = await openSidebar(answers);
  page = sidebar.page;
  await sidebar.section("Orders");
}
const order = (name: string) => page.getByRole("article").filter({ hasText: name });
const panel = () => page.locator("#section-orders");
const focused = () => page.evaluate(() => document.activeElement?.textContent ?? "");
const reads = () => sidebar.asked.filter(({ name }) => name === "sidebarOrders").length;

describe("the outlook of the orders", () => {
  it("says first how many need something done, and shows those by day before the ones that are fine", async () => {
    await open();
    expect(await panel().locator("h2, h2 ~ p").allTextContents()).toEqual([
      ...["Orders", "5 of 8 orders need something done."],
      "From the tab Orders, as of 25 Nov 2026.",
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
      ...["Plan a new order", "Something to do 5", "Fine 3"],
    ]);
    expect(await panel().locator(".note").textContent()).toContain("row 12 (Wanted is blank)");
  });

  it("says of an order what to do, how many of what by when, and the chance in words", async () => {
    await open();
    expect(await order("O-11").locator(".to-do").textContent()).toBe(
      "Graft 52 more of Ellowen by 11 Apr 2027",
    );
    const words = await order("O-11").textContent();
    expect(words).toContain("Ellowen · 460 of 500 still to deliver");
    expect(words).toContain("by 15 Aug 2027, in 263 days");
    expect(words).toContain("Full by then rather likely: 75 of 100");
    expect(await order("O-03").textContent()).toMatch(
      /120 of 180 still to deliver.*was due 20 Nov 2026.*no, late by 5 days/,
    );
    expect(await order("O-10").textContent()).toMatch(/60 delivered.*all delivered/);
    // The group says that they are fine; a chance that never failed is still none that is sure.
    expect(await order("O-06").locator(".to-do").count()).toBe(0);
    expect(await order("O-06").textContent()).toContain("almost sure: over 99 of 100");
  });

  it("opens an order to show what is set aside, what is short and when it is full", async () => {
    await open();
    await order("O-07").locator("summary").click();
    await order("O-07").locator(".pairs").waitFor();
    expect(await order("O-07").locator(".pairs > *").allTextContents()).toEqual([
      ...["Likely set aside", "260 of 260", "Short by at most", "24 plants"],
      ...["Full by", "4 Mar 2027"],
    ]);
    expect(await order("O-07").locator(".behind").textContent()).toContain(
      "The last two hold in 8 of 10 cases.",
    );
    await order("O-09").locator("summary").click();
    await order("O-09").getByText("too few plants for it").waitFor();
  });

  it("is read anew whenever the section is chosen, and on demand", async () => {
    await open();
    await sidebar.section("Today");
    await sidebar.section("Orders");
    expect(reads()).toBe(2);
    await panel().getByRole("button", { name: "Read again" }).click();
    await expect.poll(reads).toBe(3);
  });

  it("says that there are no open orders", async () => {
    await open({ sidebarOrders: () => ({ ...orders, orders: [], remark: null }) });
    expect(await panel().textContent()).toContain("No open orders.");
    expect(await panel().locator("h3").allTextContents()).toEqual(["Plan a new order"]);
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
    expect(await panel().textContent()).toContain("100 of 300 orders need something done.");
    expect(await page.getByRole("article").count()).toBe(40);
    await page.getByRole("button", { name: "Show 40 more of 60" }).click();
    expect(await page.getByRole("article").count()).toBe(80);
    await page.getByText("Fine 200").click();
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
    await panel().getByRole("button", { name: "Read again" }).click();
    await page.getByText("orders row 3, By, is still loading").waitFor();
    expect(await order("O-11").count()).toBe(1);
    fails = false;
    await panel().getByRole("button", { name: "Read again" }).click();
    await expect.poll(() => page.locator(".status").getAttribute("data-kind")).toBe("idle");
  });
});

describe("without a tab of orders", () => {
  it("says what is needed, makes one on demand, and goes on by keyboard", async () => {
    let made = false;
    await open({
      sidebarOrders: () => (made ? { ...noOrders, ordersTab: "Orders" } : noOrders),
      sidebarMakeOrders: () => {
        made = true;
        return { tab: "Orders" };
      },
    });
    expect(await panel().textContent()).toContain(
      "a row an order and the columns Order, Customer, Variety, Wanted, By, Delivered and Closed.",
    );
    expect(await axeViolations(page)).toEqual([]);
    expectGolden("orders-none", await markupOf(page, "#section-orders"));
    await page.getByRole("button", { name: "Make an Orders tab" }).press("Enter");
    await page.getByText("Made the tab Orders: write a row an order").waitFor();
    expect(await panel().textContent()).toContain("No open orders.");
    expect(await focused()).toMatch(/^OrdersNo open orders\./);
    expect(await page.getByRole("button", { name: "Make an Orders tab" }).count()).toBe(0);
    await page.keyboard.press("Tab");
    expect(await focused()).toBe("Plan a new order");
  });
});
