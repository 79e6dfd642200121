import type { Browser, Page } from "playwright-core";
import { beforeAll, describe, expect, it } from "vitest";
import * as text from "../../src/sentences/made/today-page";
import * as sheetText from "../../src/sentences/made/today-sheet";
import { noCrew } from "../../src/sentences/made/work-page";
import { weekdayText } from "../../src/sidebar/controls/day-words";
import { hoursCounted } from "../../src/sidebar/controls/hours-words";
import { partRemarks } from "../../src/wording/work";
import { isNonsense } from "../support/nonsense";
import { fixedAnswers } from "./fixed-answers";
import { type OpenSidebar, type SidebarTest, startSidebarTest } from "./open-sidebar";
import { work } from "./work-answers";

let test: SidebarTest;
let sidebar: OpenSidebar;
let page: Page;
let answer = work;
beforeAll(async () => {
  test = await startSidebarTest();
  sidebar = await test.open({ ...fixedAnswers, sidebarWork: () => answer });
  page = sidebar.page;
  await page.getByLabel(text.roundSheet()).selectOption("person");
});

const sheet = () => page.frameLocator("iframe.print-frame").locator("main");
const print = () => page.getByRole("button", { name: text.print() }).click();

describe("the round sheet by person", () => {
  it("plans the days of the list, a page a person, and what is given to nobody last", async () => {
    await print();
    await sheet().waitFor({ state: "attached" });
    expect(sidebar.asked.at(-1)).toEqual({
      name: "sidebarWork",
      request: { days: 15, initials: false },
    });
    expect(await sheet().locator(".place").allTextContents()).toEqual([
      ...["Kesto", "Mirel", sheetText.unassigned()],
    ]);
    const breaks = await sheet()
      .locator("section.person")
      .evaluateAll((pages) => pages.map((one) => getComputedStyle(one).breakBefore));
    expect(breaks).toEqual(["auto", "page", "page"]);
  });

  it("names what is left out of the plan, on the last page", async () => {
    const remark = answer.remark ?? "nothing is left out here";
    expect(await sheet().getByText(remark, { exact: true }).count()).toBe(1);
    expect(await sheet().locator("section.person").last().getByText(remark).count()).toBe(1);
  });

  it("has for each task day, batch, place, plants, hours and blanks", async () => {
    const rows = sheet().locator("section.person").first().locator("tbody tr");
    expect(await rows.first().locator("td, th").allTextContents()).toEqual([
      ...[
        weekdayText("2026-11-25"),
        `First release${partRemarks([{ code: "days-late", days: 9 }])}`,
        "H26-039",
        "Bay 2 north",
        "104",
        "2.6",
      ],
      ...["", "–", ""],
    ]);
    // Grafting is counted: its count is a blank.
    expect(await rows.nth(1).locator("td.blank").count()).toBe(3);
    const nobodys = sheet().locator("section.person").last();
    expect(await nobodys.locator("tbody tr").count()).toBe(2);
    expect(await nobodys.textContent()).toContain(
      sheetText.byDay({ day: weekdayText("2026-12-01") }),
    );
  });

  it("says on each page its own cautions and hours", async () => {
    const pages = await sheet().locator("section.person").allTextContents();
    expect(pages[0]).toContain(hoursCounted(8.6));
    expect(pages[0]).toContain("First release: Blades: slit the wrap");
    expect(pages[1]).not.toContain("slit the wrap");
  });

  it("fits three pages of paper", async () => {
    const html = await sheet().evaluate((main) => main.ownerDocument.documentElement.outerHTML);
    const browser = page.context().browser() as Browser;
    const paper = await browser.newPage();
    await paper.setContent(html);
    const pdf = (await paper.pdf({ preferCSSPageSize: true })).toString("latin1");
    // Nonsense is longer than words.
    if (!isNonsense) expect(pdf.match(/\/Type\s*\/Page\b/g)).toHaveLength(3);
    await paper.close();
  });

  it("says what is missing instead of printing nothing", async () => {
    answer = { ...work, crewTab: null, persons: [], days: [], parts: [], unassigned: [] };
    await print();
    await page.getByText(noCrew({ columns: work.crewHeader })).waitFor();
    answer = { ...work, parts: [], unassigned: [] };
    await print();
    await page.getByText(text.nothingToPrint()).waitFor();
    expect(sidebar.complaints).toEqual([]);
  });
});
