import type { Browser, Page } from "playwright-core";
import { sidebarPage } from "../../src/build/sidebar-page";
import { registry } from "../../src/functions/index";
import { oneBrowser } from "../support/one-browser";
import { PATIENCE_MS } from "../support/patience";
import { type Answers, type AskedCall, fakeRunner } from "./script-runner";

/** Any address will do: nothing is asked of a network. */
const ADDRESS = "http://127.0.0.1/sidebar";

export interface SidebarTest {
  /** The page as built. */
  readonly html: string;
  /** Waits for the first section. */
  open(answers: Answers): Promise<OpenSidebar>;
  /** Does not wait for anything to be shown. */
  begin(answers: Answers, view?: View): Promise<OpenSidebar>;
}

interface View {
  /** CSS pixels. */
  readonly width: number;
  readonly height: number;
  /** Device pixels a CSS pixel. */
  readonly scale?: number;
}

export interface OpenSidebar {
  readonly page: Page;
  readonly asked: readonly AskedCall[];
  /** Whatever the page asked of a network, threw, or complained of. */
  readonly complaints: readonly string[];
  /** Goes to a section by its tab. */
  section(title: string): Promise<void>;
}

let built: Promise<string> | null = null;

/** A browser with the built page, as narrow as a sidebar. */
export async function startSidebarTest(): Promise<SidebarTest> {
  built ??= sidebarPage(registry);
  const [html, browser] = await Promise.all([built, oneBrowser()]);
  return {
    html,
    begin: (answers, view) => begin(browser, html, answers, view),
    open: async (answers) => {
      const sidebar = await begin(browser, html, answers);
      await sidebar.page.waitForSelector("[role=tabpanel]:not([hidden])");
      return sidebar;
    },
  };
}

async function begin(
  browser: Browser,
  html: string,
  answers: Answers,
  { width, height, scale = 1 }: View = { width: 300, height: 800 },
): Promise<OpenSidebar> {
  const page = await browser.newPage({
    viewport: { width, height },
    deviceScaleFactor: scale,
    locale: "en-US",
    reducedMotion: "reduce",
  });
  page.setDefaultTimeout(PATIENCE_MS);
  const complaints: string[] = [];
  page.on("pageerror", (error) => complaints.push(`thrown: ${error.message}`));
  page.on("console", (message) => {
    if (message.type() === "error") complaints.push(`console: ${message.text()}`);
  });
  await page.route("**/*", (route) => {
    if (route.request().url() === ADDRESS) {
      return route.fulfill({ contentType: "text/html; charset=utf-8", body: html });
    }
    complaints.push(`asked for: ${route.request().url()}`);
    return route.abort();
  });
  const asked = await fakeRunner(page, answers);
  await page.goto(ADDRESS);
  return {
    page,
    asked,
    complaints,
    section: async (title) => {
      await page.getByRole("tab", { name: title }).click();
      await page.waitForFunction(() => document.querySelector(":disabled") === null);
    },
  };
}
