import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import * as controls from "../../src/sentences/made/controls";
import * as setUp from "../../src/sentences/made/set-up-page";
import * as text from "../../src/sentences/made/words-page";
import { isolated } from "../../src/sidebar/controls/shortened";
import type { WordsAsked } from "../../src/wire/words";
import { axeViolations } from "./axe-violations";
import { columns, noWords, opened } from "./fixed-answers";
import type { OpenSidebar } from "./open-sidebar";
import { sidebarTests } from "./sidebar-tests";
import { unfolded } from "./unfolded";

const openSidebar = sidebarTests();
let sidebar: OpenSidebar;
let page: Page;

const METHODS = ["Cocoa cleft graft", "Mango cleft graft", "Mango stone graft"];
const plain = (name: string) => ({ text: name, initials: null });
const ASKED: WordsAsked = {
  methods: [
    {
      word: "Cleft",
      fits: ["Cocoa cleft graft", "Mango cleft graft"],
      ...{ batches: 12, plants: 840 },
    },
    { word: "Our way", fits: [], batches: 1, plants: 1 },
  ],
  pairs: [
    {
      column: "Variety",
      ...{ rare: plain("Amberlo"), batches: 1, of: "batches" },
      ...{ common: plain("Amberlow"), others: 23 },
    },
    {
      column: "Grafter",
      ...{ rare: { text: "Kesto M", initials: "K." }, batches: 1, of: "batches" },
      ...{ common: { text: "Kestos M", initials: "K. 2" }, others: 4 },
    },
  ],
  more: 3,
  choices: METHODS,
  columns: ["Variety", "Method"],
};
const REST: WordsAsked = { ...ASKED, methods: ASKED.methods.slice(1), pairs: [], more: 0 };

async function openAsking(words = ASKED): Promise<void> {
  let made = false;
  sidebar = await openSidebar({
    sidebarOpen: () => ({
      ...{ ...opened, setUp: made ? opened.setUp : null, timetables: [] },
      methods: ["Mango stone graft", "Cocoa cleft graft", "Mango cleft graft"],
    }),
    sidebarColumns: ({ columns: changed = [] }) => ({
      ...columns,
      words: changed.length === 0 ? words : REST,
    }),
    sidebarSetUp: () => {
      made = true;
      return { made: ["Due"], kept: [], forgotten: [], moved: [], words: REST };
    },
  });
  page = sidebar.page;
  await page.getByRole("button", { name: setUp.makeTabs() }).waitFor();
  await unfolded(page);
}
const which = (word: string) => page.getByLabel(text.whichMethod({ word: isolated(word) }));
const same = (column: string, rare: string, common: string) =>
  page.getByLabel(text.theSame({ column, ...{ rare: isolated(rare), common: isolated(common) } }));
const yes = (name: string) => text.yesAs({ name: isolated(name) });
const requests = (call: string) =>
  sidebar.asked.filter(({ name }) => name === call).map(({ request }) => request);
const make = async () => {
  await page.getByRole("button", { name: setUp.makeTabs() }).click();
  await page.getByText(setUp.made()).waitFor();
};

