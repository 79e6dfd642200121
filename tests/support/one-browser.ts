import type { Browser, BrowserContext } from "playwright-core";
import { launchChromium, launchProfile } from "../../src/build/chromium";
import { PATIENCE_MS } from "./patience";

let launched: Promise<Browser> | null = null;

/**
 * The browser of this process, started when the first test asks for it: starting one takes longer than
 * most tests. It ends with the process; a test closes its own pages and contexts only.
 */
export function oneBrowser(): Promise<Browser> {
  launched ??= launchChromium();
  return launched;
}

let profile: Promise<BrowserContext> | null = null;

/**
 * Where the tests of the local page open their pages, as wide as a small laptop; a test closes its own
 * pages only. Its script is large, and this browser keeps it compiled.
 */
export function oneProfile(): Promise<BrowserContext> {
  profile ??= launchProfile(1280, 800).then((made) => {
    made.setDefaultTimeout(PATIENCE_MS);
    return made;
  });
  return profile;
}
