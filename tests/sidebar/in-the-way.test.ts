import { expect, it } from "vitest";
import { opened } from "./fixed-answers";
import { sidebarTests } from "./sidebar-tests";

const openSidebar = sidebarTests();

it("names tabs that show no answer above all sections, until they do", async () => {
  const sentence =
    'Stages shows no answer, since C5 ("ask <b>Orrin</b>") is in its way: choose Refresh the due list in the Nursery menu, which moves it beside';
  let opens = 0;
  const { page } = await openSidebar({
    sidebarOpen: () => {
      opens += 1;
      return { ...opened, inTheWay: opens === 1 ? [sentence] : [] };
    },
  });
  await page.getByText(sentence).waitFor();
  await page.getByRole("tab", { name: "Set up" }).click();
  expect(await page.getByText(sentence).isVisible()).toBe(true);
  await page.getByRole("button", { name: "Read again" }).click();
  await page.getByText(sentence).waitFor({ state: "detached" });
});
