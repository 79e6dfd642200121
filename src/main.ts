import { callFunction, type FunctionName, type FunctionResult, runs } from "./functions/index";
import { sidebarCall } from "./workbook/answers/sidebar-call";
import { dueListEdited } from "./workbook/due/on-edit";
import { workbookHost } from "./workbook/host/workbook-host";
import { addMenu, openSidebar, refreshDueList, writeTicked } from "./workbook/menu";

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
