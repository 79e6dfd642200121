import { existsSync } from "node:fs";
import { type Browser, chromium } from "playwright-core";

const CHROMIUM = process.env.CHROMIUM ?? "/usr/bin/chromium";

/** Whether tests in a browser can't run here. In CI they always run, and fail without a browser. */
export const isChromiumMissing = !process.env.CI && !existsSync(CHROMIUM);
if (isChromiumMissing) {
  console.warn(
    `No Chromium at ${CHROMIUM}: tests in a browser are left out (CHROMIUM names another).`,
  );
}

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
      "--host-resolver-rules=MAP * ~NOTFOUND , EXCLUDE 127.0.0.1",
    ],
  });
}
