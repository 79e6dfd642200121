import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from "vitest";
import { planNew as planNewTitle, tabMadeFirst } from "../../../src/sentences/made/orders-page";
import * as setUp from "../../../src/sentences/made/set-up-page";
import { isChromiumMissing } from "./chromium";
import { type NurseryPage, openNurseryPage } from "./nursery-page";
import type { LocalPage } from "./opened-page";

declare const localPage: LocalPage;

/** The invented sample nursery, with eight orders of which six are open, as of 25 Nov 2026. */
const SAMPLE = "sample-sheets/hillside-nursery/hillside-nursery.xlsx";
/** A table without orders, in two languages mixed. */
const NO_ORDERS = "sample-sheets/spanish-portuguese/spanish-portuguese.xlsx";
/** Number of the row below the last order. */
const NEW_ROW = 10;

/**
 * An order from the question to the promise, in the built add-in, its sidebar and a real spreadsheet
 * engine: the tests go on from one another.
 */
describe.skipIf(isChromiumMissing)("an order in the local page", () => {
  let nursery: NurseryPage;
  beforeAll(async () => {
    nursery = await openNurseryPage(SAMPLE);
    await nursery.openSidebar();
    await nursery.side().getByRole("button", { name: setUp.makeTabs() }).click();
    await nursery.side().getByText(setUp.made()).waitFor();
    await nursery.settled();
  });
  afterAll(() => nursery?.close());
  // What comes after a step that failed has nothing to stand on.
  let isBroken = false;
  beforeEach(() => {
    if (isBroken) throw new Error("A step before this one failed");
  });
  afterEach(({ task }) => {
    isBroken ||= task.result?.state === "fail";
  });

  const side = () => nursery.side();
  const button = (name: string) => side().getByRole("button", { name, exact: true });
  const order = (name: string) => side().locator("article.order").filter({ hasText: name });
  const plan = () => side().getByRole("group", { name: "The plan" });
  const tabs = () =>
    nursery.page.evaluate(() =>
      localPage
        .app()
        .getActive()
        .getSheets()
        .map((one: { getName(): string }) => one.getName()),
    );
  /** What the sidebar's plan says, step by step: name, day, plants. */
  const plannedSteps = () =>
    plan()
      .locator(".step")
      .evaluateAll((steps) =>
        steps.map((step) => {
          const [name = "", day = ""] = [...step.querySelectorAll(".step-words > *")].map(
            (one) => one.textContent ?? "",
          );
          const plants = step.querySelector(".no-more, summary")?.textContent ?? "";
          return [name, day.replace("by ", ""), plants.replace(/ plants|,/g, "")];
        }),
      );
  /** The same of the live tab. */
  const liveSteps = async (tab: string) => {
    const rows = await nursery.shown(tab, "A5:C40");
    const to = rows.findIndex(([step]) => step === "All");
    return rows.slice(1, to).map(([step = "", day = "", plants = ""]) => [step, day, plants]);
  };
  const planNew = async (fields: Readonly<Record<string, string>>) => {
    for (const [label, value] of Object.entries(fields)) {
      await side().locator("form.plan-form label", { hasText: label }).locator("input").fill(value);
    }
    await button("Plan").click();
    await plan().getByText("Needed in all").waitFor();
    await nursery.settled();
  };

  /** What the new order's row holds, as texts; a day as year, month and day. */
  const written = () =>
    nursery.page.evaluate((row) => {
      const sheet = localPage.app().getActive().getSheetByName("Orders");
      const [values] = sheet.getRange(row, 1, 1, 5).getValues();
      return values.map((value: unknown) =>
        value instanceof Date
          ? [value.getFullYear(), value.getMonth() + 1, value.getDate()].join("-")
          : String(value),
      );
    }, NEW_ROW);

  it("shows what becomes of the open orders, those with something to do first", async () => {
    const orders = await nursery.section("Orders");
    expect(await orders.textContent()).toContain("4 of 6 orders need something done.");
    expect(await orders.textContent()).toContain("From the tab Orders, as of 25 Nov 2026.");
    const names = await orders.locator("article.order h4").allTextContents();
    expect(names.map((name) => name.slice(0, 4))).toEqual([
      ...["O-03", "O-04", "O-05", "O-07", "O-06", "O-08"],
    ]);
    expect(await order("O-03").textContent()).toMatch(
      /Late, but all are ready: deliver now.*120 of 180 still to deliver.*no, 5 days late/,
    );
  });

  it("plans a new one back from its day, by what this nursery keeps", async () => {
    await side().getByText(planNewTitle()).click();
    await planNew({ Variety: "Amberlow", "Plants wanted": "400", "Ready by": "2027-07-31" });
    const steps = await plannedSteps();
    expect(steps.map(([step]) => step)).toEqual(
      expect.arrayContaining(["Sowing", "Grafting", "Take count", "Ready"]),
    );
    expect(steps.at(-1)).toEqual(["Ready", "31 Jul 2027", "400"]);
    expect(Number(steps[0]?.[2])).toBeGreaterThan(400);
    expect(await plan().locator(".first .to-do").textContent()).toMatch(
      /^Sowing by \d+ Dec 2026, in \d+ days$/,
    );
  });

  it("adds it below the others, and the outlook counts on it", async () => {
    await side()
      .locator("fieldset label", { hasText: "Customer" })
      .locator("input")
      .fill("=Desk A");
    await button("Add to the orders").click();
    await side().getByText("Added to the orders.").waitFor();
    await nursery.settled();
    expect(await written()).toEqual(["O-09", "=Desk A", "Amberlow", "400", "2027-7-31"]);
    expect(await side().locator(".written").first().textContent()).toContain("O-09");
    expect(await side().locator("#section-orders").textContent()).toContain("of 7 orders need");
    expect(await order("O-09").textContent()).toMatch(/Amberlow · 400 plants to deliver/);
  });

  it("takes it back and adds it again", async () => {
    await button("Take back").click();
    await side().locator("#status").getByText("Taken back.").waitFor();
    await nursery.settled();
    expect((await nursery.shown("Orders", `A${NEW_ROW}:G${NEW_ROW}`)).flat().join("")).toBe("");
    expect(await order("O-09").count()).toBe(0);
    await button("Add to the orders").click();
    await side().getByText("Added to the orders.").waitFor();
    await nursery.settled();
    expect(await written()).toEqual(["O-09", "=Desk A", "Amberlow", "400", "2027-7-31"]);
  });

  it("makes it a tab in which the same plan is alive", async () => {
    await button("Make a tab").click();
    await side().getByText("Made the tab: ").waitFor();
    await nursery.settled();
    const tab = (await tabs()).find((name: string) => name.includes("O-09")) ?? "";
    expect(await side().locator("p.written").textContent()).toBe(`Made the tab: ${tab}`);
    const live = await liveSteps(tab);
    const inSidebar = await plannedSteps();
    expect(live).toEqual(inSidebar);
    await nursery.page.evaluate((name) => localPage.type(name, "C3", "200"), tab);
    await nursery.page.evaluate(() => localPage.settled());
    const fewer = await liveSteps(tab);
    expect(fewer.at(-1)?.[2]).toBe("200");
    expect(Number(fewer[0]?.[2])).toBeLessThan(Number(live[0]?.[2]));
  });

  it("says what to do once a poor count is recorded", async () => {
    const before = await order("O-09").textContent();
    expect(before).toMatch(/Full by then likely: \d\d of 100$/);
    expect(await order("O-09").locator(".to-do").count()).toBe(0);
    const today = await nursery.section("Today");
    await today.getByText("Bay 2 north").click();
    const task = today.getByRole("article").filter({ hasText: "Take count · H26-039" });
    await task.getByRole("button", { name: "Mark done" }).click();
    await task.getByLabel(/^Count/).fill("12");
    await task.getByRole("button", { name: "Save" }).click();
    await nursery.settled();
    expect(await task.textContent()).toContain("Takes: 12 in Records!");
    await nursery.section("Orders");
    expect(await order("O-09").locator(".to-do").textContent()).toMatch(
      /^Graft \d+ more of Amberlow by \d+ \w+ 2027$/,
    );
    const after = await order("O-09").textContent();
    const chance = (words: string | null) => Number(/: (\d+) of 100/.exec(words ?? "")?.[1]);
    expect(chance(after)).toBeLessThan(80);
    expect(chance(after)).toBeLessThan(chance(before) - 10);
    // The plan and its form are still there, to be kept or changed.
    expect(await plan().isVisible()).toBe(true);
  });
});

