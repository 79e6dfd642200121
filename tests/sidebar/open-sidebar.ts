import type { Browser, Page } from "playwright-core";
import { sidebarPage } from "../../src/build/sidebar-page";
import { registry } from "../../src/functions/index";
import { SECTIONS } from "../../src/sidebar/sections.table";
import { oneBrowser } from "../support/one-browser";
import { PATIENCE_MS } from "../support/patience";
import { type Answers, type AskedCall, type FakeRunner, fakeRunner } from "./script-runner";

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
  /** The browser's page. A test that gives it a clock or scripts of its own closes it itself. */
  readonly page: Page;
  readonly asked: readonly AskedCall[];
  /** Whatever the page asked of a network, threw, or complained of. */
  readonly complaints: readonly string[];
  /** Goes to a section by its tab. */
  section(key: SectionKey): Promise<void>;
  /** Ends the sidebar; the browser's page is kept for the next one. */
  close(): Promise<void>;
}

export type SectionKey = (typeof SECTIONS)[number]["key"];

/** What a section's tab says. */
export function tabOf(section: SectionKey): string {
  return SECTIONS.find(({ key }) => key === section)?.title() ?? section;
}

export const SECTION_KEYS: readonly SectionKey[] = SECTIONS.map(({ key }) => key);

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

/** A page of the browser, and what it serves at the moment. Making one takes longer than most tests. */
interface Stage {
  readonly page: Page;
  readonly runner: FakeRunner;
  html: string;
  complaints: string[];
}

/** Pages that no sidebar is open in. */
const atRest: Stage[] = [];

const USUAL: View = { width: 300, height: 800 };

async function begin(
  browser: Browser,
  html: string,
  answers: Answers,
  view: View = USUAL,
): Promise<OpenSidebar> {
  const stage = (view === USUAL ? freeStage() : undefined) ?? (await newStage(browser, view));
  const { page, runner } = stage;
  const complaints: string[] = [];
  Object.assign(stage, { html, complaints });
  const asked = runner.play(answers);
  await page.goto(ADDRESS);
  let closed = false;
  return {
    page,
    asked,
    complaints,
    section: async (key) => {
      await page.getByRole("tab", { name: tabOf(key) }).click();
      await page.waitForFunction(() => document.querySelector(":disabled") === null);
    },
    async close() {
      // Closed twice, it would be kept twice, and two sidebars would open in one page.
      if (closed) return;
      closed = true;
      if (view !== USUAL || page.isClosed()) return page.close();
      await page.goto("about:blank");
      // Neither is the mouse moved nor a size set that stands: over a page that shows nothing the browser
      // may never answer that, and no limit of time ends it.
      const { width, height } = page.viewportSize() ?? view;
      if (width !== view.width || height !== view.height) await page.setViewportSize(view);
      atRest.push(stage);
    },
  };
}

function freeStage(): Stage | undefined {
  const stage = atRest.pop();
  return stage?.page.isClosed() ? freeStage() : stage;
}

async function newStage(browser: Browser, { width, height, scale = 1 }: View): Promise<Stage> {
  const page = await browser.newPage({
    viewport: { width, height },
    deviceScaleFactor: scale,
    locale: "en-US",
    reducedMotion: "reduce",
  });
  page.setDefaultTimeout(PATIENCE_MS);
  const stage: Stage = { page, runner: await fakeRunner(page), html: "", complaints: [] };
  page.on("pageerror", (error) => stage.complaints.push(`thrown: ${error.message}`));
  page.on("console", (message) => {
    if (message.type() === "error") stage.complaints.push(`console: ${message.text()}`);
  });
  await page.route("**/*", (route) => {
    if (route.request().url() === ADDRESS) {
      return route.fulfill({ contentType: "text/html; charset=utf-8", body: stage.html });
    }
    stage.complaints.push(`asked for: ${route.request().url()}`);
    return route.abort();
  });
  return stage;
}
