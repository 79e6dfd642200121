import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import * as controlsText from "../../src/sentences/made/controls";
import * as pageText from "../../src/sentences/made/page";
import * as setUp from "../../src/sentences/made/set-up-page";
import { groupAlone } from "../../src/sentences/made/takes";
import * as takesPage from "../../src/sentences/made/takes-page";
import * as todayPageText from "../../src/sentences/made/today-page";
import type { Nursery } from "../workbook/nursery";
import { answersOf, namedIn, namedNursery } from "./named-nursery";
import type { OpenSidebar } from "./open-sidebar";
import { SECTION_KEYS } from "./open-sidebar";
import { sidebarTests } from "./sidebar-tests";
import { unfolded } from "./unfolded";

const openSidebar = sidebarTests();
let sidebar: OpenSidebar;
let page: Page;

const shown = async () =>
  ((await page.locator("[role=tabpanel]:not([hidden])").textContent()) ?? "").replace(
    /[\u2066-\u2069]/g,
    "",
  );
/** Whom the section names in full, in what is seen and in what is read aloud. */
const named = async () =>
  namedIn(await page.locator("[role=tabpanel]:not([hidden])").evaluate((panel) => panel.innerHTML));
const settled = () => page.waitForFunction(() => document.querySelector(":disabled") === null);

async function compare(by: string, evenFor: string): Promise<void> {
  for (const [label, wanted] of [
    [takesPage.compare(), by],
    [takesPage.evenedFor(), evenFor],
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
  await sidebar.section("takes");
  await page.getByLabel(takesPage.evenedFor()).waitFor();
}

// A foreman ticked initials and read "Mary A. in Nera": the shorter name had been replaced within
// the longer one; and with varieties compared, "N. in Mary Ann": the wrong one of the two.
describe("who stands alone", () => {
  it("is named by initials, also where one name holds another", async () => {
    await openTakes(namedNursery());
    await compare("Grafter", "Variety");
    expect(await shown()).toContain(groupAlone({ group: "Mary Ann", stratum: "Nera" }));
    await page.getByLabel(controlsText.initials()).check();
    expect(await shown()).toContain(groupAlone({ group: "M. A.", stratum: "Nera" }));
    expect(await named()).toEqual([]);
  });

  it("keeps the variety's name where varieties are evened for grafters", async () => {
    await openTakes(namedNursery());
    await compare("Variety", "Grafter");
    await page.getByLabel(controlsText.initials()).check();
    const groups = [
      groupAlone({ group: "Amberlow", stratum: "M. A. 2" }),
      groupAlone({ group: "Nera", stratum: "M. A." }),
    ];
    for (const group of groups) expect(await shown()).toContain(group);
    expect(await named()).toEqual([]);
  });
});

/** Looks at every section in turn, everything unfolded. */
async function everySection(): Promise<Record<string, readonly string[]>> {
  const found: Record<string, readonly string[]> = {};
  for (const key of SECTION_KEYS) {
    await sidebar.section(key);
    for (const by of key === "takes" ? ["Grafter", "Variety"] : [""]) {
      if (by !== "") {
        await page.getByRole("combobox", { name: takesPage.by(), exact: true }).selectOption(by);
        await settled();
        await compare(by, by === "Grafter" ? "Variety" : "Grafter");
      }
      await unfold();
      found[`${key} ${by}`.trim()] = await named();
    }
  }
  return found;
}

async function unfold(): Promise<void> {
  const clicked = () =>
    page.evaluate(() => {
      const folded = "[role=tabpanel]:not([hidden]) details:not([open]) > summary";
      const all = [...document.querySelectorAll<HTMLElement>(folded)];
      for (const summary of all) summary.click();
      return all.length;
    });
  // What was folded may hold more of it.
  for (let rounds = 20; rounds > 0 && (await clicked()) > 0; rounds -= 1) await settled();
}

async function printed(by: "place" | "person"): Promise<readonly string[]> {
  await page.getByLabel(todayPageText.roundSheet()).selectOption(by);
  await page.getByRole("button", { name: todayPageText.print() }).click();
  await settled();
  const sheet = page.frameLocator("iframe.print-frame").locator("main");
  await sheet.waitFor({ state: "attached" });
  return namedIn(await sheet.evaluate((main) => main.ownerDocument.documentElement.outerHTML));
}

describe("initials instead of names", () => {
  it("name nobody in full in any section or print", async () => {
    await openTakes(namedNursery());
    await page.getByLabel(controlsText.initials()).check();
    const found = await everySection();
    expect(Object.values(found).flat()).toEqual([]);
    await sidebar.section("today");
    expect(await printed("place")).toEqual([]);
    expect(await printed("person")).toEqual([]);
  });

  // Without this the test above could pass for looking at nothing.
  it("are asked for: else the same looks find everybody", async () => {
    await openTakes(namedNursery());
    const found = await everySection();
    expect(found["takes Grafter"]).toEqual(["Ann", "Kesto", "Mary Ann", "Kito", "Mirel Ando"]);
    expect(found.today).toEqual([...(found["takes Grafter"] ?? []), "Kaya Orla"]);
    expect(found["set-up"]).toContain("Ann");
    await sidebar.section("today");
    expect((await printed("person")).length).toBeGreaterThan(0);
  });

  it("are the same choice wherever they stand, and are kept by the workbook from Set up on", async () => {
    const nursery = namedNursery();
    await openTakes(nursery);
    await sidebar.section("set-up");
    await unfolded(page);
    await page
      .getByRole("tabpanel", { name: pageText.setUp() })
      .getByLabel(controlsText.initials())
      .check();
    await page.getByLabel(setUp.compareBy()).selectOption("Grafter");
    await page.getByText(setUp.everybodySees()).waitFor();
    await page.getByRole("button", { name: setUp.makeTabs() }).click();
    await page.getByText(setUp.tabsAreMade()).waitFor();
    expect(namedIn(JSON.stringify(nursery.values("Takes compared")))).toEqual([]);
    await sidebar.close();
    await openTakes(nursery);
    expect(await page.getByLabel(controlsText.initials()).isChecked()).toBe(true);
    expect(await named()).toEqual([]);
  });
});
