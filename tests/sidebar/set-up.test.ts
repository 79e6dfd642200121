/* Longer than most: a person's way through Set up, from the tab chosen to the tabs made. */
import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import * as pageText from "../../src/sentences/made/page";
import * as text from "../../src/sentences/made/set-up-page";
import * as words from "../../src/sentences/made/words-page";
import { dayText } from "../../src/sidebar/controls/day-words";
import { isolated } from "../../src/sidebar/controls/shortened";
import { LANGUAGES_READ } from "../../src/sidebar/set-up/languages-read.table";
import type { ColumnGuess } from "../../src/wire/columns";
import type { OpenAnswer } from "../../src/wire/open";
import { columns, noWords, opened } from "./fixed-answers";
import type { OpenSidebar } from "./open-sidebar";
import type { Answers } from "./script-runner";
import { sidebarTests } from "./sidebar-tests";
import { unfolded } from "./unfolded";

const openSidebar = sidebarTests();
let sidebar: OpenSidebar;
let page: Page;

/** A workbook that is not set up until the tabs are made. */
async function openNew(more: Partial<OpenAnswer> = {}, answers: Answers = {}): Promise<void> {
  let made = false;
  sidebar = await openSidebar({
    sidebarOpen: () => ({ ...opened, setUp: made ? opened.setUp : null, timetables: [], ...more }),
    sidebarSetUp: () => {
      made = true;
      return {
        made: ["Due", "Ready"],
        kept: ["Timetable"],
        forgotten: [],
        moved: [],
        words: noWords,
      };
    },
    ...answers,
  });
  page = sidebar.page;
  await unfolded(page);
}
const chosenTab = () => page.locator("[role=tab][aria-selected=true]").textContent();
const panel = () => page.locator("[role=tabpanel]:not([hidden])");
const makeTabs = () => page.getByRole("button", { name: text.makeTabs() }).click();
const makeWithout = (...names: readonly string[]) =>
  page.getByRole("button", { name: text.makeWithout({ names }) }).click();
const yes = (name: string) =>
  page.getByRole("button", { name: text.yesItIs({ name: isolated(name) }) });
const readAs = (header: string) => text.readAsOf({ header });
const others = (tab: string, rows: number) =>
  text.otherTabs({ number: 1, tabs: [text.tabRows({ tab: isolated(tab), rows })] });
/** Where the person chooses nothing of it: nobody is ranked. */
const usualMethod = (method: string) =>
  text.usualMethod({ batches: columns.withoutMethod, method });
const USUAL = { words: [], tables: [], compareBy: "Var.", initials: false, looks: true, tabs: [] };
const requestsOf = (call: string) =>
  sidebar.asked.filter(({ name }) => name === call).map(({ request }) => request);

