import { describe, expect, it } from "vitest";
import * as controls from "../../src/sentences/made/controls";
import * as todayPageText from "../../src/sentences/made/today-page";
import * as words from "../../src/sentences/made/work";
import * as text from "../../src/sentences/made/work-page";
import { weekdayText } from "../../src/sidebar/controls/day-words";
import { hoursCounted, hoursOfHours } from "../../src/sidebar/controls/hours-words";
import { isolated } from "../../src/sidebar/controls/shortened";
import { statusTally } from "../../src/sidebar/today/places";
import type { WorkAnswer } from "../../src/wire/work";
import { partRemarks, tooMuchDays, tooMuchSum } from "../../src/wording/work";
import { axeViolations } from "./axe-violations";
import { today } from "./fixed-answers";
import { expectGolden, markupOf } from "./golden";
import { onceMade } from "./once-made";
import type { Answers } from "./script-runner";
import { sidebarTestsAt } from "./sidebar-tests";
import { work } from "./work-answers";

const LINE = text.fortnight();
const PART = "details.group:has(fieldset)";
const none: WorkAnswer = {
  ...work,
  ...{ crewTab: null, closedTab: null, persons: [], days: [], overloads: [], parts: [] },
  ...{ unassigned: [], remark: null },
};

it("says hours without needless decimals", () => {
  expect([0, 0.02, 1, 0.1 + 0.2, 6.5, 16.73].map(hoursCounted)).toEqual([
    controls.hours({ hours: "0", form: "many" }),
    controls.hours({ hours: controls.underTenth(), form: "many" }),
    controls.hours({ hours: "1", form: "one" }),
    ...["0.3", "6.5", "16.7"].map((number) => controls.hours({ hours: number, form: "many" })),
  ]);
  expect(hoursOfHours(6.5, 8)).toBe(
    controls.hoursOf({ asked: "6.5", hours: controls.hours({ hours: "8", form: "many" }) }),
  );
});

