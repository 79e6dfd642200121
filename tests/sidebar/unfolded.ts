import type { Page } from "playwright-core";

/** Opens all groups of the section that is shown, once no call is under way. */
export async function unfolded(page: Page): Promise<void> {
  await page.waitForFunction(() => document.querySelector(":disabled") === null);
  await page.waitForFunction(() => {
    const all = [...document.querySelectorAll("[role=tabpanel]:not([hidden]) details")];
    for (const details of all) (details as HTMLDetailsElement).open = true;
    // What a group holds is made when its toggle event comes.
    return all.every(({ children }) => children.length > 1);
  });
}
