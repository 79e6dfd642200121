import { afterAll, beforeAll, describe, expect, it } from "vitest";
import * as controlsText from "../../src/sentences/made/controls";
import * as ordersPageText from "../../src/sentences/made/orders-page";
import { planNew } from "../../src/sentences/made/orders-page";
import * as pageText from "../../src/sentences/made/page";
import * as todayPageText from "../../src/sentences/made/today-page";
import * as writing from "../../src/sentences/made/writing";
import { monthText } from "../../src/sidebar/controls/day-words";
import type { AddOrderAnswer } from "../../src/wire/orders";
import type { Question } from "../../src/wire/writing";
import { escaped } from "../support/escaped";
import { fixedAnswers } from "./fixed-answers";
import { type OpenSidebar, SECTION_KEYS, type SidebarTest, startSidebarTest } from "./open-sidebar";
import type { Answers } from "./script-runner";

const LONG = "\u{1F331}".repeat(25_000);
/** Each is looked for whole, so that of several in one text none can hide another's harm. */
const TEXTS: Readonly<Record<string, string>> = {
  "a formula": '=IMPORTXML("//example/", "//a")',
  "markup, server code, emoji and turned directions": [
    '<img src="x" onerror="hurt = 1">',
    "</script><script>hurt = 1</script><!--",
    "<?= hurt() ?> \u{1F331} \u{1F469}\u200d\u{1F33E} é שתילים ערוגה 3 abc\u202edef",
  ].join(" "),
  // Of two units each, so that a text that is cut in the middle of one shows.
  "50,000 characters of two units": LONG,
};

/** Where only one of a few words may stand, or a day. */
const FIXED =
  /^(code|state|status|sure|reading|asOf|doOn|doBy|fullBy|from|to|by|day|month|ready.*|choices|recordsTab|logId)$/;

/** The same data with another text in every place that may hold a person's text. */
function withText<Value>(value: Value, text: string, key = ""): Value {
  if (FIXED.test(key)) return value;
  if (typeof value === "string") return text as Value;
  if (Array.isArray(value)) return value.map((one) => withText(one, text, key)) as Value;
  if (typeof value !== "object" || value === null) return value;
  return Object.fromEntries(
    Object.entries(value).map(([name, one]) => [name, withText(one, text, name)]),
  ) as Value;
}

function answersWith(text: string): Answers {
  const changed = Object.entries(fixedAnswers).map(([name, answer]) => [
    name,
    async (request: never) => withText(await answer(request), text),
  ]);
  return Object.fromEntries(changed) as Answers;
}

let test: SidebarTest;
beforeAll(async () => {
  test = await startSidebarTest();
});

