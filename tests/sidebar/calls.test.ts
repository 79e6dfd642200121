import { readFile } from "node:fs/promises";
import type { Page } from "playwright-core";
import { afterEach, beforeAll, describe, expect, it } from "vitest";
import * as aheadPageText from "../../src/sentences/made/ahead-page";
import * as checkPage from "../../src/sentences/made/check-page";
import * as controlsText from "../../src/sentences/made/controls";
import * as pageText from "../../src/sentences/made/page";
import * as takesPageText from "../../src/sentences/made/takes-page";
import * as todayPageText from "../../src/sentences/made/today-page";
import { countText } from "../../src/sidebar/controls/count-words";
import { dayText, monthText } from "../../src/sidebar/controls/day-words";
import { statusTally } from "../../src/sidebar/today/places";
import type { TodayAnswer } from "../../src/wire/today";
import { ahead, fixedAnswers, opened, takeCount, today } from "./fixed-answers";
import { type OpenSidebar, type SidebarTest, startSidebarTest } from "./open-sidebar";
import type { Answers } from "./script-runner";

let test: SidebarTest;
let sidebar: OpenSidebar;
let page: Page;
beforeAll(async () => {
  test = await startSidebarTest();
});
afterEach(() => page.close());

async function open(answers: Answers = {}): Promise<void> {
  sidebar = await test.open({ ...fixedAnswers, ...answers });
  page = sidebar.page;
}
const status = () => page.locator("#status").textContent();
const statusKind = () => page.locator(".status").getAttribute("data-kind");
const countOf = (call: string) => sidebar.asked.filter(({ name }) => name === call).length;

/** An answer that comes when it is let go. */
function held<Answer>(): {
  readonly answer: Promise<Answer>;
  readonly letGo: (answer: Answer) => void;
} {
  let letGo: (answer: Answer) => void = () => {};
  const answer = new Promise<Answer>((resolve) => {
    letGo = resolve;
  });
  return { answer, letGo };
}

describe("while the script works", () => {
  it("controls are disabled, nothing is asked twice, and progress is told after half a second", async () => {
    const slow = held<TodayAnswer>();
    let reads = 0;
    await open({
      sidebarToday: () => {
        reads += 1;
        return reads === 1 ? today : slow.answer;
      },
    });
    await page.getByText(dayText("2026-11-25")).first().waitFor();
    await page.clock.install({ time: 0 });
    await page.clock.pauseAt(3_600_000);
    const again = page.getByRole("button", { name: todayPageText.readAgain() });
    await again.click();
    await page.waitForFunction(() => document.querySelector("fieldset:disabled") !== null);
    expect(await again.isDisabled()).toBe(true);
    await page.getByRole("tab", { name: pageText.today() }).click();
    await page.clock.runFor(400);
    expect(await statusKind()).toBe("idle");
    await page.clock.runFor(200);
    expect(await statusKind()).toBe("working");
    expect(await status()).toContain(controlsText.doing({ doing: todayPageText.loading() }));
    expect(countOf("sidebarToday")).toBe(2);
    slow.letGo({ ...today, tasks: [] });
    await page.getByText(todayPageText.nothingDue({ days: 14, leftOut: "yes" })).waitFor();
    await page.waitForFunction(() => document.querySelector(":disabled") === null);
    expect(await statusKind()).toBe("idle");
  });
});

describe("what goes wrong", () => {
  it("is told in the script's own words, and the controls work again", async () => {
    let reads = 0;
    await open({
      sidebarToday: () => {
        reads += 1;
        if (reads === 1) throw new Error("The tab Records is gone. Set up again.");
        return today;
      },
    });
    await page.getByText("The tab Records is gone. Set up again.").waitFor();
    expect(await statusKind()).toBe("failed");
    await page.getByRole("button", { name: todayPageText.readAgain() }).click();
    await page.getByText(todayPageText.tallyAll({ tally: statusTally(today.tasks) })).waitFor();
    expect(await statusKind()).toBe("idle");
  });

  it("counts an answer of null as a failure", async () => {
    await open({ sidebarToday: () => "no answer" });
    await page.getByText(pageText.noAnswer()).waitFor();
  });

  it("can be dismissed", async () => {
    await open({ sidebarToday: () => "no answer" });
    await page.getByRole("button", { name: controlsText.dismiss() }).click();
    expect(await status()).not.toContain(pageText.noAnswer());
  });

  it("keeps what a form holds", async () => {
    await open({
      sidebarRecord: () => {
        throw new Error("Someone else is writing. Try again in a moment.");
      },
    });
    await page.getByText(todayPageText.markDone(), { exact: true }).first().click();
    await page.getByLabel(todayPageText.note()).fill("kept");
    await page.getByRole("button", { name: todayPageText.save() }).click();
    await page.getByText("Someone else is writing.").waitFor();
    expect(await page.getByLabel(todayPageText.note()).inputValue()).toBe("kept");
    expect(await page.getByRole("button", { name: todayPageText.save() }).isEnabled()).toBe(true);
  });

  it("leaves a way on when the first call fails", async () => {
    let opens = 0;
    sidebar = await test.begin({
      ...fixedAnswers,
      sidebarOpen: () => {
        opens += 1;
        if (opens === 1) throw new Error("The workbook is busy.");
        return opened;
      },
    });
    page = sidebar.page;
    await page.getByText("The workbook is busy.").waitFor();
    await page.getByRole("button", { name: pageText.tryAgain() }).click();
    await page.getByText(todayPageText.tallyAll({ tally: statusTally(today.tasks) })).waitFor();
  });
});

