import axe from "axe-core";
import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { type Called, calledBy } from "../../src/sidebar/people/people-shown";
import { comparedSentence } from "../../src/sidebar/takes/fair/compared-list";
import { reasonsSentence } from "../../src/sidebar/takes/fair/reasons-part";
import { trendSentence } from "../../src/sidebar/takes/fair/trend-part";
import type { OpenSidebar } from "./open-sidebar";
import type { Answers } from "./script-runner";
import { sidebarTests } from "./sidebar-tests";
import { compared, person } from "./take-answers";

const plain = (text: string) => text.replace(/[\u2066-\u2069]/g, "");
const named: Called = (texts) => calledBy(texts, false);

describe("the sentences", () => {
  it("say who stands apart, evened, and of whom there is too little", () => {
    expect(plain(comparedSentence(compared.compared, named))).toBe(
      "Evened, Kesto (67 %) is below the rest; all together took 72 %. For 1 group there are too few batches to tell.",
    );
    const same = compared.compared.map((row) => ({
      ...row,
      reading: "alike" as const,
    }));
    expect(comparedSentence(same, named)).toBe(
      "Nobody stands clearly apart: what differs is no more than batches differ anyway.",
    );
    const few = compared.compared.map((row) => ({ ...row, reading: "too few" as const }));
    expect(comparedSentence(few, named)).toBe("There are too few batches yet to compare anybody.");
  });

  it("say how the last counted period stands, and which before were out of the ordinary", () => {
    expect(trendSentence(compared.trend.filter(({ rate }) => rate !== null))).toBe(
      "2026-10, still open: 69 % took, 73 % is usual: nothing out of the ordinary. Out of the ordinary before: 2026-07 (low, 37 %).",
    );
    expect(trendSentence([])).toBe("");
  });

  it("say what goes with takes", () => {
    expect(plain(reasonsSentence(compared.reasons))).toMatch(
      /^Variety and Grafter go with takes\./,
    );
    expect(reasonsSentence([])).toBe("No recorded column clearly goes with takes.");
  });

  it("have no word that needs a statistician", () => {
    const all = [
      comparedSentence(compared.compared, named),
      trendSentence(compared.trend.slice(0, 5)),
      reasonsSentence(compared.reasons),
    ].join(" ");
    expect(all).not.toMatch(/signific|p-value|deviation|variance|interval|regress|[α-ω]/iu);
  });
});

describe("the page", () => {
  const openSidebar = sidebarTests();
  let sidebar: OpenSidebar;
  let page: Page;

  async function open(answers: Answers = {}): Promise<void> {
    sidebar = await openSidebar(answers);
    page = sidebar.page;
    await sidebar.section("Takes");
    await page.getByLabel("Evened for").waitFor();
  }

  it("draws each group on its range with the expected rate marked, and says so to those who listen", async () => {
    await open();
    const kesto = page.getByRole("img", { name: /^Evened 67 %/ });
    expect(await kesto.getAttribute("aria-label")).toBe(
      "Evened 67 %, range 62 % to 71 %, all together 72 %",
    );
    expect(await kesto.locator("line.expected").getAttribute("x1")).toBe("71.9%");
    expect(await kesto.locator("circle.likely").getAttribute("cx")).toBe("66.8%");
    // A group with nobody beside it has no range to draw.
    expect(await page.getByRole("img", { name: /^Evened/ }).count()).toBe(3);
    expect(await page.getByText("too few to tell").first().isVisible()).toBe(true);
  });

  it("rings the periods out of the ordinary, and leaves open ones hollow", async () => {
    await open();
    const chart = page.locator("svg.chart");
    expect(await chart.locator("circle.signal").count()).toBe(1);
    expect(await chart.locator("circle.open").count()).toBe(1);
    expect(await chart.locator("circle.counted").count()).toBe(4);
    expect(await chart.locator("rect.within").count()).toBe(5);
    expect(await chart.getAttribute("aria-label")).toMatch(/^2026-10, still open: 69 % took/);
  });

  it("shows initials instead of names everywhere, and names again", async () => {
    await open();
    const panel = page.locator("[role=tabpanel]:not([hidden])");
    expect(await panel.textContent()).toContain("Kesto (64 %)");
    await page.getByLabel("Initials instead of names").check();
    const shown = await panel.textContent();
    for (const name of ["Kesto", "Mirel", "Orrin", "Kito"]) expect(shown).not.toContain(name);
    expect(plain(shown ?? "")).toContain("K. (64 %)");
    expect(plain(shown ?? "")).toContain("K. 2");
    // Varieties are nobody's name.
    expect(shown).toContain("Duskpod (55 %)");
    await page.getByLabel("Initials instead of names").uncheck();
    expect(await panel.textContent()).toContain("Kesto (64 %)");
  });

  it("asks anew for what is chosen, and keeps the keyboard's place", async () => {
    await open();
    await page.getByLabel("Evened for").selectOption("Variety+Season");
    await page.waitForFunction(() => document.querySelector(":disabled") === null);
    expect(sidebar.asked.at(-1)).toEqual({
      name: "sidebarCompareTakes",
      request: { by: "Grafter", evenFor: "Variety+Season", period: "month" },
    });
    expect(await page.evaluate(() => (document.activeElement as HTMLSelectElement).value)).toBe(
      "Variety+Season",
    );
    await page.getByRole("combobox", { name: "Period", exact: true }).selectOption("week");
    await page.waitForFunction(() => document.querySelector(":disabled") === null);
    expect(sidebar.asked.at(-1)?.request).toMatchObject({ period: "week" });
    expect(await page.evaluate(() => (document.activeElement as HTMLSelectElement).value)).toBe(
      "week",
    );
  });

  it("warns that going with is not causing, and says what fair use is", async () => {
    await open();
    expect(await page.getByText(/Going with takes is not causing them/).isVisible()).toBe(true);
    await page.getByText("Fair use").click();
    await page.getByText(/A reading is about batches, not about a person/).waitFor();
    await page.evaluate(axe.source);
    const { violations } = (await page.evaluate("axe.run()")) as axe.AxeResults;
    expect(violations.map(({ id }) => id)).toEqual([]);
  });

  it("says plainly where nothing is counted yet, or the script can't answer", async () => {
    const none = { compared: [], alone: [], aloneBatches: 0, trend: [], reasons: [], remark: null };
    await open({ sidebarCompareTakes: () => ({ ...compared, ...none }) });
    expect(await page.getByText("No takes are counted yet.").count()).toBe(2);
    await page.close();
    sidebar = await openSidebar({
      sidebarCompareTakes: () => {
        throw new Error("records has no column for Takes");
      },
    });
    page = sidebar.page;
    await page.getByRole("tab", { name: "Takes" }).click();
    await page.getByText("records has no column for Takes").waitFor();
  });

  it("keeps nasty names as text", async () => {
    const nasty = "<img src=x onerror=alert(1)>";
    const rows = compared.compared.map((row) => ({ ...row, group: person(nasty, nasty) }));
    await open({ sidebarCompareTakes: () => ({ ...compared, compared: rows }) });
    expect(await page.locator("[role=tabpanel] img").count()).toBe(0);
    expect(await page.getByText(nasty).count()).toBeGreaterThan(0);
    expect(sidebar.complaints).toEqual([]);
  });
});
