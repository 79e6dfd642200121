import type { Download, Frame, Locator, Page, Request } from "playwright-core";
import { expect } from "vitest";
import { type LocalPageServer, runPage } from "../../../src/local/page/page-run";
import { projectRoot } from "../../../src/local/project-root";
import * as menu from "../../../src/sentences/made/menu";
import { buildAddIn } from "../../support/built-add-in";
import { oneProfile } from "../../support/one-browser";
import type { LocalPage } from "./opened-page";

declare const localPage: LocalPage;

/** The morning on which a page is opened, by its own clock: the samples' as-of day. */
const MORNING = "2026-11-25T08:00:00";

/** The local page with the built add-in and a nursery's file, in a browser. */
export interface NurseryPage {
  readonly page: Page;
  /** The sidebar's page; there after openSidebar. */
  side(): Frame;
  /** Opens the sidebar by the menu and waits until it has read the workbook. */
  openSidebar(): Promise<void>;
  /** Chooses a section and waits until it has read what it shows. @returns its panel */
  section(title: string): Promise<Locator>;
  /** Opens every fold of the section that is shown, and those within them. */
  unfold(): Promise<void>;
  /** Waits until the sidebar has no call under way and formulas are calculated. */
  settled(): Promise<void>;
  /** What a cell shows. @param cells such as "A1:B2" */
  shown(tab: string, cells: string): Promise<string[][]>;
  download(start: () => Promise<void>): Promise<Download>;
  /** Checks that only the page's own files were asked for and nothing was thrown, and ends it. */
  close(): Promise<void>;
}

export async function openNurseryPage(file: string): Promise<NurseryPage> {
  const addIn = buildAddIn();
  let server: LocalPageServer | null = null;
  let page: Page | null = null;
  const end = async () => {
    await page?.close();
    await server?.close();
  };
  try {
    server = await runPage([file, "--no-open", "--dist", `${addIn.root}/dist`], {
      root: projectRoot(),
      folders: [projectRoot()],
      print: () => {},
      progress: () => {},
      openBrowser: () => {},
    });
    const { address, sidebarAddress } = server as LocalPageServer;
    page = await (await oneProfile()).newPage();
    return await opened(page, [address, sidebarAddress], end);
  } catch (error) {
    await end();
    throw error;
  }
}

async function opened(
  page: Page,
  [address = "", ...others]: readonly string[],
  end: () => Promise<void>,
): Promise<NurseryPage> {
  const requests: Request[] = [];
  const problems: string[] = [];
  page.on("request", (request) => requests.push(request));
  page.on("pageerror", (error) => problems.push(error.message));
  await page.addInitScript(turnClock, MORNING);
  await page.goto(address);
  await page.waitForFunction(() => "localPage" in window);
  await page.evaluate(() => localPage.settled());

  let side: Frame | null = null;
  const frame = () => {
    if (side === null) throw new Error("The sidebar is not open");
    return side;
  };
  const settled = async () => {
    await frame().waitForFunction(() => document.querySelector(":disabled") === null);
    await page.evaluate(() => localPage.settled());
  };
  return {
    page,
    side: frame,
    settled,
    async openSidebar() {
      await page.click("#menus .opener");
      await page.locator("#menus .item").getByText(menu.open()).click();
      side = await (await page.waitForSelector("#sidebar iframe")).contentFrame();
      await frame().waitForSelector("[role=tabpanel]:not([hidden])");
      await settled();
    },
    async section(title) {
      await frame().getByRole("tab", { name: title }).click();
      await settled();
      return frame().locator("[role=tabpanel]:not([hidden])");
    },
    async unfold() {
      await frame().evaluate(() => {
        const closed = () => [
          ...document.querySelectorAll("[role=tabpanel]:not([hidden]) details:not([open])"),
        ];
        for (let left = closed(); left.length > 0; left = closed()) {
          for (const fold of left) {
            (fold as HTMLDetailsElement).open = true;
            fold.dispatchEvent(new Event("toggle"));
          }
        }
      });
      await settled();
    },
    shown: (tab, cells) =>
      page.evaluate(
        ([name, range]) =>
          localPage.app().getActive().getSheetByName(name).getRange(range).getDisplayValues(),
        [tab, cells] as const,
      ),
    async download(start) {
      const [download] = await Promise.all([page.waitForEvent("download"), start()]);
      return download;
    },
    async close() {
      await end();
      const own = [address, ...others, "data:", "blob:", "about:"];
      const foreign = requests.filter((one) => !own.some((begin) => one.url().startsWith(begin)));
      expect(foreign.map((one) => one.url())).toEqual([]);
      expect(problems).toEqual([]);
    },
  };
}

/**
 * Runs in the page and its frames: their clocks go on from another time. The clock of the browser's
 * driver stands still or replaces the timers, and the grid needs both to draw its bars.
 */
function turnClock(to: string): void {
  const { Date: OwnDate } = globalThis;
  const shift = new OwnDate(to).getTime() - OwnDate.now();
  const now = () => OwnDate.now() + shift;
  globalThis.Date = new Proxy(OwnDate, {
    construct: (target, given, made) =>
      Reflect.construct(target, given.length === 0 ? [now()] : given, made),
    get: (target, name) => (name === "now" ? now : Reflect.get(target, name)),
  });
}
