import { callFunction, type FunctionResult, registry } from "./functions/index";
import { addMenu, openSidebar, refreshDueList, writeTicked } from "./workbook/menu";
import { sidebarCall } from "./workbook/sidebar-call";
import { recordOnEdit } from "./workbook/ticked-tasks";
import { workbookHost } from "./workbook/workbook-host";

/** Answers a custom function by its name; the stubs in the built file call it. */
export function answer(name: string, args: ArrayLike<unknown>): FunctionResult {
  const entry = registry.find((one) => one.name === name);
  if (entry === undefined) throw new Error(`${name} is not a function of this add-in`);
  return callFunction(entry, workbookHost(), Array.from(args));
}

export {
  addMenu as onOpen,
  openSidebar as showSidebar,
  recordOnEdit as onEdit,
  refreshDueList,
  sidebarCall,
  writeTicked,
};
