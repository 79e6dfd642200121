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
