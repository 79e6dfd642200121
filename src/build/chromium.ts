import { type Browser, chromium } from "playwright-core";

/** The browser that the tests, the pictures and the bench of the page drive; CHROMIUM names another. */
export const CHROMIUM = process.env.CHROMIUM ?? "/usr/bin/chromium";

/** A browser that can reach this computer and nothing else. Close it. */
export function launchChromium(): Promise<Browser> {
  return chromium.launch({
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
  });
}
