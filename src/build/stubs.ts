import type { FunctionEntry } from "../functions/index";
import { OWN_TABS } from "../workbook/own-tabs";
import { sidebarAnswers } from "../workbook/sidebar-answers";
import { BUNDLE_NAME } from "./loader";

/** Functions that the spreadsheet and the menu call by name. */
const WORKBOOK_FUNCTIONS = ["onOpen", "onInstall", "showSidebar", "refreshDueList", "writeTicked"];

/** What the sidebar page may call: every name here is open to the page, and nothing else. */
export const SIDEBAR_CALLS: readonly string[] = Object.keys(sidebarAnswers);

/**
 * The top-level functions that the spreadsheet sees: a bundler would hide them, and with them the
 * names and sentences that the formula helper shows.
 */
export function stubs(registry: readonly FunctionEntry[]): string {
  return [
    ...registry.map(customFunctionStub),
    ...WORKBOOK_FUNCTIONS.map(
      (name) => `function ${name}(event) {\n  return ${BUNDLE_NAME}().${name}(event);\n}`,
    ),
    editStub(),
    ...SIDEBAR_CALLS.map(
      (name) =>
        `function ${name}(request) {\n  return ${BUNDLE_NAME}().sidebarCall("${name}", request);\n}`,
    ),
  ].join("\n\n");
}

/** An edit of another tab than the due list ends here, with two calls and nothing loaded. */
function editStub(): string {
  return [
    "function onEdit(event) {",
    "  var sheet = event.range.getSheet();",
    `  if (sheet.getName() === ${JSON.stringify(OWN_TABS.due)}) ${BUNDLE_NAME}().onEdit(event, sheet);`,
    "}",
  ].join("\n");
}

function customFunctionStub({ name, sentence, parameters, answers }: FunctionEntry): string {
  const lines = [
    sentence,
    "",
    ...parameters.map((one) => `@param {any} ${one.name} ${one.sentence}`),
    `@return {any} ${answers}`,
    "@customfunction",
  ];
  const comment = ["/**", ...lines.map((line) => ` * ${line}`.trimEnd()), " */"].join("\n");
  const names = parameters.map((one) => one.name).join(", ");
  return `${comment}\nfunction ${name}(${names}) {\n  return ${BUNDLE_NAME}().answer("${name}", arguments);\n}`;
}
