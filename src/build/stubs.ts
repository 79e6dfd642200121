import type { FunctionEntry } from "../functions/index";

/** Name under which the bundle's exports are reached from the stubs. */
export const BUNDLE_NAME = "nurseryBatches_";

/** Functions that the menu and the spreadsheet call by name. */
const WORKBOOK_FUNCTIONS = ["onOpen", "showGuide"] as const;

/**
 * The top-level functions that the spreadsheet sees: a bundler would hide them, and with them the
 * names and sentences that the formula helper shows.
 */
export function stubs(registry: readonly FunctionEntry[]): string {
  return [
    ...registry.map(customFunctionStub),
    ...WORKBOOK_FUNCTIONS.map((name) => `function ${name}() {\n  ${BUNDLE_NAME}.${name}();\n}`),
  ].join("\n\n");
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
  return `${comment}\nfunction ${name}(${names}) {\n  return ${BUNDLE_NAME}.answer("${name}", arguments);\n}`;
}
