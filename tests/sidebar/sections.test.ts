import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import * as controlsText from "../../src/sentences/made/controls";
import * as todayPageText from "../../src/sentences/made/today-page";
import * as text from "../../src/sentences/made/writing";
import type { Question } from "../../src/wire/writing";
import { escaped } from "../support/escaped";
import { axeViolations } from "./axe-violations";
import { fixedAnswers } from "./fixed-answers";
import { expectGolden, markupOf } from "./golden";
import { type OpenSidebar, SECTION_KEYS, type SidebarTest, startSidebarTest } from "./open-sidebar";

const PANEL = "[role=tabpanel]:not([hidden])";

let test: SidebarTest;
beforeAll(async () => {
  test = await startSidebarTest();
});

/** Opens all that can be opened, so that nothing stays unseen. */
async function unfold(page: Page): Promise<void> {
  await page.evaluate(() => {
    for (const details of document.querySelectorAll("details")) details.open = true;
    for (const button of document.querySelectorAll<HTMLElement>("[aria-expanded=false]")) {
      button.click();
    }
  });
  // What a disclosure holds is made when its toggle event comes.
  await page.waitForFunction(() => {
    const all = [...document.querySelectorAll("details")];
    // There may be more within.
    for (const details of all) details.open = true;
    return all.every(({ children }) => children.length > 1) && !document.querySelector(":disabled");
  });
}

describe.each(SECTION_KEYS)("the section %s", (name) => {
  let sidebar: OpenSidebar;
  beforeAll(async () => {
    sidebar = await test.open(fixedAnswers);
    await sidebar.section(name);
  });
  afterAll(() => sidebar.close());

  it("has the markup that was looked at", async () => {
    expectGolden(name, await markupOf(sidebar.page, PANEL));
  });

  it("has nothing that axe-core finds wrong, all unfolded", async () => {
    await unfold(sidebar.page);
    expect(await axeViolations(sidebar.page)).toEqual([]);
    expectGolden(`${name}-unfolded`, await markupOf(sidebar.page, PANEL));
  });

  it("needs no sideways scrolling at 200 % zoom, where 300 pixels hold 150", async () => {
    await sidebar.page.setViewportSize({ width: 150, height: 400 });
    const [needed, given] = await sidebar.page.evaluate(() => {
      const { scrollWidth, clientWidth } = document.documentElement;
      return [scrollWidth, clientWidth];
    });
    expect(needed).toBe(given);
  });

  it("asks nothing of a network and throws nothing", () => {
    expect(sidebar.complaints).toEqual([]);
  });
});

describe("the states between", () => {
  it("have nothing that axe-core finds wrong: form, question, notice, failure, progress", async () => {
    const question: Question = {
      id: "takes",
      ask: { code: "holdsAlready", header: "Takes", cell: "R40", stands: "80", would: "88" },
      stands: "80",
      would: "88",
    };
    let failing = true;
    const failingOnce = await test.open({
      ...fixedAnswers,
      sidebarRecord: (request) =>
        request.sure.length === 0
          ? { written: [], asked: [question], logId: null }
          : (fixedAnswers.sidebarRecord?.(request) ?? "no answer"),
      sidebarTakeBack: () => {
        if (failing) throw new Error("The records are locked. Try again in a minute.");
        return new Promise(() => {});
      },
    });
    const { page } = failingOnce;
    const group = page.getByRole("article").filter({ hasText: "H26-044" });
    await group.getByText(todayPageText.markDone(), { exact: true }).click();
    expect(await axeViolations(page)).toEqual([]);
    await group.getByLabel(new RegExp(`^${escaped(todayPageText.counted())}`)).fill("88");
    expectGolden("done-form", await markupOf(page, "form"));
    await group.getByRole("button", { name: todayPageText.save() }).click();
    await group.getByText(text.stands()).waitFor();
    expect(await axeViolations(page)).toEqual([]);
    expectGolden("asked", await markupOf(page, ".asked"));
    await group.getByRole("button", { name: text.writeAnyway() }).click();
    await group.getByText(todayPageText.doneAndWritten()).waitFor();
    expect(await axeViolations(page)).toEqual([]);
    expectGolden("written", await markupOf(page, ".written"));
    await group.getByRole("button", { name: text.takeBack() }).click();
    await page.getByText("The records are locked").waitFor();
    expect(await axeViolations(page)).toEqual([]);
    expectGolden("failed", await markupOf(page, "#status"));
    failing = false;
    await group.getByRole("button", { name: text.takeBack() }).click();
    await page.getByText(controlsText.doing({ doing: text.taking() })).waitFor();
    expect(await axeViolations(page)).toEqual([]);
    expectGolden("working", await markupOf(page, "#status"));
    await failingOnce.close();
  });
});
