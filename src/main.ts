import { callFunction, type FunctionName, type FunctionResult, runs } from "./functions/index";
import { addMenu, openSidebar, refreshDueList, writeTicked } from "./workbook/menu";
import { dueListEdited } from "./workbook/on-edit";
import { sidebarCall } from "./workbook/sidebar-call";
import { workbookHost } from "./workbook/workbook-host";

/** Answers a custom function by its name; the stubs in the built file call it. */
export function answer(name: FunctionName, args: ArrayLike<unknown>): FunctionResult {
  return callFunction({ name, run: runs[name].run }, workbookHost(), Array.from(args));
}

export {
  addMenu as onInstall,
  addMenu as onOpen,
  dueListEdited as onEdit,
  openSidebar as showSidebar,
  refreshDueList,
  sidebarCall,
  writeTicked,
};
