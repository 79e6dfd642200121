/**
 * Makes the picture of the due list at the width of a phone anew, in the local page:
 * node src/build/run.mjs tests/local/page/make-phone-pictures.ts [folder]
 *
 * It is the local page's own grid, 360 pixels wide; nobody has seen it on a phone.
 */

import { mkdirSync } from "node:fs";
import { launchChromium } from "../../../src/build/chromium";
import { type LocalPageServer, runPage } from "../../../src/local/page/page-run";
import { projectRoot } from "../../../src/local/project-root";
import * as menu from "../../../src/sentences/made/menu";
import * as setUp from "../../../src/sentences/made/set-up-page";
import type { LocalPage } from "./opened-page";

declare const localPage: LocalPage;

const FOLDER = process.argv[2] ?? "src/workbook/pictures";
const SAMPLE = "sample-sheets/hillside-nursery/hillside-nursery.xlsx";
const PHONE = { width: 360, height: 800 };

mkdirSync(FOLDER, { recursive: true });
const server = (await runPage([SAMPLE, "--no-open"], {
  root: projectRoot(),
  folders: [projectRoot()],
  print: () => {},
  progress: () => {},
  openBrowser: () => {},
})) as LocalPageServer;
const browser = await launchChromium();
const page = await browser.newPage({ viewport: { width: 1280, height: 800 } });
await page.goto(server.address);
await page.waitForFunction(() => "localPage" in window, null, { timeout: 60_000 });
await page.evaluate(() => localPage.settled());
await page.click("#menus .opener");
await page.locator("#menus .item").getByText(menu.open()).click();
const side = await (await page.waitForSelector("#sidebar iframe")).contentFrame();
if (side === null) throw new Error("The sidebar did not open");
await side.getByRole("button", { name: setUp.makeTabs() }).click({ timeout: 60_000 });
await side.getByText(setUp.made()).waitFor({ timeout: 120_000 });
await page.evaluate(() => localPage.settled());
// The samples' own day, so that the picture is the same whenever it is made.
await page.evaluate(() => localPage.type("Nursery settings", "B4", "2026-11-25"));
await page.evaluate(() => localPage.settled());
await page.click("#menus .opener");
await page.locator("#menus .item").getByText(menu.refresh()).click();
await page.evaluate(() => localPage.settled());
await page.click("#sidebar button");
await page.setViewportSize(PHONE);
await page.locator("button:visible", { hasText: "Close" }).click();
await page.evaluate(() => localPage.app().getActive().getSheetByName("Due list").activate());
await page.evaluate(() => localPage.settled());
await page.waitForTimeout(2000);
await page.screenshot({ path: `${FOLDER}/due-list-360.png` });
await browser.close();
await server.close();
