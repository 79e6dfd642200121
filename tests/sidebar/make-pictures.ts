/**
 * Makes the pictures of src/sidebar/pictures anew, from the invented answers of the tests:
 * node src/build/run.mjs tests/sidebar/make-pictures.ts
 */

import { mkdirSync } from "node:fs";
import type { Page } from "playwright-core";
import * as faces from "../../src/sentences/made/faces-page";
import { planNew } from "../../src/sentences/made/orders-page";
import { moreChoices, moreTabs, nextQuestion } from "../../src/sentences/made/set-up-page";
import type { FaceName } from "../../src/wire/faces";
import { oneBrowser } from "../support/one-browser";
import { fixedAnswers, opened } from "./fixed-answers";
import { type SectionKey, startSidebarTest } from "./open-sidebar";
import { faceOf } from "./seed-face";

const FOLDER = "src/sidebar/pictures";

interface Picture {
  readonly name: string;
  readonly section: SectionKey;
  readonly before?: (page: Page) => Promise<void>;
  readonly zoomed?: boolean;
}

const pictures: readonly Picture[] = [
  { name: "today", section: "today" },
  {
    name: "mark-done",
    section: "today",
    before: async (page) => {
      const task = page.getByRole("article").filter({ hasText: "H26-044" });
      await task.getByRole("button", { name: "Mark done" }).click();
      await task.getByRole("spinbutton").fill("88");
    },
  },
  {
    name: "last-writes",
    section: "today",
    before: async (page) => {
      await page.getByText("Last writes").click();
      await page.getByText("2026-11-24 16:20, Orrin").waitFor();
      await page.getByText("Last writes").evaluate((one) => one.scrollIntoView());
    },
  },
  { name: "fortnight", section: "today", before: openFortnight },
  {
    name: "fortnight-day",
    section: "today",
    before: async (page) => {
      await openFortnight(page);
      await page.getByText("Wed 25 Nov").click();
      await page.getByText("Wed 25 Nov").evaluate((one) => one.scrollIntoView());
    },
  },
  {
    name: "ahead",
    section: "ahead",
    before: (page) => page.getByRole("button", { name: /Dec 2026/ }).click(),
  },
  { name: "takes", section: "takes" },
  {
    name: "takes-compared",
    section: "takes",
    before: (page) => toTop(page, "Compared fairly"),
  },
  { name: "takes-over-time", section: "takes", before: (page) => toTop(page, "Over time") },
  {
    name: "losses",
    section: "takes",
    before: async (page) => {
      const line = page.getByText("Where plants are lost", { exact: true });
      await line.click();
      await page.getByText("Standing").waitFor();
      await line.evaluate((one) => one.scrollIntoView());
    },
  },
  ...(["needs", "places"] as const).map((face) => facePicture(face, "today")),
  facePicture("costs", "orders"),
  facePicture("balance", "takes"),
  facePicture("lookback", "ahead"),
  facePicture("germination", "ahead"),
  {
    name: "all-answers",
    section: "today",
    before: async (page) => {
      const line = page.getByText(faces.index());
      await line.click();
      await page.waitForFunction(() => document.querySelector(":disabled") === null);
      await line.evaluate((one) => one.scrollIntoView());
    },
  },
  {
    name: "more-tabs",
    section: "set-up",
    before: async (page) => {
      await page.getByText(moreChoices()).click();
      const line = page.getByText(moreTabs());
      await line.click();
      await line.evaluate((one) => one.scrollIntoView());
    },
  },
  { name: "orders", section: "orders" },
  {
    name: "order-plan",
    section: "orders",
    before: async (page) => {
      await planOrder(page);
      await page.getByRole("group", { name: "The plan" }).evaluate((one) => one.scrollIntoView());
    },
  },
  {
    name: "order-kept",
    section: "orders",
    before: async (page) => {
      await planOrder(page);
      await page.getByLabel(/^Customer/).fill("Order desk B");
      await page.getByRole("button", { name: "Add to the orders" }).click();
      await page.getByText("Added to the orders: ").waitFor();
      await page.getByText("Needed in all").evaluate((one) => one.scrollIntoView());
    },
  },
  { name: "check", section: "check" },
  { name: "set-up", section: "set-up" },
  {
    name: "set-up-questions",
    section: "set-up",
    before: (page) => page.getByRole("button", { name: nextQuestion() }).click(),
  },
  { name: "today-at-200-percent", section: "today", zoomed: true },
];

/** An answer that is a table, opened, at the top. */
function facePicture(face: FaceName, section: SectionKey): Picture {
  return {
    name: face,
    section,
    before: async (page) => {
      const part = page.locator(`#section-${section} [data-part=${face}]`);
      await part.locator("summary").first().click();
      await page.waitForFunction(() => document.querySelector(":disabled") === null);
      await part.evaluate((one) => one.scrollIntoView());
    },
  };
}

/** Opens the fortnight and scrolls so that it stands at the top. */
async function openFortnight(page: Page): Promise<void> {
  const line = page.getByText("The fortnight, day by day");
  await line.click();
  await page.getByText("Wed 25 Nov").waitFor();
  await line.evaluate((one) => one.scrollIntoView());
}

/** Fills in the form of a new order and has it planned. */
async function planOrder(page: Page): Promise<void> {
  await page.getByText(planNew()).click();
  await page.getByRole("combobox", { name: /^Variety/ }).fill("Corvane");
  await page.getByLabel("Plants wanted").fill("150");
  await page.getByLabel("Ready by").fill("2027-12-01");
  await page.getByLabel(/^Harvest months/).fill("Oct-Mar, May-Aug");
  await page.getByRole("button", { name: "Plan", exact: true }).click();
  await page.getByText("Needed in all").waitFor();
}

/** Scrolls so that a heading stands at the top. */
async function toTop(page: Page, heading: string): Promise<void> {
  await page.getByRole("heading", { name: heading }).evaluate((one) => one.scrollIntoView());
}

/** The usual workbook: one tab of records, and a timetable that can be used. */
const usual = {
  ...opened,
  candidates: opened.candidates.slice(0, 1),
  timetables: opened.timetables.filter(({ trouble }) => trouble === null),
};

mkdirSync(FOLDER, { recursive: true });
const test = await startSidebarTest();
for (const { name, section: title, before, zoomed = false } of pictures) {
  const view = zoomed
    ? { width: 150, height: 400, scale: 2 }
    : { width: 300, height: 800, scale: 1 };
  const { page, section } = await test.begin(
    { ...fixedAnswers, sidebarFace: ({ face }) => faceOf(face), sidebarOpen: () => usual },
    view,
  );
  await section(title);
  await before?.(page);
  await page.mouse.move(0, 0);
  await page.screenshot({ path: `${FOLDER}/${name}.png` });
  await page.close();
}
await (await oneBrowser()).close();