describe("a workbook that is not set up", () => {
  it("opens on Set up, with the likeliest tab and how its columns are read", async () => {
    await openNew();
    expect(await chosenTab()).toBe(pageText.setUp());
    expect(await page.getByLabel(text.recordsTab()).inputValue()).toBe("Records");
    expect(await page.getByLabel(readAs("Grafted")).inputValue()).toBe("Grafted on");
    const shown = await panel().textContent();
    for (const sample of columns.columns[2]?.samples ?? []) expect(shown).toContain(sample.text);
    const name = isolated("Grafted on");
    const also = text.couldBe({ others: [isolated("Grafts made")] });
    expect(shown).toContain(`${text.isIt({ name })} ${also} ${text.untilAnswer({ name })}`);
  });

  it("says as what a batch without a method is reckoned, of the methods ticked", async () => {
    await openNew({ methods: ["Cocoa cleft graft", "Citrus T-bud"] });
    // No other sentence of it names something of the workbook.
    const said = () => page.locator("#section-set-up p:has(> bdi)");
    expect(await said().textContent()).toBe(usualMethod("Cocoa cleft graft"));
    await page.getByLabel("Cocoa cleft graft").uncheck();
    expect(await said().textContent()).toBe(usualMethod("Citrus T-bud"));
    await page.getByLabel("Citrus T-bud").uncheck();
    expect(await said().isVisible()).toBe(false);
  });

  it("says so in the other sections, and leads back", async () => {
    await openNew();
    await sidebar.section("ahead");
    expect(await panel().textContent()).toContain(pageText.notSetUp());
    expect(requestsOf("sidebarAhead")).toEqual([]);
    await page.getByRole("button", { name: pageText.goToSetUp() }).first().click();
    expect(await chosenTab()).toBe(pageText.setUp());
  });

  it("sends only what was changed, and leads to Today when the tabs are made", async () => {
    await openNew();
    await page.getByLabel(readAs("Var.")).selectOption("Rootstock");
    await page.getByLabel(readAs("Grafted")).selectOption(text.leaveAlone());
    await page.getByLabel(readAs("Takes")).selectOption("Grafts made");
    await page.getByLabel(readAs("Takes")).selectOption("Takes");
    await makeWithout("Grafted on");
    await page.getByText(text.kept()).waitFor();
    expect(requestsOf("sidebarSetUp")).toEqual([
      {
        tab: "Records",
        timetable: null,
        columns: [
          { header: "Var.", readAs: "Rootstock" },
          { header: "Grafted", readAs: null },
        ],
        methods: ["Cocoa cleft graft"],
        ...USUAL,
      },
    ]);
    expect(await page.locator(".written").textContent()).toContain(`${text.made()}DueReady`);
    await page.getByRole("button", { name: text.goToToday() }).click();
    await page.getByText(dayText("2026-11-25")).first().waitFor();
    expect(await chosenTab()).toBe(pageText.today());
  });

  it("tells of a column's meaning given twice", async () => {
    await openNew();
    const headers = ["Weather", "Takes"].map((one) => isolated(one));
    const twice = text.readTwice({ number: 2, readAs: isolated("Takes"), headers });
    await page.getByLabel(readAs("Weather")).selectOption("Takes");
    expect(await panel().textContent()).toContain(twice);
    await page.getByLabel(readAs("Weather")).selectOption(text.leaveAlone());
    expect(await panel().textContent()).not.toContain(twice);
  });

  it("keeps corrections while the person looks at another section", async () => {
    await openNew();
    await page.getByLabel(readAs("Var.")).selectOption("Rootstock");
    // The cells of a column of names are asked about once it is read as one.
    await page.waitForFunction(() => document.querySelector(":disabled") === null);
    const asked = requestsOf("sidebarColumns").length;
    await sidebar.section("orders");
    await sidebar.section("set-up");
    expect(await page.getByLabel(readAs("Var.")).inputValue()).toBe("Rootstock");
    expect(requestsOf("sidebarColumns")).toHaveLength(asked);
  });

  it("reads the columns of another tab when it is chosen", async () => {
    await openNew();
    await page.getByLabel(text.recordsTab()).selectOption("Old list");
    await page.waitForFunction(() => document.querySelector(":disabled") === null);
    expect(requestsOf("sidebarColumns")).toEqual([
      { tab: "Records", timetable: null },
      { tab: "Old list", timetable: null },
    ]);
  });

  // A second season in another tab was silently not read.
  it("says which tabs with batches are not read, and what to do about it", async () => {
    await openNew();
    const note = () => panel().locator(".note").first().textContent();
    expect(await note()).toBe(others("Old list", 12));
    await page.getByLabel(text.recordsTab()).selectOption("Old list");
    expect(await note()).toBe(others("Records", 64));
  });

  it("says nothing of the kind where there is but one", async () => {
    await openNew({ candidates: [{ tab: "Records", rows: 64 }] });
    expect(await panel().textContent()).not.toContain(
      text.otherTabs({ number: 1, tabs: [] }).slice(0, 20),
    );
  });

  // People who keep a timetable got a second one that they had not written.
  it("takes the timetable that the person keeps, and needs no methods then", async () => {
    const ours = { tab: "Our steps", methods: ["Hill way"], trouble: null };
    const faulty = { tab: "Old plan", methods: [], trouble: "timetable row 3, Step: no name" };
    await openNew({ timetables: [faulty, ours] });
    const chosen = page.getByLabel(text.timetable());
    expect(await chosen.inputValue()).toBe("Our steps");
    expect(await panel().textContent()).toContain(
      text.cantUse({ tab: isolated("Old plan"), why: faulty.trouble }),
    );
    expect(await page.getByLabel("Cocoa cleft graft").count()).toBe(0);
    await makeTabs();
    await page.getByText(text.kept()).waitFor();
    expect(requestsOf("sidebarColumns")).toEqual([{ tab: "Records", timetable: "Our steps" }]);
    expect(requestsOf("sidebarSetUp")).toEqual([
      { tab: "Records", timetable: "Our steps", columns: [], methods: [], ...USUAL },
    ]);
  });

  it("makes a timetable from the built-in steps where the person chooses so", async () => {
    await openNew({ timetables: [{ tab: "Our steps", methods: ["Hill way"], trouble: null }] });
    await page.getByLabel(text.timetable()).selectOption("");
    await unfolded(page);
    await page.getByLabel("Cocoa cleft graft").waitFor();
    await makeTabs();
    await page.getByText(text.kept()).waitFor();
    expect(requestsOf("sidebarSetUp")).toEqual([
      { tab: "Records", timetable: null, columns: [], methods: ["Cocoa cleft graft"], ...USUAL },
    ]);
  });

  const at = (name: string, letter: string) => text.inColumn({ name, letter });
  const found = (...names: readonly string[]) => text.essentialsFound({ names });
  const guessed = (...names: readonly string[]) => text.essentialsGuessed({ names });
  const missing = (...names: readonly string[]) => text.essentialsMissing({ names });

  // People made tabs from a table whose batches and takes were not read, and nothing said so.
  describe("which lacks columns that answers need", () => {
    const left = (header: string, column: number, best: string): ColumnGuess => ({
      ...{ column, header, readAs: null, sure: "guessed", others: [best] },
      ...{ holds: "text", samples: [{ text: "C26-01", initials: null }] },
    });
    const [, ...others] = columns.columns;
    const answer = () => ({ ...columns, columns: [left("Bag lot", 0, "Batch"), ...others] });

    it("says at the top what is missing, what it costs, and the likeliest column", async () => {
      await openNew({}, { sidebarColumns: answer });
      const shown = await panel().textContent();
      expect(shown).toContain(missing("Batch"));
      expect(shown).toContain(text.costOfNone({ what: "batch" }));
      expect(shown).not.toContain(text.costOfNone({ what: "takes" }));
      const options = page
        .getByLabel(text.whichIs({ name: "Batch" }))
        .first()
        .locator("option");
      expect((await options.allTextContents()).slice(0, 2)).toEqual([
        text.noSuchColumn(),
        text.likelyColumn({ header: isolated("Bag lot") }),
      ]);
    });

    it("makes the tabs only by a button that says without what", async () => {
      await openNew({}, { sidebarColumns: answer });
      const makes = page.getByRole("button", { name: text.makeTabs(), exact: true });
      expect(await makes.count()).toBe(0);
      await makeWithout("Batch");
      await page.getByText(text.kept()).waitFor();
      expect(requestsOf("sidebarSetUp")).toMatchObject([{ columns: [] }]);
    });

    it("reads the column that is chosen there, and shows it below, too", async () => {
      await openNew({}, { sidebarColumns: answer });
      const which = page.getByLabel(text.whichIs({ name: "Batch" })).first();
      await page.getByRole("button", { name: text.itIs({ header: isolated("Bag lot") }) }).click();
      expect(await page.getByLabel(readAs("Bag lot")).inputValue()).toBe("Batch");
      expect(await panel().textContent()).toContain(found(at("Batch", "A"), at("Takes", "F")));
      await page.getByLabel(readAs("Bag lot")).selectOption(text.leaveAlone());
      expect(await which.inputValue()).toBe("");
      expect(await panel().textContent()).toContain(missing("Batch"));
      await which.selectOption("0");
      await makeTabs();
      await page.getByText(text.kept()).waitFor();
      expect(requestsOf("sidebarSetUp")).toMatchObject([
        { columns: [{ header: "Bag lot", readAs: "Batch" }] },
      ]);
    });

    it("says what a column that is left alone holds and may be", async () => {
      await openNew({}, { sidebarColumns: answer });
      expect(await panel().textContent()).toContain(
        `${text.leftHolds({ holds: "text" })} ${text.isIt({ name: isolated("Batch") })} ${text.untilAnswerNot()}`,
      );
    });
  });

  // "Nothing is missing" stood above two columns that were to be checked.
  it("counts a guess as found only once a person has said yes to it", async () => {
    await openNew();
    const shown = () => panel().textContent();
    expect(await shown()).toContain(found(at("Batch", "A"), at("Takes", "F")));
    expect(await shown()).toContain(guessed(at("Grafted on", "C")));
    await yes("Grafted on").click();
    const all = [at("Batch", "A"), at("Grafted on", "C"), at("Takes", "F")];
    expect(await shown()).toContain(found(...all));
    expect(await shown()).not.toContain(guessed(at("Grafted on", "C")));
    expect(await page.getByRole("button", { name: text.makeTabs(), exact: true }).count()).toBe(1);
  });

  // A guess that was right could not be said to be right: it was asked about each time.
  describe("columns that were guessed", () => {
    it("are said to be right by one press, which is sent, and can be taken back", async () => {
      await openNew();
      await yes("Grafted on").click();
      expect(await panel().textContent()).toContain(text.youSaid({ name: isolated("Grafted on") }));
      const again = page.getByRole("button", { name: text.askAgain() });
      expect(await again.evaluate((one) => one === document.activeElement)).toBe(true);
      await again.press("Enter");
      expect(await yes("Grafted on").evaluate((one) => one === document.activeElement)).toBe(true);
      await yes("Variety").press("Enter");
      await makeTabs();
      await page.getByText(text.kept()).waitFor();
      expect(requestsOf("sidebarSetUp")).toMatchObject([
        { columns: [{ header: "Var.", readAs: "Variety" }] },
      ]);
    });

    it("say where they stand, and one without a header why it is not read", async () => {
      await openNew();
      const shown = await panel().textContent();
      expect(shown).toContain(text.columnAt({ header: "Grafted", letter: "C" }));
      expect(shown).toContain(text.noHeader({ letter: "E" }));
      expect(shown).toContain(
        `${text.leftHolds({ holds: "text" })} ${text.giveHeader({ letter: "E" })}`,
      );
    });

    it("are left alone by one press where they are read as nothing", async () => {
      const [batch, , ...rest] = columns.columns;
      const lot: ColumnGuess = {
        ...{ column: 1, header: "Lot", readAs: null, sure: "guessed", others: ["Variety"] },
        ...{ holds: "text", samples: [] },
      };
      const all = [batch as ColumnGuess, lot, ...rest];
      await openNew({}, { sidebarColumns: () => ({ ...columns, columns: all }) });
      await page.getByRole("button", { name: text.noLeaveIt() }).click();
      await makeTabs();
      await page.getByText(text.kept()).waitFor();
      expect(requestsOf("sidebarSetUp")).toMatchObject([
        { columns: [{ header: "Lot", readAs: null }] },
      ]);
    });
  });

  // The button stood below all questions, out of view, while "Read again" was in view.
  describe("the button that makes the tabs", () => {
    const inView = (name: string) =>
      page.getByRole("button", { name }).evaluate((one) => {
        const { top, bottom, left } = one.getBoundingClientRect();
        return (
          top >= 0 &&
          bottom <= window.innerHeight &&
          document.elementFromPoint(left + 5, (top + bottom) / 2) === one
        );
      });

    it("is in view wherever the page stands, and a question is not hidden under it", async () => {
      await openNew();
      for (const part of [0, 0.3, 0.7, 1]) {
        await page.evaluate((at) => {
          window.scrollTo(0, at * document.documentElement.scrollHeight);
        }, part);
        expect(await inView(text.makeTabs())).toBe(true);
      }
      await page.getByRole("button", { name: text.nextQuestion() }).click();
      expect(await inView(text.yesItIs({ name: isolated("Variety") }))).toBe(true);
    });

    it("says how many questions are open, and leads to the next by keyboard", async () => {
      await openNew();
      const shown = () => panel().textContent();
      const open = (questions: number) => text.openQuestions({ questions });
      const next = page.getByRole("button", { name: text.nextQuestion() });
      const focused = () => page.evaluate(() => document.activeElement?.textContent);
      expect(await shown()).toContain(open(4));
      expect(await shown()).not.toContain(text.notUsedYet());
      await next.press("Enter");
      expect(await focused()).toBe(text.yesItIs({ name: isolated("Variety") }));
      await page.keyboard.press("Enter");
      expect(await shown()).toContain(open(3));
      expect(await shown()).toContain(text.notUsedYet());
      await next.press("Enter");
      expect(await focused()).toBe(text.yesItIs({ name: isolated("Grafted on") }));
      await page.keyboard.press("Enter");
      await next.press("Enter");
      const word = page.getByLabel(words.whichMethod({ word: isolated("Cleft") }));
      expect(await word.evaluate((one) => one === document.activeElement)).toBe(true);
      await word.selectOption("Cocoa cleft graft");
      await next.press("Enter");
      const names = { rare: isolated("Amberlo"), common: isolated("Amberlow") };
      const same = page.getByLabel(words.theSame({ column: "Variety", ...names }));
      await same.selectOption(words.areTwo());
      expect(await shown()).toContain(open(0));
      expect(await next.isVisible()).toBe(false);
      await makeTabs();
      await page.getByText(text.kept()).waitFor();
      expect(await shown()).not.toContain(text.notUsedYet());
    });
  });

  it("leads past a question that is left open, and at the end to the first again", async () => {
    await openNew();
    const next = page.getByRole("button", { name: text.nextQuestion() });
    const led: (string | null)[] = [];
    for (let presses = 0; presses < 5; presses += 1) {
      await next.click();
      led.push(
        await page.evaluate(
          () =>
            document.activeElement?.getAttribute("aria-label") ??
            document.activeElement?.textContent ??
            null,
        ),
      );
    }
    const [variety, grafted] = ["Variety", "Grafted on"].map((name) =>
      text.yesItIs({ name: isolated(name) }),
    );
    const names = { rare: isolated("Amberlo"), common: isolated("Amberlow") };
    expect(led).toEqual([
      ...[variety, grafted, words.whichMethod({ word: isolated("Cleft") })],
      ...[words.theSame({ column: "Variety", ...names }), variety],
    ]);
  });

  // What was corrected and not yet used was gone, without a word.
  it("keeps what was said while the table is read again", async () => {
    await openNew();
    await yes("Grafted on").click();
    await page
      .getByLabel(words.whichMethod({ word: isolated("Cleft") }))
      .selectOption("Mango cleft graft");
    await page.getByRole("button", { name: text.readAgain() }).click();
    await page.waitForFunction(() => document.querySelector(":disabled") === null);
    expect(await panel().textContent()).toContain(text.youSaid({ name: isolated("Grafted on") }));
    await makeTabs();
    await page.getByText(text.kept()).waitFor();
    expect(requestsOf("sidebarSetUp")).toMatchObject([
      {
        columns: [{ header: "Grafted", readAs: "Grafted on" }],
        words: [{ word: "Cleft", name: "Mango cleft graft" }],
      },
    ]);
  });

  it("makes no tabs without a method", async () => {
    await openNew();
    await page.getByLabel("Cocoa cleft graft").uncheck();
    await makeTabs();
    await page.getByText(text.noMethod({ group: text.moreChoices() })).waitFor();
    expect(requestsOf("sidebarSetUp")).toEqual([]);
  });

  it("warns of zones that differ, and says what to do where no tab holds batches", async () => {
    const zones = { workbook: "Asia/Jakarta", script: "Europe/Paris" };
    await openNew({ zones, candidates: [] });
    expect(await panel().textContent()).toContain(text.zones(zones));
    expect(await panel().textContent()).toContain(text.noBatches({ languages: LANGUAGES_READ }));
    expect(requestsOf("sidebarColumns")).toEqual([]);
  });

  it("still says which tabs were made if what comes after fails", async () => {
    let opens = 0;
    await openNew(
      {},
      {
        sidebarOpen: () => {
          opens += 1;
          if (opens > 1) throw new Error("The workbook is busy. Try again.");
          return { ...opened, setUp: null };
        },
      },
    );
    await makeTabs();
    await page.getByText("The workbook is busy. Try again.").waitFor();
    expect(await page.locator(".written").textContent()).toContain(`${text.made()}DueReady`);
  });
});