// A nursery's "Cleft" fitted three crops, and nothing asked which: the batches were in no answer.
describe("words in cells that nobody but the person knows", () => {
  it("are asked with how many batches and plants, those that fit first", async () => {
    await openAsking();
    const options = await which("Cleft").locator("option").allTextContents();
    expect(options).toEqual([text.choose(), ...METHODS, text.leaveOut(), text.differ()]);
    const shown = (await page.locator("[role=tabpanel]:not([hidden])").textContent()) ?? "";
    expect(shown).toContain(text.methodBorne({ batches: 12, plants: 840, fits: 2 }));
    expect(shown).toContain(text.methodBorne({ batches: 1, plants: 1, fits: 0 }));
    expect(shown).toContain(text.kept({ more: 3 }));
  });

  it("are answered with one choice each, and nothing that was not answered is sent", async () => {
    await openAsking();
    await which("Cleft").selectOption("Cocoa cleft graft");
    await which("Our way").selectOption(text.leaveOut());
    await same("Variety", "Amberlo", "Amberlow").selectOption(yes("Amberlow"));
    await make();
    expect(requests("sidebarSetUp")).toMatchObject([
      {
        words: [
          { word: "Cleft", name: "Cocoa cleft graft", notSame: false },
          { word: "Our way", name: null, notSame: false },
          { word: "Amberlo", name: "Amberlow", notSame: false },
        ],
      },
    ]);
  });

  it("may be told the other way round, or to be two, and an answer can be taken back", async () => {
    await openAsking();
    await same("Variety", "Amberlo", "Amberlow").selectOption(yes("Amberlo"));
    await same("Grafter", "Kesto M", "Kestos M").selectOption(text.areTwo());
    await which("Cleft").selectOption("Cocoa cleft graft");
    await which("Cleft").selectOption(text.choose());
    await make();
    expect(requests("sidebarSetUp")).toMatchObject([
      {
        words: [
          { word: "Amberlow", name: "Amberlo", notSame: false },
          { word: "Kesto M", name: "Kestos M", notSame: true },
        ],
      },
    ]);
  });

  // One answer for all rows of a word was taken for granted.
  it("may differ from row to row: then it is said what to do, and nothing is sent", async () => {
    await openAsking();
    const toDo = text.differToDo({ name: isolated("Cocoa cleft graft") });
    const untilChosen = page.getByText(text.methodBorne({ batches: 12, plants: 840, fits: 2 }));
    expect(await untilChosen.isVisible()).toBe(true);
    const panel = page.locator("#section-set-up");
    expect(await panel.textContent()).not.toContain(toDo);
    expect(await which("Our way").locator("option").allTextContents()).not.toContain(text.differ());
    await which("Cleft").selectOption(text.differ());
    expect(await panel.textContent()).toContain(toDo);
    // What one choice would do for all of them is no longer so.
    expect(await untilChosen.isVisible()).toBe(false);
    expect(await axeViolations(page)).toEqual([]);
    // Check shows nothing before the tabs are made.
    expect(await page.getByRole("button", { name: setUp.goToRows() }).count()).toBe(0);
    await make();
    expect(requests("sidebarSetUp")).toMatchObject([{ words: [] }]);
  });

  it("make a method theirs that was not ticked", async () => {
    await openAsking();
    await page.getByRole("checkbox", { name: "Cocoa cleft graft" }).uncheck();
    await which("Cleft").selectOption("Cocoa cleft graft");
    await make();
    expect(requests("sidebarSetUp")).toMatchObject([
      { methods: ["Mango stone graft", "Mango cleft graft", "Cocoa cleft graft"] },
    ]);
  });

  it("are asked anew when a column of words is read otherwise, and after the tabs were made", async () => {
    await openAsking();
    await which("Our way").selectOption("Mango stone graft");
    await page.getByLabel(setUp.readAsOf({ header: "Weather" })).selectOption("Variety");
    await which("Cleft").waitFor({ state: "detached" });
    expect(requests("sidebarColumns")[1]).toMatchObject({
      columns: [{ header: "Weather", readAs: "Variety" }],
    });
    // What was answered and not yet used stands.
    expect(await which("Our way").locator("option:checked").textContent()).toBe(
      "Mango stone graft",
    );
    await make();
    expect(await which("Our way").locator("option:checked").textContent()).toBe(text.choose());
  });

  it("are called by initials where people are", async () => {
    await openAsking();
    await same("Grafter", "Kesto M", "Kestos M").selectOption(text.areTwo());
    await page.getByLabel(controls.initials()).check();
    const now = same("Grafter", "K.", "K. 2").locator("option:checked");
    expect(await now.textContent()).toBe(text.areTwo());
  });

  it("are no part of the page where there are none", async () => {
    await openAsking(noWords);
    const shown = await page.locator("#section-set-up").textContent();
    expect(shown).not.toContain(text.kept({ more: 0 }));
  });
});
