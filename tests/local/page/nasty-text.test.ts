import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import ICAL from "ical.js";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { cut } from "../../../src/sentences/made/controls";
import * as pageText from "../../../src/sentences/made/page";
import * as setUp from "../../../src/sentences/made/set-up-page";
import * as text from "../../../src/sentences/made/today-page";
import { escaped } from "../../support/escaped";
import { isChromiumMissing } from "./chromium";
import { type NurseryPage, openNurseryPage } from "./nursery-page";
import type { LocalPage } from "./opened-page";

declare const localPage: LocalPage;

/** As names of batches: what a person may paste, or somebody may put into a shared sheet. */
const TEXTS = [
  '=IMPORTXML("http://127.0.0.1:9/", "//a")',
  '<img src="x" onerror="window.hurt = true">',
  "+1+1",
  "@SUM(1)",
  "</script><script>window.hurt = true</script>",
  "\u{1F331} \u{1F469}\u200d\u{1F33E} é",
  "שתילים ערוגה 3",
];
// Not one letter alone: "xxx" is what people write where they have no name.
const LONG = "xy".repeat(25_000);

/** Every batch's takes are due; the last one bears a place of 50,000 characters. */
function table(): string {
  const quoted = (text: string) => `"${text.replaceAll('"', '""')}"`;
  const row = (name: string, place: string) =>
    `${quoted(name)},Amberlow,${quoted(place)},2026-10-24,80,,,`;
  return [
    "Batch,Variety,Place,Grafted on,Grafts made,Take count day,Takes,Note",
    ...TEXTS.map((text) => row(text, text)),
    row("Long", LONG),
  ].join("\n");
}

describe.skipIf(isChromiumMissing)("text that would be more than text, in the local page", () => {
  let nursery: NurseryPage;
  let folder = "";
  beforeAll(async () => {
    folder = mkdtempSync(path.join(tmpdir(), "nasty-"));
    const file = path.join(folder, "records.csv");
    writeFileSync(file, table());
    nursery = await openNurseryPage(file);
    await nursery.openSidebar();
    // The table has no column of sowing.
    const makes = setUp.makeWithout({ names: ["Sown"] });
    await nursery.side().getByRole("button", { name: makes }).click();
    await nursery.side().getByText(setUp.made()).waitFor();
    await nursery.settled();
  });
  // Closing checks that nothing was asked of a network.
  afterAll(async () => {
    await nursery?.close();
    rmSync(folder, { recursive: true, force: true });
  });

  const isPlain = async () => {
    for (const frame of [nursery.page.mainFrame(), nursery.side()]) {
      expect(
        await frame.evaluate(() => [
          "hurt" in window,
          document.querySelectorAll("img, script:not([src]):not(head script)").length,
        ]),
      ).toEqual([false, frame === nursery.side() ? 1 : 0]);
    }
  };
  const column = (tab: string, letter: string, first: number) =>
    nursery.page.evaluate(
      ([name, cells]) => {
        const range = localPage.app().getActive().getSheetByName(name).getRange(cells);
        return [range.getFormulas().flat(), range.getValues().flat()];
      },
      [tab, `${letter}${first}:${letter}60`] as const,
    );

  it("is text in the grid: as it came, in the due tab, in the live tabs", async () => {
    for (const [tab, letter, first] of [
      ["records", "A", 2],
      ["Due list", "N", 3],
      ["Stages", "A", 4],
    ] as const) {
      const [formulas, values] = await column(tab, letter, first);
      expect(new Set(formulas)).toEqual(new Set([""]));
      const names = [...new Set(values as string[])].filter((name) => name !== "");
      expect(names.sort()).toEqual([...TEXTS, "Long"].sort());
    }
    const place = await nursery.page.evaluate(
      () => localPage.app().getActive().getSheetByName("records").getRange("C9").getValue().length,
    );
    expect(place).toBe(LONG.length);
    // Selected, a cell's text stands in the bar above the grid too.
    for (let row = 2; row <= TEXTS.length + 2; row += 1) {
      await nursery.page.evaluate(
        (cell) => localPage.app().getActive().getSheetByName("records").getRange(cell).activate(),
        `A${row}`,
      );
    }
    await isPlain();
  });

  it("is text in the sidebar, and stays text when it is written", async () => {
    const today = await nursery.section(pageText.today());
    const shown = await today.textContent();
    for (const one of TEXTS) expect(shown).toContain(one);
    const first = today.getByRole("article").filter({ hasText: "Take count · =IMPORTXML" });
    await first.getByText(text.markDone(), { exact: true }).click();
    await first.getByLabel(new RegExp(`^${escaped(text.counted())}`)).fill("60");
    await first.getByLabel(text.note()).fill(TEXTS[1] ?? "");
    await first.getByRole("button", { name: text.save() }).click();
    await nursery.settled();
    expect(await nursery.shown("records", "G2:H2")).toEqual([["60", TEXTS[1]]]);
    const [formulas] = await column("Write log", "D", 3);
    expect(new Set(formulas)).toEqual(new Set([""]));
    await isPlain();
  });

  it("is text on the printed round sheet", async () => {
    const today = await nursery.section(pageText.today());
    // A browser without a screen is done with printing at once: the sheet is kept to be looked at.
    await nursery.side().evaluate(() => {
      HTMLIFrameElement.prototype.remove = () => {};
    });
    await today.getByRole("button", { name: text.print() }).click();
    const sheet = nursery.side().frameLocator("iframe.print-frame");
    await sheet.locator("table").first().waitFor({ state: "attached" });
    const printed = await sheet.locator("main").textContent();
    for (const one of TEXTS.slice(1)) expect(printed).toContain(one);
    expect(printed).toContain(cut({ text: LONG.slice(0, 160), length: LONG.length }));
    expect(await sheet.locator("script, img").count()).toBe(0);
    await isPlain();
  });

  it("is text in the calendar file", async () => {
    const today = await nursery.section(pageText.today());
    const download = await nursery.download(() =>
      today.getByRole("button", { name: text.calendarFile() }).click(),
    );
    const file = readFileSync(await download.path(), "utf8");
    const calendar = new ICAL.Component(ICAL.parse(file) as never);
    const places = calendar
      .getAllSubcomponents("vevent")
      .map((event) => new ICAL.Event(event).location);
    for (const text of TEXTS.slice(1)) expect(places).toContain(text);
    expect(Math.max(...places.map((place) => place.length))).toBeLessThan(50_000);
  });
});
