import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import type { Nursery } from "../workbook/nursery";
import { answersOf, namedIn, namedNursery } from "./named-nursery";
import type { OpenSidebar } from "./open-sidebar";
import { sidebarTests } from "./sidebar-tests";

const openSidebar = sidebarTests();
let sidebar: OpenSidebar;
let page: Page;

const shown = async () =>
  ((await page.locator("[role=tabpanel]:not([hidden])").textContent()) ?? "").replace(
    /[\u2066-\u2069]/g,
    "",
  );
const settled = () => page.waitForFunction(() => document.querySelector(":disabled") === null);

async function compare(by: string, evenFor: string): Promise<void> {
  for (const [label, wanted] of [
    ["Compare", by],
    ["Evened for", evenFor],
  ] as const) {
    const field = page.getByRole("combobox", { name: label, exact: true });
    if ((await field.inputValue()) === wanted) continue;
    await field.selectOption(wanted);
    await settled();
  }
}

async function openTakes(nursery: Nursery): Promise<void> {
  sidebar = await openSidebar(answersOf(nursery));
  page = sidebar.page;
  await sidebar.section("Takes");
  await page.getByLabel("Evened for").waitFor();
}

// A foreman ticked initials and read "Mary A. in Nera": the shorter name had been replaced within
// the longer one; and with varieties compared, "N. in Mary Ann": the wrong one of the two.
describe("who stands alone", () => {
  it("is named by initials, also where one name holds another", async () => {
    await openTakes(namedNursery());
    await compare("Grafter", "Variety");
    expect(await shown()).toContain("Nobody to compare with: Mary Ann in Nera");
    await page.getByLabel("Initials instead of names").check();
    expect(await shown()).toContain("Nobody to compare with: M. A. in Nera");
    expect(namedIn(await shown())).toEqual([]);
  });

  it("keeps the variety's name where varieties are evened for grafters", async () => {
    await openTakes(namedNursery());
    await compare("Variety", "Grafter");
    await page.getByLabel("Initials instead of names").check();
    expect(await shown()).toContain("Nobody to compare with: Amberlow in M. A. 2; Nera in M. A. (");
    expect(namedIn(await shown())).toEqual([]);
  });
});
