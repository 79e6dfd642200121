import { readFile } from "node:fs/promises";
import type { Page } from "playwright-core";
import { afterEach, beforeAll, describe, expect, it } from "vitest";
import * as checkPage from "../../src/sentences/made/check-page";
import type { TodayAnswer } from "../../src/workbook/sidebar-calls";
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
    await page.getByText("25 Nov 2026").first().waitFor();
    await page.clock.install({ time: 0 });
    await page.clock.pauseAt(3_600_000);
    const again = page.getByRole("button", { name: "Read again" });
    await again.click();
    await page.waitForFunction(() => document.querySelector("fieldset:disabled") !== null);
    expect(await again.isDisabled()).toBe(true);
    await page.getByRole("tab", { name: "Today" }).click();
    await page.clock.runFor(400);
    expect(await statusKind()).toBe("idle");
    await page.clock.runFor(200);
    expect(await statusKind()).toBe("working");
    expect(await status()).toContain("Reading the due list …");
    expect(countOf("sidebarToday")).toBe(2);
    slow.letGo({ ...today, tasks: [] });
    await page.getByText("Nothing is late, due or coming in the next 14 days.").waitFor();
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
    await page.getByRole("button", { name: "Read again" }).click();
    await page.getByText("1 late, 1 due, 3 coming.").waitFor();
    expect(await statusKind()).toBe("idle");
  });

  it("counts an answer of null as a failure", async () => {
    await open({ sidebarToday: () => "no answer" });
    await page.getByText("The script gave no answer. Try again").waitFor();
  });

  it("can be dismissed", async () => {
    await open({ sidebarToday: () => "no answer" });
    await page.getByRole("button", { name: "Dismiss" }).click();
    expect(await status()).not.toContain("no answer");
  });

  it("keeps what a form holds", async () => {
    await open({
      sidebarRecord: () => {
        throw new Error("Someone else is writing. Try again in a moment.");
      },
    });
    await page.getByRole("button", { name: "Mark done" }).first().click();
    await page.getByLabel("Note").fill("kept");
    await page.getByRole("button", { name: "Save" }).click();
    await page.getByText("Someone else is writing.").waitFor();
    expect(await page.getByLabel("Note").inputValue()).toBe("kept");
    expect(await page.getByRole("button", { name: "Save" }).isEnabled()).toBe(true);
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
    await page.getByRole("button", { name: "Try again" }).click();
    await page.getByText("1 late, 1 due, 3 coming.").waitFor();
  });
});

describe("the sections", () => {
  it("Today reads as far ahead as the person says, from what was set up on", async () => {
    await open();
    expect(sidebar.asked.at(-1)).toEqual({ name: "sidebarToday", request: { daysAhead: 14 } });
    await page.getByLabel("Days ahead").fill("30");
    await page.getByLabel("Days ahead").press("Tab");
    await page.waitForFunction(() => document.querySelector(":disabled") === null);
    expect(sidebar.asked.at(-1)).toEqual({ name: "sidebarToday", request: { daysAhead: 30 } });
    await page.getByLabel("Days ahead").fill("-1");
    await page.getByLabel("Days ahead").press("Tab");
    expect(countOf("sidebarToday")).toBe(2);
  });

  it("Today saves the calendar file byte for byte", async () => {
    const text = "BEGIN:VCALENDAR\r\nSUMMARY:été שלום\r\nEND:VCALENDAR\r\n";
    await open({ sidebarCalendar: () => ({ fileName: "due.ics", text }) });
    const saving = page.waitForEvent("download");
    await page.getByRole("button", { name: "Calendar file" }).click();
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
    await page.getByText("2,000 coming.").waitFor();
    expect(await page.getByRole("article").count()).toBe(0);
    await page.getByText("Bay 1").click();
    await page.getByText("Show 40 more of 627").click();
    expect(await page.getByRole("article").count()).toBe(80);
  });

  // People read "0 – 0 – 0" beside a bar of no length.
  it("Ahead says in words that a month has none", async () => {
    const none = { month: "2027-01", variety: null, batches: 0, fewest: 0, likely: 0, most: 0 };
    await open({ sidebarAhead: () => ({ ...ahead, rows: [...ahead.rows, none] }) });
    await sidebar.section("Ahead");
    const month = page.getByRole("button", { name: /Jan 2027/ });
    expect(await month.textContent()).toBe("Jan 2027none likely");
    expect(await month.locator("svg").count()).toBe(0);
    await month.click();
    expect(await page.locator(".behind:not([hidden])").textContent()).toContain(
      "No batch is likely in this month",
    );
  });

  it("Ahead shows one variety, and the batches behind a month", async () => {
    await open();
    await sidebar.section("Ahead");
    await page.getByRole("button", { name: /Nov 2026/ }).click();
    await page.getByText("No batch is likely in this month").waitFor();
    await page.getByLabel("Variety").selectOption("Brindlecap");
    expect(await page.getByRole("button", { name: /Nov 2026/ }).count()).toBe(0);
    await page.getByRole("button", { name: /Dec 2026.*0 – 94 – 104/ }).click();
    expect(await page.locator(".behind .batch strong").allTextContents()).toEqual(["B-01"]);
  });

  // The page asked for the variety first, and a table without that column showed an error alone.
  it("Takes leaves the first column to the script, then asks by the column chosen", async () => {
    await open();
    await sidebar.section("Takes");
    await page.getByRole("combobox", { name: "By", exact: true }).selectOption("Grafter");
    await page.waitForFunction(() => document.querySelector(":disabled") === null);
    const requests = sidebar.asked.filter(({ name }) => name === "sidebarTakes");
    expect(requests.map(({ request }) => request)).toEqual([{ by: "" }, { by: "Grafter" }]);
    expect(await page.getByRole("combobox", { name: "By", exact: true }).inputValue()).toBe(
      "Grafter",
    );
  });

  it("Check selects the cell of a trouble, and tells which", async () => {
    await open();
    await sidebar.section("Check");
    await page
      .getByRole("button", { name: checkPage.rowColumn({ row: "1407", column: "Ready plants" }) })
      .click();
    await page.getByText(checkPage.selected({ cell: "Records!Ready plants1407" })).waitFor();
    expect(sidebar.asked.at(-1)?.request).toEqual({ row: 1407, column: "Ready plants" });
    await page.getByRole("button", { name: checkPage.column({ column: "Takes" }) }).click();
    await page.waitForFunction(() => document.querySelector(":disabled") === null);
    expect(sidebar.asked.at(-1)?.request).toEqual({ row: null, column: "Takes" });
    // What is about the whole table leads nowhere.
    expect(await page.getByRole("button", { name: checkPage.wholeTable() }).count()).toBe(0);
  });
});
