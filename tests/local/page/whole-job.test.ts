/* Longer than most: one job from beginning to end, whose tests go on from one another. */
import { readFileSync } from "node:fs";
import ICAL from "ical.js";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { readySince } from "../../../src/sentences/made/ahead-page";
import { readyNow } from "../../../src/sentences/made/batches";
import * as checkPage from "../../../src/sentences/made/check-page";
import * as dueCalendar from "../../../src/sentences/made/due-calendar";
import * as pageText from "../../../src/sentences/made/page";
import * as setUp from "../../../src/sentences/made/set-up-page";
import * as takesPage from "../../../src/sentences/made/takes-page";
import * as text from "../../../src/sentences/made/today-page";
import * as writing from "../../../src/sentences/made/writing";
import { countText } from "../../../src/sidebar/controls/count-words";
import { dayText, monthText } from "../../../src/sidebar/controls/day-words";
import { askedSentence } from "../../../src/wording/writing";
import { escaped } from "../../support/escaped";
import { patternOf } from "../../support/pattern-of";
import { isChromiumMissing } from "./chromium";
import { type NurseryPage, openNurseryPage } from "./nursery-page";
import { oneAfterAnother } from "./one-after-another";
import type { LocalPage } from "./opened-page";

declare const localPage: LocalPage;

/** Two languages mixed, text for days and counts, a merged column; a row a batch from row 4 on. */
const MESSY = "sample-sheets/spanish-portuguese/spanish-portuguese.xlsx";
/** Rows of the batches that are worked on. */
const ROW = { "V04/26": 7, "V14/26": 17, "V19/26": 22, "V07/26": 10 };

/**
 * The whole job of a person who never types a formula, in the order in which it is done: the tests
 * go on from one another.
 */
