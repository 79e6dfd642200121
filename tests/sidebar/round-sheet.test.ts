import type { Page } from "playwright-core";
import { beforeAll, describe, expect, it } from "vitest";
import * as text from "../../src/sentences/made/today-page";
import { fileTitle } from "../../src/sentences/made/today-sheet";
import { statusTally } from "../../src/sidebar/today/places";
import { recordsRemarks } from "../../src/wording/records";
import { fixedAnswers, today } from "./fixed-answers";
import { expectGolden } from "./golden";
import { type OpenSidebar, startSidebarTest } from "./open-sidebar";

let sidebar: OpenSidebar;
let page: Page;
beforeAll(async () => {
  sidebar = await (await startSidebarTest()).begin(fixedAnswers);
  page = sidebar.page;
  // Of every frame, that of the printed sheet among them.
  await page.addInitScript(() => {
    window.print = () => {
      const top = window.top as Window & { printed?: string[] };
      top.printed = [...(top.printed ?? []), document.title];
    };
  });
  await page.reload();
  await page.getByText(text.tallyAll({ tally: statusTally(today.tasks) })).waitFor();
});

const frame = () => page.frameLocator("iframe.print-frame");
const printed = () =>
  page.evaluate(() => (window as Window & { printed?: string[] }).printed ?? []);
const print = async (times: number) => {
  await page.getByRole("button", { name: text.print() }).click();
  await page.waitForFunction(
    (wanted) => (window as Window & { printed?: string[] }).printed?.length === wanted,
    times,
  );
};

describe("the round sheet", () => {
  it("prints a page of its own, by place, in the order that is walked", async () => {
    await print(1);
    expect(await printed()).toEqual([fileTitle({ day: "2026-11-25" })]);
    expect(await frame().locator(".place").allTextContents()).toEqual([
      ...["Bay 1 south", "Bay 2 north", text.noPlace()],
    ]);
    expectGolden("round-sheet", `${await frame().locator("main").evaluate(outer)}\n`);
  });

  it("names what is left out of it", async () => {
    const said = recordsRemarks(today.remarks, "page") ?? "nothing is left out here";
    await frame().locator("main > p").getByText(said).waitFor({ state: "attached" });
  });

  it("leaves blanks for day, count, who and note, and none for a count that nobody makes", async () => {
    const row = (batch: string) => frame().locator("tr").filter({ hasText: batch }).first();
    expect(await row("H26-044").locator("td.blank").count()).toBe(4);
    const late = row(text.lateBy({ days: 9 }));
    expect(await late.locator("td.blank").count()).toBe(3);
    expect(await late.locator("td").nth(4).textContent()).toBe("–");
  });

  it("leaves the number blank where plants were never counted", async () => {
    const row = frame().locator("tr").filter({ hasText: "H26-044" });
    expect(await row.locator("td.number").textContent()).toBe("");
  });

  it("says each caution once, whatever the number of tasks", async () => {
    expect(await frame().locator("section p").allTextContents()).toEqual([
      "First release: Blades: slit the wrap on the side away from the union and away from the hand.",
    ]);
  });

  it("has its own style and needs nothing of a network", async () => {
    const border = await frame()
      .locator("td")
      .first()
      .evaluate((cell) => getComputedStyle(cell).borderTopStyle);
    expect(border).toBe("solid");
    expect(sidebar.complaints).toEqual([]);
  });

  it("takes the place of the one before, and goes when the printing is over", async () => {
    await print(2);
    expect(await page.locator("iframe").count()).toBe(1);
    await page.evaluate(() => {
      document.querySelector("iframe")?.contentWindow?.dispatchEvent(new Event("afterprint"));
    });
    expect(await page.locator("iframe").count()).toBe(0);
  });
});

/** A row a line. */
function outer(main: Element): string {
  return main.outerHTML.replace(/<(table|tr|section|p|h1|h2|caption)\b/g, "\n<$1");
}
