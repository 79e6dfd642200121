import type { Page } from "playwright-core";
import { expect, it } from "vitest";
import * as text from "../../src/sentences/made/writing";
import { fixedAnswers } from "./fixed-answers";
import { sidebarTests } from "./sidebar-tests";

const openSidebar = sidebarTests();

const item = (page: Page, what: string) => page.getByRole("group").filter({ hasText: what }).last();

it("lists the last writes when it is opened, and takes one back days later", async () => {
  const sidebar = await openSidebar({ ...fixedAnswers });
  const { page } = sidebar;
  const asked = (name: string) => sidebar.asked.filter((one) => one.name === name);
  expect(asked("sidebarLastWrites")).toHaveLength(0);
  await page.getByText(text.title()).click();
  const grafting = item(page, text.what({ task: "Grafting", about: "H26-044" }));
  await grafting.getByText(text.when({ when: "2026-11-24 16:20", who: "Orrin" })).waitFor();
  expect(await grafting.textContent()).toContain(
    `Grafts made: 92 ${text.inCell({ where: "Records!O45" })}`,
  );
  const counted = item(page, text.what({ task: "Take count", about: "H26-031" }));
  await counted.waitFor();
  // What was taken back already can't be once more.
  expect(await counted.getByRole("button", { name: text.takeBack() }).count()).toBe(0);
  await page.getByText(text.older()).waitFor();
  await grafting.getByRole("button", { name: text.takeBack() }).click();
  await page
    .getByText(`${text.taken()}: ${text.what({ task: "Grafting", about: "H26-044" })}`)
    .waitFor();
  expect(asked("sidebarTakeBack").map(({ request }) => request)).toEqual([{ logId: "log-9" }]);
  // The list of tasks is read anew.
  expect(asked("sidebarToday").length).toBeGreaterThan(1);
});

it("says that nothing was written yet", async () => {
  const { page } = await openSidebar({
    ...fixedAnswers,
    sidebarLastWrites: () => ({ writes: [], isMore: false }),
  });
  await page.getByText(text.title()).click();
  await page.getByText(text.nothingWritten()).waitFor();
});
