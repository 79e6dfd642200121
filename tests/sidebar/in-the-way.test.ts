import { expect, it } from "vitest";
import { inTheWay } from "../../src/sentences/made/blocked-tabs";
import * as pageText from "../../src/sentences/made/page";
import { readAgain } from "../../src/sentences/made/set-up-page";
import { opened } from "./fixed-answers";
import { sidebarTests } from "./sidebar-tests";

const openSidebar = sidebarTests();

it("names tabs that show no answer above all sections, until they do", async () => {
  const sentence = inTheWay({ tab: "Stages", cell: 'C5 ("ask <b>Orrin</b>")', more: 0 });
  let opens = 0;
  const { page } = await openSidebar({
    sidebarOpen: () => {
      opens += 1;
      return { ...opened, inTheWay: opens === 1 ? [sentence] : [] };
    },
  });
  await page.getByText(sentence).waitFor();
  await page.getByRole("tab", { name: pageText.setUp() }).click();
  expect(await page.getByText(sentence).isVisible()).toBe(true);
  await page.getByRole("button", { name: readAgain() }).click();
  await page.getByText(sentence).waitFor({ state: "detached" });
});