describe.skipIf(isChromiumMissing)("a nursery's morning in the local page", () => {
  let nursery: NurseryPage;
  beforeAll(async () => {
    nursery = await openNurseryPage(MESSY);
    // The office has begun a column whose name nobody can guess.
    await nursery.page.evaluate(() => localPage.type("Lotes", "Q3", "Cinta"));
    await nursery.openSidebar();
  });
  afterAll(() => nursery?.close());
  oneAfterAnother();

  const task = (name: string, batch: string) =>
    nursery
      .side()
      .getByRole("article")
      .filter({ hasText: `${name} · ${batch}` });
  const marking = (name: string, batch: string) =>
    task(name, batch).getByText(text.markDone(), { exact: true });
  const markDone = async (
    name: string,
    batch: string,
    fields: readonly (readonly [label: string, value: string])[],
  ) => {
    await marking(name, batch).click();
    for (const [label, value] of fields) {
      await task(name, batch)
        .getByLabel(new RegExp(`^${escaped(label)}`))
        .fill(value);
    }
    await task(name, batch).getByRole("button", { name: text.save() }).click();
    await nursery.settled();
  };
  const cells = async (tab: string, range: string) => (await nursery.shown(tab, range)).flat();
  /** The live tab of stages: last step and plants of a batch. */
  const stage = async (batch: string) => {
    const rows = await nursery.shown("Stages", "A4:R30");
    const found = rows.find(([name]) => name === batch);
    return [found?.[4], found?.[5], found?.[6]];
  };

  // Where both stood still, nobody would see that anything was going on.
  it("keeps the sidebar going while the page calculates, so that it can tell of progress", async () => {
    const side = nursery.side();
    await side.evaluate("window.ticks = 0; void setInterval(() => { window.ticks += 1; }, 20)");
    // Longer where other programs have the processors: a sidebar that stands still never ticks.
    for (const busyMs of [1000, 5000, 25_000]) {
      await nursery.page.evaluate((ms) => {
        const start = performance.now();
        while (performance.now() - start < ms);
      }, busyMs);
      if (((await side.evaluate("window.ticks")) as number) > 10) break;
    }
    expect(await side.evaluate("window.ticks")).toBeGreaterThan(10);
  });

  it("sets up on a messy table, one column corrected", async () => {
    const side = nursery.side();
    const panel = side.locator("#section-set-up");
    expect(await panel.textContent()).toContain(
      setUp.understood({ batches: 19, used: 16, columns: 17, left: 1 }),
    );
    const readAs = side.getByRole("combobox", {
      name: setUp.readAsOf({ header: "Cinta" }),
    });
    const offered = (await readAs.locator("option").allTextContents()).map((one) =>
      one.toLowerCase(),
    );
    expect(new Set(offered).size).toBe(offered.length);
    await readAs.selectOption("First release day");
    await side.getByRole("button", { name: setUp.makeTabs() }).click();
    await side.getByText(setUp.made()).waitFor();
    await nursery.settled();
    const tabs = await nursery.page.evaluate(() =>
      localPage
        .app()
        .getActive()
        .getSheets()
        .map((one: { getName(): string }) => one.getName()),
    );
    expect(tabs).toEqual([
      ...["Lotes", "Write log", "Nursery timetable", "Nursery settings", "Nursery overview"],
      ...["Due list", "Stages"],
      ...["Ready by month", "Takes", "Takes compared", "Takes by month", "What takes go with"],
      "Checks",
    ]);
    expect(await cells("Nursery settings", "A12:B12")).toEqual(["First release day", "Cinta"]);
    expect(await stage("V04/26")).toEqual(["Take count", "7 Sep 2026", "553"]);
  });

  it("shows the due list, with the corrected column in it", async () => {
    const today = await nursery.section(pageText.today());
    // What can wait is a line that opens.
    await nursery.unfold();
    expect(await today.locator("h2").textContent()).toBe(dayText("2026-11-25"));
    for (const [name, batch] of [
      ["Ready", "V04/26"],
      ["Ready", "V14/26"],
      ["First release", "V19/26"],
    ] as const) {
      expect(await marking(name, batch).count()).toBe(1);
    }
    expect(await task("First release", "V19/26").textContent()).toContain(
      text.plants({ plants: 390 }),
    );
  });

  it("marks three tasks done, one of them counted: they stand in the records", async () => {
    await markDone("First release", "V19/26", [[text.who(), "Davi"]]);
    await markDone("Ready", "V04/26", [
      [text.counted(), "501"],
      [text.note(), "=no formula"],
    ]);
    await markDone("Ready", "V14/26", []);
    // Nobody counted them: that is asked once.
    await nursery.side().getByRole("button", { name: writing.writeAnyway() }).click();
    await nursery.settled();
    expect(await nursery.side().getByText(`${text.doneAndWritten()}: `).count()).toBe(3);
    const days = await nursery.page.evaluate(
      (places) =>
        places.map((place) => {
          const sheet = localPage.app().getActive().getSheetByName("Lotes");
          const value = sheet.getRange(place).getValue();
          if (typeof value === "string") return value;
          return [value.getFullYear(), value.getMonth() + 1, value.getDate()].join("-");
        }),
      [`Q${ROW["V19/26"]}`, `L${ROW["V04/26"]}`, `L${ROW["V14/26"]}`],
    );
    // A new column holds days; among days that were typed as text, one is written as they are.
    expect(days).toEqual(["2026-11-25", "25/11/2026", "25/11/2026"]);
    expect(await cells("Lotes", `M${ROW["V04/26"]}:P${ROW["V04/26"]}`)).toEqual([
      ...["501", "253", "", "=no formula"],
    ]);
    expect(await cells("Lotes", `M${ROW["V14/26"]}`)).toEqual([""]);
  });

  it("answers anew: the live stages, and the list", async () => {
    expect((await stage("V04/26")).slice(0, 1)).toEqual(["Ready"]);
    expect((await stage("V19/26")).slice(0, 1)).toEqual(["First release"]);
    await nursery.side().getByRole("button", { name: text.readAgain() }).first().click();
    await nursery.settled();
    expect(await task("Ready", "V04/26").count()).toBe(0);
    expect(await task("First release", "V19/26").count()).toBe(0);
    expect(await task("Ready", "V07/26").count()).toBe(1);
  });

  it("takes one back: the cells are blank, the log is true, the task is due again", async () => {
    const side = nursery.side();
    const notice = side.locator(".written").filter({ hasText: "V04/26" });
    await notice.getByRole("button", { name: writing.takeBack() }).click();
    await side.getByText(`${writing.taken()}: `).waitFor();
    await nursery.settled();
    expect(await cells("Lotes", `L${ROW["V04/26"]}:P${ROW["V04/26"]}`)).toEqual([
      ...["", "", "253", "", ""],
    ]);
    const log = await nursery.shown("Write log", "A3:P12");
    const states = (batch: string) =>
      log.filter((line) => line.includes(batch)).map((line) => line.filter((one) => one).at(-1));
    expect(new Set(states("V04/26"))).toEqual(new Set(["taken back"]));
    expect(new Set(states("V14/26"))).toEqual(new Set(["written"]));
    await side.getByRole("button", { name: text.readAgain() }).first().click();
    await nursery.settled();
    expect(await task("Ready", "V04/26").count()).toBe(1);
    expect((await stage("V04/26"))[0]).toBe("Take count");
  });

  it("looks ahead by month, with the batches behind a bar", async () => {
    const ahead = await nursery.section(pageText.ahead());
    const number = patternOf(countText(7), { "7": "[\\d,]+" }).source;
    const month = ahead.getByRole("button", { name: monthText("2026-12") });
    expect(await month.textContent()).toMatch(new RegExp(`${number} – ${number}`));
    await ahead.getByRole("button", { name: readyNow() }).click();
    // V14/26 has been marked ready this morning.
    const behind = ahead.locator(".batch").filter({ hasText: "V14/26" });
    expect(await behind.textContent()).toContain(readySince({ day: dayText("2026-11-25") }));
  });

  it("compares takes by a column of the person's own", async () => {
    const takes = await nursery.section(pageText.takes());
    const by = takes.getByRole("combobox", { name: takesPage.by(), exact: true });
    expect(await by.inputValue()).toBe("Variedad");
    await by.selectOption("Enxertador");
    await takes.getByText("Ximena").first().waitFor();
    await nursery.settled();
    expect(await takes.textContent()).toMatch(
      new RegExp(
        `Ximena.*${patternOf(takesPage.counts({ taken: 7777, grafted: 8888, batches: 99 }), { "7,777": "[\\d,]+", "8,888": "[\\d,]+", "7777": "\\d+", "8888": "\\d+", "99 batches": "\\d+ batch(es)?", "99": "\\d+" }).source}`,
      ),
    );
  });

  it("follows a trouble to its cell", async () => {
    const check = await nursery.section(pageText.check());
    await check
      .getByRole("button", { name: checkPage.rowColumn({ row: "17", column: "Fecha injerto" }) })
      .click();
    await nursery
      .side()
      .getByText(checkPage.selected({ cell: "Lotes!H17" }))
      .waitFor();
    const selected = await nursery.page.evaluate(() => {
      const cell = localPage.app().getActive().getActiveCell();
      return [cell.getSheet().getName(), cell.getA1Notation(), cell.getDisplayValue()];
    });
    expect(selected).toEqual(["Lotes", "H17", "31/6/26"]);
  });

  it("downloads the calendar of the due list", async () => {
    const today = await nursery.section(pageText.today());
    await nursery.unfold();
    const tasks = await today.getByRole("article").count();
    const download = await nursery.download(() =>
      today.getByRole("button", { name: text.calendarFile() }).click(),
    );
    expect(download.suggestedFilename()).toBe("due-list-2026-11-25.ics");
    const calendar = new ICAL.Component(
      ICAL.parse(readFileSync(await download.path(), "utf8")) as never,
    );
    const events = calendar
      .getAllSubcomponents("vevent")
      .map((event) => new ICAL.Event(event).summary);
    // The last one names the rows that the records leave out.
    expect(events.at(-1)).toBe(dueCalendar.leftOut());
    expect(events).toHaveLength(tasks + 1);
    expect(events.join("\n")).toMatch(/Ready.*V04\/26/);
  });

  it("overwrites nothing that a second person writes between reading and writing", async () => {
    const row = ROW["V07/26"];
    await nursery.page.evaluate((cell) => {
      // The identity of a write is asked for once everything is read and thought out.
      localPage.meter.before("Utilities.getUuid", () => localPage.type("Lotes", cell, "299"));
    }, `M${row}`);
    await markDone("Ready", "V07/26", [[text.counted(), "301"]]);
    const asked = nursery.side().locator(".asked");
    expect(await asked.textContent()).toMatch(
      new RegExp(
        `${escaped(writing.notYet())}.*${patternOf(askedSentence({ code: "changed", cell: "CELL" }), { CELL: "\\S+" }).source}`,
      ),
    );
    expect(await cells("Lotes", `L${row}:M${row}`)).toEqual(["", "299"]);
    await asked.getByRole("button", { name: writing.leave() }).click();
    // Asked again, both values are shown, and only the person's word overwrites.
    await markDone("Ready", "V07/26", [[text.counted(), "301"]]);
    expect(await asked.textContent()).toMatch(
      new RegExp([writing.stands(), "299", writing.would(), "301"].map(escaped).join(".*")),
    );
    expect(await cells("Lotes", `M${row}`)).toEqual(["299"]);
    expect(await nursery.page.evaluate(() => localPage.isLockFree)).toBe(true);
  });
});
