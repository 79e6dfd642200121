import type { Page } from "playwright-core";
import { beforeAll, describe, expect, it } from "vitest";
import { allFunctions } from "../../src/sentences/made/page";
import * as text from "../../src/sentences/made/today-page";
import { fortnight } from "../../src/sentences/made/work-page";
import { taken } from "../../src/sentences/made/writing";
import { DUE_WORDS } from "../../src/wording/batches";
import { fixedAnswers } from "./fixed-answers";
import { type OpenSidebar, SECTION_KEYS, startSidebarTest, tabOf } from "./open-sidebar";

let sidebar: OpenSidebar;
let page: Page;
beforeAll(async () => {
  sidebar = await (await startSidebarTest()).open(fixedAnswers);
  page = sidebar.page;
});

/** What has the focus, by the words it shows. */
const focused = () =>
  page.evaluate(() => {
    const { activeElement: active } = document;
    if (active instanceof HTMLSelectElement) return active.labels[0]?.firstChild?.textContent ?? "";
    return (active?.textContent || active?.getAttribute("type") || active?.tagName) ?? "";
  });
const press = async (...keys: readonly string[]) => {
  for (const key of keys) await page.keyboard.press(key);
};
const chosen = () => page.locator("[role=tab][aria-selected=true]").allTextContents();
const settled = () => page.waitForFunction(() => document.querySelector(":disabled") === null);

describe("the tabs", () => {
  it("are one stop of the Tab key; arrows, Home and End move along them, round at the ends", async () => {
    await press("Tab");
    expect(await focused()).toBe(tabOf("today"));
    await press("ArrowRight");
    expect(await focused()).toBe(tabOf("ahead"));
    await press("ArrowLeft", "ArrowLeft");
    expect(await focused()).toBe(tabOf("set-up"));
    await press("ArrowRight");
    expect(await focused()).toBe(tabOf("today"));
    await press("End");
    expect(await focused()).toBe(tabOf("set-up"));
    await press("Home");
    expect(await focused()).toBe(tabOf("today"));
    expect(await page.locator("[role=tab][tabindex='0']").allTextContents()).toEqual([
      tabOf("today"),
    ]);
  });

  it("choose by Enter or space only, so that moving along asks nothing of the script", async () => {
    const before = sidebar.asked.length;
    await press("ArrowRight", "ArrowRight");
    expect([await chosen(), sidebar.asked.length]).toEqual([[tabOf("today")], before]);
    await press("Enter");
    await settled();
    expect([await chosen(), await focused()]).toEqual([[tabOf("takes")], tabOf("takes")]);
    await press("Home", "Space");
    await settled();
    expect([await chosen(), await focused()]).toEqual([[tabOf("today")], tabOf("today")]);
  });
});

describe("a task", () => {
  it("is marked done and taken back without a mouse", async () => {
    const stops: string[] = [];
    while ((await focused()) !== text.markDone() && stops.length < 20) {
      await press("Tab");
      stops.push(await focused());
    }
    expect(stops).toEqual([
      ...["number", text.readAgain(), text.roundSheet(), text.print(), text.calendarFile()],
      ...[
        fortnight(),
        `Bay 1 south ${text.tally({ tasks: 1, status: DUE_WORDS.coming() })}`,
        text.markDone(),
      ],
    ]);
    await press("Enter");
    expect(await page.evaluate(() => document.activeElement?.getAttribute("type"))).toBe("date");
    // Month, day and year are stops of their own in a date.
    await press("Tab", "Tab", "Tab", "Tab");
    await page.keyboard.type("88");
    await press("Tab");
    await page.keyboard.type("Tavi");
    await press("Enter");
    await page.getByText(text.doneAndWritten()).waitFor();
    await settled();
    const { request } = sidebar.asked.find(({ name }) => name === "sidebarRecord") ?? {};
    expect(request).toEqual({
      batch: "H26-044",
      task: "Take count",
      day: "2026-11-25",
      count: 88,
      who: "Tavi",
      note: "",
      sure: [],
    });
    expect(await focused()).toContain(`${text.doneAndWritten()}: Take count, H26-044`);
    await press("Tab", "Enter");
    await page.getByText(`${taken()}: `).waitFor();
    await press("Tab");
    expect(await focused()).toBe(text.markDone());
  });

  it("gives the focus back when the form is cancelled", async () => {
    await press("Enter");
    await page.getByRole("button", { name: text.cancel() }).press("Enter");
    expect(await focused()).toBe(text.markDone());
  });
});

describe("every stop of every section", () => {
  it.each(SECTION_KEYS)("in %s shows that it has the focus, and is in sight", async (key) => {
    await sidebar.section(key);
    await page.getByRole("tab", { name: tabOf(key) }).focus();
    let stops = 0;
    for (; stops < 60; stops += 1) {
      await press("Tab");
      const seen = await page.evaluate(() => {
        const active = document.activeElement;
        if (active === null || active === document.body) return null;
        const { outlineStyle, outlineWidth } = getComputedStyle(active);
        const { top, bottom, width, height } = active.getBoundingClientRect();
        const inSight = bottom > 0 && top < window.innerHeight && width > 0 && height > 0;
        return { outline: `${outlineStyle} ${outlineWidth}`, inSight };
      });
      if (seen === null) break;
      expect(seen).toEqual({ outline: "solid 3px", inSight: true });
    }
    // At least the button at the foot; and the walk comes to an end.
    expect(stops).toBeGreaterThan(0);
    expect(stops).toBeLessThan(60);
  });
});

describe("the foot", () => {
  it("opens and closes the list of functions", async () => {
    const button = page.getByRole("button", { name: allFunctions() });
    await button.press("Enter");
    expect(await button.getAttribute("aria-expanded")).toBe("true");
    expect(await page.locator("#functions dt").first().isVisible()).toBe(true);
    await button.press("Enter");
    expect(await page.locator("#functions dt").first().isVisible()).toBe(false);
  });
});
