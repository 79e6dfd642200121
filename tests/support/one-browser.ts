import type { Browser } from "playwright-core";
import { launchChromium } from "../../src/build/chromium";

let launched: Promise<Browser> | null = null;

/**
 * The browser of this process, started when the first test asks for it: starting one takes longer than
 * most tests. It ends with the process; a test closes its own pages and contexts only.
 */
export function oneBrowser(): Promise<Browser> {
  launched ??= launchChromium();
  return launched;
}
