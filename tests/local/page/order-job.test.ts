/* Longer than most: one job from beginning to end, whose tests go on from one another. */
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { ORDER_HEADER } from "../../../src/core";
import { away } from "../../../src/sentences/made/controls";
import { day as aDay } from "../../../src/sentences/made/days";
import * as action from "../../../src/sentences/made/orders";
import * as text from "../../../src/sentences/made/orders-page";
import * as pageText from "../../../src/sentences/made/page";
import * as setUp from "../../../src/sentences/made/set-up-page";
import * as todayText from "../../../src/sentences/made/today-page";
import * as writing from "../../../src/sentences/made/writing";
import { dayText } from "../../../src/sidebar/controls/day-words";
import { capital } from "../../../src/wording/capital";
import { escaped } from "../../support/escaped";
import { patternOf } from "../../support/pattern-of";
import { isChromiumMissing } from "./chromium";
import { type NurseryPage, openNurseryPage } from "./nursery-page";
import { oneAfterAnother } from "./one-after-another";
import type { LocalPage } from "./opened-page";

declare const localPage: LocalPage;

/** The invented sample nursery, with eight orders of which six are open, as of 25 Nov 2026. */
const SAMPLE = "sample-sheets/hillside-nursery/hillside-nursery.xlsx";
/** A table without orders, in two languages mixed. */
const NO_ORDERS = "sample-sheets/spanish-portuguese/spanish-portuguese.xlsx";
/** Name, day as ISO text, plants. */
type LiveStep = readonly [step: string, day: string, plants: number];

/** Number of the row below the last order. */
const NEW_ROW = 10;

/**
 * An order from the question to the promise, in the built add-in, its sidebar and a real spreadsheet
 * engine: the tests go on from one another.
 */
/** A chance in its word; WORD stands for any. */
const chanceOf = (word: string) =>
  patternOf(text.of100({ word, chance: 99 }), { WORD: ".*?", "99": "(\\d+)" });
const numberIn = (pattern: RegExp, words: string | null | undefined) =>
  Number(pattern.exec(words ?? "")?.[1]?.replaceAll(",", ""));

/** A nursery in the local page, its tabs made. */
async function pageWithTabs(file: string): Promise<NurseryPage> {
  const nursery = await openNurseryPage(file);
  await nursery.openSidebar();
  await nursery.side().getByRole("button", { name: setUp.makeTabs() }).click();
  await nursery.side().getByText(setUp.made()).waitFor();
  await nursery.settled();
  return nursery;
}