describe("the fortnight in Today", () => {
  const tally = todayPageText.tallyAll({ tally: statusTally(today.tasks) });
  const {
    open: begin,
    sidebar,
    page,
  } = sidebarTestsAt((opened) => opened.page.getByText(tally).waitFor());
  async function open(answers: Answers = {}): Promise<void> {
    await begin(answers);
    await page().getByText(LINE).click();
    await page().locator(PART).waitFor();
    await settled();
  }
  const settled = () => page().waitForFunction(() => document.querySelector(":disabled") === null);
  const asked = () => sidebar().asked.filter(({ name }) => name === "sidebarWork");
  const day = (name: string) => page().locator(".day").filter({ hasText: name });

  it("is asked for when it is opened, so that the list never waits for it", async () => {
    await begin();
    expect(asked()).toEqual([]);
    await page().getByText(LINE).click();
    await page().locator(PART).waitFor();
    expect(asked()).toEqual([{ name: "sidebarWork", request: { days: 14, initials: false } }]);
    // Open, it is read anew with the list.
    await page().getByRole("button", { name: todayPageText.readAgain() }).click();
    await settled();
    await expect.poll(() => asked().length).toBe(2);
    await page().getByText(LINE).click();
    await page().getByRole("button", { name: todayPageText.readAgain() }).click();
    await settled();
    expect(asked()).toHaveLength(2);
  });

  it("names a stretch of too much with its sum and what mends it, before the days", async () => {
    await open();
    const note = page().locator(`${PART} .note`).first();
    const [overload] = work.overloads;
    expect(overload).toBeDefined();
    if (overload === undefined) return;
    expect(await note.textContent()).toContain(`${tooMuchDays(overload)} ${tooMuchSum(overload)}`);
    expect(await note.textContent()).toContain("H26-051, H26-052");
    expect(await day(weekdayText("2026-11-26")).textContent()).toBe(
      `${weekdayText("2026-11-26")}${hoursOfHours(14, 14)}${text.tooMuch()}`,
    );
    expect(await day(weekdayText("2026-11-25")).textContent()).toBe(
      `${weekdayText("2026-11-25")}${hoursOfHours(8.6, 14)}${text.unratedTasks({ tasks: 1 })}`,
    );
    expect(await day(weekdayText("2026-11-29")).textContent()).toBe(
      `${weekdayText("2026-11-29")}${text.closed()}`,
    );
    expect(await page().locator(".day").count()).toBe(14);
  });

  it("shows who does what on a day that is opened, who is free and who is not there", async () => {
    await open();
    await day(weekdayText("2026-11-25")).locator("summary").click();
    const plan = day(weekdayText("2026-11-25")).locator(".behind");
    await plan.waitFor();
    const hands = await plan.locator(".hands").allTextContents();
    const plants = (count: number) => text.plants({ plants: count });
    expect(hands[0]).toContain(
      `Kesto · ${hoursOfHours(2.6, 6)}First release · H26-039Bay 2 north · ${plants(104)}`,
    );
    expect(hands[1]).toContain(`Mirel · ${hoursOfHours(6, 8)}Grafting · H26-051`);
    expect(hands[1]).toContain(words.partOf({ plants: 420 }));
    expect(hands[2]).toContain(`${text.hoursUnknown()}Union closed · H26-028`);
    expect(hands[2]).toContain(plants(1090));
    await day(weekdayText("2026-11-30")).locator("summary").click();
    await day(weekdayText("2026-11-30")).getByText(`${text.awayHands()} Kesto`).waitFor();
    expect(await day(weekdayText("2026-11-30")).textContent()).toContain(
      `${text.freeHands()} Mirel (${hoursCounted(8)})`,
    );
  });

  it("lists what is set into none of these days, and says what could not be read", async () => {
    await open();
    await page()
      .getByText(text.unplaced({ tasks: 1 }))
      .click();
    await page()
      .getByText(partRemarks(work.unassigned[0]?.remarks ?? []))
      .waitFor();
    const shown = await page().locator(PART).textContent();
    expect(shown).toContain(work.remark);
    expect(shown).toContain(text.unrated({ tasks: 1 }));
  });

  it("has the markup that was looked at, and nothing that axe-core finds wrong with days open", async () => {
    await open();
    for (const name of ["2026-11-25", "2026-11-26", "2026-11-30"].map(weekdayText)) {
      await day(name).locator("summary").click();
      await day(name).locator(".behind").waitFor();
    }
    expect(await axeViolations(page())).toEqual([]);
    expectGolden("fortnight", await markupOf(page(), PART));
    await page().setViewportSize({ width: 150, height: 400 });
    const wide = await page().evaluate(() => {
      const { scrollWidth, clientWidth } = document.documentElement;
      return scrollWidth - clientWidth;
    });
    expect(wide).toBe(0);
    expect(sidebar().complaints).toEqual([]);
  });

  it("is opened, and a day in it, by keyboard alone", async () => {
    await begin();
    const focused = () => page().evaluate(() => document.activeElement?.textContent ?? "");
    await page().getByRole("button", { name: todayPageText.calendarFile() }).focus();
    await page().keyboard.press("Tab");
    expect(await focused()).toBe(LINE);
    await page().keyboard.press("Enter");
    await page().locator(PART).waitFor();
    await settled();
    expect(await focused()).toBe(LINE);
    await page().keyboard.press("Tab");
    expect(await focused()).toContain(weekdayText("2026-11-25"));
    await page().keyboard.press("Space");
    await day(weekdayText("2026-11-25")).locator(".behind").waitFor();
  });

  it("says plainly when everything fits, and promises nothing where hours are not known", async () => {
    const fitting = { ...work, overloads: [], unassigned: [], remark: null };
    const unrated = work.parts.filter(({ hours }) => hours === null);
    const rated = work.parts.filter(({ hours }) => hours !== null);
    const said = async (parts: WorkAnswer["parts"]) => {
      await open({ sidebarWork: () => ({ ...fitting, parts }) });
      const text = (await page().locator(PART).textContent()) ?? "";
      await sidebar().close();
      return text;
    };
    const all = await said(rated);
    expect(all).toContain(text.fits({ hours: hoursOfHours(61.9, 162) }));
    expect(all).not.toContain(text.allUnrated());
    const some = await said([...rated, ...unrated]);
    expect(some).toContain(text.fitsRated({ hours: hoursOfHours(61.9, 162) }));
    expect(some).toContain(text.unrated({ tasks: 1 }));
    const none = await said(unrated);
    expect(none).toContain(text.allUnrated());
    expect(none).not.toContain("61.9");
  });

  it("says which tab to make where there is none, and makes it", async () => {
    const tab = onceMade(none, { ...none, crewTab: "Crew" });
    await open({ sidebarWork: tab.read, sidebarMakeCrew: tab.make({ tab: "Crew" }) });
    await page()
      .getByText(text.noCrew({ columns: none.crewHeader }))
      .waitFor();
    expect(await axeViolations(page())).toEqual([]);
    await page().getByRole("button", { name: text.makeCrew() }).click();
    await page()
      .getByText(text.nobodyNamed({ tab: isolated("Crew"), columns: none.crewHeader }))
      .waitFor();
    await page()
      .getByText(text.madeCrew({ tab: "Crew" }))
      .waitFor();
    expect(await page().evaluate(() => document.activeElement?.textContent)).toBe(LINE);
    expect(await page().getByRole("button", { name: text.makeCrew() }).count()).toBe(0);
  });

  it("says what went wrong, and tries again when it is opened again", async () => {
    let fails = true;
    await begin({
      sidebarWork: () => {
        if (fails) throw new Error("a cell of crew row 3 is still loading");
        return work;
      },
    });
    await page().getByText(LINE).click();
    await page().getByText("a cell of crew row 3 is still loading").waitFor();
    fails = false;
    await page().getByText(LINE).click();
    await page().getByText(LINE).click();
    await page().locator(PART).waitFor();
  });

  it("keeps nasty names as text", async () => {
    const nasty = "<img src=x onerror=alert(1)>";
    const nastyWork: WorkAnswer = {
      ...work,
      persons: [nasty, "Mirel"],
      parts: work.parts.map((part) => ({ ...part, person: nasty, batch: nasty })),
    };
    await open({ sidebarWork: () => nastyWork });
    await day(weekdayText("2026-11-25")).locator("summary").click();
    await day(weekdayText("2026-11-25")).locator(".behind").waitFor();
    expect(await page().locator("[role=tabpanel] img").count()).toBe(0);
    expect(await page().getByText(nasty).count()).toBeGreaterThan(0);
    await page().getByLabel(todayPageText.roundSheet()).selectOption("person");
    await page().getByRole("button", { name: todayPageText.print() }).click();
    const sheet = page().frameLocator("iframe.print-frame").locator("main");
    await sheet.waitFor({ state: "attached" });
    expect(await sheet.locator("img, script").count()).toBe(0);
    expect(await sheet.textContent()).toContain(nasty);
    expect(sidebar().complaints).toEqual([]);
  });
});