describe.each(Object.entries(TEXTS))("%s", (_, text) => {
  // What the page shows of a text before it is asked for the rest.
  const start = text.slice(0, 160);
  let sidebar: OpenSidebar;
  beforeAll(async () => {
    sidebar = await test.open(answersWith(text));
  });
  afterAll(() => sidebar.close());

  const isPlain = () =>
    sidebar.page.evaluate(() => ({
      hurt: "hurt" in window,
      scripts: document.querySelectorAll("script").length,
      images: document.querySelectorAll("img").length,
      wide: document.documentElement.scrollWidth - document.documentElement.clientWidth,
    }));
  const PLAIN = { hurt: false, scripts: 1, images: 0, wide: 0 };

  it.each(SECTION_KEYS)("is text in %s", async (key) => {
    const { page, section } = sidebar;
    await section(key);
    if (key === "ahead") await page.getByRole("button", { name: monthText("2026-12") }).click();
    await page.evaluate(() => {
      for (const details of document.querySelectorAll("details")) details.open = true;
    });
    const shown = await page.locator("[role=tabpanel]:not([hidden])").textContent();
    expect(shown).toContain(start);
    expect(shown).not.toContain("\ufffd");
    expect(await isPlain()).toEqual(PLAIN);
    expect(sidebar.complaints).toEqual([]);
  });

  it("is text when written, and in an error", async () => {
    const { page, section } = sidebar;
    await section("today");
    await page.getByText(todayPageText.markDone(), { exact: true }).first().click();
    await page.getByRole("button", { name: todayPageText.save() }).click();
    await page.getByText(todayPageText.doneAndWritten()).waitFor();
    // The notice, and the list of last writes, which is open too.
    const told = await page.locator(".written").allTextContents();
    expect(told.length).toBeGreaterThan(1);
    for (const one of told) expect(one).toContain(start);
    const failing = await test.open({
      ...fixedAnswers,
      sidebarToday: () => {
        throw new Error(text);
      },
    });
    expect(await failing.page.locator("#status").textContent()).toContain(text);
    expect(await failing.page.evaluate(() => "hurt" in window)).toBe(false);
    await failing.close();
    expect(await isPlain()).toEqual(PLAIN);
  });

  it("is text in a plan, in what is asked and written, and in the tab's name", async () => {
    const { page, close } = await test.open({
      ...answersWith(text),
      sidebarAddOrder: async (request) => {
        const added = (await fixedAnswers.sidebarAddOrder?.(request)) as AddOrderAnswer;
        const question: Question = {
          id: "a",
          ask: { code: "nameAlready", order: text, row: "4", tab: text },
          stands: text,
          would: text,
        };
        return request.sure.length === 0
          ? { written: [], asked: [question], logId: null }
          : withText(added, text);
      },
    });
    await page.getByRole("tab", { name: pageText.orders() }).click();
    await page.getByText(planNew()).click();
    await page
      .getByRole("combobox", { name: new RegExp(`^${escaped(ordersPageText.variety())}`) })
      .fill(start);
    await page.getByLabel(ordersPageText.plantsWanted()).fill("150");
    await page.getByLabel(ordersPageText.readyBy()).fill("2027-12-01");
    await page.getByRole("button", { name: ordersPageText.plan(), exact: true }).click();
    await page.getByText(ordersPageText.neededInAll()).waitFor();
    await page.evaluate(() => {
      for (const details of document.querySelectorAll("details")) details.open = true;
    });
    expect(
      await page.getByRole("group", { name: ordersPageText.thePlan() }).textContent(),
    ).toContain(start);
    await page.getByLabel(new RegExp(`^${escaped(ordersPageText.customer())}`)).fill(start);
    await page.getByRole("button", { name: ordersPageText.addOrder() }).click();
    await page.getByText(writing.stands()).waitFor();
    expect(await page.locator(".asked").textContent()).toContain(start);
    await page.getByRole("button", { name: writing.writeAnyway() }).click();
    await page.getByText(`${ordersPageText.addedTitle()}: `).waitFor();
    await page.getByRole("button", { name: ordersPageText.makeTab() }).click();
    await page.getByText(`${ordersPageText.madeTabTitle()} `).waitFor();
    for (const notice of await page.locator(".written").allTextContents()) {
      expect(notice).toContain(start);
    }
    const seen = await page.evaluate(() => ({
      hurt: "hurt" in window,
      scripts: document.querySelectorAll("script").length,
      images: document.querySelectorAll("img").length,
      wide: document.documentElement.scrollWidth - document.documentElement.clientWidth,
    }));
    expect(seen).toEqual(PLAIN);
    await close();
  });

  it("is text on the printed round sheet", async () => {
    const { page } = sidebar;
    await page.getByRole("button", { name: todayPageText.print() }).click();
    const frame = page.frameLocator("iframe.print-frame");
    await frame.locator("table").first().waitFor({ state: "attached" });
    expect(await frame.locator("main").textContent()).toContain(start);
    expect(await frame.locator("script, img").count()).toBe(0);
    expect(await isPlain()).toEqual(PLAIN);
    expect(sidebar.complaints).toEqual([]);
  });
});

describe("a text of 50,000 characters", () => {
  it("is cut where it is one of many, and whole on demand", async () => {
    const text = "x".repeat(50_000);
    const { page, section, close } = await test.open(answersWith(text));
    await section("check");
    const trouble = page.locator(".trouble").first();
    const shown = (await trouble.textContent()) ?? "";
    expect(shown).toContain(controlsText.cut({ text: text.slice(0, 160), length: text.length }));
    expect(shown.length).toBeLessThan(2000);
    await trouble.getByText(controlsText.allOfIt()).first().click();
    await page.waitForFunction(
      (whole) => [...document.querySelectorAll("bdi")].some((one) => one.textContent === whole),
      text,
    );
    await close();
  });
});