describe.skipIf(isChromiumMissing)("an order in the local page", () => {
  let nursery: NurseryPage;
  beforeAll(async () => {
    nursery = await pageWithTabs(SAMPLE);
  });
  afterAll(() => nursery?.close());
  oneAfterAnother();

  const side = () => nursery.side();
  const button = (name: string) => side().getByRole("button", { name, exact: true });
  const order = (name: string) => side().locator("article.order").filter({ hasText: name });
  const plan = () => side().getByRole("group", { name: text.thePlan() });
  const tabs = () =>
    nursery.page.evaluate(() =>
      localPage
        .app()
        .getActive()
        .getSheets()
        .map((one: { getName(): string }) => one.getName()),
    );
  /** What the sidebar's plan says, step by step: name, day, plants, each in its words. */
  const plannedSteps = () =>
    plan()
      .locator(".step")
      .evaluateAll((steps) =>
        steps.map((step) => {
          const [name = "", day = ""] = [...step.querySelectorAll(".step-words > *")].map(
            (one) => one.textContent ?? "",
          );
          const plants = step.querySelector(".no-more, summary")?.textContent ?? "";
          return [name, day, plants];
        }),
      );
  /** A step as the sidebar says it. @param day ISO text */
  const saidStep = ([step, day, plants]: LiveStep) => [
    ...[step, text.by({ by: dayText(day) }), text.plants({ plants })],
  ];
  /** The steps of the live tab; a day as ISO text. */
  const liveSteps = async (tab: string): Promise<LiveStep[]> => {
    const rows = await nursery.page.evaluate((name) => {
      const sheet = localPage.app().getActive().getSheetByName(name);
      return sheet
        .getRange("A5:C40")
        .getValues()
        .map(([step, day, plants]: [string, Date, number]) => [
          step,
          typeof day === "object" ? day.toLocaleDateString("sv") : day,
          plants,
        ]);
    }, tab);
    const to = rows.findIndex(([step]: LiveStep) => step === action.all());
    return rows.slice(1, to);
  };
  const planNew = async (fields: readonly (readonly [label: string, value: string])[]) => {
    for (const [label, value] of fields) {
      await side().locator("form.plan-form label", { hasText: label }).locator("input").fill(value);
    }
    await button(text.plan()).click();
    await plan().getByText(text.neededInAll()).waitFor();
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
    const orders = await nursery.section(pageText.orders());
    expect(await orders.textContent()).toContain(text.pressing({ pressing: 4, all: 6 }));
    expect(await orders.textContent()).toContain(
      text.fromTab({ tab: "Orders", asOf: dayText("2026-11-25") }),
    );
    const names = await orders.locator("article.order h4").allTextContents();
    expect(names.map((name) => name.slice(0, 4))).toEqual([
      ...["O-03", "O-04", "O-05", "O-07", "O-06", "O-08"],
    ]);
    const said = [
      ...[capital(action.deliverNow()), text.stillToDeliver({ left: 120, wanted: 180 })],
      text.lateBy({ days: 5 }),
    ];
    expect(await order("O-03").textContent()).toMatch(new RegExp(said.map(escaped).join(".*")));
  });

  it("plans a new one back from its day, by what this nursery keeps", async () => {
    await side().getByText(text.planNew()).click();
    await planNew([
      [text.variety(), "Amberlow"],
      [text.plantsWanted(), "370"],
      [text.readyBy(), "2027-07-31"],
    ]);
    const steps = await plannedSteps();
    expect(steps.map(([step]) => step)).toEqual(
      expect.arrayContaining(["Sowing", "Grafting", "Take count", "Ready"]),
    );
    expect(steps.at(-1)).toEqual(saidStep(["Ready", "2027-07-31", 370]));
    const plants = patternOf(text.plants({ plants: 999 }), { "999": "([\\d,]+)" });
    expect(numberIn(plants, steps[0]?.[2])).toBeGreaterThan(370);
    const when = patternOf(
      text.byAway({
        by: dayText("2026-12-31"),
        away: away({ days: 999, when: "ahead" }),
      }),
      { "31": "\\d+", "999": "\\d+" },
    );
    expect(await plan().locator(".first .to-do").textContent()).toMatch(
      new RegExp(`^Sowing ${when.source}$`),
    );
  });

  it("adds it below the others, and the outlook counts on it", async () => {
    await side()
      .locator("fieldset label", { hasText: text.customer() })
      .locator("input")
      .fill("=Desk A");
    await button(text.addOrder()).click();
    await side().getByText(text.added()).waitFor();
    await nursery.settled();
    expect(await written()).toEqual(["O-09", "=Desk A", "Amberlow", "370", "2027-7-31"]);
    expect(await side().locator(".written").first().textContent()).toContain("O-09");
    expect(await side().locator("#section-orders").textContent()).toMatch(
      patternOf(text.pressing({ pressing: 4, all: 7 }), { "4": "\\d" }),
    );
    expect(await order("O-09").textContent()).toContain(
      `Amberlow · ${text.toDeliver({ wanted: 370 })}`,
    );
  });

  it("takes it back and adds it again", async () => {
    await button(writing.takeBack()).click();
    await side().locator("#status").getByText(writing.takenDone()).waitFor();
    await nursery.settled();
    expect((await nursery.shown("Orders", `A${NEW_ROW}:G${NEW_ROW}`)).flat().join("")).toBe("");
    expect(await order("O-09").count()).toBe(0);
    await button(text.addOrder()).click();
    await side().getByText(text.added()).waitFor();
    await nursery.settled();
    expect(await written()).toEqual(["O-09", "=Desk A", "Amberlow", "370", "2027-7-31"]);
  });

  it("makes it a tab in which the same plan is alive", async () => {
    await button(text.makeTab()).click();
    await side().getByText(`${text.madeTabTitle()} `).waitFor();
    await nursery.settled();
    const tab = (await tabs()).find((name: string) => name.includes("O-09")) ?? "";
    expect(await side().locator("p.written").textContent()).toBe(`${text.madeTabTitle()} ${tab}`);
    const live = await liveSteps(tab);
    const inSidebar = await plannedSteps();
    expect(live.map(saidStep)).toEqual(inSidebar);
    await nursery.page.evaluate((name) => localPage.type(name, "C3", "200"), tab);
    await nursery.page.evaluate(() => localPage.settled());
    const fewer = await liveSteps(tab);
    expect(fewer.at(-1)?.[2]).toBe(200);
    expect(Number(fewer[0]?.[2])).toBeLessThan(Number(live[0]?.[2]));
  });

  it("says what to do once a poor count is recorded", async () => {
    const before = await order("O-09").textContent();
    expect(before).toMatch(
      new RegExp(`${escaped(text.fullByThen())} ${chanceOf(text.likely()).source}$`),
    );
    expect(await order("O-09").locator(".to-do").count()).toBe(0);
    const today = await nursery.section(pageText.today());
    await nursery.unfold();
    const task = today.getByRole("article").filter({ hasText: "Take count · H26-039" });
    await task.getByText(todayText.markDone(), { exact: true }).click();
    await task.getByLabel(new RegExp(`^${escaped(todayText.counted())}`)).fill("12");
    await task.getByRole("button", { name: todayText.save() }).click();
    await nursery.settled();
    expect(await task.textContent()).toMatch(
      new RegExp(
        `Takes: 12 ${patternOf(writing.inCell({ where: "Records!WHERE" }), { WHERE: "\\w+" }).source}`,
      ),
    );
    await nursery.section(pageText.orders());
    const by = aDay({ day: "77", month: "MON", year: "2027" });
    expect(await order("O-09").locator(".to-do").textContent()).toMatch(
      patternOf(capital(action.graftOf({ plants: 999, variety: "Amberlow", by })), {
        "999": "\\d+",
        "77": "\\d+",
        MON: ".+?",
      }),
    );
    const after = await order("O-09").textContent();
    const chance = (words: string | null) => numberIn(chanceOf("WORD"), words);
    expect(chance(after)).toBeLessThan(80);
    expect(chance(after)).toBeLessThan(chance(before) - 10);
    // The plan and its form are still there, to be kept or changed.
    expect(await plan().isVisible()).toBe(true);
  });
});

