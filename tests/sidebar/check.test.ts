import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import * as checkPage from "../../src/sentences/made/check-page";
import * as pageText from "../../src/sentences/made/page";
import * as setUpPage from "../../src/sentences/made/set-up-page";
import * as wordsPage from "../../src/sentences/made/words-page";
import { isolated } from "../../src/sidebar/controls/shortened";
import type { CheckRow } from "../../src/wire/check";
import { check, columns, noWords } from "./fixed-answers";
import type { OpenSidebar } from "./open-sidebar";
import type { Answers } from "./script-runner";
import { sidebarTests } from "./sidebar-tests";

const openSidebar = sidebarTests();
let sidebar: OpenSidebar;
let page: Page;

async function open(answers: Answers = {}): Promise<void> {
  sidebar = await openSidebar(answers);
  page = sidebar.page;
}

// The biggest trouble is mended in Set up, and nothing led there.
describe("Check and Set up", () => {
  const answerIt = () => page.getByRole("button", { name: checkPage.answerInSetUp() });
  const chosen = () => page.locator("[role=tab][aria-selected=true]").textContent();
  const focused = () => page.evaluate(() => document.activeElement?.getAttribute("aria-label"));
  const ready = () => page.waitForFunction(() => document.querySelector(":disabled") === null);
  const which = wordsPage.whichMethod({ word: isolated("Cleft") });

  it("lead from a word to its question, by keyboard, and back to its rows", async () => {
    await open();
    await sidebar.section("check");
    await answerIt().first().press("Enter");
    await ready();
    expect([await chosen(), await focused()]).toEqual([pageText.setUp(), which]);
    await page.getByLabel(which).selectOption(wordsPage.differ());
    await page.getByRole("button", { name: setUpPage.goToRows() }).press("Enter");
    await ready();
    expect(await chosen()).toBe(pageText.check());
    const entry = page.getByRole("article").filter({ hasText: "Cleft" });
    expect(await entry.evaluate((one) => one.contains(document.activeElement))).toBe(true);
  });

  it("lead to a column in its group, which is opened", async () => {
    const column = { code: "column-open", column: "Takes", rows: [] } as const;
    const [first] = check.rows;
    await open({
      sidebarCheck: () => ({ ...check, rows: [{ ...first, ...column } as CheckRow] }),
    });
    await sidebar.section("check");
    await answerIt().press("Enter");
    await ready();
    expect(await focused()).toBe(setUpPage.readAsOf({ header: "Takes" }));
  });

  it("lead to a name that is near another", async () => {
    const near = { code: "near-alike", column: "Var.", found: "Amberlo" } as const;
    const [first] = check.rows;
    await open({ sidebarCheck: () => ({ ...check, rows: [{ ...first, ...near } as CheckRow] }) });
    await sidebar.section("check");
    await answerIt().press("Enter");
    await ready();
    const names = { rare: isolated("Amberlo"), common: isolated("Amberlow") };
    expect(await focused()).toBe(wordsPage.theSame({ column: "Variety", ...names }));
  });

  it("ask anew where the table has changed since, and say so where nothing is asked", async () => {
    let words = noWords;
    await open({ sidebarColumns: ({ tab }) => ({ ...columns, tab, words }) });
    await sidebar.section("set-up");
    await sidebar.section("check");
    const cleft = () => page.getByRole("article").filter({ hasText: "Cleft" });
    await cleft().getByRole("button", { name: checkPage.answerInSetUp() }).click();
    await page.getByText(setUpPage.noQuestion({ about: isolated("Cleft") })).waitFor();
    expect(await page.evaluate(() => document.activeElement?.textContent)).toBe(pageText.setUp());
    words = columns.words;
    await sidebar.section("check");
    await cleft().getByRole("button", { name: checkPage.answerInSetUp() }).click();
    await ready();
    await page.waitForFunction(() => document.activeElement?.tagName === "SELECT");
    expect(await focused()).toBe(which);
  });

  it("say what is wrong and what to do before the rows, and count troubles, not rows", async () => {
    await open();
    await sidebar.section("check");
    const number = check.rows.filter(({ isReading }) => !isReading).length;
    await page.getByText(checkPage.pleaseCheck({ number })).waitFor();
    const shown = (await page.getByRole("article").first().textContent()) ?? "";
    const [first] = check.rows;
    const order = [
      ...[first?.trouble, first?.whatHappens, first?.whatToDo].map((one) => one ?? "?"),
      ...[checkPage.answerInSetUp(), checkPage.row({ row: "7" })],
    ].map((one) => shown.indexOf(one.slice(0, 60)));
    expect(order).toEqual([...order].sort((a, b) => a - b));
    expect(order[0]).toBe(0);
  });

  // "3 are left out" could not be pressed.
  it("lead to each row that is left out", async () => {
    await open();
    await sidebar.section("check");
    await page.getByText(checkPage.leftOutRows({ rows: 3 })).press("Enter");
    const rows = page.locator("#section-check details").first();
    await rows.getByRole("button", { name: checkPage.row({ row: "72" }) }).click();
    await ready();
    expect(sidebar.asked.at(-1)?.request).toEqual({ row: 72, column: "" });
  });
});
