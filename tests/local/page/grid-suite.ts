import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { readXlsx } from "../../../src/local/xlsx-in";
import { otherKind } from "../../../src/sentences/made/file-faults";
import { isOpen } from "../../../src/sentences/made/local-page";
import { isChromiumMissing } from "./chromium";
import { clickCell, readCells, typeInGrid } from "./grid";
import { type LocalPage, openedPage } from "./opened-page";

declare const localPage: LocalPage;

describe.skipIf(isChromiumMissing)("the grid of the local page", () => {
  const opened = openedPage();

  it("prints its address and does not open a browser when told so", () => {
    expect(opened.printed).toEqual([isOpen({ file: "trial.csv", address: opened.address() })]);
  });

  it("shows the grid with the file in it, and the add-in's menu", async () => {
    const page = opened.page();
    expect(await page.textContent("#file-name")).toBe("trial.csv");
    expect(await page.textContent("#menus .opener")).toBe("Trial");
    expect(await readCells(page, "trial", "A1:C2")).toEqual([
      ["Batch", "Grafted", "Day"],
      ["B1", "10", "2026-03-14"],
    ]);
    const drawn = await page.evaluate(() => {
      const canvases = Array.from(document.querySelectorAll<HTMLCanvasElement>("#grid canvas"));
      const largest = canvases.sort((a, b) => b.width * b.height - a.width * a.height)[0];
      const data = largest
        ?.getContext("2d")
        ?.getImageData(0, 0, largest.width, largest.height).data;
      let dark = 0;
      for (let at = 0; at < (data?.length ?? 0); at += 4) {
        if ((data?.[at] ?? 255) < 100 && (data?.[at + 3] ?? 0) > 200) dark += 1;
      }
      return { width: largest?.width ?? 0, dark };
    });
    expect(drawn.width).toBeGreaterThan(900);
    expect(drawn.dark).toBeGreaterThan(500);
  });

  it("calculates a function of the add-in that is typed in, and again when a cell changes", async () => {
    const page = opened.page();
    await typeInGrid(page, "E2", "=DOUBLED(B2:B4)");
    expect(await readCells(page, "trial", "E2:E4")).toEqual([["20"], ["40"], ["60"]]);
    await typeInGrid(page, "B3", "25");
    expect(await readCells(page, "trial", "E2:E4")).toEqual([["20"], ["50"], ["60"]]);
    await typeInGrid(page, "E6", "=DOUBLED(C2)");
    expect(await readCells(page, "trial", "E6")).toEqual([["2026-03-15"]]);
    // A spreadsheet takes ";" between arguments in every locale.
    await typeInGrid(page, "F2", "=SUM(B2; B4)");
    expect(await readCells(page, "trial", "F2")).toEqual([["40"]]);
  });

  it("helps with the functions of the add-in: sentence, parameters", async () => {
    const page = opened.page();
    await clickCell(page, "E2");
    await page.keyboard.type("=DOUB", { delay: 40 });
    await page.waitForSelector("text=Doubles every number.");
    await page.keyboard.type("LED(", { delay: 40 });
    await page.waitForSelector("text=values");
    await page.keyboard.press("Escape");
    await page.keyboard.press("Escape");
  });

  it("says above the grid why a function failed in the selected cell", async () => {
    const page = opened.page();
    await typeInGrid(page, "E2", '=DOUBLED("stop")');
    expect(await readCells(page, "trial", "E2")).toEqual([["#ERROR!"]]);
    await clickCell(page, "E2");
    await page.waitForSelector("#note:text('DOUBLED: stop is not a number')");
    await clickCell(page, "A1");
    await page.waitForSelector("#note", { state: "hidden" });
  });

  it("reads typing by the workbook's locale, and tells onEdit of it", async () => {
    const page = opened.page();
    await typeInGrid(page, "B2", "1/2");
    await typeInGrid(page, "B3", "'007");
    const year = new Date().getFullYear();
    expect(await readCells(page, "trial", "B2:B3")).toEqual([[`01/02/${year}`], ["007"]]);
    const heard = await readCells(page, "Log", "A1:C2");
    expect(heard).toEqual([
      ["B2", expect.stringMatching(/^4\d{4}$/), "10"],
      ["B3", "007", "20"],
    ]);
    await page.evaluate(() => {
      localPage.edits.dropsAll = true;
    });
    await typeInGrid(page, "B4", "1");
    expect(
      await page.evaluate(() => [
        localPage.edits.dropped,
        localPage.app().getActive().getSheetByName("Log").getLastRow(),
      ]),
    ).toEqual([1, 2]);
  });

  it("ticks a box by a click, which onEdit hears", async () => {
    const page = opened.page();
    await page.evaluate(() =>
      localPage.app().getActive().getSheetByName("trial").getRange("E2:E3").insertCheckboxes(),
    );
    await clickCell(page, "E3");
    await page.evaluate(() => localPage.settled());
    expect(
      await page.evaluate(() =>
        localPage.app().getActive().getSheetByName("trial").getRange("E2:E3").getValues(),
      ),
    ).toEqual([[false], [true]]);
    expect(await readCells(page, "Log", "A1:C1")).toEqual([["E3", "TRUE", "FALSE"]]);
  });

  it("saves a copy as xlsx and opens files in place of the one that is open", async () => {
    const page = opened.page();
    await typeInGrid(page, "E2", "=SUM(B2:B4)");
    const [download] = await Promise.all([page.waitForEvent("download"), page.click("#save-file")]);
    expect(download.suggestedFilename()).toBe("trial.xlsx");
    const saved = readFileSync(await download.path());
    const [sheet] = readXlsx(saved, "trial.xlsx", new Set());
    expect(sheet?.rows[1]?.[4]).toMatchObject({ f: "=SUM(B2:B4)", v: 60 });

    await page.setInputFiles("#open-file", { name: "again.xlsx", mimeType: "", buffer: saved });
    await page.waitForSelector("#file-name:text('again.xlsx')");
    await page.evaluate(() => localPage.settled());
    expect(await readCells(page, "trial", "E2")).toEqual([["60"]]);
    await page.evaluate(() => localPage.type("trial", "B2", "15"));
    await page.evaluate(() => localPage.settled());
    expect(await readCells(page, "trial", "E2")).toEqual([["65"]]);

    await page.setInputFiles("#open-file", { name: "old.doc", mimeType: "", buffer: saved });
    await page
      .locator("#messages")
      .getByText(otherKind({ file: "old.doc" }))
      .waitFor();
    expect(await page.textContent("#file-name")).toBe("again.xlsx");
  });

  it("opens a file that is dropped on it", async () => {
    const page = opened.page();
    const data = await page.evaluateHandle(() => {
      const held = new DataTransfer();
      held.items.add(new File(["Lot,Count\nL1,5"], "dropped.csv"));
      return held;
    });
    await page.dispatchEvent("#grid", "dragenter", { dataTransfer: data });
    expect(await page.isVisible("#drop-hint")).toBe(true);
    await page.dispatchEvent("#grid", "drop", { dataTransfer: data });
    await page.waitForSelector("#file-name:text('dropped.csv')");
    expect(await page.isVisible("#drop-hint")).toBe(false);
    expect(await readCells(page, "dropped", "A1:B2")).toEqual([
      ["Lot", "Count"],
      ["L1", "5"],
    ]);
  });
});
