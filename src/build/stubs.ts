import type { FunctionEntry } from "../functions/index";
import type { SidebarCallName } from "../wire/calls";
import { sidebarAnswers } from "../workbook/answers/sidebar-answers.table";
import { dueTitle, firstHeader } from "../workbook/tabs/due-tab-found";
import { BUNDLE_NAME } from "./loader";

/** Functions that the spreadsheet and the menu call by name. */
const WORKBOOK_FUNCTIONS = ["onOpen", "onInstall", "showSidebar", "refreshDueList", "writeTicked"];

/** The due list's title stands within so many rows, with a row that a person has put in above it. */
const ROWS_ABOVE = 4;

/** What the sidebar page may call: every name here is open to the page, and nothing else. */
export const SIDEBAR_CALLS = Object.keys(sidebarAnswers) as readonly SidebarCallName[];

/**
 * The top-level functions that the spreadsheet sees: a bundler would hide them, and with them the
 * names and sentences that the formula helper shows.
 */
export function stubs(registry: readonly FunctionEntry[]): string {
  return [
    // Said once, since every byte is loaded for each formula; private, as their ends tell.
    `function answer_(name, all) {\n  return ${BUNDLE_NAME}().answer(name, all);\n}`,
    `function sidebar_(name, request) {\n  return ${BUNDLE_NAME}().sidebarCall(name, request);\n}`,
    ...registry.map(customFunctionStub),
    ...WORKBOOK_FUNCTIONS.map(
      (name) => `function ${name}(event) { return ${BUNDLE_NAME}().${name}(event); }`,
    ),
    editStub(),
    ...SIDEBAR_CALLS.map(
      (name) => `function ${name}(request) { return sidebar_("${name}", request); }`,
    ),
  ].join("\n");
}

/**
 * An edit of another tab than the due list ends here, with two calls and nothing loaded. The list is
 * known by what stands above the edited cell, since people rename its tab; the cells up to the edited
 * one are in any tab.
 */
function editStub(): string {
  return [
    "function onEdit(event) {",
    "  var range = event.range;",
    "  var top = range",
    `    .offset(1 - range.rowStart, 1 - range.columnStart, Math.min(range.rowEnd, ${ROWS_ABOVE}), range.columnEnd)`,
    "    .getValues();",
    "  var isDueList = function (cell) {",
    `    return cell === ${JSON.stringify(firstHeader())} || String(cell).indexOf(${JSON.stringify(dueTitle())}) === 0;`,
    "  };",
    "  if (top.some(function (row) { return row.some(isDueList); }))",
    `    ${BUNDLE_NAME}().onEdit(event, range.getSheet());`,
    "}",
  ].join("\n");
}

/** The helper shows no text of what comes back, so that none is carried along: the reference says it. */
function customFunctionStub({ name, sentence, parameters }: FunctionEntry): string {
  const lines = [
    sentence,
    "",
    ...parameters.map((one) => `@param {any} ${one.name} ${one.sentence}`),
    "@customfunction",
  ];
  const comment = ["/**", ...lines.map((line) => ` * ${line}`.trimEnd()), " */"].join("\n");
  const names = parameters.map((one) => one.name).join(", ");
  return `\n${comment}\nfunction ${name}(${names}) { return answer_("${name}", arguments); }`;
}