describe.skipIf(isChromiumMissing)("an order where no tab holds orders", () => {
  let nursery: NurseryPage;
  beforeAll(async () => {
    nursery = await openNurseryPage(NO_ORDERS);
    await nursery.openSidebar();
    await nursery.side().getByRole("button", { name: setUp.makeTabs() }).click();
    await nursery.side().getByText(setUp.made()).waitFor();
    await nursery.settled();
  });
  afterAll(() => nursery?.close());

  it("is planned, and written into a tab that is made for it", async () => {
    const orders = await nursery.section("Orders");
    expect(await orders.textContent()).toContain("keep them in a tab: a row an order");
    await orders.getByText(planNewTitle()).click();
    await orders.getByLabel("Plants wanted").fill("90");
    await orders.getByLabel("Ready by").fill("2028-01-31");
    await orders.getByRole("button", { name: "Plan", exact: true }).click();
    await orders.getByText("Needed in all").waitFor();
    await nursery.settled();
    await orders.getByText(tabMadeFirst()).waitFor();
    await orders.getByRole("button", { name: "Add to the orders" }).click();
    await orders.getByText("Added to the orders: ").waitFor();
    await nursery.settled();
    expect(await orders.textContent()).toContain("From the tab Orders");
    expect(await orders.locator("article.order").count()).toBe(1);
    expect(await orders.locator("article.order").textContent()).toMatch(
      /Any variety · 90 plants to deliver.*by 31 Jan 2028/,
    );
    expect(await orders.getByRole("button", { name: "Make an Orders tab" }).count()).toBe(0);
  });
});
