import { readdirSync } from "node:fs";
import { createServer, type Server } from "node:http";
import type { AddressInfo } from "node:net";
import path from "node:path";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { launchChromium } from "../../../src/build/chromium";
import { type LocalPageServer, runPage } from "../../../src/local/page/page-run";
import { projectRoot } from "../../../src/local/project-root";
import { isChromiumMissing } from "./chromium";
import { fakeAddIn } from "./fake-add-in";

/** The names of the files that the page is made of, and of what its data could be called. */
const NAMES = ["", "start.js", "start.json", "page.js", "page.css", "script.html", "Code.js"];

/**
 * What a page of another origin gets at, given the address in the worst case: the whole of it.
 * Each way ends with what was got, or "nothing".
 */
const ATTACK = `
const nothing = (promise) => promise.catch(() => "nothing");
const element = (tag, from, address) => new Promise((resolve) => {
  const made = document.createElement(tag);
  if (tag === "link") made.rel = "stylesheet";
  made.onload = () => resolve(tag + " loaded" + (globalThis.localPageStart ? " with the records" : ""));
  made.onerror = () => resolve("nothing");
  made[from] = address;
  document.body.append(made);
});
globalThis.attack = async (address) => ({
  script: await element("script", "src", address),
  style: await element("link", "href", address),
  image: await element("img", "src", address),
  read: await nothing(fetch(address).then((answer) => answer.text())),
  opaque: await nothing(fetch(address, { mode: "no-cors" }).then((answer) => "answer " + answer.type)),
});
globalThis.save = async (address) => {
  const type = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";
  await nothing(fetch(address, { method: "POST", mode: "no-cors", body: "PK\\x03\\x04 foreign" }));
  await nothing(fetch(address, { method: "POST", headers: { "content-type": type }, body: "PK\\x03\\x04" }));
  navigator.sendBeacon(address, "PK\\x03\\x04 beacon");
  const frame = document.createElement("iframe");
  frame.name = "posted";
  const form = document.createElement("form");
  Object.assign(form, { method: "post", enctype: "text/plain", action: address, target: "posted" });
  document.body.append(frame, form);
  form.submit();
};
globalThis.frameIt = (address) => new Promise((resolve) => {
  const frame = document.createElement("iframe");
  frame.onload = () => resolve(frame.contentWindow.length);
  frame.src = address;
  document.body.append(frame);
});
`;

describe.skipIf(isChromiumMissing)("a page of another origin", () => {
  const addIn = fakeAddIn();
  let server: LocalPageServer;
  let browser: Browser;
  let foreign: Server;
  let port = 0;

  beforeAll(async () => {
    const quiet = { print: () => {}, progress: () => {}, openBrowser: () => {} };
    const at = { root: projectRoot(), folders: [projectRoot()], ...quiet };
    const words = [addIn.table, "--no-open", "--dist", addIn.dist];
    server = (await runPage(words, at)) as LocalPageServer;
    foreign = createServer((_, response) =>
      response
        .writeHead(200, { "content-type": "text/html" })
        .end(`<!doctype html><title>Foreign</title><body><script>${ATTACK}</script></body>`),
    );
    await new Promise<void>((resolve) => foreign.listen(0, "127.0.0.1", resolve));
    port = (foreign.address() as AddressInfo).port;
    browser = await launchChromium();
  });
  afterAll(async () => {
    await browser?.close();
    await server?.close();
    foreign?.close();
    addIn.remove();
  });

  /** Another port is the same site; another name is another site too. */
  const HOSTS = ["127.0.0.1", "localhost"];
  const foreignPage = async (host: string): Promise<Page> => {
    const page = await browser.newPage();
    await page.goto(`http://${host}:${port}/`);
    return page;
  };
  const call = <Result>(page: Page, name: string, address: string) =>
    page.evaluate(`${name}(${JSON.stringify(address)})`) as Promise<Result>;

  it.each(HOSTS)("reads nothing of the page or of the workbook from %s", async (host) => {
    const page = await foreignPage(host);
    const { origin } = new URL(server.address);
    for (const base of [server.address, server.sidebarAddress, `${origin}/`]) {
      for (const name of NAMES) {
        const got = await call<Record<string, string>>(page, "attack", base + name);
        expect([base + name, ...new Set(Object.values(got))]).toEqual([base + name, "nothing"]);
      }
    }
    await page.close();
  });

  it.each(HOSTS)("can't put the page, or what it is made of, into a frame at %s", async (host) => {
    const page = await foreignPage(host);
    for (const address of [server.address, `${server.address}script.html`, server.sidebarAddress]) {
      expect(await call(page, "frameIt", address)).toBe(0);
      // The browser's own page stands in the frame: it has refused to show the answer.
      const shown = () => page.frames().at(-1)?.url();
      await expect.poll(shown).toBe("chrome-error://chromewebdata/");
    }
    await page.close();
  });

  it.each(HOSTS)("can't make the page save at %s", async (host) => {
    const folder = path.dirname(addIn.table);
    const before = readdirSync(folder);
    const page = await foreignPage(host);
    const posted = page.waitForResponse((answer) => answer.request().isNavigationRequest());
    await call(page, "save", `${server.address}save`);
    expect((await posted).status()).toBe(403);
    expect(readdirSync(folder)).toEqual(before);
    await page.close();
  });

  it.each(HOSTS)("has no hold on a window with the page that it opens at %s", async (host) => {
    const page = await foreignPage(host);
    const [opened] = await Promise.all([
      page.waitForEvent("popup"),
      page.evaluate((address) => {
        (globalThis as unknown as { opened: Window | null }).opened = window.open(address);
      }, server.address),
    ]);
    await opened.waitForLoadState();
    expect(await opened.evaluate("typeof localPage + document.scripts.length")).toBe("undefined0");
    await page.close();
  });
});
