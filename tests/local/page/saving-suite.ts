import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { HOSTILE_FILES } from "../../../src/checks/files/hostile-files";
import { readXlsx } from "../../../src/local/xlsx-in";
import * as text from "../../../src/sentences/made/local-page";
import { isChromiumMissing } from "./chromium";
import { readCells, typeInGrid } from "./grid";
import { type LocalPage, openedPage } from "./opened-page";

declare const localPage: LocalPage;

/** Waits until the line of the state says just so. */
async function says(page: Page, sentence: string, isUnsaved: boolean): Promise<void> {
  const state = isUnsaved ? ".unsaved" : ":not(.unsaved)";
  await page.locator(`#saved-state${state}`, { hasText: sentence }).waitFor();
}

/** Hears the browser's questions and answers them; "beforeunload" is that of closing and reloading. */
function questions(page: Page) {
  const asked: string[] = [];
  let accepts = false;
  page.on("dialog", (dialog) => {
    asked.push(dialog.type() === "confirm" ? dialog.message() : dialog.type());
    void (accepts ? dialog.accept() : dialog.dismiss());
  });
  return {
    asked,
    accept(all: boolean) {
      accepts = all;
    },
  };
}

async function drop(page: Page, name: string, content: Uint8Array): Promise<void> {
  const data = await page.evaluateHandle(
    ([file, base64]) => {
      const held = new DataTransfer();
      const bytes = Uint8Array.from(atob(base64 as string), (letter) => letter.charCodeAt(0));
      held.items.add(new File([bytes], file as string));
      return held;
    },
    [name, Buffer.from(content).toString("base64")] as const,
  );
  await page.dispatchEvent("#grid", "drop", { dataTransfer: data });
}

describe.skipIf(isChromiumMissing)("unsaved work in the local page", () => {
  const opened = openedPage();
  const folder = () => path.dirname(opened.table());
  const saved = () => readdirSync(folder()).filter((name) => /\.xlsx$/.test(name));

  it("is marked from the first change on, and is not there before", async () => {
    const page = opened.page();
    expect(await page.isVisible("#saved-state")).toBe(false);
    expect(await page.title()).toBe(text.title({ file: "trial.csv" }));
    await page.click("#menus .opener");
    await page.keyboard.press("Escape");
    expect(await page.isVisible("#saved-state")).toBe(false);
    await typeInGrid(page, "B2", "11");
    await says(page, text.notSaved({ file: "trial.csv" }), true);
    expect(await page.title()).toBe(text.titleUnsaved({ file: "trial.csv" }));
  });

  it("is marked when the sidebar writes, too", async () => {
    const page = opened.page();
    const frame = await opened.openSidebar();
    expect(await page.isVisible("#saved-state")).toBe(false);
    await frame.evaluate("run.writeAll([[1]])");
    await says(page, text.notSaved({ file: "trial.csv" }), true);
  });

  it("is asked about when the page is reloaded, until it is saved under a new name each time", async () => {
    const page = opened.page();
    const { asked } = questions(page);
    const before = readFileSync(opened.table());
    await typeInGrid(page, "B2", "11");
    await page.evaluate(() => void setTimeout(() => location.reload(), 0));
    await expect.poll(() => asked, { timeout: 20_000 }).toEqual(["beforeunload"]);
    expect(await readCells(page, "trial", "B2")).toEqual([["11"]]);

    await page.click("#save-beside");
    await says(page, text.savedBeside({ name: "trial-saved-1.xlsx", file: "trial.csv" }), false);
    expect(await page.title()).toBe(text.title({ file: "trial.csv" }));
    const [sheet] = readXlsx(
      readFileSync(path.join(folder(), "trial-saved-1.xlsx")),
      "trial-saved-1.xlsx",
      new Set(),
    );
    expect(sheet?.rows[1]?.[1]?.v).toBe(11);

    await typeInGrid(page, "B2", "12");
    await page.waitForSelector("#saved-state.unsaved");
    await page.keyboard.press("Control+s");
    await says(page, text.savedBeside({ name: "trial-saved-2.xlsx", file: "trial.csv" }), false);
    expect(saved()).toEqual(["trial-saved-1.xlsx", "trial-saved-2.xlsx"]);
    expect(readFileSync(opened.table())).toEqual(before);

    await page.reload();
    await page.waitForFunction(() => "localPage" in window, null, {});
    expect(asked).toEqual(["beforeunload"]);
  });

  it("is asked about before another file takes its place, which has no folder to be saved in", async () => {
    const page = opened.page();
    const { asked, accept } = questions(page);
    const other = new TextEncoder().encode("Lot,Count\nL1,5");
    await typeInGrid(page, "B2", "11");
    await drop(page, "other.csv", other);
    await expect
      .poll(() => asked, { timeout: 20_000 })
      .toEqual([text.askOrLose({ file: "trial.csv", other: "other.csv" })]);
    expect(await page.textContent("#file-name")).toBe("trial.csv");
    expect(await page.isVisible("#save-beside")).toBe(true);

    accept(true);
    await drop(page, "other.csv", other);
    await page.waitForSelector("#file-name:text('other.csv')");
    await page.waitForSelector("#save-beside", { state: "hidden" });
    expect(await page.isVisible("#saved-state")).toBe(false);
    await page.evaluate(() => localPage.type("other", "B2", "6"));
    await page.waitForSelector("#saved-state.unsaved");
    const [download] = await Promise.all([
      page.waitForEvent("download"),
      page.keyboard.press("Control+s"),
    ]);
    expect(download.suggestedFilename()).toBe("other.xlsx");
    await says(page, text.downloaded({ name: "other.xlsx" }), false);
  });

  it("is not lost to a file that is damaged or made to do harm", async () => {
    const page = opened.page();
    const { asked } = questions(page);
    await typeInGrid(page, "B2", "11");
    const wanted = ["every-997th-byte.xlsx", "missing-tab.xlsx", "endless-columns.xlsx"];
    for (const { name, bytes, says } of HOSTILE_FILES.filter((file) =>
      wanted.includes(file.name),
    )) {
      await drop(page, name, bytes());
      const troubles = page.locator("#messages .trouble").filter({ hasText: name });
      await troubles
        .getByText(says ?? name)
        .first()
        .waitFor();
    }
    expect(asked).toEqual([]);
    expect(await page.textContent("#file-name")).toBe("trial.csv");
    expect(await readCells(page, "trial", "B2")).toEqual([["11"]]);
  });
});
