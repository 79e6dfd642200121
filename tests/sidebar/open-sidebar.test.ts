import { expect, it } from "vitest";
import { fixedAnswers } from "./fixed-answers";
import { startSidebarTest } from "./open-sidebar";

it("opens no two sidebars in one page, though one was closed twice", async () => {
  const test = await startSidebarTest();
  const first = await test.open(fixedAnswers);
  await first.close();
  await first.close();
  const [second, third] = [await test.open(fixedAnswers), await test.open(fixedAnswers)];
  expect(second.page).not.toBe(third.page);
  await second.close();
  await third.close();
});