describe.skipIf(isChromiumMissing)("an order where no tab holds orders", () => {
  let nursery: NurseryPage;
  beforeAll(async () => {
    nursery = await pageWithTabs(NO_ORDERS);
  });
  afterAll(() => nursery?.close());

  it("is planned, and written into a tab that is made for it", async () => {
    const orders = await nursery.section(pageText.orders());
    expect(await orders.textContent()).toContain(
      text.keepOrders({ columns: Object.values(ORDER_HEADER) }),
    );
    await orders.getByText(text.planNew()).click();
    await orders.getByLabel(text.plantsWanted()).fill("90");
    await orders.getByLabel(text.readyBy()).fill("2028-01-31");
    await orders.getByRole("button", { name: text.plan(), exact: true }).click();
    await orders.getByText(text.neededInAll()).waitFor();
    await nursery.settled();
    await orders.getByText(text.tabMadeFirst()).waitFor();
    await orders.getByRole("button", { name: text.addOrder() }).click();
    await orders.getByText(`${text.addedTitle()}: `).waitFor();
    await nursery.settled();
    expect(await orders.textContent()).toContain(
      text.fromTab({ tab: "Orders", asOf: dayText("2026-11-25") }),
    );
    expect(await orders.locator("article.order").count()).toBe(1);
    expect(await orders.locator("article.order").textContent()).toMatch(
      new RegExp(
        [
          escaped(`${text.anyVariety()} · ${text.toDeliver({ wanted: 90 })}`),
          patternOf(
            text.byAway({
              by: dayText("2028-01-31"),
              away: away({ days: 999, when: "ahead" }),
            }),
            { "999": "\\d+" },
          ).source,
        ].join(".*"),
      ),
    );
    expect(await orders.getByRole("button", { name: text.makeOrders() }).count()).toBe(0);
  });
});
