import type { Browser } from "playwright-core";
import { beforeAll, describe, expect, it } from "vitest";
import { sidebarPage } from "../../src/build/sidebar-page";
import { projectVersion } from "../../src/build/version";
import { registry } from "../../src/functions/index";
import * as text from "../../src/sentences/made/page";
import { versionSentence } from "../../src/sidebar/version-note";
import { oneBrowser } from "../support/one-browser";
import { fakeRunner } from "./script-runner";

let browser: Browser;
let html: string;
beforeAll(async () => {
  html = await sidebarPage(registry);
  browser = await oneBrowser();
});

/** The page with a script of some version. */
async function opened(version?: string) {
  const page = await browser.newPage({ viewport: { width: 300, height: 800 } });
  await page.route("**/*", (route) =>
    route.fulfill({ contentType: "text/html; charset=utf-8", body: html }),
  );
  const opening = {
    ...{ workbook: "Nursery", zones: null, inTheWay: [], setUp: null, candidates: [] },
    ...{ timetables: [], methods: [], moreTabs: [] },
  };
  (await fakeRunner(page)).play({ sidebarOpen: () => opening }, version);
  await page.goto("http://127.0.0.1/sidebar");
  await page.waitForSelector("[role=tabpanel]:not([hidden])");
  return page;
}

describe("the sidebar's version", () => {
  it("stands at its foot", async () => {
    const page = await opened();
    expect(await page.locator("footer").textContent()).toContain(
      `${text.nursery()} ${projectVersion()}`,
    );
    expect(await page.locator("#version-note").textContent()).toBe("");
    await page.close();
  });

  it("and the script's, where they differ, are said with what to do", async () => {
    const page = await opened("0.1.7");
    expect(await page.locator("#version-note").textContent()).toBe(
      text.otherScript({ page: projectVersion(), script: "0.1.7" }),
    );
    await page.close();
  });
});

describe("versionSentence", () => {
  it("is silent where both are the same", () => {
    expect(versionSentence("0.2.0", "0.2.0")).toBeNull();
  });

  it("says of a script that names no version that it is older", () => {
    expect(versionSentence("0.2.0", null)).toBe(text.olderScript({ page: "0.2.0" }));
  });
});
