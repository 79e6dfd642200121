import axe from "axe-core";
import type { Page } from "playwright-core";
import { isNonsense } from "../support/nonsense";

declare global {
  interface Window {
    readonly axe: typeof axe;
  }
}

/** What axe-core finds wrong, as text that names the rule and the place. */
export async function axeViolations(page: Page): Promise<string[]> {
  await page.evaluate(axe.source);
  // A name that begins as the button does can't be held where every message is its own nonsense.
  const rules = { "label-content-name-mismatch": { enabled: !isNonsense } };
  const { violations: found } = await page.evaluate((options) => window.axe.run(options), {
    rules,
  });
  return found.flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html}`));
}
