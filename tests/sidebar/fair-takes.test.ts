import axe from "axe-core";
import { describe, expect, it } from "vitest";
import * as controlsText from "../../src/sentences/made/controls";
import * as text from "../../src/sentences/made/takes-page";
import { type Called, calledBy } from "../../src/sidebar/people/people-shown";
import { comparedSentence } from "../../src/sidebar/takes/fair/compared-list";
import { reasonsSentence } from "../../src/sidebar/takes/fair/reasons-part";
import { trendSentence } from "../../src/sidebar/takes/fair/trend-part";
import {
  COMPARED_WORDS,
  periodWords,
  ratedWords,
  TREND_WORDS,
  takesRemarks,
} from "../../src/wording/takes";
import type { Answers } from "./script-runner";
import { sidebarTestsAt } from "./sidebar-tests";
import { compared, person } from "./take-answers";

const plain = (text: string) => text.replace(/[\u2066-\u2069]/g, "");
const named: Called = (texts) => calledBy(texts, false);

describe("the sentences", () => {
  it("say who stands apart, evened, and of whom there is too little", () => {
    const kesto = ratedWords({ name: "Kesto", takeRate: 0.668 });
    const below = { groups: [kesto], number: 1, reading: COMPARED_WORDS.below() };
    const [taken, grafted] = [2749 + 2556 + 3805 + 80, 3934 + 3942 + 4802 + 104];
    const parts = [text.standApart(below)];
    expect(plain(comparedSentence(compared.compared, named))).toBe(
      `${text.standApartAll({ parts, overall: taken / grafted })} ${text.tooFewSome({ groups: 1 })}`,
    );
    const same = compared.compared.map((row) => ({
      ...row,
      reading: "alike" as const,
    }));
    expect(comparedSentence(same, named)).toBe(text.nobodyApart());
    const few = compared.compared.map((row) => ({ ...row, reading: "too few" as const }));
    expect(comparedSentence(few, named)).toBe(text.tooFewAll());
  });

  it("say how the last counted period stands, and which before were out of the ordinary", () => {
    const low = { period: "Jul 2026", reading: TREND_WORDS.low(), rate: 0.368 };
    const last = { period: periodWords({ period: "Oct 2026", isOpen: true }), rate: 0.685 };
    expect(trendSentence(compared.trend.filter(({ rate }) => rate !== null))).toBe(
      [
        text.trend({ ...last, usual: 0.73, judged: text.trendOrdinary() }),
        text.periodsOut({ periods: [text.periodNamed(low)] }),
      ].join(" "),
    );
    expect(trendSentence([])).toBe("");
  });

  it("say what goes with takes", () => {
    expect(plain(reasonsSentence(compared.reasons))).toBe(
      text.reasonsGo({ columns: ["Variety", "Grafter"], linked: 2 }),
    );
    expect(reasonsSentence([])).toBe(text.noReason());
  });
});

