import type { Page } from "playwright-core";
import { afterEach, beforeAll } from "vitest";
import { fixedAnswers } from "./fixed-answers";
import { type OpenSidebar, type SidebarTest, startSidebarTest } from "./open-sidebar";
import type { Answers } from "./script-runner";

/**
 * A browser for the tests of the file or group that calls this; each test's page is closed after it.
 *
 * @returns opens the page, with answers of the fixed nursery but for those that are given
 */
export function sidebarTests(): (answers?: Answers) => Promise<OpenSidebar> {
  let test: SidebarTest;
  let sidebar: OpenSidebar;
  beforeAll(async () => {
    test = await startSidebarTest();
  });
  afterEach(() => sidebar.close());
  return async (answers = {}) => {
    sidebar = await test.open({ ...fixedAnswers, ...answers });
    return sidebar;
  };
}

export interface ReadySidebar {
  /** Opens the page, and waits until it is where the tests begin. */
  readonly open: (answers?: Answers) => Promise<void>;
  /** The one that was opened last. */
  readonly sidebar: () => OpenSidebar;
  readonly page: () => Page;
}

/** The same where all tests begin at one place of the page. @param arrive goes there and waits for it */
export function sidebarTestsAt(arrive: (sidebar: OpenSidebar) => Promise<void>): ReadySidebar {
  const openSidebar = sidebarTests();
  let sidebar: OpenSidebar;
  return {
    open: async (answers = {}) => {
      sidebar = await openSidebar(answers);
      await arrive(sidebar);
    },
    sidebar: () => sidebar,
    page: () => sidebar.page,
  };
}
