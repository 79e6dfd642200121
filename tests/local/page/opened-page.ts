import type { Frame, Page, Request } from "playwright-core";
import { afterAll, afterEach, beforeAll, beforeEach, expect } from "vitest";
import { type LocalPageServer, runPage } from "../../../src/local/page/page-run";
import { projectRoot } from "../../../src/local/project-root";
import { oneProfile } from "../../support/one-browser";
import { fakeAddIn } from "./fake-add-in";

/** The page as its test-handle.ts gives it, for code that runs in the page. */
export interface LocalPage {
  // biome-ignore lint/suspicious/noExplicitAny: a script has no types either
  app(): any;
  settled(): Promise<void>;
  type(sheet: string, cell: string, text: string): void;
  readonly meter: {
    readonly calls: ReadonlyMap<string, number>;
    reset(): void;
    failAt(n: number): void;
    before(method: string, action: () => void): void;
  };
  readonly edits: { dropsAll: boolean; readonly dropped: number };
  readonly isLockFree: boolean;
}
declare const localPage: LocalPage;

/**
 * The page with the fake add-in and its table, loaded anew for every test of the suite that calls
 * this. After each test it is checked that the page has asked for nothing but its own files and
 * that nothing went wrong unheard; server and browser are closed at the end, whatever happens.
 */
export function openedPage() {
  let addIn: ReturnType<typeof fakeAddIn> | null = null;
  const printed: string[] = [];
  let server: LocalPageServer | null = null;
  let page: Page;
  let requests: Request[];
  let problems: string[];

  beforeAll(async () => {
    addIn = fakeAddIn();
    server = await runPage(
      [addIn.table, "--no-open", "--dist", addIn.dist, "--zone", "Asia/Kolkata"],
      {
        root: projectRoot(),
        folders: [projectRoot()],
        print: (text) => printed.push(text),
        progress: () => {},
        openBrowser: (address) => printed.push(`opened ${address}`),
      },
    );
  });
  afterAll(async () => {
    await server?.close();
    addIn?.remove();
  });
  beforeEach(async () => {
    page = await (await oneProfile()).newPage();
    requests = [];
    problems = [];
    page.on("request", (request) => requests.push(request));
    page.on("pageerror", (error) => problems.push(error.message));
    await page.goto(address());
    await page.waitForFunction(() => "localPage" in window);
    await page.evaluate(() => localPage.settled());
  });
  afterEach(async () => {
    await page?.close();
    const own = [address(), server?.sidebarAddress ?? address(), "data:", "blob:"];
    const others = requests.filter((one) => !own.some((start) => one.url().startsWith(start)));
    // What a policy has refused is told of, too, but never left the browser.
    const sent = others.filter((request) => request.failure()?.errorText !== "csp");
    expect(sent.map((request) => request.url())).toEqual([]);
    expect(requests.length).toBeGreaterThan(5);
    expect(problems).toEqual([]);
  });

  const address = () => server?.address ?? "";
  return {
    printed,
    address,
    page: () => page,
    /** The path of the table that is open. */
    table: () => addIn?.table ?? "",
    /** Opens the sidebar by the menu; gives its frame when its script has run. */
    async openSidebar(): Promise<Frame> {
      // The one that is open goes when the new one comes: it must not be taken for it.
      await page.$$eval("#sidebar iframe", (old) => {
        for (const one of old) one.dataset.old = "yes";
      });
      await page.click("#menus .opener");
      await page.click("#menus .item:text('Open sidebar')");
      const opened = await page.waitForSelector("#sidebar iframe:not([data-old])");
      const frame = await opened.contentFrame();
      await frame?.waitForSelector("li:text('ready')");
      return frame as Frame;
    },
    /** What the sidebar has written down, once it has so many lines. */
    async logOf(frame: Frame, lines: number) {
      await frame.waitForFunction((n) => document.querySelectorAll("#log li").length >= n, lines);
      return frame.$$eval("#log li", (all) => all.map((one) => one.textContent ?? ""));
    },
  };
}
