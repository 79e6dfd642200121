import axe from "axe-core";
import type { Page } from "playwright-core";

/** What axe-core finds wrong, as text that names the rule and the place. */
export async function axeViolations(page: Page): Promise<string[]> {
  await page.evaluate(axe.source);
  const { violations: found } = (await page.evaluate("axe.run()")) as axe.AxeResults;
  return found.flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html}`));
}