describe("the sections", () => {
  it("Today reads as far ahead as the person says, from what was set up on", async () => {
    await open();
    expect(sidebar.asked.at(-1)).toEqual({ name: "sidebarToday", request: { daysAhead: 14 } });
    await page.getByLabel(todayPageText.ahead()).fill("30");
    await page.getByLabel(todayPageText.ahead()).press("Tab");
    await page.waitForFunction(() => document.querySelector(":disabled") === null);
    expect(sidebar.asked.at(-1)).toEqual({ name: "sidebarToday", request: { daysAhead: 30 } });
    await page.getByLabel(todayPageText.ahead()).fill("-1");
    await page.getByLabel(todayPageText.ahead()).press("Tab");
    expect(countOf("sidebarToday")).toBe(2);
  });

  it("Today saves the calendar file byte for byte", async () => {
    const text = "BEGIN:VCALENDAR\r\nSUMMARY:été שלום\r\nEND:VCALENDAR\r\n";
    await open({ sidebarCalendar: () => ({ fileName: "due.ics", text }) });
    const saving = page.waitForEvent("download");
    await page.getByRole("button", { name: todayPageText.calendarFile() }).click();
    const download = await saving;
    expect(download.suggestedFilename()).toBe("due.ics");
    expect(await readFile(await download.path(), "utf8")).toBe(text);
  });

  it("Today folds the places of a long list, and shows a place's tasks by and by", async () => {
    const tasks = Array.from({ length: 2000 }, (_, index) => ({
      ...takeCount,
      batch: `B-${index}`,
      place: `Bay ${index % 3}`,
    }));
    await open({ sidebarToday: () => ({ ...today, tasks }) });
    await page.getByText(todayPageText.tallyAll({ tally: statusTally(tasks) })).waitFor();
    expect(await page.getByRole("article").count()).toBe(0);
    await page.getByText("Bay 1").click();
    await page.getByText(controlsText.showMore({ next: 40, left: 627 })).click();
    expect(await page.getByRole("article").count()).toBe(80);
  });

  // People read "0 – 0 – 0" beside a bar of no length.
  it("Ahead says in words that a month has none", async () => {
    const none = {
      ...{ month: "2027-01", variety: null, batches: 0, fewest: 0, likely: 0, most: 0 },
      ...{ fewestByEnd: 260, likelyByEnd: 363, mostByEnd: 374 },
    };
    await open({ sidebarAhead: () => ({ ...ahead, rows: [...ahead.rows, none] }) });
    await sidebar.section("ahead");
    const month = page.getByRole("button", { name: monthText("2027-01") });
    const byEnd = aheadPageText.byItsEnd({ numbers: "260 – 363 – 374" });
    expect(await month.textContent()).toBe(
      `${monthText("2027-01")}${aheadPageText.noneLikely()}${byEnd}`,
    );
    expect(await month.locator("svg").count()).toBe(0);
    await month.click();
    expect(await page.locator(".behind:not([hidden])").textContent()).toContain(
      aheadPageText.noBatch(),
    );
  });

  it("Ahead shows one variety, and the batches behind a month", async () => {
    await open();
    await sidebar.section("ahead");
    await page.getByRole("button", { name: monthText("2026-11") }).click();
    await page.getByText(aheadPageText.noBatch()).waitFor();
    await page.getByLabel(aheadPageText.variety()).selectOption("Brindlecap");
    expect(await page.getByRole("button", { name: monthText("2026-11") }).count()).toBe(0);
    await page
      .getByRole("button", {
        name: [monthText("2026-12"), [0, 94, 104].map(countText).join(" – ")].join(" "),
      })
      .click();
    expect(await page.locator(".behind .batch strong").allTextContents()).toEqual(["B-01"]);
  });

  // The page asked for the variety first, and a table without that column showed an error alone.
  it("Takes leaves the first column to the script, then asks by the column chosen", async () => {
    await open();
    await sidebar.section("takes");
    await page
      .getByRole("combobox", { name: takesPageText.by(), exact: true })
      .selectOption("Grafter");
    await page.waitForFunction(() => document.querySelector(":disabled") === null);
    const requests = sidebar.asked.filter(({ name }) => name === "sidebarTakes");
    expect(requests.map(({ request }) => request)).toEqual([{ by: "" }, { by: "Grafter" }]);
    expect(
      await page.getByRole("combobox", { name: takesPageText.by(), exact: true }).inputValue(),
    ).toBe("Grafter");
  });

  it("Check selects the cell of a trouble, and tells which", async () => {
    await open();
    await sidebar.section("check");
    await page
      .getByRole("button", { name: checkPage.rowColumn({ row: "47", column: "Ready plants" }) })
      .click();
    await page.getByText(checkPage.selected({ cell: "Records!Ready plants47" })).waitFor();
    expect(sidebar.asked.at(-1)?.request).toEqual({ row: 47, column: "Ready plants" });
    await page.getByRole("button", { name: checkPage.column({ column: "Take 2" }) }).click();
    await page.waitForFunction(() => document.querySelector(":disabled") === null);
    expect(sidebar.asked.at(-1)?.request).toEqual({ row: null, column: "Take 2" });
    // A trouble of twelve rows leads to each of them.
    const lastRow = page.getByRole("button", { name: checkPage.row({ row: "53" }), exact: true });
    expect(await lastRow.count()).toBe(0);
    await page.getByText(checkPage.moreRows({ rows: 7 })).click();
    await lastRow.click();
    await page.waitForFunction(() => document.querySelector(":disabled") === null);
    expect(sidebar.asked.at(-1)?.request).toEqual({ row: 53, column: "Method" });
    // What is about another tab leads there.
    await page.getByRole("button", { name: checkPage.tab({ tab: "Crew" }) }).click();
    await page.getByText(checkPage.selected({ cell: "Crew" })).waitFor();
    expect(sidebar.asked.at(-1)?.request).toEqual({ row: null, column: "", tab: "Crew" });
  });
});