describe("the page", () => {
  const { open: begin, sidebar, page } = sidebarTestsAt((opened) => opened.section("takes"));

  async function open(answers: Answers = {}): Promise<void> {
    await begin(answers);
    await page().getByLabel(text.evenedFor()).waitFor();
  }

  it("draws each group on its range with the expected rate marked, and says so to those who listen", async () => {
    await open();
    const overall = (2749 + 2556 + 3805 + 80) / (3934 + 3942 + 4802 + 104);
    const range = (evened: number, from: number, to: number) =>
      page().getByRole("img", { name: text.evenedRange({ evened, from, to, overall }) });
    const kesto = range(0.668, 0.624, 0.709);
    expect(await kesto.locator("line.expected").getAttribute("x1")).toBe("71.9%");
    expect(await kesto.locator("circle.likely").getAttribute("cx")).toBe("66.8%");
    // A group with nobody beside it has no range to draw.
    expect(await page().locator("svg:has(line.expected)").count()).toBe(3);
    expect(await page().getByText(COMPARED_WORDS["too few"]()).first().isVisible()).toBe(true);
  });

  it("rings the periods out of the ordinary, and leaves open ones hollow", async () => {
    await open();
    const chart = page().locator("svg.chart");
    expect(await chart.locator("circle.signal").count()).toBe(1);
    expect(await chart.locator("circle.open").count()).toBe(1);
    expect(await chart.locator("circle.counted").count()).toBe(4);
    expect(await chart.locator("rect.within").count()).toBe(5);
    expect(await chart.getAttribute("aria-label")).toBe(
      trendSentence(compared.trend.filter(({ rate }) => rate !== null)),
    );
  });

  it("shows initials instead of names everywhere, and names again", async () => {
    await open();
    const panel = page().locator("[role=tabpanel]:not([hidden])");
    expect(await panel.textContent()).toContain(ratedWords({ name: "Kesto", takeRate: 0.64 }));
    await page().getByLabel(controlsText.initials()).check();
    const shown = await panel.textContent();
    for (const name of ["Kesto", "Mirel", "Orrin", "Kito"]) expect(shown).not.toContain(name);
    expect(plain(shown ?? "")).toContain(ratedWords({ name: "K.", takeRate: 0.64 }));
    expect(plain(shown ?? "")).toContain("K. 2");
    // Varieties are nobody's name.
    expect(shown).toContain(ratedWords({ name: "Duskpod", takeRate: 0.55 }));
    await page().getByLabel(controlsText.initials()).uncheck();
    expect(await panel.textContent()).toContain(ratedWords({ name: "Kesto", takeRate: 0.64 }));
  });

  it("asks anew for what is chosen, and keeps the keyboard's place", async () => {
    await open();
    await page().getByLabel(text.evenedFor()).selectOption("Variety+Season");
    await page().waitForFunction(() => document.querySelector(":disabled") === null);
    expect(sidebar().asked.at(-1)).toEqual({
      name: "sidebarCompareTakes",
      request: { by: "Grafter", evenFor: "Variety+Season", period: "month" },
    });
    expect(await page().evaluate(() => (document.activeElement as HTMLSelectElement).value)).toBe(
      "Variety+Season",
    );
    await page().getByRole("combobox", { name: text.period(), exact: true }).selectOption("week");
    await page().waitForFunction(() => document.querySelector(":disabled") === null);
    expect(sidebar().asked.at(-1)?.request).toMatchObject({ period: "week" });
    expect(await page().evaluate(() => (document.activeElement as HTMLSelectElement).value)).toBe(
      "week",
    );
  });

  it("warns that going with is not causing, and says what fair use is", async () => {
    await open();
    const remark = takesRemarks(compared.reasonsRemarks, "page") as string;
    expect(await page().getByText(remark).isVisible()).toBe(true);
    await page().getByText(text.fairTitle()).click();
    await page().getByText(text.fairReading()).waitFor();
    await page().evaluate(axe.source);
    const { violations } = (await page().evaluate("axe.run()")) as axe.AxeResults;
    expect(violations.map(({ id }) => id)).toEqual([]);
  });

  it("says plainly where nothing is counted yet, or the script can't answer", async () => {
    const none = { compared: [], alone: [], aloneBatches: 0, trend: [], reasons: [], remarks: [] };
    await open({ sidebarCompareTakes: () => ({ ...compared, ...none }) });
    expect(await page().getByText(text.noneCounted()).count()).toBe(2);
    await sidebar().close();
    await begin({
      sidebarCompareTakes: () => {
        throw new Error("records has no column for Takes");
      },
    });
    await page().getByText("records has no column for Takes").waitFor();
  });

  it("keeps nasty names as text", async () => {
    const nasty = "<img src=x onerror=alert(1)>";
    const rows = compared.compared.map((row) => ({ ...row, group: person(nasty, nasty) }));
    await open({ sidebarCompareTakes: () => ({ ...compared, compared: rows }) });
    expect(await page().locator("[role=tabpanel] img").count()).toBe(0);
    expect(await page().getByText(nasty).count()).toBeGreaterThan(0);
    expect(sidebar().complaints).toEqual([]);
  });
});
