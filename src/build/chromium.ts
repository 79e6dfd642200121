import { type Browser, type BrowserContext, chromium } from "playwright-core";

/** The browser that the tests, the pictures and the bench of the page drive; CHROMIUM names another. */
export const CHROMIUM = process.env.CHROMIUM ?? "/usr/bin/chromium";

const LAUNCH = {
  executablePath: CHROMIUM,
  args: [
    "--headless=new",
    "--no-sandbox",
    "--disable-gpu",
    "--disable-quic",
    "--no-first-run",
    "--disable-background-networking",
    "--disable-component-update",
    "--disable-sync",
    "--host-resolver-rules=MAP * ~NOTFOUND , EXCLUDE 127.0.0.1 , EXCLUDE localhost",
  ],
};

/** A browser that can reach this computer and nothing else. Close it. */
export function launchChromium(): Promise<Browser> {
  return chromium.launch(LAUNCH);
}

/**
 * The same with one profile for all its pages, in which it keeps scripts that it has compiled: a large
 * page is there in half the time from the third load on. Close it.
 */
export function launchProfile(width: number, height: number): Promise<BrowserContext> {
  return chromium.launchPersistentContext("", { ...LAUNCH, viewport: { width, height } });
}
