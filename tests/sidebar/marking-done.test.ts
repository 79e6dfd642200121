/* Longer than most: marking done, what is asked then, and saying not to be done are one form under one task. */
import type { Locator, Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { blank } from "../../src/sentences/made/controls";
import * as today from "../../src/sentences/made/today-page";
import * as text from "../../src/sentences/made/writing";
import { dayText } from "../../src/sidebar/controls/day-words";
import type { Question, RecordAnswer, RecordRequest } from "../../src/wire/writing";
import { askedSentence } from "../../src/wording/writing";
import { escaped } from "../support/escaped";
import { fixedAnswers } from "./fixed-answers";
import type { OpenSidebar } from "./open-sidebar";
import type { Answers, NoAnswer } from "./script-runner";
import { sidebarTests } from "./sidebar-tests";

const beginning = (words: string) => new RegExp(`^${escaped(words)}`);
const openSidebar = sidebarTests();
let sidebar: OpenSidebar;
let page: Page;

type Recorder = (
  request: RecordRequest,
) => RecordAnswer | Promise<RecordAnswer | NoAnswer> | NoAnswer;

async function open(record?: Recorder, more: Answers = {}): Promise<void> {
  const sidebarRecord = (record ?? fixedAnswers.sidebarRecord) as Answers["sidebarRecord"];
  sidebar = await openSidebar({ ...more, ...(sidebarRecord && { sidebarRecord }) });
  page = sidebar.page;
}
const task = (batch: string): Locator => page.getByRole("article").filter({ hasText: batch });
const save = (batch: string) => task(batch).getByRole("button", { name: today.save() }).click();
const marking = (one: Locator) => one.getByText(today.markDone(), { exact: true });
const begin = (batch: string) => marking(task(batch)).first().click();
const requests = () =>
  sidebar.asked
    .filter(({ name }) => name === "sidebarRecord")
    .map(({ request }) => request as RecordRequest);

describe("marking a task done", () => {
  it("offers the as-of day, and a count only where the step is counted", async () => {
    await open();
    await begin("H26-044");
    expect(await task("H26-044").getByLabel(beginning(today.day())).inputValue()).toBe(
      "2026-11-25",
    );
    expect(await task("H26-044").getByLabel(beginning(today.counted())).count()).toBe(1);
    const release = page.getByRole("article").filter({ hasText: "First release" });
    await marking(release).click();
    expect(await release.getByLabel(beginning(today.counted())).count()).toBe(0);
  });

  it("is offered too where the records have no column for the step, which is said", async () => {
    await open();
    await page.locator("summary", { hasText: "H26-028" }).click();
    expect(await task("H26-028").textContent()).toContain(today.reminder());
    expect(await marking(task("H26-028")).count()).toBe(1);
  });

  it("keeps a blank count and none apart", async () => {
    await open();
    await begin("H26-044");
    await save("H26-044");
    await task("H26-044").getByText(today.doneAndWritten()).waitFor();
    await begin("H26-045");
    await task("H26-045").getByLabel(beginning(today.counted())).fill("0");
    await save("H26-045");
    await task("H26-045").getByText(today.doneAndWritten()).waitFor();
    expect(requests().map(({ count }) => count)).toEqual([null, 0]);
  });

  it.each(["-1", "1.5"])("asks nothing of the script with a count of %s", async (count) => {
    await open();
    await begin("H26-044");
    await task("H26-044").getByLabel(beginning(today.counted())).fill(count);
    await save("H26-044");
    expect(await page.locator("form:invalid").count()).toBe(1);
    expect(requests()).toEqual([]);
  });

  it("shows what was written where, takes it back, and offers the task again", async () => {
    await open();
    await begin("H26-044");
    await task("H26-044").getByLabel(beginning(today.counted())).fill("88");
    await save("H26-044");
    await task("H26-044").getByText(today.doneAndWritten()).waitFor();
    const written = await task("H26-044").textContent();
    expect(written).toContain(
      `Take count day: ${dayText("2026-11-25")} ${text.inCell({ where: "Records!Q40" })}`,
    );
    expect(written).toContain(`Takes: 88 ${text.inCell({ where: "Records!R40" })}`);
    expect(written).not.toContain(today.coming());
    await task("H26-044").getByRole("button", { name: text.takeBack() }).click();
    await task("H26-044").getByText(`${text.taken()}: `).waitFor();
    expect(await task("H26-044").textContent()).toContain(
      `Take count day: ${blank()} ${text.inCell({ where: "Records!Q40" })}`,
    );
    expect(await task("H26-044").textContent()).toContain(today.coming());
    expect(sidebar.asked.at(-1)).toEqual({ name: "sidebarTakeBack", request: { logId: "log-1" } });
    await begin("H26-044");
    expect(await page.locator("form").count()).toBe(1);
  });

  it("offers the name given before", async () => {
    await open();
    await begin("H26-044");
    await task("H26-044").getByLabel(today.who()).fill("Tavi");
    await save("H26-044");
    await task("H26-044").getByText(today.doneAndWritten()).waitFor();
    await begin("H26-045");
    expect(await task("H26-045").getByLabel(today.who()).inputValue()).toBe("Tavi");
  });

  it("keeps what was written in sight when the list is read again", async () => {
    await open();
    await begin("H26-044");
    await save("H26-044");
    await task("H26-044").getByText(today.doneAndWritten()).waitFor();
    await page.getByRole("button", { name: today.readAgain() }).click();
    await page.getByText(today.markedDone({ tasks: 1 })).waitFor();
    await page.getByRole("button", { name: text.takeBack() }).click();
    await page.getByText(`${text.taken()}: `).waitFor();
    expect(sidebar.asked.at(-1)?.name).toBe("sidebarTakeBack");
  });
});

describe("what the script asks", () => {
  const question: Question = {
    id: "takes",
    ask: { code: "holdsAlready", header: "Takes", cell: "R40", stands: "80", would: "88" },
    stands: 80,
    would: 88,
  };
  const asking: Recorder = (request) =>
    request.sure.includes(question.id)
      ? { written: [{ where: "Records!R40", header: "Takes", value: 88 }], asked: [], logId: "a" }
      : { written: [], asked: [question], logId: null };

  it("is shown with both values, and written only after that", async () => {
    await open(asking);
    await begin("H26-044");
    await save("H26-044");
    await page.getByText(text.notYet()).waitFor();
    const values = await page.locator(".pairs > *").allTextContents();
    expect(values).toEqual([text.stands(), "80", text.would(), "88"]);
    await page.getByRole("button", { name: text.writeAnyway() }).click();
    await page.getByText(today.doneAndWritten()).waitFor();
    expect(requests().map(({ sure }) => sure)).toEqual([[], [question.id]]);
  });

  it("is asked again where something else came up, with what was answered kept", async () => {
    const second: Question = {
      id: "day",
      ask: { code: "filled", cell: "Q40", filler: "Q2" },
      stands: "2026-11-24",
      would: "",
    };
    await open((request) =>
      request.sure.length === 1
        ? { written: [], asked: [second], logId: null }
        : asking({ ...request, sure: request.sure.filter((_, index) => index === 0) }),
    );
    await begin("H26-044");
    await save("H26-044");
    await page.getByRole("button", { name: text.writeAnyway() }).click();
    await page.getByText(askedSentence(second.ask)).waitFor();
    expect(await page.locator(".pairs > *").allTextContents()).toEqual([
      ...[text.stands(), dayText("2026-11-24"), text.would(), blank()],
    ]);
    await page.getByRole("button", { name: text.writeAnyway() }).click();
    await page.getByText(today.doneAndWritten()).waitFor();
    expect(requests().at(-1)?.sure).toEqual([question.id, second.id]);
  });

  it("can be left as it is; the entries are still there after that", async () => {
    await open(asking);
    await begin("H26-044");
    await task("H26-044").getByLabel(today.note()).fill("second round");
    await save("H26-044");
    await page.getByRole("button", { name: text.leave() }).click();
    expect(await page.locator("#status").textContent()).toContain(today.nothingWritten());
    expect(requests()).toHaveLength(1);
    await begin("H26-044");
    expect(await task("H26-044").getByLabel(today.note()).inputValue()).toBe("second round");
  });

  it("has no pair of values where it is about no cell", async () => {
    const plain: Question = { id: "moved", ask: { code: "moved" }, stands: null, would: null };
    await open(() => ({ written: [], asked: [plain], logId: null }));
    await begin("H26-044");
    await save("H26-044");
    await page.getByText(askedSentence(plain.ask)).waitFor();
    expect(await page.locator(".pairs").count()).toBe(0);
  });
});

describe("taking back", () => {
  it("says what was left because someone changed it since", async () => {
    const changed: Question = {
      id: "changed",
      ask: { code: "changedSince", header: "Takes", cell: "R40", stands: "90", wrote: "88" },
      stands: 90,
      would: 80,
    };
    await open(undefined, { sidebarTakeBack: () => ({ restored: [], asked: [changed] }) });
    await begin("H26-044");
    await save("H26-044");
    await page.getByRole("button", { name: text.takeBack() }).click();
    await page.getByText(`${text.notTakenBack()}: `).first().waitFor();
    expect(await page.locator(".pairs > *").allTextContents()).toEqual([
      ...[text.stands(), "90", text.would(), "80"],
    ]);
    expect(await marking(task("H26-044")).count()).toBe(0);
  });
});

describe("a task that is not to be done", () => {
  const said = (batch: string) =>
    task(batch).getByRole("button", { name: beginning(today.notToDo()) });

  it("is said so with one press, by who did the last, and taken back", async () => {
    await open();
    await begin("H26-044");
    await task("H26-044").getByLabel(today.who(), { exact: true }).fill("Tavi");
    await save("H26-044");
    await task("H26-044").getByText(today.doneAndWritten()).waitFor();
    await said("H26-039").first().click();
    await task("H26-039").getByText(today.notToDoWritten()).first().waitFor();
    expect(requests().map(({ who, notDone = false }) => [who, notDone])).toEqual([
      ["Tavi", false],
      ["Tavi", true],
    ]);
    expect(requests()[1]).toMatchObject({ batch: "H26-039", count: null, note: "", sure: [] });
    const mark = task("H26-039").first().locator(".mark");
    expect(await mark.textContent()).toBe(today.notToDo());
    await task("H26-039").getByRole("button", { name: text.takeBack() }).first().click();
    await task("H26-039").first().getByText(text.taken()).waitFor();
    expect(await said("H26-039").first().isVisible()).toBe(true);
  });

  it("asks what the script asks, and goes back to its own button", async () => {
    const ask = {
      code: "holdsAlready",
      header: "First release",
      cell: "F2",
      stands: "1",
      would: "2",
    } as const;
    const question: Question = { id: "q", ask, stands: "1", would: "2" };
    await open(({ sure }) => ({
      ...{ written: [], asked: sure.length === 0 ? [question] : [], logId: null },
    }));
    await said("H26-039").first().click();
    await task("H26-039").first().getByText(askedSentence(ask)).waitFor();
    await task("H26-039").first().getByRole("button", { name: text.leave() }).click();
    expect(
      await said("H26-039")
        .first()
        .evaluate((one) => one === document.activeElement),
    ).toBe(true);
  });

  it("is not said of what may be left undone without a word", async () => {
    await open();
    expect(await said("H26-028").count()).toBe(0);
  });
});
